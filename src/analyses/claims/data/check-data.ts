import type { AnalysisInput } from '../../contract.ts';
import type { Check } from '../check.ts';
import type { PrintedFigure } from '../claim.ts';

/** What the figures are recomputed from. */
export type Material = Pick<AnalysisInput, 'fragments' | 'records' | 'unit' | 'register'>;

export function checkData(
  _figures: readonly PrintedFigure[],
  _material: Material,
  _onProgress?: AnalysisInput['onProgress'],
): Check[] {
  return [];
}
