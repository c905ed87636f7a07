import { printYear } from '../../analyses/phrasing.ts';
import { marksOf } from '../../analyses/shared/figure/marks.ts';
import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { CELL_STATES } from '../../cells/reading.ts';
import { derivedWords } from '../../fragments/derived/origin.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import type { Prepared } from '../../study/prepare.ts';
import { readable } from '../parts/numbers.ts';
import { rowDrawing } from './drawing-view.ts';
import type { Labels } from './protocol.ts';
import type { RecordCell, RecordView } from './views/records.ts';

/** Records as people read them: labels for the plots, and the way back from a point to its cells. */

export function termLabel(register: Register, attribute: AttributeDefinition, id: string): string {
  const vocabulary = register.vocabularies.get(attribute.vocabulary ?? '');
  return vocabulary?.terms.find((term) => term.id === id)?.label ?? id;
}

/** One reading in words; "" where there is none. */
export function readingWords(register: Register, column: Column, row: number): string {
  if (column.kind === 'text') return column.raw[row] ?? '';
  if (column.kind === 'term') {
    const level = column.levels[column.codes[row] ?? -1];
    return level === undefined ? '' : termLabel(register, column.attribute, level);
  }
  const [low, high] = [column.low[row] ?? Number.NaN, column.high[row] ?? Number.NaN];
  if (Number.isNaN(low)) return '';
  const unit = column.attribute.unit === undefined ? '' : ` ${column.attribute.unit}`;
  const about = CELL_STATES[column.state[row] ?? 0] === 'approximate' ? ', about' : '';
  if (column.attribute.unit === 'year') return `${printYear(low)} to ${printYear(high)}`;
  if (low === high) return `${readable(low)}${unit}${about}`;
  if (high === Number.POSITIVE_INFINITY) return `${readable(low)}${unit} or more`;
  return `${readable(low)} to ${readable(high)}${unit}${about}`;
}

export function labelsOf(
  { fragments, records, register, study }: Prepared,
  attributes: readonly string[],
): { readonly ids: readonly string[]; readonly labels: Labels; readonly orders: Labels } {
  const labels: Record<string, readonly string[]> = {};
  const orders: Record<string, readonly string[]> = {};
  for (const id of attributes) {
    orders[id] = [...marksOf({ fragments, register, marks: study.marks }, id).keys()];
    const column = records.columns.get(id);
    labels[id] =
      id === 'assemblage'
        ? records.assemblage
        : Array.from({ length: records.rows }, (_, row) =>
            column === undefined ? '' : readingWords(register, column, row),
          );
  }
  return { ids: records.id, labels, orders };
}

/** A record with the fragments it stands for, each with its cells and the line of the file. */
export function recordView(prepared: Prepared, id: string): RecordView | null {
  const { fragments, records } = prepared;
  const at = records.id.indexOf(id);
  if (at < 0) return null;
  const rows = rowsOf(fragments, id, records.item[at] ?? id, prepared.unit);
  return {
    id,
    item: records.item[at] ?? id,
    assemblage: records.assemblage[at] ?? '',
    fragments: rows.map((row) => {
      const origin = fragments.origin[row];
      const source = prepared.sources.find(({ name }) => name === fragments.sources[origin?.source ?? -1]);
      const line = source?.grid[(origin?.row ?? 0) - 1] ?? [];
      return {
        id: fragments.id[row] ?? '',
        source: fragments.sources[origin?.source ?? -1] ?? '',
        row: origin?.row ?? 0,
        cells: cellsOf(prepared.register, fragments, row),
        drawing: rowDrawing(prepared.register, fragments, row),
        line: (source?.columns ?? [])
          .map((column) => ({ header: column.header, text: line[column.index] ?? '' }))
          .filter(({ text }) => text !== ''),
      };
    }),
  };
}

function rowsOf(fragments: FragmentTable, id: string, item: string, unit: 'item' | 'fragment'): number[] {
  const rows: number[] = [];
  for (let row = 0; row < fragments.rows; row++) {
    if (unit === 'item' ? fragments.item[row] === item : fragments.id[row] === id) rows.push(row);
  }
  return rows;
}

function cellsOf(register: Register, table: FragmentTable, row: number): RecordCell[] {
  const cells: RecordCell[] = [];
  for (const [id, column] of table.columns) {
    const raw = column.raw[row] ?? '';
    const readAs = readingWords(register, column, row);
    if (raw === '' && readAs === '') continue;
    const { label, unit } = column.attribute;
    const from = derivedWords(table, id, row, register);
    cells.push({
      attribute: id,
      label,
      ...(unit === undefined ? {} : { unit }),
      raw,
      ...(from === null ? {} : { from }),
      readAs,
      state: CELL_STATES[column.state[row] ?? 0] ?? 'measured',
    });
  }
  return cells;
}
