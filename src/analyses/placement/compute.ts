import { isKnown, recordOfRow } from '../../fragments/comparison/find.ts';
import { readFind } from '../../fragments/find-table.ts';
import { recordedItself } from '../../fragments/follows-from.ts';
import { registerMixtures } from '../../fragments/kinds/mixed.ts';
import { dissimilaritiesTo, pickVariables } from '../../numerics/dissimilarity/dissimilarity.ts';
import { nearestFirst } from '../../numerics/dissimilarity/nearest-first.ts';
import type { RecordValue } from '../../numerics/dissimilarity/variables.ts';
import type { ConformalP } from '../../numerics/tests/conformal.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import { marksOf } from '../shared/figure/marks.ts';
import { broadFound, broadReadings } from './broad.ts';
import type { PlacementFound } from './found.ts';
import { type BagMaker, drawsOf, furtherAnswers, mapPosition } from './further.ts';
import { guardedSets } from './guarded.ts';
import type { LabelAttribute } from './labels.ts';
import { lackedOf } from './lacked.ts';
import { lessKnownOf } from './less-known.ts';
import { nearestNeighbours } from './neighbours.ts';
import { nothingPlaced, standsFor } from './nothing-placed.ts';
import { noveltyOf } from './novelty.ts';
import { keptOneFragment } from './one-fragment.ts';
import type { PlacementOptions } from './options.ts';
import { percentilesOf } from './percentiles.ts';
import { keptBags, keptLayout, keptRankers, prepareComparanda } from './prepare.ts';
import { rankerOf, rankingOf } from './ranking.ts';
import { levelsShown, setsOf, verdictOn } from './sets.ts';
import type { JudgedLabel, LabelRanking } from './sets-found.ts';
import { simulatedCoverage } from './simulated.ts';
import { type Bag, bagOf, bagsOf, drawRows, typicality } from './typicality.ts';

/**
 * Where does this find belong, and how sure is that?
 *
 * The find is compared only on the attributes that it has, and the comparanda among each other on the
 * same ones: like with like. Labels come in order of their likelihood, which leaving records out puts to the
 * test. Its typicality of each label is a conformal p value from the mean
 * dissimilarity to the nearest records of that label; a label is excluded at a level when p is at most
 * 1 - level, and is "too few to judge" when its records could never reach that: it then stays in the set. When
 * every label was judged and is excluded at the stricter `noneLevel`, the find is none of these.
 *
 * @throws InputError for a find that names no attribute, or labels that are numbers.
 */
export function computePlacement(asked: AnalysisInput, options: PlacementOptions): PlacementFound {
  const drawn =
    options.findIs === 'fragment'
      ? keptOneFragment(asked.fragments, asked.records, asked.random.stream('fragments'))
      : null;
  const report = asked.onProgress ?? (() => undefined);
  report(0, 'reading the find');
  const find = readFind(options.find, asked.register);
  // A mixture that only the find is of is a kind like any other.
  const register = registerMixtures(find.table, asked.register);
  const input = { ...asked, register, ...(drawn === null ? {} : { records: drawn }) };
  const { records, random } = input;
  const comparanda = prepareComparanda(input, options, recordedItself(find.table));
  const { comparison, attributes } = comparanda;
  const whole = recordOfRow(comparison, find.table, 0);
  const known = whole.flatMap((value, place) => (isKnown(value) ? [place] : []));
  const lacking = comparison.attributes.flatMap(({ attribute }, place) =>
    known.includes(place) ? [] : [attribute.label],
  );
  const notes = [...find.notes, ...comparison.notes];
  const base = {
    options,
    unit: input.unit,
    standsFor: standsFor(asked, options, drawn !== null),
    lacking,
    notes,
  };
  const spec = pickVariables(comparison.spec, known);
  const record = known.map((place) => whole[place]);
  const distances =
    known.length > 0
      ? dissimilaritiesTo(keptLayout(comparanda, known), record)
      : new Float64Array(records.rows).fill(NaN);
  const order = nearestFirst(distances);
  if (order.reached.length === 0) return nothingPlaced(input, base, known.length, find.table);

  report(0.1, 'looking for its nearest comparanda');
  const broad = broadReadings(comparanda, input, options, find.table, known);
  const neighbours = nearestNeighbours(
    input,
    comparison,
    known,
    record,
    order.first(options.nearest),
    distances,
    broad ?? { least: distances, greatest: distances },
  );
  const bagsOn: BagMaker = (places, what, of, most) =>
    keptBags(comparanda, JSON.stringify([places, what, most, options.neighbours]), () =>
      bagsOf(attributes, of, { neighbours: options.neighbours, most }, random.stream('calibration')),
    );
  const bags = bagsOn(known, '', spec, options.calibration);
  const rankers = keptRankers(comparanda, known.join(), () =>
    attributes.map((attribute) =>
      rankerOf(attribute, spec, (row) => records.item[row], random.stream('order')),
    ),
  );
  const rankings = rankers.flatMap((one) => ('why' in one ? [] : [rankingOf(one, record)]));
  const judged = bags.map((bag) => judgedBy(bag, record, options.level, rankings));
  report(0.3, 'judging how typical it is');
  const draws = drawsOf(record, options.draws, input);
  const { moves, next } = furtherAnswers(input, options, {
    comparanda,
    whole,
    known,
    bags,
    order,
    draws,
    bagsOn,
    broad,
  });
  const sets = setsOf(judged, options.level);
  const compared = known.map((place) => comparison.attributes[place].attribute.id);
  const guarded = guardedSets(input, sets, attributes, distances, compared, options);
  report(0.9, 'placing it on the map');
  const { fragments, items } = comparanda.behind(order.reached);
  const outOfReach =
    order.reached.length === records.rows
      ? []
      : comparanda.allRows.filter((row) => Number.isNaN(distances[row]));
  const setAside = comparanda.behind(outOfReach).fragments;
  const lacked = lackedOf(comparanda, known, order.reached, input);
  const comparedOn = known.map((place) => comparison.attributes[place].attribute.label);
  return {
    ...base,
    unplaced: null,
    comparedOn,
    lacked,
    circular: attributes.map(({ label }) => label).filter((label) => comparedOn.includes(label)),
    neighbours,
    lessKnown: lessKnownOf(spec, order, distances, neighbours, records),
    broad: broad === null ? null : broadFound(broad, order, options.nearest),
    percentiles: percentilesOf(records, find.table, attributes, comparanda.allRows, comparanda.ends),
    judged,
    marks: new Map(attributes.map(({ id, label }) => [label, marksOf(input, id)] as const)),
    rankings,
    sets,
    guarded,
    simulated: simulatedCoverage(bags, lacked, comparedOn.length, levelsShown(options.level)),
    anywhere: anywhereOf(order.reached, record, options, input, (drawn) => {
      const make = () => [bagOf(ANYWHERE, '', order.reached.length, drawn, spec, options.neighbours)];
      return keptBags(comparanda, JSON.stringify([known, drawn, options.neighbours]), make)[0];
    }),
    novelty: attributes.map(({ label }) => noveltyOf(label, judged, options.noneLevel)),
    moves,
    next,
    position: mapPosition(input, comparanda, known, whole, draws),
    n: {
      fragments,
      items,
      setAside: setAside > 0 ? [{ reason: 'nothing in common with the find', fragments: setAside }] : [],
    },
  };
}

function judgedBy(bag: Bag, record: Values, level: number, rankings: readonly LabelRanking[]): JudgedLabel {
  const outcome = typicality(bag, record);
  const order = rankings.find(({ attribute }) => attribute === bag.attribute.label)?.order ?? [];
  const place = order.findIndex(({ label }) => label === bag.label);
  return {
    attribute: bag.attribute.label,
    label: bag.label,
    size: bag.size,
    judgedBy: bag.rows.length,
    by: bag.by,
    outcome,
    likelihood: place < 0 ? null : { rank: place + 1, share: order[place].share },
    verdict: verdictOn(level, outcome),
    verdicts: levelsShown(level).map((one) => ({ level: one, verdict: verdictOn(one, outcome) })),
  };
}

type Values = readonly RecordValue[];

const ANYWHERE: LabelAttribute = { id: '', label: '', labels: [], unlabelled: 0 };

/** All comparanda as one label: is the find strange wherever it might belong? */
function anywhereOf(
  rows: ArrayLike<number>,
  record: Values,
  options: PlacementOptions,
  input: AnalysisInput,
  bagOn: (drawn: readonly number[]) => Bag,
): ConformalP | Unavailable {
  return typicality(bagOn(drawRows(rows, options.calibration, input.random.stream('anywhere'))), record);
}
