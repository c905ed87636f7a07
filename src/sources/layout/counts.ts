import { foldText } from '../../attributes/folding.ts';
import type { CountsRule } from '../profile/profile.ts';
import { isBlank } from './cell-shapes.ts';
import type { Move } from './long-form.ts';

/** Headers that a table of counts gets when it is laid out one row a place and kind. */
export const KIND_HEADER = 'kind';
export const QUANTITY_HEADER = 'Number of objects';

const COUNT = /^\d+(?:[.,]\d+)?\s*%?$/;
const TOTALS = new Set(
  'total totals sum n count all base summe gesamt anzahl insgesamt totale totaux somme suma i alt ialt'.split(
    ' ',
  ),
);

export interface Counted {
  readonly headers: readonly string[];
  readonly body: readonly (readonly string[])[];
  readonly origins: readonly number[];
  readonly moves: readonly Move[];
}

/**
 * The columns that count kinds: those the rule names; else every column of whole or half counts (or of shares)
 * but totals and the base.
 */
export function countColumns(
  headers: readonly string[],
  body: readonly (readonly string[])[],
  rule: CountsRule,
): readonly number[] {
  if (rule.columns !== undefined) {
    const named = new Set(rule.columns);
    return headers.flatMap((header, i) => (named.has(header) ? [i] : []));
  }
  const counts = headers.flatMap((header, i) => {
    if (i === 0 || header === rule.base) return [];
    const said = body.map((row) => (row[i] ?? '').trim()).filter((text) => !/^[-–—.]?$/.test(text));
    return said.length > 0 && said.every((text) => COUNT.test(text)) ? [i] : [];
  });
  return counts.filter((i) => !isTotal(i, headers[i]!, counts, body));
}

/** A column that is headed like a total and is what the others come to; "n" may be a kind as well. */
function isTotal(
  column: number,
  header: string,
  counts: readonly number[],
  body: readonly (readonly string[])[],
): boolean {
  if (!TOTALS.has(foldText(header)) || counts.length < 3) return false;
  const of = (row: readonly string[], i: number) =>
    Number((row[i] ?? '').replace('%', '').replace(',', '.')) || 0;
  return body.every((row) => {
    const others = counts.reduce((sum, i) => (i === column ? sum : sum + of(row, i)), 0);
    return Math.abs(others - of(row, column)) < 1;
  });
}

/**
 * A table of places by kinds laid out one row a place and kind, with how many objects the row stands for. Shares
 * become counts by the base of their row: the whole count that prints as the share, or the nearest half where none
 * does. Blank, "-" and 0 are no row; every cell stands in the ledger.
 */
export function layOutCounts(
  headers: readonly string[],
  body: readonly (readonly string[])[],
  origins: readonly number[],
  rule: CountsRule,
): Counted {
  const counted = countColumns(headers, body, rule);
  const base = rule.base === undefined ? -1 : headers.indexOf(rule.base);
  const kept = headers.map((_, i) => i).filter((i) => !counted.includes(i));
  const rows: string[][] = [];
  const from: number[] = [];
  const moves: Move[] = [];
  for (const [at, row] of body.entries()) {
    const own = kept.map((i) => row[i] ?? '');
    for (const i of counted) {
      const raw = row[i] ?? '';
      if (isBlank(raw)) continue;
      const printed = Number(raw.replace('%', '').replace(',', '.').trim());
      const share = base >= 0 ? Number((row[base] ?? '').replace(',', '.')) : Number.NaN;
      const count = base >= 0 ? ofShare(printed, share, raw) : printed;
      const none = Number.isNaN(count) || count === 0;
      const readAs = none ? 'none' : `${count} of "${headers[i]}"`;
      moves.push({ row: origins[at]!, column: headers[i]!, raw, readAs, rule: 'counted' });
      if (none) continue;
      rows.push([...own, headers[i]!, String(count)]);
      from.push(origins[at]!);
    }
  }
  return {
    headers: [...kept.map((i) => headers[i]!), KIND_HEADER, QUANTITY_HEADER],
    body: rows,
    origins: from,
    moves,
  };
}

/** The count of which a share was printed: whole where one prints so, else the nearest half. */
function ofShare(share: number, base: number, raw: string): number {
  const count = (share * base) / 100;
  const decimals = /[.,](\d+)/.exec(raw)?.[1]?.length ?? 0;
  const slack = (base * Number(`0.5e-${decimals}`)) / 100 + 1e-9;
  const whole = Math.round(count);
  return Math.abs(whole - count) <= slack ? whole : Math.round(2 * count) / 2;
}
