import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { type CrossedTable, crossedTable } from '../../fragments/crossed-table.ts';
import { itemCounts } from '../../fragments/item-counts.ts';
import { type WhereWhen, whereAndWhen } from '../../fragments/where-when.ts';
import { likenessInterval, sameSource } from '../../numerics/assemblages/draws.ts';
import { assemblageSimilarity, unlikeness } from '../../numerics/assemblages/similarity.ts';
import type { Condensed } from '../../numerics/dissimilarity/condensed.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { linkage } from '../../numerics/grouping/linkage.ts';
import { leafOrder } from '../../numerics/grouping/tree.ts';
import type { ResampledInterval } from '../../numerics/resampling/bootstrap.ts';
import { adjustP } from '../../numerics/tests/adjust.ts';
import type { FindingsWithTables } from '../before-answers.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import { type DistanceTest, distanceTests } from './distance.ts';
import { type AssemblageDiversity, assemblageDiversity } from './diversity.ts';
import { itemsOf, likenessOf, type Newcomer, placeLate, type TypedSite, typedSites } from './newcomers.ts';
import type { SimilarityOptions } from './options.ts';
import { type AxisPlaces, axisPlaces } from './order.ts';
import { similarityTables } from './tables.ts';

export interface SimilarityFound extends FindingsWithTables {
  readonly options: SimilarityOptions;
  readonly unit: 'fragment' | 'item';
  readonly assemblagesLabel: string;
  readonly kindsLabel: string;
  readonly table: CrossedTable;
  readonly likeness: Condensed;
  /** One a pair, in the order of `likeness`. */
  readonly intervals: readonly (ResampledInterval | Unavailable)[];
  /** p of "both are draws from one source" for each pair, plain and adjusted (Holm) over the pairs. */
  readonly sameSource: readonly { readonly p: number; readonly pAdjusted: number; readonly method: string }[];
  /** Order in which neighbours are alike: the leaves of an average-linkage tree. */
  readonly foundOrder: readonly number[];
  readonly diversity: readonly AssemblageDiversity[];
  /** Records to which richness is rarefied. */
  readonly rarefiedTo: number;
  readonly whereWhen: WhereWhen;
  readonly axes: AxisPlaces | Unavailable;
  /** Assemblages placed on the axes afterwards: those of the table that were named, then those typed in. */
  readonly newcomers: readonly Newcomer[];
  readonly distances: readonly DistanceTest[];
}

/** Assemblages smaller than this do not set the size to which the others are rarefied. */
const LEAST_RAREFIED = 5;

/**
 * Which assemblages are alike in their kinds, how sure is that, how diverse are they, and does their
 * likeness follow time or distance?
 *
 * @throws InputError for numbers, for fewer than two assemblages or kinds, and for an unknown label
 * among those to be placed afterwards.
 */
export function computeSimilarity(input: AnalysisInput, options: SimilarityOptions): SimilarityFound {
  const { records, register, unit, random } = input;
  const table = crossedTable(records, options.assemblages, options.of, register);
  const stranger = options.supplementary.find((label) => !table.rows.includes(label));
  if (stranger !== undefined) {
    throw new InputError(
      `there is no assemblage "${stranger}" to be placed afterwards`,
      { path: 'supplementary' },
      `name one of ${table.rows.map((label) => `"${label}"`).join(', ')}`,
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
  const rarefiedTo = Math.min(...(enough.length > 0 ? enough : sizes));
  const whereWhen = whereAndWhen(records, table, options.places);
  const axes = axisPlaces(table, whereWhen.spans, options, random.stream('order'));
  const compared = {
    options,
    unit,
    assemblagesLabel: labelOf(options.assemblages),
    kindsLabel: labelOf(options.of),
    table,
    likeness,
    intervals,
    sameSource: tests.map(({ p, method, relabellings }, place) => ({
      p,
      pAdjusted: adjusted[place],
      method:
        `${method === 'exact' ? 'exact, all' : ''} ${relabellings} ${method === 'exact' ? '' : 'random '}ways to deal the items`.trim(),
    })),
    foundOrder: Array.from(leafOrder(linkage(unlikeness(likeness, options.coefficient), 'average'))),
    diversity: table.counts.map((counts, row) =>
      assemblageDiversity(counts, items[row], rarefiedTo, options, random.stream(`diversity ${row}`)),
    ),
    rarefiedTo,
    whereWhen,
    axes,
    newcomers: newcomersOf(table, items, axes, typed, options, random.stream('newcomers')),
    distances: distanceTests(table.counts, whereWhen, options, random.stream('distances')),
  };
  input.onProgress?.(1, 'compared');
  const behind = (rows: readonly number[]) => countBehind(input.fragments, records, unit, rows);
  return {
    ...compared,
    n: {
      ...behind(table.entries.map(({ record }) => record)),
      setAside: table.lacking.map(({ attribute, rows }) => ({
        reason: `${labelOf(attribute)} not recorded`,
        fragments: behind(rows).fragments,
      })),
    },
    tables: similarityTables(compared),
  };
}

function newcomersOf(
  table: CrossedTable,
  items: ReturnType<typeof itemCounts>,
  axes: AxisPlaces | Unavailable,
  typed: readonly TypedSite[],
  options: SimilarityOptions,
  random: Random,
): readonly Newcomer[] {
  const place = (late: Parameters<typeof placeLate>[0], stream: Random): Omit<Newcomer, 'likeness'> =>
    'why' in axes
      ? { label: late.label, n: late.items.length, unplaced: 0, at: axes, cloud: [], limits: [] }
      : placeLate(late, axes.found, table.columns.length, options, stream);
  return [
    ...options.supplementary.map((label) => {
      const row = table.rows.indexOf(label);
      return { ...place({ label, items: items[row], strange: 0 }, random.stream(label)), likeness: [] };
    }),
    ...typed.map((site) => ({
      ...place({ label: site.label, items: itemsOf(site), strange: site.strange }, random.stream(site.label)),
      likeness: likenessOf(site, table, items, options, random.stream(`likeness ${site.label}`)),
    })),
  ];
}

/** Counts of all assemblages but two, as one row. */
function restOf(table: CrossedTable, first: number, second: number): Float64Array {
  return Float64Array.from(table.columns, (_, column) =>
    table.counts.reduce((sum, line, row) => (row === first || row === second ? sum : sum + line[column]), 0),
  );
}
