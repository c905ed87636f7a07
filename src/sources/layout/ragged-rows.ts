import { append, greatest } from '../../numerics/foundation/lists.ts';
import type { Fault, RowSetAside } from '../source-reading.ts';
import { filledCells, isBlank } from './cell-shapes.ts';
import type { LayoutRemark } from './remark.ts';

export interface Mended {
  readonly headers: string[];
  readonly lower: string[];
  readonly records: number[];
  readonly setAside: RowSetAside[];
  readonly remarks: LayoutRemark[];
  readonly faults: Fault[];
}

/**
 * Rows that have more or fewer cells than the header. Blank surplus is no fault. Where nearly all rows
 * agree against the header, the header is the odd one: its missing name is left blank. Otherwise a short
 * row is read as far as it goes and a long one, whose cells may have slipped sideways, is set aside; both
 * are faults until the profile says how they are to be taken.
 */
export function mendRaggedRows(
  grid: readonly (readonly string[])[],
  records: readonly number[],
  headers: readonly string[],
  lower: readonly string[],
  file: string,
  rule: 'pad' | 'set-aside' | undefined,
): Mended {
  const result: Mended = {
    headers: [...headers],
    lower: [...lower],
    records: [],
    setAside: [],
    remarks: [],
    faults: [],
  };
  const widths = records.map((at) => usedWidth(grid[at]!));
  if (headers.length === 0) {
    const width = widths.reduce((most, used) => Math.max(most, used), 0);
    append(
      result.headers,
      Array.from({ length: width }, () => ''),
    );
    append(result.lower, result.headers);
    append(result.records, records);
    return result;
  }
  widenHeader(grid, records, widths, result);
  const width = result.headers.length;
  for (const [i, at] of records.entries()) {
    const cells = grid[at]!.length;
    const long = widths[i]! > width;
    // A record that ends early: the delimiters are missing too, not only the texts.
    const short = cells < lastNamed(result.headers) && !long;
    if (!long && !short) {
      result.records.push(at);
      continue;
    }
    const count = `${long ? widths[i] : cells} cells where the header has ${width}`;
    const where = {
      file,
      row: at + 1,
      column: result.headers[Math.min(cells, width) - (long ? 1 : 0)] ?? '',
    };
    const keep = rule === undefined ? short : rule === 'pad';
    if (rule === undefined) {
      result.faults.push({
        what: `the row has ${count}`,
        where,
        mend: long
          ? 'put the cell that holds the delimiter in quotation marks, or set "raggedRows" in the profile'
          : 'add the missing delimiters, or set "raggedRows": "pad" in the profile to read the missing cells as blank',
      });
    }
    if (keep) {
      result.records.push(at);
      result.remarks.push({
        row: at + 1,
        column: where.column,
        raw: long ? grid[at]!.slice(width).join(' ') : '',
        readAs: long ? '' : 'blank cells at the end',
        level: 'flagged',
        rule: 'ragged-row',
        why: `The row has ${count}${long ? '; the surplus cells are kept here only' : '; the missing ones count as blank'}.`,
      });
    } else result.setAside.push({ row: at + 1, reason: `ragged row: ${count}` });
  }
  return result;
}

function usedWidth(row: readonly string[]): number {
  for (let i = row.length - 1; i >= 0; i--) if (!isBlank(row[i])) return i + 1;
  return 0;
}

function lastNamed(headers: readonly string[]): number {
  for (let i = headers.length - 1; i >= 0; i--) if (headers[i] !== '') return i + 1;
  return 0;
}

/** When nearly all rows use one cell more than the header has, a name is missing: the first, or the last. */
function widenHeader(
  grid: readonly (readonly string[])[],
  records: readonly number[],
  widths: readonly number[],
  result: Mended,
): void {
  const before = result.headers.length;
  const wider = widths.filter((width) => width > before).length;
  if (wider === 0) return;
  const exactlyOne = records.every((at) => grid[at]!.length === before + 1);
  if (!exactlyOne && wider < 0.8 * widths.length) return;
  const most = exactlyOne ? before + 1 : greatest(widths);
  const first = records.map((at) => grid[at]![0]!.trim());
  const rowNames =
    exactlyOne &&
    wider === widths.length &&
    new Set(first).size === first.length &&
    filledCells(first).length === first.length;
  if (rowNames) {
    result.headers.unshift('');
    result.lower.unshift('');
  } else {
    while (result.headers.length < most) result.headers.push('');
    while (result.lower.length < most) result.lower.push('');
  }
  result.remarks.push({
    row: 0,
    column: '',
    raw: '',
    readAs: rowNames ? 'the first column has no header' : 'the last columns have no header',
    level: 'flagged',
    rule: 'header-too-short',
    why: 'The rows have more cells than the header has names; check that the names stand over the right columns.',
  });
}
