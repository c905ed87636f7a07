/**
 * Does the guard against conditions keep its word? Two sites of 40 finds and a condition of two kinds; values normal
 * with standard deviation 1, or two kinds of thing.
 *
 *   npm run simulate -- conditions [runs], some minutes for 1000 runs.
 *
 * Printed for each planted situation: how often the sites are told apart with no condition taken into account, how often
 * they are and the answer says so without a word on the condition, and how often it is that the difference is
 * reversed, gone, only there within it, or not to be told from it.
 */
import { guardAgainst } from '../../src/analyses/shared/guard/compute.ts';
import { toldAt } from '../../src/analyses/verdicts.ts';
import { normalQuantileUpper } from '../../src/numerics/foundation/distributions.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { midranks } from '../../src/numerics/foundation/ranks.ts';
import { fisherExact } from '../../src/numerics/tests/fisher-exact.ts';
import { mannWhitney } from '../../src/numerics/tests/mann-whitney.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(1000);
const root = createRandom(31);
const normal = (random: Random) => normalQuantileUpper(1 - Math.max(random.next(), 1e-15));
const PER_SITE = 40;
const VERDICTS = [
  'reversed within it',
  'vanishes within it',
  'appears within it',
  'cannot be told apart',
] as const;

interface Planted {
  readonly name: string;
  /** Share of each site's finds of the first kind of the condition. */
  readonly shares: readonly [number, number];
  /** What the site and the condition add, in standard deviations. */
  readonly site: number;
  readonly condition: number;
}

const PLANTED: readonly Planted[] = [
  { name: 'nothing', shares: [0.5, 0.5], site: 0, condition: 0 },
  { name: 'condition goes with the sites, does nothing', shares: [0.75, 0.25], site: 0, condition: 0 },
  { name: 'condition alone makes it', shares: [0.75, 0.25], site: 0, condition: 1.5 },
  { name: 'condition alone makes it, nearly one each', shares: [0.93, 0.07], site: 0, condition: 1.5 },
  { name: 'site makes it, condition has nothing to do with it', shares: [0.5, 0.5], site: 1, condition: 0 },
  { name: 'site makes it, condition goes with the sites', shares: [0.7, 0.3], site: 1, condition: 0 },
  { name: 'reversed', shares: [0.85, 0.15], site: -1, condition: 3 },
  { name: 'hidden', shares: [0.75, 0.25], site: -1, condition: 2 },
];

const clean = (told: string, changes: number) => told === 'told apart' && changes === 0;
const share = (count: number) => `${((100 * count) / runs).toFixed(1)} %`;

for (const kinds of [false, true]) {
  process.stdout.write(
    `| ${kinds ? 'kinds' : 'numbers'}: planted | told apart, plain | without a word | reversed | gone | only within | not to be told |\n|---|---|---|---|---|---|---|\n`,
  );
  for (const { name, shares, site, condition } of PLANTED) {
    const counts = { plain: 0, clean: 0, ...Object.fromEntries(VERDICTS.map((one) => [one, 0])) } as Record<
      string,
      number
    >;
    for (let run = 0; run < runs; run++) {
      const random = root.stream(`${kinds} ${name} ${run}`);
      const labels = Int32Array.from({ length: 2 * PER_SITE }, (_, i) => (i < PER_SITE ? 0 : 1));
      const of = labels.map((label) => (random.next() < shares[label] ? 0 : 1));
      const values = Float64Array.from(
        labels,
        (label, i) => (label === 0 ? site : 0) + (of[i] === 0 ? condition : 0) + normal(random),
      );
      const middle = (site + condition) / 2;
      const scored = kinds ? values.map((value) => (value > middle ? 1 : 0)) : values;
      const half = (label: number) => scored.filter((_, i) => labels[i] === label);
      const table = [0, 1].map((label) =>
        [0, 1].map((kind) => half(label).filter((one) => one === kind).length),
      );
      const plain = kinds
        ? table.some((_, kind) => table[0][kind] + table[1][kind] === 0)
          ? { why: 'one kind' }
          : fisherExact(table, random, 499)
        : mannWhitney(half(0), half(1));
      const told = toldAt('why' in plain ? plain : plain.p, 0.95);
      const guard = guardAgainst({
        by: 'site',
        labels,
        labelCount: 2,
        items: Array.from(labels, (_, i) => String(i)),
        conditions: [
          {
            id: 'recorder',
            label: 'Recorder',
            own: false,
            state: 'looked at',
            known: labels.length,
            kinds: ['a', 'b'],
            of,
          },
        ],
        scores: (strata, rows) =>
          kinds ? [rows.map((row) => scored[row])] : [alignedRanks(scored, strata, rows)],
        told,
        named: [0, 1],
        confidence: 0.95,
        relabellings: 499,
        random: random.stream('guard'),
      });
      if (told === 'told apart') counts.plain++;
      if (clean(told, guard.changes.length)) counts.clean++;
      const [worst] = guard.changes;
      if (worst !== undefined) counts[worst.verdict]++;
    }
    process.stdout.write(
      `| ${name} | ${[counts.plain, counts.clean, ...VERDICTS.map((one) => counts[one])].map(share).join(' | ')} |\n`,
    );
  }
  process.stdout.write('\n');
}

/** As a contrast ranks: each stratum's median taken off. */
function alignedRanks(
  values: Float64Array,
  strata: ArrayLike<number>,
  rows: readonly number[],
): Float64Array {
  const median = (stratum: number) => {
    const own = rows
      .flatMap((row, at) => (strata[at] === stratum ? [values[row]] : []))
      .sort((a, b) => a - b);
    const middle = (own.length - 1) / 2;
    return (own[Math.floor(middle)] + own[Math.ceil(middle)]) / 2;
  };
  const medians = new Map([...new Set(Array.from(strata))].map((stratum) => [stratum, median(stratum)]));
  return midranks(rows.map((row, at) => values[row] - (medians.get(strata[at]) ?? 0))).ranks;
}
