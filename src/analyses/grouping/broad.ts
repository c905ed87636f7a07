import type { Register } from '../../attributes/definition.ts';
import type { BroadRule } from '../../fragments/comparison/broad.ts';
import { type Comparison, compareRecords } from '../../fragments/comparison/comparison.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { bestJaccard } from '../../numerics/grouping/stability.ts';
import { comparisonSettings } from '../shared/options/comparison.ts';
import { compareAll, takeVariables } from './compared.ts';
import { DISSOLVED } from './leave-out.ts';
import type { GroupingOptions } from './options.ts';
import { partitionsOf } from './partition.ts';
import type { BroadTried } from './trust-found.ts';

const RULES: readonly BroadRule[] = ['expected', 'least', 'greatest'];

export interface BroadRequest {
  readonly records: FragmentTable;
  readonly register: Register;
  readonly options: GroupingOptions;
  /** The comparison by which the groups were made. */
  readonly comparison: Comparison;
  /** Rows of the records judged and their groups. */
  readonly rows: Int32Array;
  readonly membership: Int32Array;
  readonly k: number;
  readonly random: Random;
}

/**
 * Do the groups hang on what broad terms are taken to mean? "Tree bast" may be lime or willow: the same records are
 * grouped again, by the same method and into as many groups, with every broad term as near and as far as it allows.
 * Null where no term is broad or there are fewer than two groups.
 */
export function broadTried(request: BroadRequest): BroadTried | null {
  const { records, register, options, comparison, rows, membership, k, random } = request;
  const terms = [...new Set(comparison.broad.flatMap((one) => one.terms.map(({ label }) => label)))];
  if (terms.length === 0 || k < 2 || options.method === 'density') return null;
  const ways = RULES.filter((rule) => rule !== options.broad).flatMap((rule) => {
    const { spec } = compareRecords(records, register, { ...comparisonSettings(options), broad: rule });
    const { places, ...compared } = compareAll(takeVariables(spec, rows), options.method);
    if (places.length <= k) return [];
    const { partitions } = partitionsOf(compared, options, k, k, random.stream(rule));
    const again = partitions[0]?.membership ?? new Int32Array(places.length).fill(-1);
    const found = bestJaccard(membership, places, again, k);
    return [
      {
        rule,
        groups: Array.from(found, (value) => (Number.isNaN(value) ? null : value)),
        gone: Array.from(found.keys()).filter((group) => !(found[group] > DISSOLVED)),
      },
    ];
  });
  return ways.length === 0 ? null : { terms, ways };
}
