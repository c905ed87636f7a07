import { METHODS } from './methods.ts';
import { otherSelections } from './selections.ts';
import { SLIPS } from './slips.ts';
import type { Trial } from './trial.ts';

/**
 * The usual ways in which a correct computation comes out otherwise, each tried alone. A reason is given only
 * where exactly one fits; slips of the pen and single records, which fit by chance more easily, are tried
 * after the others.
 */
export function explain(trial: Trial): { readonly explained?: string; readonly also: readonly string[] } {
  const tiers: readonly (() => readonly string[])[] = [
    () => METHODS.flatMap((reason) => reason(trial) ?? []),
    () => otherSelections(trial.figure, trial.view),
    () => SLIPS.flatMap((reason) => reason(trial) ?? []),
  ];
  for (const tier of tiers) {
    const fitting = tier();
    if (fitting.length === 1) return { explained: fitting[0], also: [] };
    if (fitting.length > 1) return { also: fitting };
  }
  return { also: [] };
}
