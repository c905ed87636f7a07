import { exactShareLimits, jeffreysShareLimits } from '../../../numerics/assemblages/shares.ts';
import { wilsonLimits } from '../../../numerics/describing/wilson.ts';
import { normalQuantileUpper } from '../../../numerics/foundation/distributions.ts';

export interface ShareInterval {
  readonly said: string;
  readonly low: number;
  readonly high: number;
}

/**
 * Every ordinary interval of a share, the usual one first (Wilson 1927; Clopper & Pearson 1934; Newcombe 1998,
 * Stat. Med. 17:857, for the score limits with continuity correction; Agresti & Coull 1998, Am. Stat. 52:119).
 */
export function shareIntervals(count: number, n: number, level: number): readonly ShareInterval[] {
  if (n < 1) return [];
  const z = normalQuantileUpper((1 - level) / 2);
  const share = count / n;
  const half = z * Math.sqrt((share * (1 - share)) / n);
  const around = (count + (z * z) / 2) / (n + z * z);
  const wide = z * Math.sqrt((around * (1 - around)) / (n + z * z));
  const limits = [
    ['score limits', wilsonLimits(count, n, level)],
    ['exact limits', exactShareLimits(count, n, level)],
    ['score limits with continuity correction', correctedScore(count, n, z)],
    ['Jeffreys limits', jeffreysShareLimits(count, n, level)],
    ['normal approximation', { low: share - half, high: share + half }],
    [
      'normal approximation with continuity correction',
      { low: share - half - 0.5 / n, high: share + half + 0.5 / n },
    ],
    ['Agresti and Coull’s limits', { low: around - wide, high: around + wide }],
  ] as const;
  return limits.flatMap(([said, found]) =>
    'why' in found
      ? []
      : [
          { said: `${said}, ${Math.round(100 * level)} %`, low: found.low, high: found.high },
          // What lies beyond nought or the whole is often cut off there.
          ...(found.low < 0 || found.high > 1
            ? [
                {
                  said: `${said}, ${Math.round(100 * level)} %, cut off at its bounds`,
                  low: Math.max(0, found.low),
                  high: Math.min(1, found.high),
                },
              ]
            : []),
        ],
  );
}

function correctedScore(count: number, n: number, z: number): { low: number; high: number } {
  const share = count / n;
  const end = (side: 1 | -1) =>
    (2 * n * share +
      z * z +
      side * (1 + z * Math.sqrt(z * z + side * 2 - 1 / n + 4 * share * (n * (1 - share) - side)))) /
    (2 * (n + z * z));
  return { low: count === 0 ? 0 : end(-1), high: count === n ? 1 : end(1) };
}
