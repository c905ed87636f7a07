import { beforeAll, describe, expect, it } from 'vitest';
import { typology } from '../../../src/analyses/typology/index.ts';
import { entriesOf } from '../../../src/study/load.ts';
import type { AnalysisResult } from '../../../src/study/results.ts';
import { analyseOne } from '../../../src/study/run-study.ts';
import { prepareDemo } from '../../demo/prepared.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { attribute, type MadeColumn, madeInput } from '../grouping/made-table.ts';
import { linesOf, said } from '../said.ts';

const spacing = attribute('rowSpacing', 'spacing', 'ratio', {
  label: 'Row spacing',
  unit: 'mm',
  transform: 'log',
});
const diameter = attribute('diameter1', 'spacing', 'ratio', { label: 'Element diameter', unit: 'mm' });
const fibre = attribute('fibre', 'fibre', 'nominal', { label: 'Fibre' });
const preservation = attribute('preservation', 'context', 'nominal', { label: 'Preservation' });
const recorder = attribute('recorder', 'context', 'nominal', { label: 'Recorder' });

const RULES = JSON.stringify({
  title: 'Close and open',
  types: [
    { id: 'close', label: 'Close', when: { attribute: 'rowSpacing', below: 8 } },
    { id: 'open', label: 'Open', when: { attribute: 'rowSpacing', atLeast: 8 } },
  ],
});

/** Two kinds of 20: close ones about 3 mm of flax, open ones about 20 mm of bast. */
function twoKinds(
  more: Partial<Record<'preservation' | 'recorder', (kind: number, i: number) => string>> = {},
) {
  const kind = Array.from({ length: 40 }, (_, i) => i % 2);
  const spread = (i: number) => 0.85 + 0.3 * (((i * 7) % 20) / 19);
  const columns: MadeColumn[] = [
    { attribute: spacing, values: kind.map((k, i) => Number(([3, 20][k] * spread(i)).toFixed(2))) },
    { attribute: diameter, values: kind.map((k, i) => Number(([1, 2][k] * spread(i + 3)).toFixed(2))) },
    { attribute: fibre, values: kind.map((k, i) => (i % 9 === 0 ? null : ['flax', 'bast'][k])) },
  ];
  if (more.preservation !== undefined)
    columns.push({ attribute: preservation, values: kind.map(more.preservation) });
  if (more.recorder !== undefined) columns.push({ attribute: recorder, values: kind.map(more.recorder) });
  return columns;
}

function ask(columns: readonly MadeColumn[], options: object = {}, rules = RULES) {
  const input = { ...madeInput(columns), files: new Map([['r.json', new TextEncoder().encode(rules)]]) };
  const assemblage = input.records.id.map((_, i) => `Site ${i % 4}`);
  const records = { ...input.records, assemblage };
  const parsed = typology.options.parse({
    rules: 'r.json',
    of: ['diameter1', 'fibre'],
    resamples: 99,
    relabellings: 199,
    ...options,
  });
  const found = typology.compute({ ...input, records, fragments: records }, parsed);
  return {
    found,
    words: typology.words(found),
    tables: typology.tables(found),
    figures: typology.figures(found),
  };
}

describe('the answers of the demo', () => {
  const results = new Map<string, AnalysisResult>();
  beforeAll(() => {
    const demo = prepareDemo(['twiningTypes', 'tabbyTypes']);
    for (const entry of entriesOf(demo.study))
      results.set(entry.id, analyseOne(demo.prepared, entry, demo.files));
  }, 120_000);

  it.each(['twiningTypes', 'tabbyTypes'])('%s reads as reviewed, in the form of every answer', async (id) => {
    const { words, figures } = results.get(id)!;
    expect(faultsOfAnswer(words)).toEqual([]);
    await expect(said(words, figures)).toMatchFileSnapshot(`snapshots/${id}.txt`);
  });

  it('quotes numbers that stand in the tables', () => {
    const { words, tables } = results.get('twiningTypes')!;
    const [split] = linesOf(tables.splits!);
    const apart = linesOf(tables.apart!);
    const line = words.because[1]!;
    expect(line).toContain(`${split.n} readings`);
    expect(line).toContain(`dip ${Number(split.dip).toPrecision(3).replace(/0+$/, '')}`);
    expect(line).toContain(`two parts cross at ${Number(split.threshold).toPrecision(3)} mm`);
    expect(words.because[2]).toContain(`${Math.round(100 * Number(apart[0].effect))} % of the variation`);
    expect(words.because[2]).toContain(
      `${Math.round(100 * Number(apart[3].statistic))} % are predicted rightly`,
    );
  });
});

describe('the verdict', () => {
  it('is supported where nothing else could have made the types', () => {
    const { found, words } = ask(twoKinds());
    expect(found.verdict).toBe('supported');
    expect(words.answer).toMatch(/^Supported: readings of row spacing are divided where the rules cut/);
    expect(words.unless.every(({ overturns }) => !overturns)).toBe(true);
  });

  it.each([
    ['preservation', { preservation: (k: number) => ['charred', 'waterlogged'][k] }],
    ['recorder', { recorder: (k: number) => ['A.', 'B.'][k] }],
  ] as const)('hangs on the %s where that goes with the types in every record', (name, more) => {
    const { found, words, tables } = ask(twoKinds(more));
    expect(found.verdict).toBe('may be a condition');
    expect(words.answer).toMatch(new RegExp(`^Supported only if ${name} did not make the types`));
    expect(words.unless[0]).toMatchObject({ what: `${name} made the difference`, overturns: true });
    expect(linesOf(tables.conditions)[0].verdict).toContain('no kind of it holds enough');
  });

  it('holds where the types are told apart within one preservation', () => {
    const { found, words } = ask(
      twoKinds({ preservation: (k, i) => (k === 1 && i % 3 === 0 ? 'waterlogged' : 'charred') }),
    );
    expect(found.verdict).toBe('supported');
    expect(words.because.join(' ')).toContain('told apart also among charred');
  });

  it('says nothing of "among charred alone" where all are charred', () => {
    const { words } = ask(twoKinds({ preservation: () => 'charred' }));
    expect([words.answer, ...words.because].join(' ')).not.toContain('charred');
  });

  it('is "not as cut" where the readings part elsewhere', () => {
    const { found, words } = ask(
      twoKinds(),
      {},
      RULES.replaceAll('8}', '3}').replace('"below":8', '"below":3').replace('"atLeast":8', '"atLeast":3'),
    );
    expect(found.verdict).toBe('divided elsewhere');
    expect(words.answer).toMatch(/^Not supported as cut/);
  });

  it('follows the confidence asked for', () => {
    const strict = ask(twoKinds(), { confidence: 0.9999 });
    expect(strict.found.verdict).not.toBe('supported');
    expect(strict.words.answer).not.toMatch(/^Supported/);
  });
});

describe('poor and odd material', () => {
  const odd: Readonly<Record<string, readonly MadeColumn[]>> = {
    'five records': twoKinds().map(({ attribute: a, values }) => ({
      attribute: a,
      values: values.slice(0, 5),
    })),
    'one kind alone': twoKinds().map(({ attribute: a, values }) => ({
      attribute: a,
      values: values.filter((_, i) => i % 2 === 0),
    })),
    'all readings equal': twoKinds().map(({ attribute: a, values }) => ({
      attribute: a,
      values: a === spacing ? values.map(() => 4) : values,
    })),
    'nothing else recorded': twoKinds().map(({ attribute: a, values }) => ({
      attribute: a,
      values: a === spacing ? values : values.map(() => null),
    })),
    'no reading at all': twoKinds().map(({ attribute: a, values }) => ({
      attribute: a,
      values: a === spacing ? values.map(() => null) : values,
    })),
  };
  it.each(Object.keys(odd))('%s: an answer in form, no figure with a number that is none', (name) => {
    const { words, figures, tables } = ask(odd[name]);
    expect(faultsOfAnswer(words)).toEqual([]);
    const bad: string[] = [];
    JSON.stringify([figures, tables], (key, value) => {
      if (typeof value === 'number' && !Number.isFinite(value)) bad.push(key);
      return value;
    });
    expect(bad).toEqual([]);
    expect(words.answer).not.toMatch(/^Supported/);
  });
});
