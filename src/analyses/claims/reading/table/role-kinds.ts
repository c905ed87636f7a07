import type { HeadReading, Role } from './heads.ts';

/** What kinds of roles there are: statistics beyond doubt, and what belongs to a test. */
const STATISTICS: ReadonlySet<Role> = new Set<Role>([
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
