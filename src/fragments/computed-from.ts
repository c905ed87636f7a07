/** What each computed attribute is computed from; row spacing stands for density2, its inverse. */
export const COMPUTED_FROM: Readonly<Record<string, readonly string[]>> = {
  density2: ['rowSpacing'],
  rowGap: ['rowSpacing', 'rowWidth'],
  gapRatio: ['rowSpacing', 'rowWidth'],
  spacingClass: ['rowSpacing', 'rowWidth'],
  face: ['density1', 'rowSpacing'],
  balance: ['density1', 'rowSpacing'],
  logBalance: ['density1', 'rowSpacing'],
  cover1: ['diameter1', 'density1'],
  cover2: ['diameter2', 'rowSpacing'],
  openness: ['diameter1', 'density1', 'diameter2', 'rowSpacing'],
};
