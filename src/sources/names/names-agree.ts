import type { Register } from '../../attributes/definition.ts';
import { contradictEachOther } from '../../fragments/contradiction.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { nameIn } from '../reading/assemble.ts';

export interface PairsThatAgree {
  /** Share of the pairs of rows with one name that contradict each other in nothing; null where none can be compared. */
  readonly within: number | null;
  /** The same of rows with different names at one place. */
  readonly between: number | null;
}

const COMPARED: ReadonlySet<string> = new Set(['structure', 'spacing', 'fibre']);
/** Pairs looked at on either side: a share of five hundred pairs is known to a few in a hundred. */
const MOST_PAIRS = 500;
/** Rows passed over in search of another name: names that come in turn, or in long blocks, are got past. */
const MOST_TRIED = 50;

/**
 * Do rows of one name agree, in what is of the object (structure, spacing, fibre; `contradictEachOther`), oftener than
 * rows of different names? Both kinds of pair are of one site and context, so that a place of one fashion does not
 * speak for its numbers; they are spread evenly over the table.
 *
 * @param names of the rows; "" where a row has none.
 */
export function agreementIn(
  table: FragmentTable,
  names: readonly string[],
  register: Register,
): PairsThatAgree {
  const compared = [...table.columns.values()].filter(
    ({ kind, attribute }) => kind !== 'text' && COMPARED.has(attribute.block) && !attribute.derived,
  );
  const places = ['site', 'context'].map((id) => table.columns.get(id));
  const groups = new Map<string, number[]>();
  for (const [row, name] of names.entries()) {
    if (name === '') continue;
    const place = JSON.stringify(places.map((column) => nameIn(column, row)));
    const rows = groups.get(place);
    if (rows === undefined) groups.set(place, [row]);
    else rows.push(row);
  }
  const within: [number, number][] = [];
  const between: [number, number][] = [];
  for (const rows of groups.values()) {
    const last = new Map<string, number>();
    for (const [at, row] of rows.entries()) {
      const before = last.get(names[row]!);
      if (before !== undefined) within.push([before, row]);
      last.set(names[row]!, row);
      // At three distances: a list that goes through its kinds in turn would meet one kind at a single one.
      for (const part of [2, 3, 5]) {
        const other = ofAnotherName(rows, at, Math.floor(rows.length / part), names);
        if (other !== undefined) between.push([row, other]);
      }
    }
  }
  return {
    within: shareThatAgree(within, compared, register),
    between: shareThatAgree(between, compared, register),
  };
}

/** That far away or the next after it, since neighbours in a list are often of one find. */
function ofAnotherName(
  rows: readonly number[],
  at: number,
  away: number,
  names: readonly string[],
): number | undefined {
  for (let step = 0; step < Math.min(rows.length, MOST_TRIED); step++) {
    const other = rows[(at + away + step) % rows.length]!;
    if (names[other] !== names[rows[at]!]) return other;
  }
  return undefined;
}

function shareThatAgree(
  pairs: readonly (readonly [number, number])[],
  compared: readonly Column[],
  register: Register,
): number | null {
  const step = Math.max(1, pairs.length / MOST_PAIRS);
  let known = 0;
  let agree = 0;
  for (let at = 0; at < pairs.length; at += step) {
    const pair = pairs[Math.floor(at)]!;
    const both = compared.filter((column) => pair.every((row) => !isMissing(column, row)));
    if (both.length === 0) continue;
    known++;
    if (!both.some((column) => contradictEachOther(column, pair, register))) agree++;
  }
  return known === 0 ? null : agree / known;
}
