import type { BroadRule } from '../../fragments/comparison/broad.ts';
import { pickVariables } from '../../numerics/dissimilarity/dissimilarity.ts';
import type { NearestFirst } from '../../numerics/dissimilarity/nearest-first.ts';
import type { DissimilaritySpec, RecordValue } from '../../numerics/dissimilarity/variables.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import type { BroadReadings } from './broad.ts';
import type { MapPosition } from './found.ts';
import {
  drawWithin,
  hasRanges,
  movesByBroadTerms,
  movesByComplete,
  movesUnderWeights,
  movesWithinRanges,
  movesWithoutAssemblages,
} from './moves.ts';
import { nextMeasurements } from './next.ts';
import type { PlacementOptions } from './options.ts';
import { positionOf } from './position.ts';
import type { Comparanda } from './prepare.ts';
import type { Bag } from './typicality.ts';

/** How the answer moves, what to measure next, and where the find lies on the map. */

type Values = readonly RecordValue[];

/** Values drawn within the ranges of the find; none where it has no range. */
export function drawsOf(record: Values, count: number, input: AnalysisInput): readonly Values[] {
  if (!hasRanges(record)) return [];
  const random = input.random.stream('ranges');
  return Array.from({ length: count }, () => drawWithin(record, random));
}

/** Bags compared on some variables of the comparison, under the weights of `of`; `what` names these. */
export type BagMaker = (
  places: readonly number[],
  what: string,
  of: DissimilaritySpec,
  most: number,
) => readonly Bag[];

export interface Placed {
  readonly comparanda: Comparanda;
  readonly whole: Values;
  readonly known: readonly number[];
  readonly bags: readonly Bag[];
  readonly order: NearestFirst;
  readonly draws: readonly Values[];
  readonly bagsOn: BagMaker;
  readonly broad: BroadReadings | null;
}

const READ: Readonly<Record<BroadRule, string>> = {
  least: 'as near as they allow',
  greatest: 'as far as they allow',
  expected: 'as often as their kinds are recorded',
  place: 'at their place in the tree',
};

export function furtherAnswers(input: AnalysisInput, options: PlacementOptions, placed: Placed) {
  const { comparanda, whole, known, bags, order, draws, bagsOn, broad } = placed;
  const report = input.onProgress ?? (() => undefined);
  const spec = pickVariables(comparanda.comparison.spec, known);
  const record = known.map((place) => whole[place]);
  const moves = [...movesWithinRanges(bags, draws, record, options.level)];
  // A set must not hang on the words of a catalogue without a word, so that this is tried whatever else is asked.
  if (broad !== null) {
    report(0.4, 'reading broad terms otherwise');
    const again = broad.others.map(({ rule, spec: of, record: own }) => ({
      what: READ[rule],
      record: own,
      bags: bagsOn(known, `broad ${rule}`, of, options.calibration),
    }));
    moves.push(...movesByBroadTerms(bags, record, options.level, again));
  }
  if (options.moves) {
    moves.push(...movesByComplete(bags, record, options.level));
    report(0.5, 'trying other weights');
    const under = (of: DissimilaritySpec, what: string) => bagsOn(known, what, of, options.calibration);
    moves.push(...movesUnderWeights(bags, spec, record, options.level, under));
    report(0.6, 'leaving out each assemblage');
    moves.push(...movesWithoutAssemblages(bags, comparanda.assemblages, record, options.level));
  }
  report(0.7, 'looking for what to measure next');
  const next = options.next
    ? nextMeasurements(
        comparanda.comparison,
        whole,
        order,
        comparanda.attributes,
        options.level,
        (places, most) => bagsOn(places, '', pickVariables(comparanda.comparison.spec, places), most),
      )
    : [];
  return { moves, next };
}

export function mapPosition(
  input: AnalysisInput,
  { map, attributes }: Pick<Comparanda, 'map' | 'attributes'>,
  known: readonly number[],
  whole: Values,
  draws: readonly Values[],
): MapPosition | Unavailable {
  if ('why' in map) return map;
  const full = draws.map((draw) =>
    whole.map((value, place) => (known.includes(place) ? draw[known.indexOf(place)] : value)),
  );
  const position = positionOf(map, whole, full);
  if ('why' in position) return position;
  const labelOf = new Map(
    (attributes[0]?.labels ?? []).flatMap(({ label, rows }) => rows.map((row) => [row, label] as const)),
  );
  const places = map.places.map(({ row, x, y }) => ({
    row,
    id: input.records.id[row],
    x,
    y,
    label: labelOf.get(row) ?? '',
  }));
  return { places, shares: map.shares, ...position };
}
