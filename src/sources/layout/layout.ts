import type { Register } from '../../attributes/definition.ts';
import { append } from '../../numerics/foundation/lists.ts';
import type { LayoutRule, LongForm } from '../profile/layout-rules.ts';
import type { Fault, RowSetAside, TooLongRows } from '../source-reading.ts';
import { filledCells } from './cell-shapes.ts';
import { layOutCounts } from './counts.ts';
import { type NamedColumns, nameColumns } from './header-names.ts';
import { headerRows, headerTexts, noHeader } from './header-texts.ts';
import { isKeyValue, readKeyValue } from './key-value.ts';
import { findLongForm, gatherLongForm, type Move } from './long-form.ts';
import { mendRaggedRows } from './ragged-rows.ts';
import type { LayoutRemark } from './remark.ts';
import { rowsToSetAside } from './set-aside.ts';
import { isTransposed, transpose } from './transpose.ts';

/** The table inside the sheet: one header a column, one array of cells a record. */
export interface LaidOut extends NamedColumns {
  readonly grid: readonly (readonly string[])[];
  readonly transposed: boolean;
  /** Last header row, 1 = first; 0 where there is none. */
  readonly headerRow: number;
  readonly body: readonly (readonly string[])[];
  /** Row of the grid (1 = first) of each record. */
  readonly origins: readonly number[];
  readonly rowsRead: number;
  readonly rowsKept: number;
  readonly setAside: readonly RowSetAside[];
  readonly remarks: readonly LayoutRemark[];
  readonly moves: readonly Move[];
  /** Columns whose cells may hold several readings, joined. */
  readonly gathered: ReadonlySet<number>;
  readonly faults: readonly Fault[];
  readonly tooLong?: TooLongRows;
  readonly layout: LayoutRule;
}

/**
 * Finds the table inside a sheet: turned on its side, key and value, title rows, one or two header rows,
 * notes below, long form. What the profile says goes before what is detected, and the layout that was
 * used is given back in full.
 *
 * @param parted the sign that parts the cells of the file; null where no sign does, as in a workbook.
 */
export function layOut(
  grid: readonly (readonly string[])[],
  name: string,
  rule: LayoutRule,
  register: Register,
  parted: string | null = null,
): LaidOut {
  const forced = rule.headerRow !== undefined;
  if (rule.keyValue ?? (!forced && rule.transposed === undefined && isKeyValue(grid, register))) {
    return layOutKeyValue(grid, rule);
  }
  const transposed = rule.transposed ?? (!forced && isTransposed(grid, register));
  const turned = transposed ? transpose(grid) : grid;
  const header = headerRows(turned, rule, register);
  const start = header.start + header.rows;
  const [texts, lower] = headerTexts(turned.slice(Math.max(header.start, 0), Math.max(start, 0)));
  const setAside: RowSetAside[] = [];
  for (let at = 0; at < Math.max(0, header.start); at++) {
    setAside.push({ row: at + 1, reason: isEmpty(turned[at]!) ? 'empty row' : 'above the header' });
  }
  append(
    setAside,
    rowsToSetAside(
      turned,
      Math.max(start, 0),
      lower,
      zeroBased(rule.setAside),
      zeroBased(rule.keep),
      (rule.lastRow ?? Number.POSITIVE_INFINITY) - 1,
    ),
  );
  const excluded = new Set(setAside.map(({ row }) => row - 1));
  const records: number[] = [];
  for (let at = Math.max(start, 0); at < turned.length; at++) if (!excluded.has(at)) records.push(at);
  const mended = mendRaggedRows({
    grid: turned,
    records,
    headers: texts,
    lower,
    file: name,
    rule: rule.raggedRows,
    parted: transposed ? null : parted,
    register,
  });
  append(setAside, mended.setAside);
  const body = mended.records.map((at) => mended.joined.get(at) ?? turned[at]!);
  const named = nameColumns(mended.headers, mended.lower, body, Math.max(start, 0), name);
  const origins = mended.records.map((at) => at + 1);
  const base = {
    grid: turned,
    transposed,
    headerRow: header.rows === 0 ? 0 : start,
    rowsRead: turned.length - header.rows,
    rowsKept: body.length,
    setAside: setAside.sort((a, b) => a.row - b.row),
    remarks: [...mended.remarks, ...named.remarks],
    ...(mended.tooLong === undefined ? {} : { tooLong: mended.tooLong }),
    faults: [...noHeader(header.rows, rule, body.length, name), ...mended.faults, ...named.faults],
  };
  if (rule.counts !== undefined) {
    const counts = layOutCounts(named.headers, body, origins, rule.counts, name);
    const headerRows = header.rows === 3 ? 3 : header.rows === 2 ? 2 : 1;
    return {
      ...base,
      ...counts,
      remarks: [...base.remarks, ...counts.remarks],
      faults: [...base.faults, ...counts.faults],
      alternatives: counts.headers,
      duplicates: [],
      gathered: new Set(),
      layout: {
        ...rule,
        headerRow: base.headerRow,
        ...(header.rows === 0 ? {} : { headerRows }),
        ...(transposed ? { transposed } : {}),
      },
    };
  }
  const form = longFormOf(rule, named.headers, body, register);
  const layout: LayoutRule = {
    ...rule,
    headerRow: base.headerRow,
    ...(header.rows === 0 ? {} : { headerRows: header.rows === 3 ? 3 : header.rows === 2 ? 2 : 1 }),
    ...(transposed ? { transposed } : {}),
    ...(form === null ? {} : { longForm: form }),
  };
  if (form !== null) {
    const long = gatherLongForm(named.headers, body, origins, form);
    return {
      ...base,
      headers: long.headers,
      alternatives: long.headers,
      duplicates: [],
      body: long.body,
      origins: long.origins,
      moves: long.moves,
      gathered: long.gathered,
      layout,
    };
  }
  return { ...base, ...pick(named), body, origins, moves: [], gathered: new Set(), layout };
}

function layOutKeyValue(grid: readonly (readonly string[])[], rule: LayoutRule): LaidOut {
  const read = readKeyValue(grid);
  return {
    grid,
    transposed: false,
    headerRow: 0,
    headers: read.headers,
    alternatives: read.headers,
    duplicates: [],
    body: read.body,
    origins: read.origins,
    rowsRead: grid.length,
    rowsKept: read.rowsUsed,
    setAside: read.aside,
    remarks: [],
    moves: read.moves,
    gathered: new Set(),
    faults: [],
    layout: { ...rule, keyValue: true },
  };
}

function pick(named: NamedColumns): NamedColumns {
  return { headers: named.headers, alternatives: named.alternatives, duplicates: named.duplicates };
}

function longFormOf(
  rule: LayoutRule,
  headers: readonly string[],
  body: readonly (readonly string[])[],
  register: Register,
): LongForm | null {
  if (rule.longForm === false) return null;
  if (rule.longForm === undefined) return findLongForm(headers, body, register);
  const { attribute, value, unit, by } = rule.longForm;
  const wanted = [attribute, value, ...(unit === undefined ? [] : [unit]), ...(by ?? [])];
  return wanted.every((header) => headers.includes(header)) ? rule.longForm : null;
}

function zeroBased(rows: readonly number[] | undefined): ReadonlySet<number> {
  return new Set((rows ?? []).map((row) => row - 1));
}

function isEmpty(row: readonly string[]): boolean {
  return filledCells(row).length === 0;
}
