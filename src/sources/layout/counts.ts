import type { AttributeDefinition } from '../../attributes/definition.ts';
import type { CountsRule } from '../profile/layout-rules.ts';
import type { Fault } from '../source-reading.ts';
import { isBlank } from './cell-shapes.ts';
import { areShares, countColumns, printedNumber, type TotalColumn } from './count-columns.ts';
import type { Move } from './long-form.ts';
import { type OddCount, oddCount } from './odd-counts.ts';
import type { LayoutRemark } from './remark.ts';

/** Headers that a table of counts gets when it is laid out one row a place and kind. */
export const KIND_HEADER = 'kind';
export const QUANTITY_HEADER = 'Number of objects';

/** The kinds that a table of counts has in its header, where they are of no attribute that is recorded. */
export const COUNTED_KIND: AttributeDefinition = {
  id: 'countedKind',
  label: 'Kind counted',
  block: 'structure',
  scale: 'nominal',
  source: 'headers of the table of counts',
};

export interface ReshapedCounts {
  readonly headers: readonly string[];
  readonly body: readonly (readonly string[])[];
  readonly origins: readonly number[];
  readonly moves: readonly Move[];
  readonly remarks: readonly LayoutRemark[];
  readonly faults: readonly Fault[];
}

/**
 * A table of places by kinds laid out one row a place and kind, with how many objects the row stands for. Shares
 * become counts by the base of their row: the whole count that prints as the share, or the nearest half where none
 * does. Blank, "-" and 0 are no row; every cell stands in the ledger. Totals are held against what they sum up.
 */
export function layOutCounts(
  headers: readonly string[],
  body: readonly (readonly string[])[],
  origins: readonly number[],
  rule: CountsRule,
  file: string,
): ReshapedCounts {
  const { counted, totals } = countColumns(headers, body, rule);
  const base = rule.base === undefined ? -1 : headers.indexOf(rule.base);
  const summed = new Set([...totals.map(({ column }) => column), ...(base < 0 ? [] : [base])]);
  const kept = headers.map((_, i) => i).filter((i) => !counted.includes(i) && !summed.has(i));
  const kinds = headers.map((header) => (base < 0 ? header : withoutPerCent(header)));
  const rows: string[][] = [];
  const from: number[] = [];
  const moves: Move[] = [];
  const remarks: LayoutRemark[] = [];
  for (const [at, row] of body.entries()) {
    const own = kept.map((i) => row[i] ?? '');
    for (const i of summed) {
      const raw = row[i] ?? '';
      const readAs = i === base ? 'number of objects of the row' : 'total of the row';
      if (!isBlank(raw)) moves.push({ row: origins[at]!, column: headers[i]!, raw, readAs, rule: 'counted' });
    }
    for (const i of counted) {
      const raw = row[i] ?? '';
      if (isBlank(raw)) continue;
      const odd = oddCount(raw) ?? (isCountOrNone(raw) ? null : NO_COUNT);
      const printed = odd === null ? printedNumber(raw) : (odd.count ?? Number.NaN);
      const count = base >= 0 ? ofShare(printed, printedNumber(row[base]), raw) : printed;
      const none = Number.isNaN(count) || count === 0;
      const readAs = none ? 'none' : `${count} of "${kinds[i]}"`;
      const cell = { row: origins[at]!, column: headers[i]!, raw, readAs };
      if (odd === null) moves.push({ ...cell, rule: 'counted' });
      else remarks.push({ ...cell, level: 'flagged', rule: 'odd-count', why: odd.why });
      if (none) continue;
      rows.push([...own, kinds[i]!, String(count)]);
      from.push(origins[at]!);
    }
  }
  return {
    headers: [...kept.map((i) => headers[i]!), KIND_HEADER, QUANTITY_HEADER],
    body: rows,
    origins: from,
    moves,
    remarks: [
      ...remarks,
      ...(base >= 0 ? [] : totals.flatMap((total) => differing(total, headers, body, origins))),
    ],
    faults: faultsOf(headers, body, rule, counted, file),
  };
}

/** Some other word in a column that was said to count. */
const NO_COUNT: OddCount = {
  count: null,
  why: 'The cell is no count; none of the kind is counted in this row.',
};

/** A number, or a dash for none. */
function isCountOrNone(raw: string): boolean {
  return !Number.isNaN(printedNumber(raw)) || /^\s*[-–—.]\s*$/u.test(raw);
}

/** "jar %", "Topf (%)", "jar, per cent": the kind without what its cells are given in. */
function withoutPerCent(header: string): string {
  const bare = header
    .replace(/[\s,]*[([]?\s*(?:%|per ?cent|pct\.?|prozent|pour ?cent)\s*[)\]]?\s*$/i, '')
    .trim();
  return bare === '' ? header : bare;
}

function differing(
  { column, differs }: TotalColumn,
  headers: readonly string[],
  body: readonly (readonly string[])[],
  origins: readonly number[],
): LayoutRemark[] {
  return [...differs].map(([at, sum]) => ({
    row: origins[at]!,
    column: headers[column]!,
    raw: body[at]![column]!,
    readAs: String(sum),
    level: 'flagged' as const,
    rule: 'total-differs',
    why: `The kinds of this row come to ${sum}; they are counted as they stand, and the printed total is not used.`,
  }));
}

function faultsOf(
  headers: readonly string[],
  body: readonly (readonly string[])[],
  rule: CountsRule,
  counted: readonly number[],
  file: string,
): Fault[] {
  if (rule.base !== undefined && !headers.includes(rule.base))
    return [
      {
        what: `no column is headed "${rule.base}", of which the shares are to be taken`,
        where: { file },
        mend: `name one of ${headers.map((header) => `"${header}"`).join(', ')} as the base`,
      },
    ];
  if (rule.base === undefined && areShares(headers, counted, body))
    return [
      {
        what: 'the kinds of every row come to 100, so that they are shares and no counts',
        where: { file },
        mend: 'name the column that holds the number of objects as the base of the counts ("base", or --base)',
      },
    ];
  return [];
}

/** The count of which a share was printed: whole where one prints so, else the nearest half. */
function ofShare(share: number, base: number, raw: string): number {
  const count = (share * base) / 100;
  const decimals = /[.,](\d+)/.exec(raw)?.[1]?.length ?? 0;
  const slack = (base * Number(`0.5e-${decimals}`)) / 100 + 1e-9;
  const whole = Math.round(count);
  return Math.abs(whole - count) <= slack ? whole : Math.round(2 * count) / 2;
}
