import stdlibExp from '@stdlib/math-base-special-exp';
import stdlibLn from '@stdlib/math-base-special-ln';
import stdlibPow from '@stdlib/math-base-special-pow';

/**
 * Elementary functions that give the same double on every machine. A JavaScript engine may round
 * Math.log, Math.exp and Math.pow as it likes, and engines differ in the last digit; these are written
 * out in plain arithmetic (after FreeBSD's msun), so results are byte-identical in Node and browsers.
 * Math.sqrt, abs, floor, round, min and max are exact by the standard and are used as they are.
 */

/** Natural logarithm; NaN below 0, -Infinity at 0. */
export function ln(x: number): number {
  return stdlibLn(x);
}

/** e to the power x. */
export function exp(x: number): number {
  return stdlibExp(x);
}

/** base to the power exponent, with the conventions of IEEE 754 (pow(0, 0) = 1). */
export function pow(base: number, exponent: number): number {
  return stdlibPow(base, exponent);
}
