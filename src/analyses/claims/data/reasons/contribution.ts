import { pointOf } from '../../../../fragments/accessors.ts';
import { requireColumn } from '../../../../fragments/require-column.ts';
import { filledRows, idOf, known, rowsOf } from '../values.ts';
import type { Trial } from './trial.ts';

/**
 * What a record brings to a figure, as a text: its cells in the attributes of the figure, and which of the figure's
 * conditions it meets. Records that bring the same leave the same figure behind when they are set aside.
 */
export function contributionsTo({ figure, view }: Trial): (row: number) => string {
  const { table, register } = view;
  const every = table.id.map((_, row) => row);
  const parts = figure.attributes.map((attribute) => {
    const column = requireColumn(table, idOf(attribute, register), register);
    const filled = new Set(filledRows(view, attribute, every));
    return (row: number) =>
      column.kind === 'numeric'
        ? [pointOf(column, row), column.low[row], column.high[row], filled.has(row)]
        : [column.raw[row].trim(), column.kind === 'term' ? column.codes[row] : '', filled.has(row)];
  });
  const conditions = [figure.select, figure.versus, figure.counted, ...(figure.selectOr ?? [])].flat();
  const met = [...conditions, ...known(conditions)].map((one) => new Set(rowsOf(view, [one])));
  return (row) => JSON.stringify([parts.map((part) => part(row)), met.map((rows) => rows.has(row))]);
}
