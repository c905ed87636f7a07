import { beforeAll, describe, expect, it } from 'vitest';
import { typology } from '../../../src/analyses/typology/index.ts';
import { exp } from '../../../src/numerics/foundation/elementary.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { standardNormal } from '../../../src/numerics/modes/mixture-parts.ts';
import type { AnalysisResult } from '../../../src/study/results/results.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { demoAnswer } from '../demo-answer.ts';
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
    for (const id of ['twiningTypes', 'tabbyTypes']) results.set(id, demoAnswer(id));
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
    expect(line).toContain(
      `no reading lies between ${Number(split.gapFrom).toPrecision(3)} and ${Number(split.gapTo).toPrecision(3)} mm`,
    );
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
    expect(words.unless[0]).toMatchObject({ what: `if ${name} made the difference`, overturns: true });
    expect(linesOf(tables.conditions)[0].verdict).toContain('no kind of it holds enough');
  });

  it('says what could not be looked at where no column tells', () => {
    const { words } = ask(twoKinds());
    expect(words.unless.map(({ what }) => what)).toContain(
      'recorder, recovery, preservation, structure, period and size of the piece are not recorded',
    );
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

describe('how readings were taken', () => {
  const random = createRandom(6);
  const z = Array.from({ length: 120 }, () => standardNormal(random));
  const wide = attribute('weight', 'find', 'ratio', { label: 'Weight', unit: 'g' });
  const rules = (at: number, id = 'weight') =>
    JSON.stringify({
      title: 'Light and heavy',
      types: [
        { id: 'light', label: 'Light', when: { attribute: id, below: at } },
        { id: 'heavy', label: 'Heavy', when: { attribute: id, atLeast: at } },
      ],
    });
  const split = (values: readonly number[], at: number, scale: 'ratio' | 'interval' = 'ratio') => {
    const columns = [
      { attribute: { ...wide, scale }, values },
      { attribute: diameter, values: values.map((_, i) => 1 + (i % 7) / 10) },
    ];
    return ask(columns, { of: ['diameter1'], resamples: 199 }, rules(at));
  };

  it('one kind about 4 in whole numbers is one range: rounding is allowed for, and its step said', () => {
    const { found, words } = split(
      z.map((value) => Math.max(1, Math.round(4 + value))),
      4.5,
    );
    expect(found.splits[0].steps).toEqual({ least: 1, most: 1 });
    expect(found.splits[0].verdict).toBe('one range');
    expect(words.because[1]).toContain('120 readings in steps of 1 g');
  });

  it('the scale of an attribute without one is chosen by fit, and said', () => {
    const skewed = split(
      z.map((value) => Number((20 * exp(value)).toFixed(2))),
      20,
    );
    expect(skewed.found.splits[0]).toMatchObject({ logarithm: true, scaleBy: 'fit' });
    expect(skewed.words.because[1]).toContain('on logarithms, which fits them better');
    const plain = split(
      z.map((value) => Number((60 - 8 * exp(0.6 * value)).toFixed(2))),
      50,
    );
    expect(plain.found.splits[0]).toMatchObject({ logarithm: false, scaleBy: 'fit' });
  });

  it('parts of different spread cross where both densities are equal, and a cut there agrees', () => {
    const values = z.map((value, i) => Number((i % 2 === 0 ? 100 + 4 * value : 160 + 8 * value).toFixed(2)));
    const { found, words } = split(values, 118, 'interval');
    const { threshold, verdict } = found.splits[0];
    if ('why' in threshold) throw new Error(threshold.why);
    expect(threshold.spread).toBe('own');
    // By hand: equal shares, (x - 100)² / 32 + ln 4 = (x - 160)² / 128 + ln 8 at x = 120.2.
    expect(threshold.low).toBeLessThan(120.2);
    expect((threshold.gap ?? threshold).high).toBeGreaterThan(120.2);
    expect(verdict).toBe('divided at the cut');
    expect(words.because[1]).toMatch(
      /so that any cut there parts the same finds|of different spread cross at/,
    );
  });

  it('a ratio made of what defines the types tests nothing, and is left out with its reason', () => {
    const ratio = attribute('ratio', 'spacing', 'ratio', { label: 'My ratio' });
    const base = twoKinds();
    const of = (id: string) => base.find((one) => one.attribute.id === id)!.values.map(Number);
    const values = of('rowSpacing').map((value, i) => value / of('diameter1')[i]);
    const { found, words } = ask([...base, { attribute: ratio, values }], { of: ['fibre', 'ratio'] });
    if ('why' in found.apart) throw new Error(found.apart.why);
    expect(found.apart.compared).toEqual(['fibre']);
    expect(words.because.join(' ')).toContain(
      'my ratio left out: it goes with row spacing and element diameter',
    );
    const mirror = { attribute: ratio, values: of('rowSpacing').map((value) => 10 / value) };
    const alone = ask([...base, mirror], { of: ['ratio'] });
    expect(alone.found.verdict).toBe('circular');
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
