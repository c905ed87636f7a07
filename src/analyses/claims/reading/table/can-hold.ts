import { plainSigns } from '../numbers.ts';
import { isPValue } from './blank.ts';
import type { HeadReading } from './heads.ts';

/** "2.3 (0.4)", "12 (34 %)", "2.3 ± 0.4": figures of one group, which no statistic of a test prints as. */
const OF_GROUP = /^[-+]?[\d.,]+\s*(?:[([]\s*[\d.,]+\s*(?:%|[-–;,]\s*[\d.,]+)?\s*[)\]]|±\s*[\d.,]+)/u;

/**
 * Whether cells can be what their head seems to name. "F", "P" and "TAU" are names of groups as often as of
 * statistics; what stands below them tells.
 *
 * @param cells those that are not empty.
 */
export function canHold(reading: HeadReading | undefined, cells: readonly string[]): boolean {
  if (reading === undefined || cells.length === 0) return true;
  const { role, second, ends } = reading;
  if (role === 'p') return cells.every((cell) => isPValue(cell));
  const plain = cells.map(plainSigns);
  const most = (fits: (cell: string) => boolean) => plain.filter(fits).length * 2 > plain.length;
  if (role === 'statistic' || role === 'correlation' || role === 'effect')
    if (second === undefined && ends === undefined && most((cell) => OF_GROUP.test(cell))) return false;
  if (role === 'correlation') return !most((cell) => Math.abs(firstNumber(cell)) > 1);
  return true;
}

function firstNumber(cell: string): number {
  return Number(/^[-+]?\d*[.,]?\d+/.exec(cell)?.[0].replace(',', '.') ?? '0');
}
