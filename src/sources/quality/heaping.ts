import type { FragmentTable } from '../../fragments/table.ts';
import { chiSquaredUpper } from '../../numerics/foundation/distributions.ts';

/** Preference for certain last digits, which says how finely somebody really measured. */
export interface Heaping {
  readonly attribute: string;
  /** Readings printed to the same digit, whose last digit could be compared. */
  readonly n: number;
  /** How often each last digit 0 … 9 occurs. */
  readonly digits: readonly number[];
  /** Share that ends in 0 or 5; 0.2 without preference. */
  readonly zeroOrFive: number;
  /** Chi-squared against equal frequencies, 9 degrees of freedom. */
  readonly statistic: number;
  readonly p: number;
  /** Whether chance would so seldom do it that the preference is worth a word. */
  readonly preferred: boolean;
}

/** Last digits that would come about less often than this by chance are worth a word. */
const PREFERRED = 0.001;

/** Expected frequencies below 5 make the test unreliable (Cochran 1954, Biometrics 10:417). */
const FEWEST = 50;
/** Numbers that span fewer steps than this cannot take all last digits evenly. */
const LEAST_SPAN = 20;

/**
 * Terminal-digit preference for each numeric attribute: the last printed digit of every single number in
 * the cells as they stand in the source, among those printed to the commonest number of decimals.
 * Attributes with fewer than 50 such readings, or whose readings span fewer than 20 of their last units,
 * are left out: there even fingers would be uneven. Common practice of survey quality checks.
 */
export function heaping(table: FragmentTable): Heaping[] {
  const found: Heaping[] = [];
  for (const [id, column] of table.columns) {
    if (column.kind !== 'numeric' || column.attribute.unit === 'year') continue;
    const byDecimals = new Map<number, number[]>();
    for (const raw of column.raw) {
      const match = /^\D*(\d+)(?:[.,](\d+))?\D*$/.exec(raw);
      if (match === null) continue;
      const decimals = match[2]?.length ?? 0;
      const units = Number(`${match[1]}${match[2] ?? ''}`);
      if (!Number.isSafeInteger(units)) continue;
      const list = byDecimals.get(decimals);
      if (list === undefined) byDecimals.set(decimals, [units]);
      else list.push(units);
    }
    const values = [...byDecimals.values()].sort((a, b) => b.length - a.length)[0] ?? [];
    if (values.length < FEWEST || spread(values) < LEAST_SPAN) continue;
    const digits = Array.from({ length: 10 }, () => 0);
    for (const value of values) digits[value % 10]!++;
    const expected = values.length / 10;
    const statistic = digits.reduce(
      (sum, count) => sum + ((count - expected) * (count - expected)) / expected,
      0,
    );
    const p = chiSquaredUpper(statistic, 9);
    found.push({
      attribute: id,
      n: values.length,
      digits,
      zeroOrFive: (digits[0]! + digits[5]!) / values.length,
      statistic,
      p,
      preferred: p < PREFERRED,
    });
  }
  return found;
}

/** Middle 80 % of the values, so that one slip of the pen does not widen it. */
function spread(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.floor(share * (sorted.length - 1))]!;
  return at(0.9) - at(0.1);
}
