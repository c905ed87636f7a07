import type { Quantity } from '../terms.ts';
import type { HeadReading, Role } from './heads.ts';

/** Statistics of the readings of one sample. */
const OF_READINGS = [
  'mean',
  'sd',
  'se',
  'cv',
  'median',
  'q1',
  'q3',
  'iqr',
  'min',
  'max',
  'range',
] as const satisfies readonly Quantity[];

/** Those, and the ends of an interval, which are of one sample or of a difference. */
export const SAMPLED: ReadonlySet<Quantity> = new Set<Quantity>([...OF_READINGS, 'low', 'high']);

/** What a head names beyond doubt. */
const STATISTICS: ReadonlySet<Role> = new Set<Role>([
  ...OF_READINGS,
  'interval',
  'p',
  'df',
  'sum-of-squares',
  'mean-square',
]);

/** Whether a head names a statistic beyond doubt; "low", "n" and "d" may be kinds or numbers of anything. */
export function isStatistic(reading: HeadReading | undefined): boolean {
  return reading !== undefined && (STATISTICS.has(reading.role) || reading.role === 'n');
}

export const OF_TEST: ReadonlySet<Role> = new Set<Role>(['statistic', 'df', 'p', 'effect', 'correlation']);

/** Whether a head names p or degrees of freedom beyond doubt; "t" or "d" do so only beside them. */
export function isOfTest(reading: HeadReading | undefined): boolean {
  return reading?.role === 'p' || reading?.role === 'df';
}
