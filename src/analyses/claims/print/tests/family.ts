import { overlap, type Range } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { rangeOfFigure } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import { pReadings } from './p-of-statistic.ts';
import type { PrintedTest } from './test-groups.ts';

type Adjust = (p: readonly number[]) => number[];

/** Each p times the number of tests (Bonferroni). */
const bonferroni: Adjust = (p) => p.map((one) => Math.min(1, one * p.length));

/** From the smallest p on, times the number of tests that are left, never falling (Holm 1979, Scand. J. Stat. 6:65). */
const holm: Adjust = (p) => {
  const order = p.map((_, i) => i).sort((a, b) => p[a] - p[b]);
  const adjusted = [...p];
  let most = 0;
  order.forEach((at, rank) => {
    most = Math.max(most, Math.min(1, p[at] * (p.length - rank)));
    adjusted[at] = most;
  });
  return adjusted;
};

/** From the largest p on, times n over its rank, never rising (Benjamini & Hochberg 1995, J. R. Stat. Soc. B 57:289). */
const falseDiscovery: Adjust = (p) => {
  const order = p.map((_, i) => i).sort((a, b) => p[b] - p[a]);
  const adjusted = [...p];
  let least = 1;
  order.forEach((at, rank) => {
    least = Math.min(least, (p[at] * p.length) / (p.length - rank));
    adjusted[at] = least;
  });
  return adjusted;
};

const METHODS: readonly (readonly [name: string, adjust: Adjust])[] = [
  ['Holm', holm],
  ['Bonferroni', bonferroni],
  ['Benjamini and Hochberg', falseDiscovery],
];

/** One p of a family with the p that its statistic gives before any adjustment. */
interface Member {
  readonly p: PrintedFigure;
  readonly test: PrintedTest;
  readonly raw: Range;
}

/**
 * The p values of several tests that are printed together, where all of them are what one adjustment makes of
 * their statistics. Every adjustment rises with each p, so the ends of the ranges bound it.
 *
 * @returns a check for each p that is not its plain one; none where no adjustment fits all.
 */
export function familyChecks(tests: readonly PrintedTest[]): ReadonlyMap<string, FigureCheck> {
  const members = tests.flatMap((test): Member[] => {
    const [p] = test.p;
    if (p === undefined || test.p.length > 1 || p.values[0].relation === '~') return [];
    const [plain] = pReadings(test, p.sided);
    return plain === undefined ? [] : [{ p, test, raw: plain.range('any') }];
  });
  if (members.length < 2) return new Map();
  const fits = ({ p }: Member, range: Range) => overlap(range, rangeOfFigure(p, 'any'));
  const moved = members.filter((member) => !fits(member, member.raw));
  if (moved.length === 0) return new Map();
  for (const [name, adjust] of METHODS) {
    const low = adjust(members.map(({ raw }) => raw.low));
    const high = adjust(members.map(({ raw }) => raw.high));
    if (!members.every((member, i) => fits(member, { low: low[i], high: high[i] }))) continue;
    return new Map(
      moved.map(({ p, test }) => [
        p.id,
        {
          figure: p.id,
          name: 'p of its statistic',
          from: 'print',
          outcome: 'agrees',
          under: `an adjustment for ${members.length} tests after ${name}`,
          working: `The ${members.length} p values printed together are what an adjustment after ${name} makes of their statistics.`,
          with: [test.statistic.id],
        } satisfies FigureCheck,
      ]),
    );
  }
  return new Map();
}
