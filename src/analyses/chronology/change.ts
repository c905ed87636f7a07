import { quantileSorted } from '../../numerics/describing/quantile.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { midranks } from '../../numerics/foundation/ranks.ts';
import { adjustKnown } from '../../numerics/tests/adjust.ts';
import { cliffsDelta } from '../../numerics/tests/mann-whitney.ts';
import { stratifiedPermutation, stratifiedTest } from '../../numerics/tests/stratified.ts';
import type { Unavailable } from '../contract.ts';
import { type Told, toldAt } from '../verdicts.ts';
import type { Entry } from './entries.ts';
import type { ChangeInTime, ChangeVerdict, ChangeWithin } from './found.ts';
import type { ChronologyOptions } from './options.ts';

/** Finds of a kind, and of all others, below which nothing is said of a change. */
const FEWEST = 5;
/** So many finds of a kind, and of others, of one date each that the distribution of the sum of their ranks is known. */
const MANY = 500;
/** Share of draws with another verdict from which on it counts as hanging on the dates. */
const OFTEN = 0.05;

/** Groups within which a change is looked for again; those of the places come first. */
export interface Groups {
  readonly attribute: string;
  readonly label: string;
  readonly of: (entry: Entry) => string | null;
}

interface Tested {
  readonly n: number;
  readonly groups: number;
  readonly delta: number | Unavailable;
  readonly p: number | Unavailable;
  readonly method: string;
}

/** Which kinds come later or earlier than the others; p by dealing the kinds to the dates again, Holm over the kinds. */
export function changesOf(
  entries: readonly Entry[],
  kinds: readonly { readonly label: string; readonly mark: number | null; readonly n: number }[],
  within: readonly Groups[],
  options: ChronologyOptions,
  random: Random,
): ChangeInTime[] {
  const known = entries.filter(({ kind }) => kind !== null);
  const { confidence } = options;
  const whole = testedIn(known, kinds, () => '', options, random.stream('all'));
  const adjusted = holm(whole);
  const inside = within.map((groups) => {
    const tests = testedIn(known, kinds, groups.of, options, random.stream(`within ${groups.attribute}`));
    const p = holm(tests);
    return tests.map(
      (test, at): ChangeWithin => ({
        attribute: groups.attribute,
        label: groups.label,
        n: test.n,
        groups: test.groups,
        delta: test.delta,
        p: test.p,
        pAdjusted: p[at],
        told: toldAt(p[at], confidence),
      }),
    );
  });
  const told = adjusted.map((p) => toldAt(p, confidence));
  const drawn = drawnWithin(known, kinds, whole, told, options, random.stream('spans'));
  return kinds.map(({ label, mark, n }, at): ChangeInTime => {
    const { delta, p, method } = whole[at];
    const own = inside.map((tests) => tests[at]);
    return {
      label,
      mark,
      n,
      delta,
      p,
      pAdjusted: adjusted[at],
      method,
      told: told[at],
      within: own,
      drawn: drawn[at],
      verdict: verdictOf(delta, told[at], own[0]),
    };
  });
}

const holm = (tests: readonly Tested[]) =>
  adjustKnown(
    tests.map(({ p }) => p),
    'holm',
  );

const middleOf = ({ low, high }: Entry) => (low + high) / 2;

function testedIn(
  entries: readonly Entry[],
  kinds: readonly { readonly label: string }[],
  groupOf: (entry: Entry) => string | null,
  { relabellings }: ChronologyOptions,
  random: Random,
): Tested[] {
  const rows = entries.filter((entry) => groupOf(entry) !== null);
  const strata = numbered(rows.map((entry) => groupOf(entry) ?? ''));
  const dates = rows.map(middleOf);
  const ranks = ranksWithin(dates, strata);
  const single = new Set(rows.map(({ item }) => item)).size === rows.length;
  return kinds.map(({ label }): Tested => {
    const own = rows.map(({ kind }) => (kind === label ? 0 : 1));
    const few = own.filter((one) => one === 0).length;
    const pooled = pooledDelta(dates, own, strata);
    const base = { n: pooled.n, groups: pooled.groups };
    if (few < FEWEST || rows.length - few < FEWEST) {
      const why = { why: `fewer than ${FEWEST} of it or of others` };
      return { ...base, delta: why, p: why, method: '' };
    }
    const dealt = { labels: own, labelCount: 2, strata, scores: [ranks] };
    if (single && Math.min(few, rows.length - few) >= MANY) {
      const known = stratifiedTest(dealt);
      const p = 'why' in known ? known : known.pAsymptotic;
      return { ...base, delta: pooled.delta, p, method: 'why' in known ? '' : 'chi-squared' };
    }
    const found = stratifiedPermutation(
      { ...dealt, items: rows.map(({ item }) => item) },
      { random: random.stream(label), relabellings },
    );
    return {
      ...base,
      delta: pooled.delta,
      p: 'why' in found ? found : found.p,
      method:
        'why' in found
          ? ''
          : found.method === 'exact'
            ? 'exact'
            : `${found.relabellings} random ways to deal the kinds`,
    };
  });
}

function numbered(names: readonly string[]): Int32Array {
  const numbers = new Map<string, number>();
  return Int32Array.from(names, (name) => {
    const number = numbers.get(name) ?? numbers.size;
    numbers.set(name, number);
    return number;
  });
}

function ranksWithin(dates: readonly number[], strata: Int32Array): Float64Array {
  const ranks = new Float64Array(dates.length);
  for (const rows of rowsByStratum(strata)) {
    const own = midranks(rows.map((row) => dates[row])).ranks;
    rows.forEach((row, at) => {
      ranks[row] = own[at];
    });
  }
  return ranks;
}

/** The rows of each stratum, numbered from 0 on as they come. */
function rowsByStratum(strata: Int32Array): readonly (readonly number[])[] {
  const rows: number[][] = [];
  strata.forEach((stratum, row) => {
    if (stratum === rows.length) rows.push([row]);
    else rows[stratum].push(row);
  });
  return rows;
}

/** Cliff's delta of label 0 against label 1 within strata, each stratum weighing by its pairs. */
function pooledDelta(dates: readonly number[], labels: readonly number[], strata: Int32Array) {
  let [sum, pairs, n, groups] = [0, 0, 0, 0];
  for (const rows of rowsByStratum(strata)) {
    const side = (label: number) => rows.filter((row) => labels[row] === label).map((row) => dates[row]);
    const [first, second] = [side(0), side(1)];
    const delta = cliffsDelta(first, second);
    if (typeof delta !== 'number') continue;
    sum += delta * first.length * second.length;
    pairs += first.length * second.length;
    n += first.length + second.length;
    groups++;
  }
  const delta: number | Unavailable = pairs === 0 ? { why: 'no group has it and others' } : sum / pairs;
  return { delta, n, groups };
}

function verdictOf(delta: number | Unavailable, told: Told, places: ChangeWithin | undefined): ChangeVerdict {
  if (told === 'cannot be told' || typeof delta !== 'number') return 'cannot be told';
  const outside = told === 'told apart' ? direction(delta) : null;
  const inside =
    places?.told === 'told apart' && typeof places.delta === 'number' ? direction(places.delta) : null;
  if (outside === null) return inside === null ? 'not told apart' : `${inside} within places`;
  if (inside === outside) return outside;
  return inside === null ? `${outside} across places` : `${inside} within places`;
}

const direction = (delta: number) => (delta > 0 ? ('later' as const) : ('earlier' as const));

/** The same for dates drawn evenly within the spans; fragments of one item share theirs. */
function drawnWithin(
  entries: readonly Entry[],
  kinds: readonly { readonly label: string }[],
  whole: readonly Tested[],
  told: readonly Told[],
  { draws, confidence }: ChronologyOptions,
  random: Random,
): ChangeInTime['drawn'][] {
  const none = (why: string) => kinds.map(() => ({ why }));
  if (draws === 0) return none('not asked for');
  if (entries.every(({ low, high }) => low === high)) return none('every date is one year');
  const deltas = kinds.map((): number[] => []);
  const otherwise = kinds.map(() => 0);
  const strata = new Int32Array(entries.length);
  const labels = kinds.map(({ label }) => Uint8Array.from(entries, ({ kind }) => (kind === label ? 0 : 1)));
  const items = numbered(entries.map(({ item }) => item));
  const shares = new Float64Array(entries.length);
  const dates = new Float64Array(entries.length);
  for (let draw = 0; draw < draws; draw++) {
    let met = 0;
    entries.forEach(({ low, high }, row) => {
      // Items are numbered as they come: one that is met for the first time is the next.
      if (items[row] === met) shares[met++] = random.next();
      dates[row] = low + shares[items[row]] * (high - low);
    });
    const ranks = midranks(dates).ranks;
    const p = kinds.map((_, at): number | Unavailable => {
      if (typeof whole[at].p !== 'number') return { why: 'too few' };
      deltas[at].push(deltaOfRanks(ranks, labels[at]));
      const found = stratifiedTest({ labels: labels[at], labelCount: 2, strata, scores: [ranks] });
      return 'why' in found ? found : found.pAsymptotic;
    });
    adjustKnown(p, 'holm').forEach((value, at) => {
      const turned = told[at] === 'told apart' && (deltas[at][draw] ?? 0) * Number(whole[at].delta) < 0;
      if (toldAt(value, confidence) !== told[at] || turned) otherwise[at]++;
    });
  }
  return kinds.map((_, at) => {
    if (deltas[at].length === 0) return { why: 'too few' };
    const sorted = Float64Array.from(deltas[at]).sort();
    return {
      low: quantileSorted(sorted, (1 - confidence) / 2),
      high: quantileSorted(sorted, (1 + confidence) / 2),
      otherwise: otherwise[at],
      draws,
      overturns: otherwise[at] > OFTEN * draws,
    };
  });
}

/** Cliff's delta from mid-ranks: 2 U / (n1 n2) - 1. */
function deltaOfRanks(ranks: Float64Array, labels: ArrayLike<number>): number {
  let first = 0;
  let sum = 0;
  for (let row = 0; row < labels.length; row++) {
    if (labels[row] !== 0) continue;
    first++;
    sum += ranks[row];
  }
  return (2 * (sum - (first * (first + 1)) / 2)) / (first * (labels.length - first)) - 1;
}
