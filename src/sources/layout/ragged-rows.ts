import type { Register } from '../../attributes/definition.ts';
import { append, greatest } from '../../numerics/foundation/lists.ts';
import type { LayoutRule } from '../profile/layout-rules.ts';
import type { Fault, RowSetAside, TooLongRows } from '../source-reading.ts';
import { filledCells, isBlank } from './cell-shapes.ts';
import { joinOverflow, type Overflow, overflowOf } from './overflow.ts';
import type { LayoutRemark } from './remark.ts';

export interface Mended {
  readonly headers: string[];
  readonly lower: string[];
  readonly records: number[];
  /** Rows whose surplus stands in their last column now. */
  readonly joined: ReadonlyMap<number, readonly string[]>;
  readonly setAside: RowSetAside[];
  readonly remarks: LayoutRemark[];
  readonly faults: Fault[];
  readonly tooLong?: TooLongRows;
}

/** What the rows are mended by. */
export interface RaggedInput {
  readonly grid: readonly (readonly string[])[];
  /** Rows of the grid that are of the table. */
  readonly records: readonly number[];
  readonly headers: readonly string[];
  readonly lower: readonly string[];
  readonly file: string;
  readonly rule: LayoutRule['raggedRows'];
  /** The sign that parts the cells of the file; null where no sign does. */
  readonly parted: string | null;
  readonly register: Register;
}

/**
 * Rows that have more or fewer cells than the header. Blank surplus is no fault. Where nearly all rows
 * agree against the header, the header is the odd one: its missing name is left blank. Otherwise a short
 * row is read as far as it goes; the surplus of a long one is joined to its last cell where beyond doubt it is
 * the end of a remark, and the row is set aside where its cells may have slipped sideways. What is not beyond doubt
 * is a fault until the profile says how it is to be taken.
 */
export function mendRaggedRows({
  grid,
  records,
  headers,
  lower,
  file,
  rule,
  parted,
  register,
}: RaggedInput): Mended {
  const joined = new Map<number, readonly string[]>();
  const result: Mended = {
    headers: [...headers],
    lower: [...lower],
    records: [],
    joined,
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
  const tooLong = records.filter((_, i) => widths[i]! > width);
  const overflow: Overflow =
    parted === null || rule !== undefined
      ? 'none'
      : overflowOf(
          result.headers,
          records.filter((_, i) => widths[i]! <= width).map((at) => grid[at]!),
          tooLong.map((at) => grid[at]!),
          parted,
          register,
        );
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
    if (long && parted !== null && (rule === 'join-last' || overflow === 'certain')) {
      const row = joinOverflow(grid[at]!, width, parted);
      joined.set(at, row);
      result.records.push(at);
      result.remarks.push({
        row: at + 1,
        column: result.headers[width - 1] ?? '',
        raw: grid[at]!.slice(width - 1).join(parted),
        readAs: row[width - 1]!,
        level: 'flagged',
        rule: 'overflow-joined',
        why: `The row has ${count}; ${rule === undefined ? 'only its last column can hold the sign that parts the cells, so that what stands beyond was joined to it' : 'what stands beyond was joined to its last column, as the profile says'}.`,
      });
      continue;
    }
    const keep = rule === undefined ? short : rule !== 'set-aside';
    if (rule === undefined) {
      result.faults.push({
        what: `the row has ${count}`,
        where,
        mend: long
          ? `put the cell that holds the delimiter in quotation marks, or set "raggedRows"${overflow === 'possible' ? `: "join-last" in the profile, if it is the last one ("${where.column}") in every such row` : ' in the profile'}`
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
  if (rule !== undefined || overflow === 'certain' || tooLong.length === 0) return result;
  const column = result.headers[width - 1] ?? '';
  return {
    ...result,
    tooLong: { rows: tooLong.map((at) => at + 1), column, mayJoin: overflow === 'possible' },
  };
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
