import type { Register } from '../../attributes/definition.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import type { StandingFound } from './found.ts';
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

/** The likeness once more, counting only items of the value that is commonest at the site. */
export function likenessWithin(
  table: CrossedTable,
  site: number,
  same: SameRows,
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
  return {
    attribute,
    value,
    items: own,
    likeness,
    without: table.rows.filter((label, row) => row !== site && !reached.has(label)),
  };
}
