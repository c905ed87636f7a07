import { beforeAll, describe, expect, it } from 'vitest';
import type { Mark } from '../../../src/analyses/grouping/found.ts';
import { grouping } from '../../../src/analyses/grouping/index.ts';
import { namesOf } from '../../../src/analyses/grouping/names.ts';
import { groupingOptions } from '../../../src/analyses/grouping/options.ts';
import { printNumber } from '../../../src/analyses/phrasing.ts';
import { exp } from '../../../src/numerics/foundation/elementary.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { standardNormal } from '../../../src/numerics/modes/mixture-parts.ts';
import type { AnalysisResult } from '../../../src/study/results/results.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { demoAnswer } from '../demo-answer.ts';
import { linesOf, said } from '../said.ts';
import { attribute, type MadeColumn, madeInput } from './made-table.ts';

const structure = attribute('structure', 'structure', 'nominal', { label: 'Structure' });
const fibre = attribute('fibre', 'fibre', 'nominal', { label: 'Fibre' });
const length = attribute('length', 'spacing', 'ratio', { label: 'Length', unit: 'mm' });
const width = attribute('width', 'spacing', 'ratio', { label: 'Width', unit: 'mm' });
const height = attribute('height', 'spacing', 'ratio', { label: 'Height', unit: 'mm' });

function ask(columns: readonly MadeColumn[], options: object = {}) {
  const given = { permutations: 39, resamples: 20, mostGroups: 5, ...options };
  const found = grouping.compute(madeInput(columns), groupingOptions.parse(given));
  return { found, words: grouping.words(found), tables: grouping.tables(found) };
}

describe('the answer of the demo', () => {
  let result: AnalysisResult;
  beforeAll(() => {
    result = demoAnswer('groups');
  }, 120_000);

  it('reads as reviewed, in the form of every answer', async () => {
    expect(faultsOfAnswer(result.words)).toEqual([]);
    await expect(said(result.words, result.figures)).toMatchFileSnapshot('snapshots/groups.txt');
  });

  it('calls groups by kinds that at least half of their recorded members have, and quotes the tables', () => {
    const marks = linesOf(result.tables.marks!);
    const groups = linesOf(result.tables.groups!);
    const names = groups.map(({ name }) => String(name));
    expect(new Set(names).size).toBe(names.length);
    for (const { group, name } of groups)
      for (const { term, inside, group: of } of marks)
        if (of === group && term !== '' && String(name).includes(String(term)))
          expect(inside).toBeGreaterThanOrEqual(0.5);
    const [shuffled] = linesOf(result.tables.references!);
    expect(result.words.because.join(' ')).toContain(
      `${shuffled.tables} of shuffled attributes median ${printNumber(Number(shuffled.median))}`,
    );
  });
});

describe('a claim of groups', () => {
  const random = createRandom(5);
  const kind = Array.from({ length: 60 }, (_, i) => i % 3);
  const near = (at: number) => at + random.next();
  /** Four kinds at the corners of a cube that no one attribute tells, and no two are told by chance. */
  const corner = Array.from({ length: 80 }, (_, i) => i % 4);
  const crossed: readonly MadeColumn[] = [
    { attribute: length, values: corner.map((k) => near([0, 20, 0, 20][k])) },
    { attribute: width, values: corner.map((k) => near([0, 20, 20, 0][k])) },
    { attribute: height, values: corner.map((k) => near([0, 0, 20, 20][k])) },
  ];

  it('is made with the consent of all tables without groups, and names the groups', () => {
    const { found, words } = ask(crossed);
    expect(found.verdict).toBe('groups');
    expect(words.answer).toMatch(/^80 fragments fall into four groups/);
    expect(words.because[0]).toContain('a strong structure');
  });

  it('is no more than its one attribute where it repeats it', () => {
    const { found, words } = ask([
      { attribute: structure, values: kind.map((k) => ['tabby', 'twined', 'coiled'][k]) },
      { attribute: length, values: kind.map((k) => near(3 * k)) },
    ]);
    expect(found.verdict).toBe('one attribute');
    expect(found.restated).toMatchObject({ attribute: 'structure', adjustedRand: 1, n: 60 });
    expect(words.answer).toMatch(/^The three groups among 60 fragments restate structure/);
    expect(words.next?.[0]).toContain('within one kind of structure');
  });

  it('never stands beside a reading of the structure where there is no evidence of groups', () => {
    const even = Array.from({ length: 60 }, () => random.next());
    const { found, words } = ask([
      { attribute: length, values: even },
      { attribute: width, values: even.map((at) => at + 0.001 * random.next()) },
    ]);
    expect(found.verdict).toBe('no better than one heap');
    expect([words.answer, ...words.because].join(' ')).not.toMatch(/structure by Kaufman/);
  });

  it('cannot be told without tables, or with too few for the confidence', () => {
    for (const options of [{ permutations: 0 }, { permutations: 9 }, { confidence: 0.99 }]) {
      const { found, words } = ask(crossed, options);
      expect(found.verdict).toBe('cannot be told');
      expect(words.answer).toMatch(/^Cannot be told whether 80 fragments fall into groups/);
      expect(faultsOfAnswer(words)).toEqual([]);
    }
  });
});

describe('what is no group', () => {
  const random = createRandom(12);

  it('a record alone is in none, and said to be', () => {
    const values = [...Array.from({ length: 12 }, (_, i) => 10 + (i % 2) * 20 + random.next()), 500];
    const { found, words } = ask([{ attribute: length, values }], {
      method: 'average',
      k: 3,
      permutations: 0,
    });
    expect(found.records[12].group).toBe(-1);
    expect(found.groups.every(({ size }) => size > 1)).toBe(true);
    expect(words.because[0]).toContain('1 fragment in none (alone, and so no group)');
  });

  it('the tail of a skewed attribute: it is compared by logarithm, and said; plain on request', () => {
    const values = Array.from({ length: 50 }, () => 20 * exp(standardNormal(random)));
    const notes = (options: object) =>
      ask([{ attribute: length, values }], { permutations: 0, ...options }).found.notes;
    expect(notes({})).toEqual(['Length: compared by its logarithm, which its readings fit better']);
    expect(notes({ skewed: 'plain' })).toEqual([]);
  });

  it('k-means says whether its best start was met twice', () => {
    const values = Array.from({ length: 30 }, (_, i) => (i % 2) * 20 + random.next());
    const columns = [{ attribute: length, values }];
    expect(ask(columns, { method: 'kmeans', k: 2, permutations: 0 }).words.because[0]).toContain(
      '2 starts met twice',
    );
    const once = ask(columns, { method: 'kmeans', k: 2, starts: 1, permutations: 0 }).words;
    expect(once.unless.map(({ what }) => what)).toContain('if k-means were started more often');
  });
});

describe('names of groups', () => {
  const mark = (attributeId: string, term: string, effect: number, inside: number): Mark => ({
    attribute: attributeId,
    label: attributeId.charAt(0).toUpperCase() + attributeId.slice(1),
    term,
    effect,
    inside,
    outside: 0,
    insideN: 10,
    outsideN: 10,
    unit: term === '' ? 'mm' : '',
  });

  it('put the structure first and the fibre after it', () => {
    expect(
      namesOf([[mark('fibre', 'willow bast', 0.9, 0.7), mark('structure', 'open twining', 0.8, 0.9)]]),
    ).toEqual(['open twining of willow bast']);
  });

  it('leave out what fewer than half have, and what the group has less of', () => {
    expect(
      namesOf([
        [
          mark('structure', 'tabby', 0.8, 0.9),
          mark('fibre', 'flax', 0.4, 0.4),
          mark('twist', 'Z', -0.7, 0.6),
        ],
      ]),
    ).toEqual(['tabby']);
  });

  it('are never what a group lacks, nor of which few of it are', () => {
    expect(namesOf([[mark('structure', 'coiled', -0.7, 0), mark('fibre', 'nettle', 0.2, 0.41)]])).toEqual([
      'many kinds',
    ]);
    const [one, other] = [mark('structure', 'coiled', -0.7, 0), mark('length', '', 0.3, 12)];
    expect(namesOf([[one, other], [one]])).toEqual(['length about 12 mm', 'many kinds']);
    expect(namesOf([[one], [one]])).toEqual(['many kinds, group 1', 'many kinds, group 2']);
  });

  it('leave out what was recorded of fewer than half', () => {
    const seldom = { ...mark('fibre', 'sheep wool', 0.9, 0.9), insideN: 4 };
    expect(namesOf([[mark('structure', 'coiled', 0.6, 1), seldom]])).toEqual(['coiled']);
  });

  it('take what a group has before what it lacks, of two kinds that part the groups as well', () => {
    const { found } = ask([
      { attribute: structure, values: ['tabby', 'tabby', 'tabby', 'twill', 'twill', 'twill'] },
      { attribute: fibre, values: ['flax', 'flax', 'flax', 'wool', 'wool', 'wool'] },
    ]);
    if ('why' in found) throw new Error('no groups');
    expect(found.groups.map(({ name }) => name).sort()).toEqual(['tabby of flax', 'twill of wool']);
  });

  it('take a mark more where two groups would be called the same', () => {
    const one = [mark('structure', 'tabby', 0.6, 0.9), mark('length', '', 0.9, 30)];
    const other = [mark('structure', 'tabby', 0.6, 0.9), mark('length', '', -0.9, 5)];
    expect(namesOf([one, other])).toEqual(['tabby, length about 30 mm', 'tabby, length about 5 mm']);
  });

  it('are numbers where nothing tells', () => {
    expect(namesOf([[], []])).toEqual(['group 1', 'group 2']);
  });
});

describe('poor and odd tables', () => {
  const odd: Readonly<Record<string, readonly MadeColumn[]>> = {
    'four records': [{ attribute: length, values: [1, 2, 30, 31] }],
    'one far record': [
      { attribute: length, values: [1, 2, 3, 2, 1, 2, 900] },
      { attribute: width, values: [1, 1, 2, 2, 1, 2, 900] },
    ],
    'kinds without a number': [
      { attribute: structure, values: ['a', 'a', 'b', 'b', 'c', 'c', null, 'a'] },
      { attribute: fibre, values: ['x', 'y', 'x', 'y', 'x', 'y', 'x', null] },
    ],
  };
  it.each(Object.keys(odd))('%s: an answer in form', (name) => {
    expect(faultsOfAnswer(ask(odd[name]).words)).toEqual([]);
  });
});
