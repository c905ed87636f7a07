import { exp, ln } from '../../../numerics/foundation/elementary.ts';
import { mixedModel } from '../../../numerics/models/mixed-model.ts';
import type { Unavailable } from '../../contract.ts';

/** A group's mean as it stands, and drawn towards what the groups have in common. */
export interface PooledMean {
  readonly label: string;
  readonly n: number;
  readonly items: number;
  /** Geometric where ratios matter. */
  readonly mean: number;
  readonly pooled: number;
}

export interface PooledMeans {
  readonly geometric: boolean;
  /** What the groups vary about. */
  readonly common: number;
  /** Share of the variance that lies between groups: 0 where they do not differ, and all are drawn together. */
  readonly between: number;
  readonly groups: readonly PooledMean[];
}

/** Groups that pooling needs: of fewer nothing can be learnt about how groups vary. */
const FEWEST_GROUPS = 3;

/**
 * Means of many small groups, each drawn towards the common one by as much as its own readings are few: predictions of
 * a linear mixed model with random intercepts of groups, and of items where some have several readings.
 *
 * @param groups readings with the item of each.
 * @param geometric whether ratios matter; then all readings must be above 0.
 */
export function pooledMeans(
  groups: readonly {
    readonly label: string;
    readonly values: ArrayLike<number>;
    readonly items: readonly string[];
  }[],
  geometric: boolean,
): PooledMeans | Unavailable {
  const filled = groups.filter(({ values }) => values.length > 0);
  if (filled.length < FEWEST_GROUPS) return { why: 'pooling needs three groups with readings' };
  const scale = (value: number) => (geometric ? ln(value) : value);
  const back = (value: number) => (geometric ? exp(value) : value);
  const y = filled.flatMap(({ values }) => Array.from(values, scale));
  const codes = filled.flatMap(({ values }, group) => Array.from(values, () => group));
  // An item with readings in two groups is a thing of its own in each.
  const names = filled.flatMap(({ items }, group) => items.map((item) => `${group} ${item}`));
  const distinct = [...new Set(names)];
  const places = new Map(distinct.map((name, place) => [name, place]));
  const shared = distinct.length < names.length;
  const found = mixedModel({
    y,
    fixed: [y.map(() => 1)],
    groups: [
      { codes, count: filled.length },
      ...(shared ? [{ codes: names.map((name) => places.get(name) ?? 0), count: distinct.length }] : []),
    ],
  });
  if ('why' in found) return found;
  const total = found.variances.reduce((sum, value) => sum + value, found.residual);
  return {
    geometric,
    common: back(found.fixed[0].estimate),
    between: found.variances[0] / total,
    groups: filled.map(({ label, values, items }, group) => ({
      label,
      n: values.length,
      items: new Set(items).size,
      mean: back(Array.from(values, scale).reduce((sum, value) => sum + value, 0) / values.length),
      pooled: back(found.predict(0, group, [1]).estimate),
    })),
  };
}
