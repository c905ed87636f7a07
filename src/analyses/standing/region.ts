import type { Register } from '../../attributes/definition.ts';
import { InputError } from '../../errors.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Region } from './found.ts';
import { sameRows } from './within-same.ts';

export interface Confined {
  readonly region: readonly Region[];
  /** Rows that share every value; all rows where nothing confines them. */
  readonly rows: readonly number[];
  readonly outside: readonly { readonly reason: string; readonly rows: readonly number[] }[];
}

/**
 * The rows of the site's own region, period or both: those that share its commonest value of each attribute,
 * the site's own rows included. Of equally common values the first.
 *
 * @throws InputError where the site has no value of one of them, or nobody else shares it.
 */
export function confineTo(
  items: FragmentTable,
  site: { readonly label: string; readonly rows: readonly number[] },
  among: string,
  attributes: readonly string[],
  register: Register,
): Confined {
  let rows: readonly number[] = Array.from({ length: items.rows }, (_, row) => row);
  const region: Region[] = [];
  const outside: { reason: string; rows: readonly number[] }[] = [];
  for (const id of attributes) {
    const left = new Set(rows);
    const same = sameRows(
      items,
      site.rows.filter((row) => left.has(row)),
      id,
      register,
    );
    if ('why' in same) {
      throw new InputError(
        `the comparison cannot be confined to the ${same.attribute.toLowerCase()} of "${site.label}": ${same.why}`,
        { path: 'confineTo' },
        'leave the attribute out of "confineTo"',
      );
    }
    region.push({ attribute: same.attribute, value: same.value });
    const reason = `${same.attribute} is not ${same.value}, or not recorded`;
    outside.push({ reason, rows: rows.filter((row) => !same.rows.has(row)) });
    rows = rows.filter((row) => same.rows.has(row));
  }
  const own = new Set(site.rows);
  const kept = new Set(rows);
  const { groups } = groupRows(items, [among], register);
  if (
    region.length > 0 &&
    !groups.some((group) => group.rows.some((row) => !own.has(row) && kept.has(row)))
  ) {
    throw new InputError(
      `no other has ${region.map(({ attribute, value }) => `${attribute.toLowerCase()} ${value}`).join(' and ')}, which "${site.label}" has`,
      { path: 'confineTo' },
      'confine the comparison to less',
    );
  }
  return { region, rows, outside: outside.filter((one) => one.rows.length > 0) };
}
