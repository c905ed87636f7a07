import type { EndsApart, NumberGroup } from './found.ts';

const medianOf = ({ quartiles }: NumberGroup) => quartiles?.[1] ?? Number.NaN;

/** The groups of one attribute that may be quoted, by their medians. */
export function byMedian(groups: readonly NumberGroup[]): readonly NumberGroup[] {
  return groups
    .filter((group) => !group.whole && group.quotable && group.quartiles !== null)
    .sort((a, b) => medianOf(a) - medianOf(b));
}

/**
 * Whether a summary may rank: the least and the greatest median were picked because they are that, so that they are
 * ranked only where the limits of the one end below those of the other. A rule of caution and no test; contrast tests.
 */
export function endsOf(numbers: readonly NumberGroup[]): ReadonlyMap<string, EndsApart> {
  const ids = [...new Set(numbers.map(({ attribute }) => attribute))];
  return new Map(
    ids.map((id) => [id, endsApart(byMedian(numbers.filter(({ attribute }) => attribute === id)))] as const),
  );
}

function endsApart(ordered: readonly NumberGroup[]): EndsApart {
  const [least, greatest] = [ordered[0]?.limits, ordered[ordered.length - 1]?.limits];
  if (least == null || greatest == null) return 'unknown';
  if ('why' in least.medianLimits || 'why' in greatest.medianLimits) return 'unknown';
  return least.medianLimits.high < greatest.medianLimits.low ? 'apart' : 'overlap';
}
