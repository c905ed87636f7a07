import type { Random } from '../../../numerics/foundation/random.ts';
import type { Check } from '../found.ts';
import { checkAnova } from './anova.ts';
import { checkBounds } from './bounds.ts';
import { checkComposition } from './composition.ts';
import { checkEffects } from './effects.ts';
import type { Evidence } from './evidence.ts';
import { checkGrid } from './grid.ts';
import { checkMeans } from './means.ts';
import { checkPossible } from './possible.ts';
import { checkReadings } from './readings.ts';
import { checkRepeats } from './repeats.ts';
import { checkShares } from './shares.ts';
import { checkSpacing } from './spacing.ts';
import { checkTableMeans } from './table-means.ts';
import { checkTableShares } from './table-shares.ts';
import { checkTableTests } from './table-tests.ts';
import { checkTests } from './tests.ts';
import { checkTotals } from './totals.ts';

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
    ...[...evidence.tables.values()].flatMap(checkTableShares),
    ...[...evidence.tables.values()].flatMap(checkTableMeans),
    ...[...evidence.tables.values()].flatMap(checkAnova),
    ...checkEffects(evidence),
    ...checkRepeats(evidence),
    ...checkPossible(evidence),
    ...checkMeans(evidence),
    ...checkTests(evidence),
    ...checkTableTests(evidence, random),
    ...checkComposition(evidence),
    ...checkSpacing(evidence),
    ...checkReadings(evidence),
  ];
}
