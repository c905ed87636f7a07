import type { ResultColumn, ResultTable, TableCell } from '../../analyses/contract.ts';
import { columnHead, type TableNumber, tablePrinter } from '../../analyses/table-numbers.ts';
import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import { widthOf } from '../drawing/lettering.ts';
import { escapeHtml } from '../html-parts.ts';

export interface TablePartRequest {
  /** "Table 4"; a table without one stands outside of the numbering. */
  readonly number?: number;
  /** Id of the element. */
  readonly name?: string;
  /** Whether a table too wide for a page shows the columns that matter most, rather than all one below the other. */
  readonly briefly?: boolean;
  /** The file that holds all of it, named where not everything is shown. */
  readonly file?: string;
}

/** Lines of a table that a page shows, where a file holds them all. */
const MOST_LINES = 60;

/** Longer tables leave the full digits under the pointer to their files. */
const MOST_IN_FULL = 30;

/** Pixels that a table may be wide in print, 174 mm less what browsers round up, and of its letters there. */
const PAGE = 640;
const SIZE = 10;
const PADDING = 11;

/** Columns of words no longer than this are not broken over lines; longer ones take what is left. */
const SHORT_WORDS = 28;
const LONG_WORDS = 150;

/**
 * A table that no page cuts: where it is wider than a page, its columns follow in several parts, each with the
 * first column again. A number that could not be computed carries a letter that is explained below.
 */
export function tablePart(whole: ResultTable, request: TablePartRequest = {}): string {
  const unshown = request.file === undefined ? 0 : Math.max(0, whole.rows.length - MOST_LINES);
  const table = unshown === 0 ? whole : { ...whole, rows: whole.rows.slice(0, MOST_LINES) };
  const columns = layColumns(table);
  const all = partsOf(columns);
  const named = (table.briefly ?? []).flatMap((id) => columns.filter(({ column }) => column.id === id));
  const short = request.briefly === true && all.length > 1;
  const parts = short ? [fitting(named.length > 0 ? named : columns)] : all;
  const left = short ? columns.length - (parts[0]?.length ?? 0) : 0;
  const reasons = new Map<string, string>();
  const number = request.number === undefined ? '' : `<b>Table ${request.number}.</b> `;
  const bodies = parts.map((part, place) => {
    const caption = `${number}${escapeHtml(table.title)}${place === 0 ? '' : ', continued'}`;
    return `<table><caption>${caption}</caption>
<thead><tr>${part.map(headCell).join('')}</tr></thead>
<tbody>
${table.rows.map((_, row) => `<tr>${part.map((one) => bodyCell(one, row, reasons)).join('')}</tr>`).join('\n')}
</tbody></table>`;
  });
  const notes = [
    ...[...reasons].map(([reason, letter]) => `<sup>${letter}</sup> not given: ${escapeHtml(reason)}.`),
    ...(table.note === undefined ? [] : [escapeHtml(table.note)]),
    ...(unshown > 0 && request.file !== undefined
      ? [`${unshown} further lines: ${escapeHtml(request.file)}.`]
      : []),
    ...(left > 0 && request.file !== undefined
      ? [`${left} further ${left === 1 ? 'column' : 'columns'}: ${escapeHtml(request.file)}.`]
      : []),
  ];
  const id = request.name === undefined ? '' : ` id="table-${escapeHtml(request.name)}"`;
  return `<div class="table"${id}>${bodies.join('\n')}
${notes.length > 0 ? `<p class="note">${notes.join('<br>')}</p>` : ''}</div>`;
}

interface LaidColumn {
  readonly column: ResultColumn;
  readonly head: string;
  readonly cells: readonly TableCell[];
  readonly texts: readonly (TableNumber | null)[];
  readonly isNumber: boolean;
  readonly isShort: boolean;
  /** Pixels in print. */
  readonly width: number;
}

function layColumns(table: ResultTable): readonly LaidColumn[] {
  const printer = tablePrinter(table);
  return table.columns.map((column, place) => {
    const cells = table.rows.map((row) => row[place] ?? null);
    const isNumber = cells.some((cell) => typeof cell === 'number');
    const isShort = cells.every((cell) => typeof cell !== 'string' || cell.length <= SHORT_WORDS);
    const texts = cells.map((cell, row) =>
      typeof cell === 'number' ? printer(table.rows[row], place)(cell) : null,
    );
    const head = columnHead(column);
    const words = cells.map((cell, row) => texts[row]?.text ?? (typeof cell === 'string' ? cell : ' –'));
    const widest = (lines: readonly string[]) =>
      lines.reduce((most, line) => Math.max(most, widthOf(line, SIZE)), 0);
    const body = widest(words);
    const heading = widest(head.split(/[\s-]/)) * BOLD;
    const width = Math.max(heading, isNumber || isShort ? body : Math.min(body, LONG_WORDS)) + PADDING;
    return { column, head, cells, texts, isNumber, isShort, width };
  });
}

/** Headings are set bold. */
const BOLD = 1.08;

/** The columns in as many parts as fit a page each, the first column heading every part. */
function partsOf(columns: readonly LaidColumn[]): readonly (readonly LaidColumn[])[] {
  const [stub, ...rest] = columns;
  if (stub === undefined) return [[]];
  const parts: LaidColumn[][] = [[stub]];
  let width = stub.width;
  for (const column of rest) {
    if (width + column.width > PAGE && (parts.at(-1)?.length ?? 0) > 1) {
      parts.push([stub]);
      width = stub.width;
    }
    parts.at(-1)?.push(column);
    width += column.width;
  }
  return parts;
}

function fitting(columns: readonly LaidColumn[]): readonly LaidColumn[] {
  return partsOf(columns)[0] ?? [];
}

/** Cells of numbers are the most by far, and carry no class; those of short texts come next, and carry a short one. */
function kindOf({ isNumber, isShort }: LaidColumn): string {
  return isNumber ? '' : isShort ? ' class="t"' : ' class="long"';
}

function headCell(one: LaidColumn): string {
  return `<th scope="col"${kindOf(one)}>${escapeHtml(one.head)}</th>`;
}

function bodyCell(one: LaidColumn, row: number, reasons: Map<string, string>): string {
  const cell = one.cells[row];
  const printed = one.texts[row];
  if (printed !== null && printed !== undefined) {
    const told = one.cells.length > MOST_IN_FULL || printed.full === printed.text;
    const full = told ? '' : ` title="${escapeHtml(printed.full)}"`;
    return `<td${kindOf(one)}${full}>${escapeHtml(printed.text)}</td>`;
  }
  return `<td${kindOf(one)}>${wordsOf(cell, reasons)}</td>`;
}

function wordsOf(cell: TableCell, reasons: Map<string, string>): string {
  if (cell === null) return '';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  if (typeof cell !== 'object') return escapeHtml(String(cell));
  if (!isUnavailable(cell)) return '';
  const letter = reasons.get(cell.why) ?? letterOf(reasons.size);
  reasons.set(cell.why, letter);
  return `–<sup>${letter}</sup>`;
}

/** a, b … z, aa, ab … */
function letterOf(place: number): string {
  const last = String.fromCharCode(97 + (place % 26));
  return place < 26 ? last : letterOf(Math.floor(place / 26) - 1) + last;
}
