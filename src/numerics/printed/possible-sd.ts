import { possibleMean } from './possible-mean.ts';
import { type PrintedNumber, powerOfTen, type Rounding } from './printed-number.ts';

export interface PossibleSd {
  readonly possible: boolean;
  /** One sum and sum of squares (in steps of the readings) that print so; undefined when impossible. */
  readonly example?: { readonly sum: bigint; readonly sumOfSquares: bigint };
  readonly why: string;
}

/**
 * Can readings on a grid have this mean together with this standard deviation? The sum of squares of
 * whole numbers is whole and as odd or even as their sum, and not every such number can be reached by
 * a few readings (Anaya 2016, "The GRIMMER test"; parity: Allard 2018; for n up to 4 the sums of
 * squares that exist are listed).
 *
 * @param divisor `n - 1` for a sample (default), `n` for a population.
 * @param perUnit as for possibleMean.
 */
export function possibleSd(
  mean: PrintedNumber,
  sd: PrintedNumber,
  n: number,
  { perUnit = 1, divisor = 'n - 1' }: { perUnit?: number; divisor?: 'n - 1' | 'n' } = {},
): PossibleSd {
  const { sums } = possibleMean(mean, n, perUnit);
  if (sums.length === 0) return { possible: false, why: `no ${n} readings have the printed mean` };
  if (sd.digits < 0n) return { possible: false, why: 'a standard deviation cannot be negative' };
  if (n < 2 && divisor === 'n - 1')
    return { possible: false, why: 'a single reading has no standard deviation' };
  const size = BigInt(n);
  const free = divisor === 'n' ? size : size - 1n;
  for (const sum of sums) {
    for (const sumOfSquares of squaresThatPrint(sum, sd, size, free, BigInt(perUnit))) {
      if ((sumOfSquares - sum) % 2n !== 0n || !reachable(sum, sumOfSquares, n)) continue;
      return {
        possible: true,
        example: { sum, sumOfSquares },
        why: 'readings with this mean and spread exist',
      };
    }
  }
  return { possible: false, why: `no ${n} readings with the printed mean have this standard deviation` };
}

const MODES: readonly Rounding[] = ['half-up', 'half-even', 'truncated'];

/** Whole sums of squares whose standard deviation prints as given, under any rounding. */
function* squaresThatPrint(
  sum: bigint,
  sd: PrintedNumber,
  n: bigint,
  free: bigint,
  perUnit: bigint,
): Generator<bigint> {
  const scale = powerOfTen(sd.decimals);
  // sd = sqrt((n Q - S^2) / (n free)) / perUnit, so n Q - S^2 = (sd perUnit)^2 n free.
  const product = n * free * perUnit * perUnit;
  const from = 2n * sd.digits - 1n;
  const least = from <= 0n ? 0n : (from * from * product) / (4n * scale * scale);
  const to = sd.digits + 1n;
  const most = (to * to * product) / (scale * scale) + 1n;
  const first = (sum * sum + least) / n;
  const last = (sum * sum + most) / n + 1n;
  for (let squares = first; squares <= last; squares++) {
    const over = n * squares - sum * sum;
    if (over < 0n) continue;
    if (MODES.some((mode) => rootPrintsAs(over, product, sd, mode))) yield squares;
  }
}

/** Does sqrt(over / under) print so? Compared by squares, so no root is ever rounded. */
function rootPrintsAs(
  over: bigint,
  under: bigint,
  { digits, decimals }: PrintedNumber,
  rounding: Rounding,
): boolean {
  const value = over * powerOfTen(2 * decimals);
  const square = (twice: bigint) => twice * twice * under;
  if (rounding === 'truncated')
    return value >= digits * digits * under && value < (digits + 1n) * (digits + 1n) * under;
  const low = 2n * digits - 1n;
  const high = 2n * digits + 1n;
  const even = digits % 2n === 0n;
  const tieBelow = rounding === 'half-up' || even;
  const tieAbove = rounding === 'half-even' && even;
  const aboveLow = low < 0n || 4n * value > square(low) || (tieBelow && 4n * value === square(low));
  const belowHigh = 4n * value < square(high) || (tieAbove && 4n * value === square(high));
  return aboveLow && belowHigh;
}

/**
 * Do n whole numbers with this sum and sum of squares exist? The parity is right already. From five
 * numbers on, every such sum of squares above the least one exists; for fewer they are looked for.
 */
function reachable(sum: bigint, sumOfSquares: bigint, n: number): boolean {
  const size = BigInt(n);
  const each = sum >= 0n ? sum / size : -((-sum + size - 1n) / size);
  const rest = sum - each * size;
  // Measured from `each`, the least spread has `rest` ones and otherwise zeros.
  const spread = sumOfSquares - 2n * each * sum + size * each * each;
  if (spread < rest) return false;
  return n >= 5 || search(n, Number(rest), Number(spread));
}

function search(n: number, sum: number, squares: number): boolean {
  if (squares < 0) return false;
  if (n === 1) return sum * sum === squares;
  const most = Math.floor(Math.sqrt(squares));
  if (n === 2) {
    const twice = 2 * squares - sum * sum;
    const root = Math.round(Math.sqrt(Math.max(0, twice)));
    return twice >= 0 && root * root === twice && (root + sum) % 2 === 0;
  }
  for (let value = -most; value <= most; value++)
    if (search(n - 1, sum - value, squares - value * value)) return true;
  return false;
}
