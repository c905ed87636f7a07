import type { ResultColumn, TableCell, Unavailable } from '../contract.ts';
import type { Effect } from './found.ts';

export const col = (id: string, label: string): ResultColumn => ({ id, label });

/** Estimate and both ends of an effect, or why they are lacking. */
export function effectCells(effect: Effect | Unavailable): TableCell[] {
  if ('why' in effect) return [effect, effect, effect];
  const { interval } = effect;
  return 'why' in interval
    ? [effect.estimate, interval, interval]
    : [effect.estimate, interval.low, interval.high];
}
