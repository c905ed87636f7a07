import { countsBehind } from '../../fragments/behind.ts';
import type { BroadRule } from '../../fragments/comparison/broad.ts';
import {
  type Comparison,
  type ComparisonSettings,
  compareRecords,
} from '../../fragments/comparison/comparison.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { pickVariables } from '../../numerics/dissimilarity/dissimilarity.ts';
import { type PreparedComparison, prepareComparison } from '../../numerics/dissimilarity/prepare.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import { comparisonSettings } from '../shared/options/comparison.ts';
import type { Lacked } from './found.ts';
import { type LabelAttribute, labelAttributes } from './labels.ts';
import type { PlacementOptions } from './options.ts';
import type { KeptEnds } from './percentiles.ts';
import { type KinMap, kinMap } from './position.ts';
import type { Ranker } from './ranking.ts';
import type { Bag } from './typicality.ts';

/** Everything about the comparanda that is the same for every find. */
export interface Comparanda {
  readonly comparison: Comparison;
  /** How they were compared. */
  readonly settings: ComparisonSettings;
  readonly attributes: readonly LabelAttribute[];
  readonly assemblages: ReadonlyMap<string, ReadonlySet<number>>;
  readonly map: KinMap | Unavailable;
  /** Bags made so far, by what they were made from: a find with one value changed needs the same ones. */
  readonly bags: Map<string, readonly Bag[]>;
  /** What orders the labels, by the attributes that it rests on; as the bags, and kept with them. */
  readonly rankers: Map<string, readonly (Ranker | Unavailable)[]>;
  /** Every row, and the readings of each group in order. */
  readonly allRows: readonly number[];
  readonly ends: KeptEnds;
  /** Fragments and items behind rows. */
  readonly behind: ReturnType<typeof countsBehind>;
  /** What the records lack, by the places that a find has. */
  readonly lacked: Map<string, Lacked>;
  /** The same comparison by other rules for broad terms, once somebody asked for it. */
  readonly byRule: Map<BroadRule, Comparison>;
  /** All records laid out for comparison on some of the attributes, by their places. */
  readonly layouts: Map<string, PreparedComparison>;
}

/** All records laid out for comparison on the attributes at these places. */
export function keptLayout(comparanda: Comparanda, places: readonly number[]): PreparedComparison {
  const key = places.join();
  const before = comparanda.layouts.get(key);
  if (before !== undefined) return before;
  if (comparanda.layouts.size >= 4) comparanda.layouts.clear();
  const made = prepareComparison(pickVariables(comparanda.comparison.spec, places));
  comparanda.layouts.set(key, made);
  return made;
}

/** Sets of bags that are kept; a find and its further answers need some twenty. */
const MOST_BAGS = 48;

/** The bags of this key, made once. The key must name everything that they depend on. */
export function keptBags(comparanda: Comparanda, key: string, make: () => readonly Bag[]): readonly Bag[] {
  const before = comparanda.bags.get(key);
  if (before !== undefined) return before;
  if (comparanda.bags.size >= MOST_BAGS) comparanda.bags.clear();
  const made = make();
  comparanda.bags.set(key, made);
  return made;
}

/** The same of what orders the labels. */
export function keptRankers(
  comparanda: Comparanda,
  key: string,
  make: () => readonly (Ranker | Unavailable)[],
): readonly (Ranker | Unavailable)[] {
  const before = comparanda.rankers.get(key);
  if (before !== undefined) return before;
  if (comparanda.rankers.size >= 8) comparanda.rankers.clear();
  const made = make();
  comparanda.rankers.set(key, made);
  return made;
}

const kept = new WeakMap<FragmentTable, Map<string, Comparanda>>();

/**
 * Makes the comparanda ready. The last few results are kept with the table they came from, so that
 * placing another find, or the same one with one value changed, need not start anew; what is kept depends on
 * nothing but table, settings and the stream of chance, so the answer is the same as without.
 *
 * @param found computed attributes that the find has of its own.
 */
export function prepareComparanda(
  input: AnalysisInput,
  options: PlacementOptions,
  found: readonly string[],
): Comparanda {
  const settings = { ...comparisonSettings(options), found };
  const random = input.random.stream('map');
  const key = JSON.stringify([
    settings,
    options.labels,
    options.findFrom,
    options.map,
    input.unit,
    random.stream('sign').next(),
  ]);
  const known = kept.get(input.records) ?? new Map<string, Comparanda>();
  const before = known.get(key);
  if (before !== undefined) return before;
  const { records, register } = input;
  const comparison = compareRecords(records, register, settings);
  const made: Comparanda = {
    comparison,
    settings,
    attributes: labelAttributes(records, register, options),
    assemblages: assemblagesOf(records),
    map: options.map ? kinMap(comparison.spec, records.rows, random) : { why: 'no map was asked for' },
    bags: new Map(),
    rankers: new Map(),
    allRows: Array.from({ length: records.rows }, (_, row) => row),
    ends: new Map(),
    behind: countsBehind(input.fragments, records, input.unit),
    layouts: new Map(),
    byRule: new Map(),
    lacked: new Map(),
  };
  if (known.size >= 4) known.clear();
  known.set(key, made);
  kept.set(records, known);
  return made;
}

function assemblagesOf(records: FragmentTable): ReadonlyMap<string, ReadonlySet<number>> {
  const sets = new Map<string, Set<number>>();
  records.assemblage.forEach((name, row) => {
    if (name === '') return;
    const set = sets.get(name) ?? new Set<number>();
    set.add(row);
    sets.set(name, set);
  });
  return sets;
}
