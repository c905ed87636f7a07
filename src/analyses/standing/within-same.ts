import type { Register } from '../../attributes/definition.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import type { Unavailable } from '../contract.ts';
import { LEAST_RANKED, type Rank } from '../likeness-rank.ts';
import type { StandingFound, WithinSame } from './found.ts';
import { likenessTo } from './likeness.ts';
import type { StandingOptions } from './options.ts';

/** Rows that share the value which is commonest at the site; why not, where there is none. */
export type SameRows =
  | {
      readonly attribute: string;
      readonly value: string;
      readonly rows: ReadonlySet<number>;
      readonly items: number;
    }
  | { readonly attribute: string; readonly why: string };

/** The rows within which like is compared with like, for one attribute. Of equally common values the first. */
export function sameRows(
  items: FragmentTable,
  siteRows: readonly number[],
  id: string,
  register: Register,
): SameRows {
  const attribute = register.attributes.get(id)?.label ?? id;
  if (!items.columns.has(id)) return { attribute, why: `no source records ${attribute.toLowerCase()}` };
  const own = new Set(siteRows);
  const sized = groupRows(items, [id], register)
    .groups.map(({ labels, rows }) => ({
      value: labels[0],
      rows: new Set(rows),
      items: rows.filter((row) => own.has(row)).length,
    }))
    .sort((a, b) => b.items - a.items);
  if (sized.length === 0 || sized[0].items === 0)
    return { attribute, why: `${attribute.toLowerCase()} is not recorded for the site` };
  return { attribute, ...sized[0] };
}

/**
 * The likeness once more, counting only items of the value that is commonest at the site.
 *
 * @param whole who is the most alike in all items.
 */
export function likenessWithin(
  table: CrossedTable,
  site: number,
  same: SameRows,
  whole: Rank | Unavailable,
  options: StandingOptions,
  random: Random,
): StandingFound['sameWithin'][number] {
  if ('why' in same) return same;
  const { attribute, value, rows } = same;
  const entries = table.entries.filter(({ record }) => rows.has(record));
  const own = entries.filter(({ row }) => row === site).length;
  if (own === 0) return { attribute, why: `no item of the site that is ${value} has a kind recorded` };
  const likeness = likenessTo({ ...table, entries }, site, options, random);
  const reached = new Set(likeness.map(({ label }) => label));
  const most = leadersOf(likeness, own);
  const all = table.entries.filter(({ row }) => row === site).length;
  return {
    attribute,
    value,
    items: own,
    likeness,
    without: table.rows.filter((label, row) => row !== site && !reached.has(label)),
    most,
    standsAlone:
      own >= LEAST_RANKED && 2 * own >= all && !likeness.some(({ items }) => items >= LEAST_RANKED),
    overturns:
      !('why' in most) && !('why' in whole) && !most.labels.some((label) => whole.labels.includes(label)),
  };
}

/** Values that should tie may differ in their last bits. */
const TIE = 1e-9;

/** @param likeness most alike first. */
function leadersOf(likeness: WithinSame['likeness'], own: number): WithinSame['most'] {
  const enough = likeness.filter(({ items }) => items >= LEAST_RANKED);
  if (own < LEAST_RANKED) return { why: `the site has but ${own}, too few to rank anybody` };
  if (enough.length === 0)
    return { why: likeness.length === 0 ? 'no other has any' : `no other has ${LEAST_RANKED} or more` };
  const [{ value }] = enough;
  const near = TIE * Math.max(1, Math.abs(value));
  return {
    labels: enough.filter((one) => Math.abs(one.value - value) <= near).map(({ label }) => label),
    value,
  };
}
