import type { Random } from '../../../numerics/foundation/random.ts';
import type { FigureCheck } from '../found.ts';
import { checkComposition } from './composition.ts';
import type { Evidence } from './evidence.ts';
import { checkPossible } from './possible.ts';
import { checkRepeats } from './repeats.ts';
import { checkBounds } from './samples/bounds.ts';
import { checkGrid } from './samples/grid.ts';
import { checkMeans } from './samples/means.ts';
import { checkReadings } from './samples/readings.ts';
import { checkSpacing } from './samples/spacing.ts';
import { checkShareIntervals } from './share-intervals.ts';
import { checkShares } from './shares.ts';
import { checkAnova } from './tables/anova.ts';
import { checkDerived } from './tables/expected.ts';
import { checkTableMeans } from './tables/table-means.ts';
import { checkTableShares } from './tables/table-shares.ts';
import { checkTableTests } from './tables/table-tests.ts';
import { checkTotals } from './tables/totals.ts';
import { checkTests } from './tests/check-tests.ts';
import { checkCoefficients } from './tests/coefficients.ts';
import { checkEffects } from './tests/effects.ts';

/**
 * Everything that printed figures say of each other; no data needed. Every number stands for all values
 * that print so, rounded or cut off, so that figures of one correct computation never contradict each other.
 */
export function checkPrint(evidence: Evidence, random: Random): FigureCheck[] {
  return [
    ...checkGrid(evidence),
    ...checkBounds(evidence),
    ...checkShares(evidence),
    ...checkShareIntervals(evidence),
    ...checkTotals(evidence),
    ...[...evidence.tables.values()].flatMap(checkTableShares),
    ...[...evidence.tables.values()].flatMap(checkTableMeans),
    ...[...evidence.tables.values()].flatMap(checkAnova),
    ...[...evidence.tables.values()].flatMap(checkDerived),
    ...checkEffects(evidence),
    ...checkRepeats(evidence),
    ...checkPossible(evidence),
    ...checkMeans(evidence),
    ...checkTests(evidence),
    ...checkCoefficients(evidence),
    ...checkTableTests(evidence, random),
    ...checkComposition(evidence),
    ...checkSpacing(evidence),
    ...checkReadings(evidence),
  ];
}
