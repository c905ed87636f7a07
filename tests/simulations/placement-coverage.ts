/**
 * Does a set of labels hold the true one as often as it says, and is a find of an unseen kind told from
 * the seen ones? Prints the tables of docs/methods/placement.md.
 *
 *   npm run simulate -- placement-coverage
 *
 * Part 1 draws records whose label is known; part 2 takes each record of two open data sets in turn as a
 * find among the others; both judge a find on the attributes that it has, as the placement analysis does.
 */
import type { LabelAttribute } from '../../src/analyses/placement/labels.ts';
import { bagOf, typicality } from '../../src/analyses/placement/typicality.ts';
import { isKnown } from '../../src/fragments/comparison/find.ts';
import { pickVariables } from '../../src/numerics/dissimilarity/dissimilarity.ts';
import { kindDistances } from '../../src/numerics/dissimilarity/term-distance.ts';
import {
  type DissimilaritySpec,
  type Variable,
  valueAt,
} from '../../src/numerics/dissimilarity/variables.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { verdictAt } from '../../src/numerics/tests/conformal.ts';
import { openRecords } from './parts/open-records.ts';

const LEVELS = [0.8, 0.9, 0.95] as const;
const NEIGHBOURS = 3;
const ATTRIBUTE: LabelAttribute = { id: 'label', label: 'label', labels: [], unlabelled: 0 };

interface Judged {
  /** p of each label; NaN where nothing could be compared. */
  readonly p: readonly number[];
  readonly n: readonly number[];
}

/** Judges record `row` as a find among the labels' other records. */
function judge(spec: DissimilaritySpec, labels: readonly (readonly number[])[], row: number): Judged | null {
  const record = spec.variables.map((variable) => valueAt(variable, row));
  const known = record.flatMap((value, place) => (isKnown(value) ? [place] : []));
  if (known.length === 0) return null;
  const own = pickVariables(spec, known);
  const outcomes = labels.map((rows) =>
    typicality(
      bagOf(
        ATTRIBUTE,
        '',
        rows.length,
        rows.filter((one) => one !== row),
        own,
        NEIGHBOURS,
      ),
      known.map((place) => record[place]),
    ),
  );
  return {
    p: outcomes.map((one) => ('why' in one ? Number.NaN : one.p)),
    n: outcomes.map((one) => ('why' in one ? 0 : one.n)),
  };
}

/** Counts over finds: how often the true label was in the set, how large it was, how often it was empty. */
function createTally() {
  let finds = 0;
  const covered = LEVELS.map(() => 0);
  const sizes = LEVELS.map(() => 0);
  const none = LEVELS.map(() => 0);
  return {
    add: (judged: Judged, truth: number): void => {
      finds++;
      LEVELS.forEach((level, at) => {
        const verdicts = judged.p.map((p, label) => verdictAt(level, { p, n: judged.n[label] }));
        const left = verdicts.filter((verdict) => verdict !== 'excluded').length;
        if (truth >= 0 && verdicts[truth] !== 'excluded') covered[at]++;
        if (left === 0) none[at]++;
        sizes[at] += left;
      });
    },
    line: (name: string, seen: boolean): string => {
      const share = (count: number) => `${((100 * count) / finds).toFixed(1)} %`;
      const coverage = seen ? covered.map(share) : LEVELS.map(() => '');
      return `| ${[name, finds, ...coverage, (sizes[1] / finds).toFixed(2), share(none[2])].join(' | ')} |`;
    },
  };
}

function normal(random: Random): number {
  for (;;) {
    const [a, b] = [2 * random.next() - 1, 2 * random.next() - 1];
    const s = a * a + b * b;
    if (s > 0 && s < 1) return a * Math.sqrt((-2 * Math.log(s)) / s);
  }
}

/** Labels of records that differ in three measurements and one kind; `apart` is the step between centres in sd. */
function draw(random: Random, labels: number, perLabel: number, apart: number, gaps: number, noise: number) {
  const label = Array.from({ length: labels * perLabel }, (_, row) => Math.floor(row / perLabel));
  const quantity = (k: number): Variable => {
    const low = Float64Array.from(label, (one) => {
      const value = apart * ((one * (k + 1)) % labels) + normal(random);
      return random.next() < gaps ? Number.NaN : value;
    });
    const known = low.filter((value) => !Number.isNaN(value));
    return {
      kind: 'quantity',
      low,
      high: low,
      range: Math.max(...known) - Math.min(...known),
      block: 1,
      weight: 1,
    };
  };
  const codes = Int32Array.from(label, (one) => {
    const code = random.next() < noise ? random.integer(3) : one % 3;
    return random.next() < gaps ? -1 : code;
  });
  const variables: Variable[] = [
    quantity(0),
    quantity(1),
    quantity(2),
    { kind: 'kinds', codes, between: kindDistances(3), levels: 3, block: 0, weight: 1 },
  ];
  const spec: DissimilaritySpec = {
    variables,
    blockWeights: [1, 1],
    mode: 'blocks',
    intervals: 'midpoint',
    minimumOverlap: 0,
  };
  return { spec, label };
}

/** One label more is drawn than is known: its records are the unseen finds. */
function simulate(perLabel: number, apart: number, gaps: number, noise: number, rounds: number): string[] {
  const seen = createTally();
  const unseen = createTally();
  const labels = 6;
  for (let round = 0; round < rounds; round++) {
    const random = createRandom(round).stream(`${perLabel}/${apart}/${gaps}/${noise}`);
    const { spec, label } = draw(random, labels, perLabel + 4, apart, gaps, noise);
    const rowsOf = (one: number) => label.flatMap((own, row) => (own === one ? [row] : []));
    const known = Array.from({ length: labels - 1 }, (_, one) => rowsOf(one).slice(0, perLabel));
    for (let one = 0; one < labels; one++) {
      for (const row of rowsOf(one).slice(perLabel)) {
        const judged = judge(spec, known, row);
        if (judged === null) continue;
        if (one < labels - 1) seen.add(judged, one);
        else unseen.add(judged, -1);
      }
    }
  }
  const name = `${perLabel} a label, centres ${apart} sd apart, ${100 * gaps} % gaps, ${100 * noise} % of kinds at random`;
  return [seen.line(name, true), unseen.line(`${name}: finds of an unseen label`, false)];
}

/** Each record in turn as a find among the others; then each label withheld in turn. */
function leaveOneOut(name: string, of: readonly string[], by: string): string[] {
  const { spec, groups } = openRecords(name, of, by);
  const all = createTally();
  const withheld = groups.map(() => createTally());
  const kept = createTally();
  groups.forEach(({ rows }, truth) => {
    for (const row of rows) {
      const judged = judge(
        spec,
        groups.map((group) => group.rows),
        row,
      );
      if (judged === null) continue;
      all.add(judged, truth);
      groups.forEach((_, out) => {
        const rest = judged.p.flatMap((p, label) => (label === out ? [] : [{ p, n: judged.n[label] }]));
        const without = { p: rest.map(({ p }) => p), n: rest.map(({ n }) => n) };
        if (out === truth) withheld[out].add(without, -1);
        else kept.add(without, truth > out ? truth - 1 : truth);
      });
    }
  });
  return [
    all.line(`${name} by ${by}, each record in turn`, true),
    kept.line(`${name}, one label withheld: finds of the others`, true),
    ...groups.map(({ label }, out) => withheld[out].line(`${name}: finds of ${label}, withheld`, false)),
  ];
}

const head = [
  'finds',
  'n',
  'true label in the set at 80 %',
  'at 90 %',
  'at 95 %',
  'labels in the 90 % set',
  '"none of these" at 95 %',
];
console.log(`| ${head.join(' | ')} |\n|${head.map(() => '---').join('|')}|`);
for (const [perLabel, apart, gaps, noise, rounds] of [
  [49, 6, 0, 0, 60],
  [49, 6, 0, 0.2, 60],
  [49, 6, 0.15, 0, 60],
  [49, 2, 0.15, 0.2, 60],
  [19, 6, 0, 0, 120],
  [12, 6, 0, 0, 120],
] as const) {
  for (const line of simulate(perLabel, apart, gaps, noise, rounds)) console.log(line);
}
for (const line of leaveOneOut('iris', ['sepalLength', 'sepalWidth', 'petalLength', 'petalWidth'], 'species'))
  console.log(line);
for (const line of leaveOneOut(
  'penguins',
  ['beakLength', 'beakDepth', 'flipperLength', 'bodyMass', 'sex'],
  'species',
))
  console.log(line);
