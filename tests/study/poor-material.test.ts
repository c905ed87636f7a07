import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import type { AnalysisResult } from '../../src/study/results/results.ts';
import { runStudy } from '../../src/study/run-study.ts';

/** Tables too poor for what is asked of them: every analysis answers, and never more than they hold. */

const HEADS = [
  'id',
  'item',
  'site',
  'structure',
  'row spacing (mm)',
  'warp density (per cm)',
  'fibre',
  'period',
];
type Row = readonly [
  site: string,
  structure: string,
  spacing: number | '',
  density: number | '',
  fibre: string,
];
const table = (rows: readonly Row[], items?: readonly string[]) =>
  [
    HEADS,
    ...rows.map(([site, structure, spacing, density, fibre], i) => [
      `f${i}`,
      items?.[i] ?? `f${i}`,
      site,
      structure,
      spacing,
      density,
      fibre,
      site === 'Ness' ? 'Early' : 'Late',
    ]),
  ]
    .map((line) => line.join(','))
    .join('\n');
const OPEN: Row = ['Holm', 'open twining', 9, 2, 'lime bast'];
const CLOSE: Row = ['Ness', 'close twining', 3, 4, 'wool'];
const SAME: Row = ['Holm', 'close twining', 3, 4, 'wool'];
const times = (count: number, ...rows: readonly Row[]) => Array.from({ length: count }, () => rows).flat();

const TABLES = {
  'one record': table([CLOSE]),
  'two records': table([CLOSE, OPEN]),
  'three records': table([CLOSE, OPEN, CLOSE]),
  'nothing varies': table(times(6, CLOSE, SAME)),
  'wholly apart, nothing varies within': table(times(6, CLOSE, OPEN)),
  'zeros alone': table(
    times(6, ['Ness', 'close twining', 0, 0, 'wool'], ['Holm', 'open twining', 0, 0, 'wool']),
  ),
  'numbers never recorded': table(
    times(6, ['Ness', 'close twining', '', '', 'wool'], ['Holm', 'close twining', '', '', 'wool']),
  ),
  'many fragments of two items': table(
    times(6, CLOSE, OPEN),
    times(6, CLOSE, OPEN).map(([site]) => site),
  ),
};

const RULES = {
  title: 'Fine and coarse',
  types: [
    { id: 'fine', label: 'Fine', when: { attribute: 'rowSpacing', below: 4 } },
    { id: 'coarse', label: 'Coarse', when: { attribute: 'rowSpacing', atLeast: 4 } },
  ],
};

const ANALYSES = [
  {
    id: 'summary',
    kind: 'summary',
    of: ['rowSpacing', 'density1', 'structure'],
    by: ['site'],
    resamples: 199,
  },
  {
    id: 'contrast',
    kind: 'contrast',
    of: ['rowSpacing', 'density1'],
    by: 'site',
    resamples: 199,
    relabellings: 199,
  },
  { id: 'crosstab', kind: 'crosstab', rows: 'site', columns: 'kind', resamples: 199 },
  { id: 'similarity', kind: 'similarity', assemblages: 'site', of: 'kind', resamples: 199 },
  { id: 'typology', kind: 'typology', rules: 'types.json', of: ['density1', 'fibre'] },
  { id: 'placement', kind: 'placement', find: { structure: 'close twining', rowSpacing: 'c. 4 mm' } },
  { id: 'standing', kind: 'standing', site: 'Ness', resamples: 199 },
  { id: 'map', kind: 'map', deals: 199 },
  { id: 'chronology', kind: 'chronology', draws: 10, relabellings: 99 },
  { id: 'threadcount', kind: 'threadcount', x: 'rowSpacing', y: 'density1', draws: 20 },
  {
    id: 'grouping',
    kind: 'grouping',
    of: ['structure', 'rowSpacing', 'fibre'],
    resamples: 20,
    permutations: 19,
  },
  { id: 'ordination', kind: 'ordination', method: 'pcoa', of: ['structure', 'rowSpacing', 'fibre'] },
];

const run = (text: string) => {
  const bytes = (part: string) => new TextEncoder().encode(part);
  const study = checkStudy(
    { title: 't', witness: { is: 'column' }, sources: [{ file: 'finds.csv' }], analyses: ANALYSES },
    'study.json',
  );
  const files = new Map([
    ['finds.csv', bytes(text)],
    ['types.json', bytes(JSON.stringify(RULES))],
  ]);
  const faults: unknown[] = [];
  const { analyses } = runStudy(study, files, { onFault: (_, fault) => faults.push(fault) });
  expect(faults).toEqual([]);
  return analyses;
};

/** Pairs of limits in tables that fall together: a certainty that no sample gives. */
function limitsWithoutWidth({ tables }: AnalysisResult): string[] {
  return Object.values(tables).flatMap(({ title, columns, rows }) =>
    columns.flatMap(({ id }, low) => {
      const high = columns.findIndex((column) => column.id === id.replace(/^low/, 'high'));
      if (!id.startsWith('low') || high < 0) return [];
      return rows
        .filter((row) => typeof row[low] === 'number' && row[low] === row[high])
        .map(() => `${title}: ${id}`);
    }),
  );
}

describe.each(Object.entries(TABLES))('%s', (_, text) => {
  const analyses = run(text);

  it.each(ANALYSES.map(({ id }) => id))('%s answers in words, without a number that is none', (id) => {
    const {
      words: { answer: sentence },
      why,
    } = analyses[id];
    expect(sentence).toMatch(/^[A-Z"0-9].*\.$/s);
    expect(JSON.stringify(analyses[id])).not.toMatch(/NaN|undefined|e\+308|null sd/);
    if (why !== undefined) expect(sentence).toContain(why);
    expect(sentence).not.toMatch(/\bonly 0\b|\b1 (?:items|records|fragments)\b/);
  });

  // "low" and "high" of a placement are the least and most that ranges allow: those of exact readings meet.
  it.each(ANALYSES.map(({ id }) => id).filter((id) => id !== 'placement'))(
    '%s gives no limits without width',
    (id) => {
      expect(limitsWithoutWidth(analyses[id])).toEqual([]);
    },
  );
});

it('groups that are wholly apart differ, with the one limit that can be had and without an F', () => {
  const { contrast, crosstab } = run(TABLES['wholly apart, nothing varies within']);
  expect(contrast.words.answer).toBe(
    'Two of two attributes differ by site (row spacing and density of system 1), which cannot be told from a difference of period; together they differ likewise.',
  );
  // 6 and 6 items: tests/numerics/tests/delta-limits.test.ts.
  expect(contrast.words.because[0]).toContain('Cliff’s delta 1 (95 % limits 0.38 to 1); shift');
  expect(contrast.words.because[2]).toMatch(
    /no F \(nothing varies within the groups\), df 1 and 10, .*p = 0.0/,
  );
  expect(crosstab.words.answer).toBe(
    'Site and kind of fabric go together (more open twining in Holm and more close twining in Ness), which cannot be told from a difference of period.',
  );
  // By hand: the square root of 12 less 1.96, squared, is 2.26; the square root of 2.26 / 12 is 0.43.
  expect(crosstab.words.because[1]).toBe('Strength: bias-corrected Cramér’s V 1, 95 % limits 0.43 to 1.');
});

it.each([
  ['Holm', 9, 'only "Holm" has a value'],
  ['none', '', 'no group has a value'],
] as const)('a number recorded by %s leaves the others their answer', (_, spacing, why) => {
  const { contrast } = run(
    table(
      times(6, ['Holm', 'open twining', spacing, 2, 'lime bast'], ['Ness', 'open twining', '', 4, 'wool']),
    ),
  );
  expect(contrast.words.because).toContain(`Row spacing: ${why}.`);
  expect(contrast.words.answer).toMatch(
    /^One of two attributes differs by site \(density of system 1\), which cannot be told from a difference of period/,
  );
  expect(JSON.stringify(contrast)).not.toMatch(/NaN|undefined/);
});

it('axes never carry more than the whole, though their dissimilarities are not Euclidean', () => {
  const rows = [3, 4, 5, 6, 7, 8].map((spacing, i): Row => {
    const [structure, fibre] = i % 2 ? ['open twining', 'lime bast'] : ['close twining', 'wool'];
    return [i < 3 ? 'Ness' : 'Holm', structure as string, spacing, 2, fibre as string];
  });
  const { words, tables } = run(table(rows)).ordination;
  const [, carried] = /carry ([\d.]+) % of the spread of 6 items/.exec(words.answer) ?? [];
  expect(Number(carried)).toBeGreaterThan(50);
  const sums = tables.axes.rows.map((row) => Number(row.at(-1)));
  expect(Number(carried)).toBeCloseTo(100 * sums[1]!, 0);
  for (const sum of sums) expect(sum).toBeLessThanOrEqual(1 + 1e-9);
  expect(words.unless.map(({ what }) => what).join()).toContain('not Euclidean');
});
