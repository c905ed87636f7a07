import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { spaceDistances, timeDistances, whereAndWhen } from '../../fragments/where-when.ts';
import { assemblageSimilarity, unlikeness } from '../../numerics/assemblages/similarity.ts';
import { dissimilarityAt } from '../../numerics/dissimilarity/condensed.ts';
import { permutationTest } from '../../numerics/resampling/permutation.ts';
import { mantelTest } from '../../numerics/tests/mantel.ts';
import { spearman } from '../../numerics/tests/trend.ts';
import type { AnalysisInput } from '../contract.ts';
import { toldAt } from '../verdicts.ts';
import type { NearerIn } from './found.ts';
import type { StandingOptions } from './options.ts';

type Side = 'space' | 'time';
type Tested = Omit<NearerIn, 'told'>;

/**
 * Do assemblages grow unlike with distance in space, or in time, each apart from the other (partial Mantel
 * tests on ranks over the assemblages whose place and date are known), and does this one (rank correlation of
 * its own unlikeness with its own distances)?
 */
export function nearerIn(
  items: FragmentTable,
  table: CrossedTable,
  site: number,
  options: StandingOptions,
  { random, register }: Pick<AnalysisInput, 'random' | 'register'>,
): NearerIn[] {
  const { spans, places, measure } = whereAndWhen(items, table, options.places, register);
  const geographic = !('why' in measure) && measure.geographic;
  const lacking = (side: Side): string | null => {
    if (side === 'space' && 'why' in measure) return measure.why;
    if (side === 'time' && spans.every((span) => span === null)) return 'no assemblage is dated';
    const known = side === 'space' ? places : spans;
    return known[site] === null
      ? `the site's own ${side === 'space' ? 'place' : 'date'} is not recorded`
      : null;
  };
  const material = (sides: readonly Side[]) => {
    const rows = table.rows.flatMap((_, row) =>
      sides.every((side) => (side === 'space' ? places : spans)[row] !== null) ? [row] : [],
    );
    const likeness = assemblageSimilarity(
      rows.map((row) => table.counts[row]),
      options.coefficient,
    );
    const distances = (side: Side) =>
      side === 'space'
        ? spaceDistances(
            rows.flatMap((row) => places[row] ?? []),
            geographic,
          )
        : timeDistances(rows.flatMap((row) => spans[row] ?? []));
    return { rows, unlike: unlikeness(likeness, options.coefficient), distances };
  };
  const all = (against: Side, apartFrom: Side | null): Tested => {
    const head = { who: 'all assemblages', against, apartFrom } as const;
    const sides = apartFrom === null ? [against] : [against, apartFrom];
    const why = sides.map(lacking).find((one) => one !== null);
    if (why) return { ...head, answer: { why } };
    const { unlike, distances } = material(sides);
    return {
      ...head,
      answer: mantelTest(unlike, distances(against), {
        random: random.stream(`${against} ${apartFrom}`),
        relabellings: options.relabellings,
        correlation: 'rank',
        ...(apartFrom === null ? {} : { apartFrom: distances(apartFrom) }),
      }),
    };
  };
  const own = (against: Side): Tested => {
    const head = { who: 'this one', against, apartFrom: null } as const;
    const why = lacking(against);
    if (why !== null) return { ...head, answer: { why } };
    const { rows, unlike, distances } = material([against]);
    const self = rows.indexOf(site);
    const others = rows.flatMap((_, place) => (place === self ? [] : [place]));
    if (others.length < 4)
      return { ...head, answer: { why: `needs 4 other assemblages, not ${others.length}` } };
    const far = distances(against);
    const x = others.map((place) => dissimilarityAt(far, self, place));
    const y = others.map((place) => dissimilarityAt(unlike, self, place));
    const whole = spearman(x, y);
    if ('why' in whole) return { ...head, answer: whole };
    const rho = (order: ArrayLike<number>) => {
      const answer = spearman(
        Array.from(order, (place) => x[place]),
        y,
      );
      return 'why' in answer ? 0 : answer.statistic;
    };
    const test = permutationTest(
      others.map((_, place) => place),
      rho,
      { random: random.stream(`own ${against}`), relabellings: options.relabellings, exactLimit: 6000 },
    );
    return { ...head, answer: { ...test, statistic: test.observed, n: others.length } };
  };
  return [
    all('space', null),
    all('time', null),
    all('space', 'time'),
    all('time', 'space'),
    own('space'),
    own('time'),
  ].map((one) => ({
    ...one,
    told: toldAt('why' in one.answer ? one.answer : one.answer.p, options.confidence),
  }));
}
