import { number, pText } from '../second-bed/styles.ts';
import { asCsv, type Cells, inColumns } from '../second-bed/table-text.ts';
import type { Writer } from './hands.ts';
import { at, type OpenSet } from './material.ts';

/** A value of a sample as this hand prints it; numbers of records whole, the ends and the median to the step. */
export function value(values: readonly number[], what: keyof typeof at, hand: Writer): string {
  if (what === 'n') return number(values[at.n], hand, 0);
  return number(values[at[what]], hand);
}

/** "3.5–4.2" within this hand's brackets. */
export function between(low: string, high: string, hand: Writer): string {
  return `${hand.ends[0]}${low}${hand.to}${high}${hand.ends[1]}`;
}

/** p of a column that is headed so: ".033", "<.001", "**". */
export function pCell(p: number, hand: Writer): string {
  return pText(p, hand, '').trim().replace(/^=\s*/, '');
}

export function asText(cells: Cells, hand: Writer): string {
  return hand.delimiter === 'blanks' ? inColumns(cells) : asCsv(cells, hand.delimiter);
}

/** Label of a measure with its unit or without. */
export function measure(set: OpenSet, id: string, unit = ''): string {
  return unit === '' ? set.measures[id] : `${set.measures[id]} (${unit})`;
}

export const kind = (set: OpenSet, id: string) => set.kinds[id];
