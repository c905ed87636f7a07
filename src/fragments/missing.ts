import { CELL_STATES, type CellState } from '../cells/reading.ts';
import type { Column } from './table.ts';

/**
 * The one definition of *missing*: a row has no value of an attribute when there is no number, no term
 * or no text in it, whatever the reason. `absent` on a yes/no attribute is a value (somebody looked);
 * on any other it is a reason for having none.
 */
export function isMissing(column: Column, row: number): boolean {
  switch (column.kind) {
    case 'numeric':
      return Number.isNaN(column.low[row]);
    case 'term':
      return column.codes[row] < 0 && !saysNo(column, row);
    case 'text':
      return column.raw[row].trim() === '' || stateAt(column, row) !== 'measured';
  }
}

/** Why there is no value, or how there is one. */
export function stateAt(column: Column, row: number): CellState {
  return CELL_STATES[column.state[row]];
}

function saysNo(column: Column, row: number): boolean {
  const yesNo = column.attribute.scale === 'presence' || column.attribute.scale === 'binary';
  return yesNo && stateAt(column, row) === 'absent';
}
