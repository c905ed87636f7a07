import type { Random } from '../../numerics/foundation/random.ts';
import type { Check } from './check.ts';
import type { Evidence } from './evidence.ts';
import { checkBounds } from './self/bounds.ts';
import { checkComposition } from './self/composition.ts';
import { checkGrid } from './self/grid.ts';
import { checkMeans } from './self/means.ts';
import { checkReadings } from './self/readings.ts';
import { checkShares } from './self/shares.ts';
import { checkSpacing } from './self/spacing.ts';
import { checkTableTests } from './self/table-tests.ts';
import { checkTests } from './self/tests.ts';
import { checkTotals } from './self/totals.ts';

/**
 * Everything that printed figures say of each other; no data needed. Every number stands for all values
 * that print so, rounded or cut off, so that figures of one correct computation never contradict each other.
 */
export function checkPrint(evidence: Evidence, random: Random): Check[] {
  return [
    ...checkGrid(evidence),
    ...checkBounds(evidence),
    ...checkShares(evidence),
    ...checkTotals(evidence),
    ...checkMeans(evidence),
    ...checkTests(evidence),
    ...checkTableTests(evidence, random),
    ...checkComposition(evidence),
    ...checkSpacing(evidence),
    ...checkReadings(evidence),
  ];
}
