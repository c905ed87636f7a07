import {
  type PrintedNumber,
  powerOfTen,
  ROUNDINGS,
  type Rounding,
  roundingsThatPrint,
} from './printed-number.ts';

export interface PossibleMean {
  readonly possible: boolean;
  /** Whole-number sums (in steps of the readings) whose mean prints so; empty when impossible. */
  readonly sums: readonly bigint[];
  /** Roundings under which one of the sums prints so. */
  readonly roundings: readonly Rounding[];
  /** Nearest means that do exist, below and above, as fractions of the sum over n steps. */
  readonly below: { readonly sum: bigint; readonly mean: number };
  readonly above: { readonly sum: bigint; readonly mean: number };
}

/**
 * Can readings on a grid have this mean? A mean of n whole numbers is a whole number over n, so many
 * printed means are impossible for small n (Brown & Heathers 2017, Soc. Psychol. Pers. Sci. 8:363).
 *
 * @param n number of readings, at least 1.
 * @param perUnit steps of the readings in one unit: 1 for whole numbers, 2 for halves, 10 for tenths;
 *   for a mean of means of k whole numbers, k.
 */
export function possibleMean(printed: PrintedNumber, n: number, perUnit = 1): PossibleMean {
  const under = BigInt(n) * BigInt(perUnit);
  const scale = powerOfTen(printed.decimals);
  const near = floorDivide(printed.digits * under, scale);
  // A step of print may hold many sums; those at its two ends decide where to stop.
  const reach = under / scale + 2n;
  const sums: bigint[] = [];
  const found = new Set<Rounding>();
  for (let sum = near - reach; sum <= near + reach; sum++) {
    const roundings = roundingsThatPrint({ over: sum, under }, printed);
    if (roundings.length > 0) sums.push(sum);
    for (const rounding of roundings) found.add(rounding);
  }
  const at = (sum: bigint) => ({ sum, mean: Number(sum) / Number(under) });
  const exact = near * scale === printed.digits * under;
  return {
    possible: sums.length > 0,
    sums,
    roundings: ROUNDINGS.filter((rounding) => found.has(rounding)),
    below: at(near),
    above: at(exact ? near : near + 1n),
  };
}

function floorDivide(a: bigint, b: bigint): bigint {
  const quotient = a / b;
  return a % b !== 0n && a < 0n !== b < 0n ? quotient - 1n : quotient;
}
