import type { StudyAnalysis } from '../../state/workspace.ts';

/** The options under which two comparanda are set against each other. */
export function comparisonOf(placement: StudyAnalysis): StudyAnalysis {
  const { of, weights, attributeWeights, mode, intervals, broad, ordinal, scaling, minimumOverlap } =
    placement;
  const shared = { of, weights, attributeWeights, mode, intervals, broad, ordinal, scaling, minimumOverlap };
  return {
    id: 'pair',
    kind: 'grouping',
    ...Object.fromEntries(Object.entries(shared).filter(([, value]) => value !== undefined)),
  };
}
