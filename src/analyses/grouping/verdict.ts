import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { GroupingFound } from './found.ts';
import type { GroupsVerdict, Restated, Trust } from './trust-found.ts';

/** Reading of a mean silhouette width: Kaufman & Rousseeuw 1990, chapter 2, table 4. */
export function structureOf(width: number | null): GroupingFound['structure'] {
  if (width === null || width <= 0.25) return 'none';
  return width > 0.7 ? 'strong' : width > 0.5 ? 'reasonable' : 'weak';
}

/**
 * Groups are claimed only with the consent of every kind of table without groups that could be drawn: shuffled
 * attributes (independent kinds), even clouds and single heaps (gradients).
 */
export function verdictOf(
  meanSilhouette: number | null,
  { shuffled, even, heap }: Pick<Trust, 'shuffled' | 'even' | 'heap'>,
  restated: Restated | null,
): GroupsVerdict {
  if (meanSilhouette === null) return 'no two groups';
  const toldBy = [shuffled, even, heap].map((one) => (isUnavailable(one) ? 'not drawn' : one.told));
  if (toldBy[0] === 'not told apart') return 'no better than shuffled';
  if (toldBy.includes('not told apart')) return 'no better than one heap';
  if (toldBy.includes('cannot be told') || !toldBy.includes('told apart')) return 'cannot be told';
  return restated === null ? 'groups' : 'one attribute';
}

/** Reading of a mean Jaccard coefficient over items drawn again: Hennig 2007; the limits are his. */
export function againOf(mean: number | null): 'found again' | 'doubtful' | 'dissolves' | 'cannot be told' {
  if (mean === null) return 'cannot be told';
  return mean >= 0.75 ? 'found again' : mean >= 0.6 ? 'doubtful' : 'dissolves';
}
