import type { Figure, ResultTable, TableCell } from '../../src/analyses/contract.ts';

/** What an answer shows beside its words, as text to be read once and kept: every table, every trace. */

/** Rows and points of which all are written; of longer ones the first, and the sum of the others. */
const MOST = 8;

/** @returns all tables with their heads, rows and notes, and all traces with their names and numbers. */
export function shown({
  tables,
  figures,
}: {
  readonly tables: Readonly<Record<string, ResultTable>>;
  readonly figures: Readonly<Record<string, Figure>>;
}): string {
  return [
    ...Object.entries(tables).flatMap(tableLines),
    ...Object.entries(figures).flatMap(figureLines),
    '',
  ].join('\n');
}

function tableLines([name, { title, columns, rows, note }]: [string, ResultTable]): string[] {
  return [
    `[table ${name}] ${title}`,
    columns
      .map(({ id, label, unit }) => `${id} “${label}”${unit === undefined ? '' : ` ${unit}`}`)
      .join(' | '),
    ...rows.slice(0, MOST).map((row) => row.map(cellText).join(' | ')),
    ...(rows.length > MOST ? [`… ${rows.length} rows, numbers adding up to ${sumOf(rows.flat())}`] : []),
    ...(note === undefined ? [] : [note]),
    '',
  ];
}

function figureLines([name, { data, layout }]: [string, Figure]): string[] {
  return [`[figure ${name}] ${leaves(layout)}`, ...data.map((trace) => `- ${leaves(trace)}`), ''];
}

/** Every text, number and list of a trace or a layout, with the path to it. */
function leaves(value: unknown, path = ''): string {
  if (Array.isArray(value) || ArrayBuffer.isView(value)) {
    const list = Array.from(value as ArrayLike<unknown>);
    if (list.some((one) => typeof one === 'object' && one !== null))
      return list
        .slice(0, MOST)
        .map((one, i) => leaves(one, `${path}.${i}`))
        .join('; ');
    const first = list.slice(0, MOST).map(leafText).join(', ');
    return `${path}=[${first}${list.length > MOST ? `, … ${list.length}, adding up to ${sumOf(list)}` : ''}]`;
  }
  if (typeof value === 'object' && value !== null)
    return Object.entries(value)
      .map(([key, one]) => leaves(one, path === '' ? key : `${path}.${key}`))
      .filter((text) => text !== '')
      .join('; ');
  return value === undefined ? '' : `${path}=${leafText(value)}`;
}

export function cellText(cell: TableCell): string {
  if (typeof cell === 'object' && cell !== null) return `(${cell.why})`;
  return leafText(cell);
}

function leafText(value: unknown): string {
  if (typeof value !== 'number') return String(value);
  return Number.isInteger(value) ? String(value) : String(Number(value.toPrecision(6)));
}

function sumOf(list: readonly unknown[]): string {
  let sum = 0;
  for (const one of list) if (typeof one === 'number' && Number.isFinite(one)) sum += one;
  return leafText(sum);
}
