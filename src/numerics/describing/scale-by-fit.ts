import { ln } from '../foundation/elementary.ts';

/** Fewer different values than this do not say how they are spread. */
const FEWEST_DIFFERENT = 6;
/** Twice the gain in log-likelihood that speaks for logarithms (Kass & Raftery 1995: positive evidence from 2). */
const WORTH_IT = 2;

/**
 * Are positive numbers spread more like a lognormal than like a normal? By the likelihood of both, each fitted to
 * them; the logarithm has to be better by more than a bare mention. False with a value at or below 0, or with few
 * different values.
 */
export function fitsLogarithm(values: ArrayLike<number>): boolean {
  const known = Array.from(values).filter(Number.isFinite);
  if (known.some((value) => value <= 0) || new Set(known).size < FEWEST_DIFFERENT) return false;
  const logs = known.map(ln);
  const sumOfLogs = logs.reduce((sum, value) => sum + value, 0);
  const n = known.length;
  const gain = n * (ln(spread(known)) - ln(spread(logs))) - sumOfLogs;
  return 2 * gain > WORTH_IT;
}

function spread(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) * (value - mean), 0) / values.length);
}
