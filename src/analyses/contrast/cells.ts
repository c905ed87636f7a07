import type { ResultColumn, TableCell, Unavailable } from '../contract.ts';
import type { PooledAttribute } from '../shared/pooled/faces.ts';
import type { AttributeContrast, Effect } from './found.ts';

export const col = (id: string, label: string): ResultColumn => ({ id, label });

/** Estimate and both ends of an effect, or why they are lacking. */
export function effectCells(effect: Effect | Unavailable): TableCell[] {
  if ('why' in effect) return [effect, effect, effect];
  const { interval } = effect;
  return 'why' in interval
    ? [effect.estimate, interval, interval]
    : [effect.estimate, interval.low, interval.high];
}

/** One attribute as tables and figures of pooled means take it. */
export const pooledAttribute = ({ samples, pooled }: AttributeContrast): PooledAttribute => ({
  id: samples.attribute.id,
  label: samples.attribute.label,
  unit: samples.attribute.unit ?? '',
  pooled,
});
