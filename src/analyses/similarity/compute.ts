import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { itemCounts } from '../../fragments/items/counts.ts';
import { whereAndWhen } from '../../fragments/where-when.ts';
import { likenessInterval } from '../../numerics/assemblages/draws.ts';
import { sameSource } from '../../numerics/assemblages/same-source.ts';
import { assemblageSimilarity, unlikeness } from '../../numerics/assemblages/similarity.ts';
import { linkage } from '../../numerics/grouping/linkage.ts';
import { leafOrder } from '../../numerics/grouping/tree.ts';
import { adjustP } from '../../numerics/tests/adjust.ts';
import type { AnalysisInput } from '../contract.ts';
import { LEAST_RANKED, sayDealt, toldSource } from '../likeness-rank.ts';
import { lookAlikeKinds } from '../look-alike-kinds.ts';
import { nameOneOf } from '../phrasing.ts';
import { marksOf } from '../shared/figure/marks.ts';
import { countedAtLevel, lackingAtLevel } from '../shared/level/counted.ts';
import { closerSaid, levelSaid } from '../shared/level/said.ts';
import { partedInput, recordsFor } from '../shared/options/mixtures.ts';
import { lossesIn } from '../shared/survival/compute.ts';
import { distanceTests } from './distance.ts';
import { assemblageDiversity, leastCoverage } from './diversity.ts';
import type { SimilarityFound } from './found.ts';
import { guarded } from './guarded.ts';
import { missingFor } from './missing.ts';
import { typedSites } from './newcomers.ts';
import { newcomersOf } from './newcomers-placed.ts';
import type { SimilarityOptions } from './options.ts';
import { axisPlaces } from './order.ts';
import { byOtherCoefficients, rankPairs } from './ranking.ts';

/** Assemblages smaller than this do not set the size to which the others are rarefied. */
const LEAST_RAREFIED = 5;
/** Below this many items an assemblage says little about the kinds it held. */
const SMALL_ASSEMBLAGE = 10;
/** Kinds with fewer records can dominate a correspondence analysis. */
const RARE = 5;

/**
 * Which assemblages are alike in their kinds, how sure is that, how diverse are they, and does their
 * likeness follow time or distance?
 *
 * @throws InputError for numbers, for fewer than two assemblages or kinds, and for an unknown label
 * among those to be placed afterwards.
 */
export function computeSimilarity(asked: AnalysisInput, options: SimilarityOptions): SimilarityFound {
  const { input, parts, counted: mixtures } = partedInput(asked, [options.of], options);
  const { records, register, unit, random } = input;
  const counted = countedAtLevel(records, options.assemblages, options.of, register, options.level);
  const { table, recorded, finer } = counted;
  const stranger = options.supplementary.find((label) => !table.rows.includes(label));
  if (stranger !== undefined) {
    throw new InputError(
      `there is no assemblage "${stranger}" to be placed afterwards`,
      { path: 'supplementary' },
      nameOneOf(table.rows),
    );
  }
  const typed = typedSites(table, options, register);
  const labelOf = (id: string) =>
    register.attributes.get(id)?.label ?? (id === 'assemblage' ? 'Assemblage' : id);
  const likeness = assemblageSimilarity(table.counts, options.coefficient);
  const items = itemCounts(table);
  const pairs = table.rows.flatMap((_, first) =>
    table.rows.slice(first + 1).map((__, rest) => [first, first + 1 + rest] as const),
  );
  const intervals = pairs.map(([first, second], place) => {
    input.onProgress?.((0.6 * place) / pairs.length, 'drawing items');
    const { coefficient, resamples, confidence } = options;
    return likenessInterval(items[first], items[second], restOf(table, first, second), {
      coefficient,
      resamples,
      confidence,
      random: random.stream(`pair ${first} ${second}`),
    });
  });
  const tests = pairs.map(([first, second]) =>
    sameSource(items[first], items[second], table.columns.length, options.coefficient, {
      random: random.stream(`source ${first} ${second}`),
      relabellings: options.relabellings,
    }),
  );
  const adjusted = adjustP(
    tests.map(({ p }) => p),
    'holm',
  );
  const sizes = table.counts.map((line) => line.reduce((sum, count) => sum + count, 0));
  const enough = sizes.filter((size) => size >= LEAST_RAREFIED);
  const rarefiedTo = (enough.length > 0 ? enough : sizes).reduce((least, size) => Math.min(least, size));
  const large = table.counts.filter((_, row) => sizes[row] >= LEAST_RAREFIED);
  const coverageTo = leastCoverage(large.length > 0 ? large : table.counts);
  const ranking = rankPairs(table, options, random.stream('ranking'));
  const told = adjusted.map((p, place) => toldSource(tests[place], p, options.confidence));
  const itemsFewerThan = (most: number) =>
    table.rows.flatMap((label, row) =>
      items[row].length < most ? [{ label, items: items[row].length }] : [],
    );
  const whereWhen = whereAndWhen(records, table, options.places, register);
  const axes = axisPlaces(table, whereWhen.spans, options, random.stream('order'));
  const compared: Omit<SimilarityFound, 'n'> = {
    options,
    unit,
    level: levelSaid(options.level, counted.found),
    mixtures,
    ranking,
    missing:
      mixtures === null
        ? missingFor(
            records,
            table,
            ranking.most,
            items.map((own) => own.length >= LEAST_RANKED),
            options,
            register,
          )
        : null,
    guard: guarded(input, table, { told, least: ranking.least }, options),
    losses: lossesIn(records, table, { rows: options.assemblages, columns: options.of }, register),
    asRecorded: recorded === null ? null : rankPairs(recorded, options, random.stream('ranking as recorded')),
    toldCloser:
      finer === null
        ? null
        : {
            said: closerSaid(finer),
            ranking: rankPairs(finer.table, options, random.stream('ranking told closer')),
          },
    lookAlikes: lookAlikeKinds(table, records, register).map(({ kinds, merged }) => ({
      kinds,
      ranking:
        merged === null ? null : rankPairs(merged, options, random.stream(`look-alikes ${kinds.join(' ')}`)),
    })),
    otherCoefficients: byOtherCoefficients(table, ranking, options),
    notToldApart: pairs.flatMap(([first, second], place) =>
      told[place] === 'not told apart' ? [`${table.rows[first]} with ${table.rows[second]}`] : [],
    ),
    tooFew: itemsFewerThan(LEAST_RANKED),
    few: itemsFewerThan(SMALL_ASSEMBLAGE),
    rare: table.columns.filter(
      (_, column) => table.counts.reduce((sum, line) => sum + line[column], 0) < RARE,
    ),
    assemblagesLabel: labelOf(options.assemblages),
    kindsLabel: labelOf(options.of),
    marks: marksOf(input, options.assemblages),
    table,
    likeness,
    intervals,
    sameSource: tests.map((test, place) => ({
      p: test.p,
      pAdjusted: adjusted[place],
      told: told[place],
      method: sayDealt(test),
    })),
    foundOrder: Array.from(leafOrder(linkage(unlikeness(likeness, options.coefficient), 'average'))),
    diversity: table.counts.map((counts, row) =>
      assemblageDiversity(
        counts,
        items[row],
        { size: rarefiedTo, coverage: coverageTo },
        options,
        random.stream(`diversity ${row}`),
      ),
    ),
    rarefiedTo,
    coverageTo,
    whereWhen,
    axes,
    newcomers: newcomersOf(table, items, axes, typed, options, random.stream('newcomers')),
    distances: distanceTests(table.counts, whereWhen, options, random.stream('distances')),
  };
  input.onProgress?.(1, 'compared');
  const behind = (rows: readonly number[]) =>
    countBehind(input.fragments, asked.records, unit, recordsFor(parts, rows));
  return {
    ...compared,
    n: {
      ...behind(table.entries.map(({ record }) => record)),
      setAside: lackingAtLevel({ table, leftOut: [counted.found] }, labelOf).map(({ reason, rows }) => ({
        reason,
        fragments: behind(rows).fragments,
      })),
    },
  };
}

/** Counts of all assemblages but two, as one row. */
function restOf(table: CrossedTable, first: number, second: number): Float64Array {
  return Float64Array.from(table.columns, (_, column) =>
    table.counts.reduce((sum, line, row) => (row === first || row === second ? sum : sum + line[column]), 0),
  );
}
