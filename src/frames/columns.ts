import { midpoint, termAt } from '../fragments/accessors.ts';
import type { Column, FragmentTable, NumericColumn } from '../fragments/table.ts';
import type { FrameValue } from './danfo.ts';

/**
 * How interval readings go into one-valued cells: `midpoint` gives one number a reading (none where an
 * end is open), `ends` a column for each end wherever any reading of the attribute has two.
 */
export type NumberForm = 'midpoint' | 'ends';

/** A column as data frames and spreadsheets have them: a name, a type, one value a row. */
export interface PlainColumn {
  readonly name: string;
  readonly type: 'string' | 'number';
  readonly values: readonly FrameValue[];
}

/**
 * The fragment table as plain columns: fragment, item, assemblage, then one (or two, see NumberForm) for
 * each attribute, named by its id. Missing is null in both types; the state of a missing cell is lost
 * here, so that counting "not observed" must be done on the table itself.
 */
export function plainColumns(table: FragmentTable, numbers: NumberForm): PlainColumn[] {
  const taken = new Set(['fragment', 'item', 'assemblage']);
  const own: PlainColumn[] = [
    text('fragment', table.id),
    text('item', table.item),
    text('assemblage', table.assemblage),
  ];
  const rest = [...table.columns].filter(([id]) => !taken.has(id));
  return [...own, ...rest.flatMap(([id, column]) => plain(id, column, table.rows, numbers))];
}

function plain(id: string, column: Column, rows: number, numbers: NumberForm): PlainColumn[] {
  switch (column.kind) {
    case 'text':
      return [text(id, column.raw)];
    case 'term': {
      const values = Array.from({ length: rows }, (_, row) => termAt(column, row));
      return [{ name: id, type: 'string', values }];
    }
    case 'numeric': {
      if (numbers === 'midpoint') {
        const values = Array.from({ length: rows }, (_, row) => finite(midpoint(column, row)));
        return [{ name: id, type: 'number', values }];
      }
      const low: PlainColumn = { name: `${id} low`, type: 'number', values: Array.from(column.low, finite) };
      const high: PlainColumn = {
        name: `${id} high`,
        type: 'number',
        values: Array.from(column.high, finite),
      };
      return isExact(column) ? [{ ...low, name: id }] : [low, high];
    }
  }
}

function isExact(column: NumericColumn): boolean {
  return column.low.every((low, row) => Number.isNaN(low) || low === column.high[row]);
}

function text(name: string, values: readonly string[]): PlainColumn {
  return { name, type: 'string', values: values.map((value) => (value === '' ? null : value)) };
}

/** An open end has no number to stand in a cell. */
function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
