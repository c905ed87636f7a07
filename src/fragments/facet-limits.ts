import type { Register } from '../attributes/definition.ts';
import { FACE_THRESHOLDS, type FaceThresholds } from './face-from-counts.ts';
import { DEFAULT_THRESHOLDS, type SpacingThresholds } from './spacing-class.ts';

/**
 * Where the states of a derived facet part: as the study says, else as proposed. What is derived and what is checked
 * against the record go by the same limits.
 */
export function limitsOf({ limits }: Register): {
  readonly openness: SpacingThresholds;
  readonly face: FaceThresholds;
} {
  return {
    openness: { ...DEFAULT_THRESHOLDS, ...limits?.openness },
    face: { ...FACE_THRESHOLDS, ...limits?.face },
  };
}
