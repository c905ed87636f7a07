import {
  exactFraction,
  numberOf,
  type PrintedNumber,
  powerOfTen,
  printsAs,
  ROUNDINGS,
  type Rounding,
  roundingsThatPrint,
  unitOf,
} from './printed-number.ts';

/** Sums in another order differ by no more than this share. */
const NOISE = 1e-12;

/**
 * Under which roundings does a computed number print so? Its last binary digits depend on the order of
 * additions, so the number is taken as known to about 12 digits: within that, one that lies at half a unit
 * of print is the tie itself, and print of more digits need only be as near as that.
 */
export function roundingsOf(value: number, printed: PrintedNumber): readonly Rounding[] {
  if (!Number.isFinite(value)) return [];
  const noise = Math.abs(value) * NOISE;
  const unit = unitOf(printed);
  if (2 * noise >= unit) return Math.abs(value - numberOf(printed)) <= noise + unit ? ROUNDINGS : [];
  const exact = exactFraction(value);
  const halves = 2n * powerOfTen(printed.decimals);
  const nearest = nearestWhole(exact.over * halves, exact.under);
  const snapped = { over: nearest, under: halves };
  if (Math.abs(Number(nearest) / Number(halves) - value) > noise) return roundingsThatPrint(exact, printed);
  // A program that cuts off may have cut the binary neighbour below.
  return ROUNDINGS.filter(
    (rounding) =>
      printsAs(snapped, printed, rounding) ||
      (rounding === 'truncated' && printsAs(exact, printed, rounding)),
  );
}

function nearestWhole(over: bigint, under: bigint): bigint {
  const twice = 2n * over + under;
  const quotient = twice / (2n * under);
  return twice < 0n && twice % (2n * under) !== 0n ? quotient - 1n : quotient;
}
