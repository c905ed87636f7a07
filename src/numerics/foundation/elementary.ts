import stdlibExp from '@stdlib/math-base-special-exp';
import stdlibLn from '@stdlib/math-base-special-ln';
import stdlibPow from '@stdlib/math-base-special-pow';

/**
 * Elementary functions that give the same double on every machine. A JavaScript engine may round
 * Math.log, Math.exp and Math.pow as it likes, and engines differ in the last digit; these are written
 * out in plain arithmetic (after FreeBSD's msun), so results are byte-identical in Node and browsers.
 * Math.sqrt, abs, floor, round, min and max are exact by the standard and are used as they are.
 */

/** The natural logarithm of 2 in two parts, of which the first times a small whole number is exact. */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
/** Nearer to nought than this, 1 + x is the nearest double. */
const NEAR_ZERO = 2 ** -28;
/** Within this range every result is a normal number, and scaling it by a power of 2 is exact. */
const PLAIN = 690;
const MOST_TWOS = 1000;

/** 2 ** (i - MOST_TWOS), by doubling and halving alone. */
const POWERS_OF_TWO = new Float64Array(2 * MOST_TWOS + 1);
POWERS_OF_TWO[MOST_TWOS] = 1;
for (let i = 1; i <= MOST_TWOS; i++) {
  POWERS_OF_TWO[MOST_TWOS + i] = POWERS_OF_TWO[MOST_TWOS + i - 1] * 2;
  POWERS_OF_TWO[MOST_TWOS - i] = POWERS_OF_TWO[MOST_TWOS - i + 1] / 2;
}

/**
 * e to the power x. Densities ask for it millions of times: within PLAIN the steps of the package are taken here,
 * without its care for the ends of the range, and give the same double (FreeBSD's e_exp.c: x = k ln 2 + r, a
 * rational function of r, times 2 to the power k).
 */
export function exp(x: number): number {
  // Written so that what is no number goes to the package as well.
  if (!(x > -PLAIN && x < PLAIN)) return stdlibExp(x);
  if (x > -NEAR_ZERO && x < NEAR_ZERO) return 1 + x;
  const k = Math.trunc(x < 0 ? Math.LOG2E * x - 0.5 : Math.LOG2E * x + 0.5);
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const r = high - low;
  const t = r * r;
  const fitted =
    0.16666666666666602 +
    t *
      (-0.0027777777777015593 +
        t * (0.00006613756321437934 + t * (-0.0000016533902205465252 + t * 4.1381367970572385e-8)));
  const c = r - t * fitted;
  return (1 - (low - (r * c) / (2 - c) - high)) * POWERS_OF_TWO[MOST_TWOS + k];
}

const double = new Float64Array(1);
const halves = new Int32Array(double.buffer);
/** Place of the half that holds sign and exponent: machines differ in the order of bytes. */
const HIGH = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1 ? 1 : 0;

/**
 * Natural logarithm; NaN below 0, -Infinity at 0. Within the range of POWERS_OF_TWO the steps of the package are taken
 * here, as for `exp` (FreeBSD's e_log.c: x = 2 ** k times 1 + f, a rational function of f).
 */
export function ln(x: number): number {
  // Written so that what is no number goes to the package as well.
  if (!(x >= 1e-300 && x <= 1e300)) return stdlibLn(x);
  double[0] = x;
  const word = halves[HIGH];
  const high = word & 0x000fffff;
  // The neighbourhood of a power of two has steps of its own.
  if (((high + 2) & 0x000fffff) < 3) return stdlibLn(x);
  const k = ((word >> 20) - 1023 + (((high + 0x95f64) & 0x100000) >> 20)) | 0;
  const f = x * POWERS_OF_TWO[MOST_TWOS - k] - 1;
  const s = f / (2 + f);
  const z = s * s;
  const w = z * z;
  const odd = w * (0.3999999999940942 + w * (0.22222198432149784 + w * 0.15313837699209373));
  const even =
    z * (0.6666666666666735 + w * (0.2857142874366239 + w * (0.1818357216161805 + w * 0.14798198605116586)));
  const rest = even + odd;
  if (((high - 0x6147a) | (0x6b851 - high)) > 0) {
    const half = 0.5 * f * f;
    return k === 0
      ? f - (half - s * (half + rest))
      : k * LN2_HIGH - (half - (s * (half + rest) + k * LN2_LOW) - f);
  }
  return k === 0 ? f - s * (f - rest) : k * LN2_HIGH - (s * (f - rest) - k * LN2_LOW - f);
}

/** base to the power exponent, with the conventions of IEEE 754 (pow(0, 0) = 1). */
export function pow(base: number, exponent: number): number {
  return stdlibPow(base, exponent);
}
