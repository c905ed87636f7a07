import { z } from 'zod';

/** How alike two assemblages are, for every analysis that compares counts of kinds. */

export const COEFFICIENTS = [
  'brainerd-robinson',
  'bray-curtis',
  'morisita-horn',
  'jaccard',
  'chi-square',
] as const;

export const coefficientOption = z.enum(COEFFICIENTS).default('brainerd-robinson').meta({
  title: 'Coefficient',
  description:
    'brainerd-robinson: shares, 0 to 200; bray-curtis: counts; morisita-horn: shares, led by common kinds; jaccard: presence alone; chi-square: a distance, led by rare kinds',
});

/** What each coefficient says, and where it runs. */
export const SAID = {
  'brainerd-robinson': 'Brainerd-Robinson coefficient (0 nothing in common, 200 equal shares)',
  'bray-curtis': 'Bray-Curtis similarity of counts (0 to 1; size matters)',
  'morisita-horn': 'Morisita-Horn overlap (0 to 1; led by common kinds)',
  jaccard: 'Jaccard coefficient of kinds present (0 to 1)',
  'chi-square': 'chi-square distance (0 equal profiles; led by rare kinds)',
} as const;

/** Its name in a sentence or at an axis. */
export const NAMED = {
  'brainerd-robinson': 'Brainerd-Robinson',
  'bray-curtis': 'Bray-Curtis',
  'morisita-horn': 'Morisita-Horn',
  jaccard: 'Jaccard',
  'chi-square': 'chi-square distance',
} as const;

/** What limits by drawing items again say, and what not; how far off they are: docs/methods/similarity.md. */
export const LIMITS_OF_LIKENESS =
  'Limits of likeness show how far a value moves when items are drawn again. Samples are less alike than what they were drawn from, the more so the fewer their items, and the limits do not make up for that; whether two may come from one source is told by its p.';
