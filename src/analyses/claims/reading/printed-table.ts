import { foldText } from '../../../attributes/matching.ts';
import { InputError } from '../../../errors.ts';
import type { Condition } from '../../../fragments/select.ts';
import { type PrintedFigure, perUnitOf } from './claim.ts';
import { type DecimalMark, decimalMarkOf, NUMBER } from './numbers.ts';
import { readPrinted } from './printed-text.ts';
import { tableText } from './table/grid.ts';
import type { Role } from './table/heads.ts';
import {
  isBlank,
  isStatistic,
  type Layout,
  layOut,
  type TableColumn,
  type TableRow,
} from './table/layout.ts';
import { type Method, QUANTITIES, type Quantity } from './terms.ts';
import type { TextPart } from './text-part.ts';

/** What a printed table may say of itself beside its cells. */
export interface TableSays {
  /** Attribute whose terms label the rows; lets the cells be counted in the data. */
  readonly rows?: string | undefined;
  /** The same for the columns of a table of counts or percentages. */
  readonly columns?: string | undefined;
  /** Attribute that a table of means describes. */
  readonly attribute?: string | undefined;
  /** Grid of the single readings of a table of means: 1, 0.5, 0.1. */
  readonly step?: string | undefined;
  /** What columns hold, by their head, where that was confirmed or corrected. */
  readonly roles?: Readonly<Record<string, string>> | undefined;
}

export type { TableColumn, TableRow } from './table/layout.ts';

/** A table as it is printed, cells to the printed digit. */
export interface PrintedTable {
  readonly name: string;
  readonly kind: 'counts' | 'shares' | 'samples';
  readonly caption: string;
  readonly notes: readonly string[];
  readonly columns: readonly (TableColumn & { readonly role: Role })[];
  readonly rows: readonly TableRow[];
  /** The figures of each row and column; empty where nothing is printed. */
  readonly cells: readonly (readonly (readonly PrintedFigure[])[])[];
  /** The parts alone, without totals and what is no part of a sum: one number a row and column. */
  readonly body: TableBody;
  /** Every number of the table. */
  readonly figures: readonly PrintedFigure[];
  /** Cells and words of which nothing was made, each with its place. */
  readonly unread: readonly string[];
}

export interface TableBody {
  readonly rows: readonly string[];
  readonly columns: readonly string[];
  readonly cells: readonly (readonly (PrintedFigure | null)[])[];
}

/**
 * Reads a printed table: typed, CSV, or copied from a page; one or two rows of heads, sections, totals, notes.
 * Each column gets a role from its head or its cells; nothing is left unread in silence.
 *
 * @throws InputError where it has no heads, labels and numbers.
 */
export function readTable(bytes: Uint8Array, file: string, says: TableSays = {}): PrintedTable {
  const { caption, grid, notes } = tableText(bytes, file);
  const laid = layOut(grid, rolesSaid(says.roles, file));
  if (!laid.texts.flat().some((cell) => /\d/.test(cell)))
    throw new InputError(
      'this is no table with labels in its first row and column: it holds no number',
      { file },
      'give it a row of heads and a column of labels',
    );
  const name = tableName(file);
  const mark = decimalMarkOf(laid.texts.flat());
  const columns = withRoles(laid, caption, says);
  const unread: string[] = [];
  const perCent = variationInPerCent(laid, columns, mark);
  const stepAt = columns.findIndex(({ role }) => role === 'step');
  const samples = columns.some(({ reading, role }) => role !== 'n' && isStatistic({ ...reading, role }));
  const asked = says.rows !== undefined && (samples || says.columns !== undefined);
  const ids = new Map<string, number>();
  const cells = laid.rows.map((row, r) =>
    columns.map((column, c): PrintedFigure[] => {
      const text = laid.texts[r][c] ?? '';
      if (isBlank(text) || column.role === 'step') return [];
      const id = cellId(name, row.label, column.head);
      const quantity = quantityOf(column.role, row, text, samples);
      const read =
        quantity === null
          ? null
          : readPrinted(bracketed(text), quantity, {
              mark,
              ...(column.reading.second === undefined ? {} : { second: column.reading.second }),
              ...(column.reading.ends === undefined ? {} : { ends: column.reading.ends }),
            });
      if (read === null) {
        if (column.role !== 'not part' && row.line !== 'summary') unread.push(`${id}: “${text}”`);
        return [];
      }
      for (const word of read.unused)
        if (/\d{2,}|[\p{L}]{2,}/u.test(word)) unread.push(`${id}: “${word}” of “${text}”`);
      const sum = !samples && (column.line === 'total' || row.line === 'total' || row.line === 'subtotal');
      const step = stepAt < 0 ? (says.step ?? '') : (laid.texts[r][stepAt] ?? '');
      return read.parts.map((part, i) => {
        const label = uniqueId(ids, i === 0 ? id : `${id} (${part.quantity})`);
        const total =
          sum && i === 0 && (part.quantity === 'count' || part.quantity === 'share' || part.quantity === 'n');
        return {
          ...figureBase(part, text, column.reading.method ?? null),
          id: label,
          set: name,
          line: `${name}: ${row.label}${column.group === '' ? '' : ` / ${column.group}`}`,
          cell: { row: r, column: c },
          quantity: total && row.line !== 'n' && row.line !== 'percent' ? 'total' : part.quantity,
          perUnit: perUnitOf(step),
          attributes: samples && says.attribute !== undefined ? [says.attribute] : [],
          select: isSumLine(row) || !asked ? [] : within(says.rows, row.label),
          counted: samples || isSumLine(column) ? [] : within(says.columns, column.head),
          // A label that no attribute explains is no condition, and the data cannot be asked by it.
          selectText: isSumLine(row) && asked ? '' : sampleName(row, column, columns, c, samples),
          values: part.values.map((value) =>
            inParts(value, part.quantity, column.role === 'cv' ? perCent : true),
          ),
        };
      });
    }),
  );
  const body = bodyOf(laid, columns, cells);
  const counted = body.cells.flat().some((cell) => cell?.quantity === 'count');
  return {
    name,
    kind: samples
      ? 'samples'
      : counted || body.cells.flat().every((cell) => cell === null)
        ? 'counts'
        : 'shares',
    caption,
    notes,
    columns,
    rows: laid.rows,
    cells,
    body,
    figures: cells.flat(2),
    unread,
  };
}

function isSumLine({ line }: Pick<TableRow, 'line'>): boolean {
  return line === 'total' || line === 'subtotal';
}

function rolesSaid(roles: TableSays['roles'], file: string): Record<string, Role> {
  return Object.fromEntries(
    Object.entries(roles ?? {}).map(([head, role]) => {
      if (!(role in QUANTITIES) && role !== 'not part' && role !== 'step' && role !== 'unknown')
        throw new InputError(
          `"${role}" is no role of a column`,
          { file, column: head },
          `use ${[...Object.keys(QUANTITIES), 'not part'].join(', ')}`,
        );
      return [head, role as Role];
    }),
  );
}

function figureBase(part: TextPart, text: string, method: Method | null) {
  return {
    // Its id says where it stands.
    place: '',
    method: part.method ?? method,
    sided: part.sided ?? ('' as const),
    versus: [],
    versusText: '',
    vague: part.vague === true,
    stars: part.stars === true,
    manners: part.manners ?? [],
    level: part.level ?? null,
    unused: [],
    printed: text,
    note: '',
  };
}

/** "(12.5)" below or beside a count is the number alone. */
function bracketed(text: string): string {
  const match = /^\(\s*([^()]+?)\s*\)$/.exec(text.trim());
  return match === null ? text.trim() : match[1];
}

/** Shares are kept as parts of one, whatever their sign; a column of shares whose cells are all up to 1 stays. */
function inParts(value: TextPart['values'][number], quantity: Quantity, perCent: boolean) {
  if (quantity !== 'share' && quantity !== 'cv') return value;
  if (!perCent && !value.percent) return value;
  return { ...value, percent: true, number: { ...value.number, decimals: value.number.decimals + 2 } };
}

/** Coefficients of variation as parts of one stay below 3 or so; a column that goes beyond is in per cent. */
function variationInPerCent(
  laid: Layout,
  columns: readonly { readonly role: Role; readonly head: string }[],
  mark: DecimalMark,
): boolean {
  const at = columns.findIndex(({ role }) => role === 'cv');
  if (at < 0) return false;
  if (/%/.test(columns[at].head)) return true;
  const values = laid.texts.flatMap(
    (row) => readPrinted(row[at] ?? '', 'mean', { mark })?.parts[0]?.values[0] ?? [],
  );
  return values.some(({ number }) => Number(`${number.digits}e-${number.decimals}`) > 3);
}

function quantityOf(role: Role, row: TableRow, text: string, samples: boolean): Quantity | null {
  if (row.line === 'summary' && !samples) return null;
  if (row.line === 'percent' && (role === 'count' || role === 'share' || role === 'unknown')) return 'share';
  if (row.line === 'n' && (role === 'count' || role === 'share' || role === 'unknown' || role === 'n'))
    return 'n';
  if (role === 'unknown') return 'reading';
  if (role === 'not part' || role === 'step') return null;
  if (role === 'share' && /^\d[\d ]*\s*[([].*%/.test(text)) return 'count';
  if (role === 'count' && /%/.test(text) && !/[([/,]/.test(text)) return 'share';
  return role;
}

/** Roles from the heads; where a head names a kind, from what the cells hold. */
function withRoles(
  laid: Layout,
  caption: string,
  says: TableSays,
): (TableColumn & { readonly role: Role })[] {
  const strong = laid.columns.some(({ reading }) => isStatistic(reading) && reading.role !== 'n');
  const asPercent = /%|per\s?cent|proportion/i.test(`${caption} ${laid.corner}`);
  const parts = laid.rows.flatMap(({ line }, r) => (line === 'part' ? [r] : []));
  const kindsOf = laid.columns.map((_, c) => contentOf(parts.map((r) => laid.texts[r][c] ?? '')));
  const plain = laid.columns.map(({ reading }) => {
    // "low", "d" or "r" name a statistic only beside others.
    const weak = !isStatistic(reading) && WEAK.has(reading.role) && !strong;
    return weak ? 'unknown' : reading.role;
  });
  const open = laid.columns.flatMap((column, c) =>
    plain[c] === 'unknown' || (plain[c] === 'n' && false)
      ? column.line === 'part' || isSumLine(column)
        ? [c]
        : []
      : [],
  );
  const shares =
    asPercent ||
    says.columns !== undefined ||
    addsToHundred(
      laid,
      open.filter((c) => !isSumLine(laid.columns[c])),
      parts,
    );
  const inside = open.filter((c) => !isSumLine(laid.columns[c]));
  // Whole numbers that add up to 100 are per cents where something else says so: a caption, an n, totals of 100.
  const wholePercents =
    addsToHundred(laid, inside, parts, 2) && (asPercent || hasSizes(laid) || totalsAreHundred(laid));
  // Without counts of kinds beside it, "n" heads the counts themselves.
  const onlySizes = !laid.columns.some(
    (column, c) =>
      (plain[c] === 'count' || plain[c] === 'unknown') &&
      column.line === 'part' &&
      (kindsOf[c] === 'whole' || kindsOf[c] === 'count with share'),
  );
  return laid.columns.map((column, c) => {
    const content = kindsOf[c];
    if (plain[c] !== 'unknown') {
      // "n" over cells such as "12 (34 %)".
      if (plain[c] === 'n' && content === 'count with share') return { ...column, role: 'count' };
      if (plain[c] === 'n' && !strong && onlySizes) return { ...column, role: 'count' };
      return { ...column, role: plain[c] };
    }
    if (column.line === 'summary') return { ...column, role: 'unknown' };
    if (content === 'count with share') return { ...column, role: 'count' };
    if (content === 'per cent') return { ...column, role: 'share' };
    if (content === 'mean with spread') return { ...column, role: 'mean' };
    if (content === 'whole')
      return { ...column, role: strong ? 'unknown' : wholePercents ? 'share' : 'count' };
    if (content === 'decimal' && !strong && shares) return { ...column, role: 'share' };
    return { ...column, role: 'unknown' };
  });
}

const WEAK: ReadonlySet<Role> = new Set<Role>(['low', 'high', 'statistic', 'correlation', 'effect', 'step']);

/** Printed totals of 99, 100 or 101 in every line. */
function totalsAreHundred(laid: Layout): boolean {
  const column = laid.columns.findIndex(isSumLine);
  const row = laid.rows.findIndex(isSumLine);
  const cells = [
    ...(column < 0 ? [] : laid.texts.map((texts) => texts[column])),
    ...(row < 0 ? [] : laid.texts[row].filter((_, c) => !isSumLine(laid.columns[c]))),
  ].filter((cell) => !isBlank(cell));
  return cells.length >= 2 && cells.every((cell) => Math.abs(Number(cell.replace(/[%\s]/g, '')) - 100) <= 2);
}

function hasSizes(laid: Layout): boolean {
  return (
    laid.rows.some(({ line }) => line === 'n') || laid.columns.some(({ reading }) => reading.role === 'n')
  );
}

type Content = 'whole' | 'decimal' | 'per cent' | 'count with share' | 'mean with spread' | 'other';

const ONE_NUMBER = new RegExp(`^[<>≤≥~]?\\s?${NUMBER}$`, 'u');

function contentOf(cells: readonly string[]): Content {
  const filled = cells.filter((cell) => !isBlank(cell)).map((cell) => cell.replace(/\s?[*†‡§ᵃᵇᶜ]+$/u, ''));
  if (filled.length === 0) return 'other';
  const share = (pattern: RegExp) => filled.filter((cell) => pattern.test(cell)).length * 2 > filled.length;
  if (share(/±|\+\/-/)) return 'mean with spread';
  if (share(/^\d[\d ,.]*\s*(?:\/\s*\d+\s*)?[([]\s*[\d.,]+\s*%?\s*[)\]]$/)) return 'count with share';
  if (filled.some((cell) => /%$/.test(cell)) && share(/^[<~]?\s?[\d.,]+\s*%?$/)) return 'per cent';
  if (
    share(/^\(?\d{1,3}(?:[ ,.'’]\d{3})+\)?$|^\(?\d+\)?$/) &&
    !filled.some((cell) => /^\d+[.,]\d{1,2}$/.test(cell))
  )
    return 'whole';
  if (filled.every((cell) => ONE_NUMBER.test(bracketed(cell)))) return 'decimal';
  return 'other';
}

/** Do the cells of most rows, or of most columns, add up to 100 (or to 1)? */
function addsToHundred(
  laid: Layout,
  columns: readonly number[],
  rows: readonly number[],
  least = 2,
): boolean {
  const at = (r: number, c: number) =>
    Number((laid.texts[r][c] ?? '').replace(/[%\s]/g, '').replace(',', '.')) || 0;
  const near = (cells: readonly number[]) => {
    const sum = cells.reduce((all, one) => all + one, 0);
    const slack = Math.max(1, cells.length / 2);
    return cells.length >= 2 && (Math.abs(sum - 100) <= slack || Math.abs(sum - 1) <= 0.01 * cells.length);
  };
  const byRow = rows.map((r) => near(columns.map((c) => at(r, c))));
  const byColumn = columns.map((c) => near(rows.map((r) => at(r, c))));
  const most = (list: readonly boolean[]) =>
    list.length >= least && list.filter(Boolean).length * 3 >= list.length * 2;
  return (
    most(byRow) ||
    most(byColumn) ||
    (least <= 2 && (byRow.length === 1 || byColumn.length === 1) && [...byRow, ...byColumn].some(Boolean))
  );
}

/** Statistics of one row describe one sample, unless heads that span part them or one is said twice. */
function sampleName(
  row: TableRow,
  column: TableColumn,
  columns: readonly (TableColumn & { readonly role: Role })[],
  at: number,
  samples: boolean,
): string {
  if (!samples) return row.label;
  const earlier = columns
    .slice(0, at)
    .filter(({ role, group }) => role === columns[at].role && group === column.group).length;
  return `${row.label}${column.group === '' ? '' : `, ${column.group}`}${earlier === 0 ? '' : ` (${earlier + 1})`}`;
}

function bodyOf(
  laid: Layout,
  columns: readonly { readonly role: Role; readonly line: string; readonly head: string }[],
  cells: readonly (readonly (readonly PrintedFigure[])[])[],
): TableBody {
  const rows = laid.rows.flatMap(({ line }, r) => (line === 'part' ? [r] : []));
  const wanted = (role: Role) =>
    columns.flatMap((column, c) => (column.role === role && column.line === 'part' ? [c] : []));
  const counts = wanted('count');
  const inside = counts.length > 0 ? counts : wanted('share');
  return {
    rows: rows.map((r) => laid.rows[r].label),
    columns: inside.map((c) => columns[c].head),
    cells: rows.map((r) => inside.map((c) => cells[r][c][0] ?? null)),
  };
}

function uniqueId(ids: Map<string, number>, id: string): string {
  const before = ids.get(id) ?? 0;
  ids.set(id, before + 1);
  return before === 0 ? id : `${id} ${before + 1}`;
}

/** A table is called by its file name without the ending. */
export function tableName(file: string): string {
  return file.replace(/^.*\//, '').replace(/\.[^.]+$/, '');
}

/** Names the figure in the row of this label, under this head; a second number of the cell adds its quantity. */
export function cellId(table: string, label: string, head: string): string {
  return `${table}: ${label} / ${head}`;
}

/** The row of this label, spelling apart; -1 for none. */
export function rowOf({ body }: PrintedTable, label: string): number {
  const wanted = foldText(label);
  return body.rows.findIndex((row) => foldText(row) === wanted);
}

function within(attribute: string | undefined, label: string): readonly Condition[] {
  return attribute === undefined ? [] : [{ attribute, in: [label] }];
}
