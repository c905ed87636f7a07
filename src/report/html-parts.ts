import type { Figure, ResultTable, TableCell } from '../analyses/contract.ts';
import { columnHead, type PrintedNumber, tablePrinter } from '../analyses/table-numbers.ts';
import { isUnavailable } from '../numerics/foundation/unavailable.ts';

/** Text as it stands, wherever it may come from, safe in element content and in quoted attributes. */
export function escapeHtml(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

/** A figure with its caption; the drawing is made by the page's script from the JSON beside it. */
export function figurePart(id: string, figure: Figure): string {
  const name = escapeHtml(`figure-${id}`);
  const json = JSON.stringify({ data: figure.data, layout: figure.layout }, infinityAsNull)
    .replaceAll('<', '\\u003c')
    .replaceAll('\u2028', '\\u2028')
    .replaceAll('\u2029', '\\u2029');
  return `<figure>
<script type="application/json" id="${name}">${json}</script>
<div class="scroll"><div data-figure="${name}" role="img" aria-label="${escapeHtml(figure.caption)}"></div></div>
<figcaption>${escapeHtml(figure.caption)}</figcaption>
</figure>`;
}

function infinityAsNull(_key: string, value: unknown): unknown {
  if (ArrayBuffer.isView(value) && !(value instanceof DataView)) return Array.from(value as Float64Array);
  return typeof value === 'number' && !Number.isFinite(value) ? null : value;
}

/** Tables above this many lines are folded away until asked for. */
const FOLD_ABOVE = 30;

/** Columns of words no longer than this are not broken over lines. */
const SHORT_WORDS = 28;

/** A table with its note; cells that could not be computed carry a letter that is explained below. */
export function tablePart(table: ResultTable): string {
  const reasons = new Map<string, string>();
  const numeric = table.columns.map((_, place) => table.rows.some((row) => typeof row[place] === 'number'));
  const short = table.columns.map((_, place) =>
    table.rows.every((row) => typeof row[place] !== 'string' || row[place].length <= SHORT_WORDS),
  );
  const kind = (place: number) => (numeric[place] ? ' class="number"' : short[place] ? ' class="short"' : '');
  const head = table.columns.map(
    (column, place) => `<th scope="col"${kind(place)}>${escapeHtml(columnHead(column))}</th>`,
  );
  const printer = tablePrinter(table);
  const cells = (row: ResultTable['rows'][number]) =>
    row.map((cell, place) => `<td${kind(place)}>${cellText(cell, printer(row, place), reasons)}</td>`);
  const rows = table.rows.map((row) => `<tr>${cells(row).join('')}</tr>`);
  const why = [...reasons].map(
    ([reason, letter]) => `<sup>${letter}</sup> not given: ${escapeHtml(reason)}.`,
  );
  const notes = [...why, ...(table.note === undefined ? [] : [escapeHtml(table.note)])];
  const body = `<div class="scroll"><table><caption>${escapeHtml(table.title)}</caption>
<thead><tr>${head.join('')}</tr></thead>
<tbody>
${rows.join('\n')}
</tbody></table></div>
${notes.length > 0 ? `<p class="note">${notes.join('<br>')}</p>` : ''}`;
  if (table.rows.length <= FOLD_ABOVE) return body;
  return `<details><summary>${escapeHtml(table.title)}: ${table.rows.length} lines</summary>${body}</details>`;
}

function cellText(
  cell: TableCell,
  print: (value: number) => PrintedNumber,
  reasons: Map<string, string>,
): string {
  if (cell === null) return '';
  if (typeof cell === 'number') {
    const { text, full } = print(cell);
    return `<span title="${full}">${escapeHtml(text)}</span>`;
  }
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  if (!isUnavailable(cell)) return escapeHtml(cell);
  const letter = reasons.get(cell.why) ?? letterOf(reasons.size);
  reasons.set(cell.why, letter);
  return `–<sup>${letter}</sup>`;
}

/** a, b … z, aa, ab … */
function letterOf(place: number): string {
  const last = String.fromCharCode(97 + (place % 26));
  return place < 26 ? last : letterOf(Math.floor(place / 26) - 1) + last;
}
