import { conditionsOf } from '../../fragments/conditions.ts';
import { correlationRatio } from '../../numerics/ordination/in-common.ts';
import type { AnalysisInput } from '../contract.ts';
import type { Axes, Besides, Carried, Ends, Followed, PlacedPoint, Unseen } from './found.ts';

/** What is said of finished axes: what they carry, what they go with, and what else goes with them as much. */

const SHOWN = 2;

export function carriedBy({ shares, sharesAtMost = false }: Axes): Carried {
  const shown = shares.slice(0, SHOWN);
  let sum = 0;
  for (const share of shown) {
    if (typeof share !== 'number') return { axes: shown.length, share, atMost: sharesAtMost };
    sum += share;
  }
  return { axes: shown.length, share: sum, atMost: sharesAtMost };
}

/** An attribute must share this much of an axis to be named with it. */
const NAMED = 0.25;
const MOST_NAMED = 3;

export function followedBy({ attributes, shares }: Axes): readonly Followed[] {
  return shares.slice(0, SHOWN).map((_, axis) => ({
    axis: axis + 1,
    attributes: attributes
      .flatMap(({ label, shares: own }) => (own[axis] >= NAMED ? [{ label, share: own[axis] }] : []))
      .sort((a, b) => b.share - a.share)
      .slice(0, MOST_NAMED),
  }));
}

/** Of when and by whom things were made axes are to tell: that is no condition of theirs. */
const TOLD_BY_AXES = ['period'];

/**
 * What goes with the first two axes without making them: how finds were recorded, recovered and kept, their structure and
 * size, where more than one occurs and none of them is compared or laid over the axes; and what could not be looked at.
 */
export function besidesOf(
  { records, register }: AnalysisInput,
  axes: Axes,
  compared: readonly string[],
): { readonly besides: readonly Besides[]; readonly unseen: Unseen } {
  if (axes.rows.length === 0) return { besides: [], unseen: { unknown: [], scarce: [] } };
  const conditions = conditionsOf(records, axes.rows, compared, null, register).filter(
    ({ id, own }) => !own && !TOLD_BY_AXES.includes(id),
  );
  const inState = (asked: 'unknown' | 'scarce') =>
    conditions.flatMap(({ label, state }) => (state === asked ? [{ label }] : []));
  return {
    besides: conditions
      .filter(({ state }) => state === 'looked at')
      .flatMap(({ label, of }) =>
        axes.shares.slice(0, SHOWN).flatMap((_, axis): Besides[] => {
          const share = freed(
            Array.from(of, (kind) => (kind < 0 ? null : String(kind))),
            axes.records.map(({ at }) => at[axis]),
          );
          if (!(share >= NAMED)) return [];
          const most = axes.attributes
            .map(({ shares: own }) => own[axis])
            .filter(Number.isFinite)
            .reduce((best, own) => Math.max(best, own), 0);
          return [{ label, axis: axis + 1, share, overturns: share >= most }];
        }),
      ),
    unseen: { unknown: inState('unknown'), scarce: inState('scarce') },
  };
}

/** Correlation ratio less what as many groups share by chance (epsilon squared, Kelley 1935). */
function freed(terms: readonly (string | null)[], at: readonly number[]): number {
  const known = terms.filter((term) => term !== null);
  const groups = new Set(known).size;
  if (groups < 2 || known.length <= groups) return Number.NaN;
  const ratio = correlationRatio(terms, at);
  return 1 - ((1 - ratio) * (known.length - 1)) / (known.length - groups);
}

/** Of a table of counts: of the active rows on either side of the first axis, the one that makes the most of it. */
export function endsOf(records: readonly PlacedPoint[]): Ends | null {
  const end = (sign: 1 | -1) =>
    records
      .filter(({ at, contributions }) => contributions.length > 0 && sign * at[0] > 0)
      .reduce<PlacedPoint | null>(
        (best, one) => (best === null || one.contributions[0] > best.contributions[0] ? one : best),
        null,
      );
  const [low, high] = [end(-1), end(1)];
  return low === null || high === null ? null : { low: low.label, high: high.label };
}

/** Below this share of its squared distance a point may lie elsewhere than it seems. */
const POOR = 0.25;

export function poorlyShown({ passive }: Axes): number {
  return passive.filter(({ cos2 }) => (cos2[0] ?? 0) + (cos2[1] ?? 0) < POOR).length;
}
