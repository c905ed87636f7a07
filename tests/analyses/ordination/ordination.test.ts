import { describe, expect, it } from 'vitest';
import type { AnalysisInput } from '../../../src/analyses/contract.ts';
import { convexHull } from '../../../src/analyses/ordination/centres.ts';
import { computeOrdination } from '../../../src/analyses/ordination/compute.ts';
import { ordination } from '../../../src/analyses/ordination/index.ts';
import { type OrdinationOptions, ordinationOptions } from '../../../src/analyses/ordination/options.ts';
import { printNumber, printTurn } from '../../../src/analyses/phrasing.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { correspondence } from '../../../src/numerics/ordination/correspondence.ts';
import { requireWritable } from '../../../src/study/results/json.ts';
import { prepareDemo } from '../../demo/prepared.ts';
import { expectClose } from '../../numerics/close.ts';
import { available, columnOf, expectUpToSign, type MatrixRows } from '../../numerics/compare-up-to-sign.ts';
import { reference } from '../../references/reference.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { inputFrom } from '../ask.ts';
import { demoAnswer, numbersWithoutSource, readable } from '../demo-answer.ts';
import { attribute, madeInput } from '../grouping/made-table.ts';

const { components, tables } = reference<{
  readonly components: readonly {
    readonly name: string;
    readonly data: MatrixRows;
    readonly scores: MatrixRows;
  }[];
  readonly tables: readonly {
    readonly name: string;
    readonly counts: MatrixRows;
    readonly rows: MatrixRows;
  }[];
}>('ordination');
const options = (more: Partial<OrdinationOptions>): OrdinationOptions => ordinationOptions.parse(more);
const coordinates = (found: ReturnType<typeof computeOrdination>) =>
  available(found.axes).records.flatMap(({ at }) => at);

describe('ordination of a table', () => {
  it('pca of USArrests has the scores of R prcomp, whatever the gaps beside it', () => {
    const given = components[0];
    const columns = Array.from({ length: 4 }, (_, j) => ({
      attribute: attribute(`a${j}`, 'spacing', 'interval'),
      values: [...columnOf(given.data, j), j === 2 ? null : 5],
    }));
    const input = madeInput(columns);
    const found = computeOrdination(input, options({ method: 'pca', axes: 4 }));
    expectUpToSign(coordinates(found), 4, given.scores, 1e-9);
    expect(found.n.fragments).toBe(50);
    expect(found.n.setAside).toEqual([{ reason: 'a value is missing', fragments: 1 }]);
    const filled = computeOrdination(input, options({ method: 'pca', gaps: 'mean' }));
    expect(filled.n.fragments).toBe(51);
    expect(coordinates(filled).length).toBe(51 * 3);
    expect(coordinates(filled).every(Number.isFinite)).toBe(true);
    expect(ordination.words(filled).unless.map(printTurn).join(' ')).toContain(
      '1 missing number took the mean',
    );
  });

  it('ca of records counted into the smoking table (Greenacre 1984) has the rows of R ca', () => {
    const { counts, rows } = tables[0];
    const pairs = counts.values.flatMap((count, at) =>
      Array.from({ length: count }, () => [Math.floor(at / counts.columns), at % counts.columns]),
    );
    const input = madeInput([
      { attribute: attribute('site', 'context', 'nominal'), values: pairs.map(([i]) => `row ${i}`) },
      { attribute: attribute('kind', 'structure', 'nominal'), values: pairs.map(([, j]) => `kind ${j}`) },
    ]);
    const found = computeOrdination(input, options({ method: 'ca', rows: 'site', columns: 'kind' }));
    expectUpToSign(coordinates(found), 3, rows, 1e-9);
    const passive = computeOrdination(
      input,
      options({ method: 'ca', rows: 'site', columns: 'kind', supplementary: ['row 4'] }),
    );
    const active = available(correspondence(counts.values.slice(0, 16), 4, 4));
    expect(available(passive.axes).eigenvalues[0]).toBeCloseTo(active.eigenvalues[0], 12);
    expect(available(passive.axes).records[4].role).toBe('supplementary row');
    expect(() =>
      computeOrdination(
        input,
        options({ method: 'ca', rows: 'site', columns: 'kind', supplementary: ['x'] }),
      ),
    ).toThrow('"x" is no label');
    expect(() => computeOrdination(input, options({ method: 'ca' }))).toThrow('rows and columns');
  });

  it('mixed of one number and kinds names categories with their attribute', () => {
    const input = madeInput([
      { attribute: attribute('size', 'spacing', 'ratio'), values: [1, 2, 3, 4, 6] },
      { attribute: attribute('kind', 'structure', 'nominal'), values: ['a', 'b', 'a', 'b', 'b'] },
    ]);
    const found = available(computeOrdination(input, options({ method: 'mixed' })).axes);
    expect(found.variables.map(({ label }) => label)).toEqual(['size', 'kind: a', 'kind: b']);
    expect(() => computeOrdination(input, options({ method: 'mca', of: ['size', 'kind'] }))).toThrow(
      'takes kinds',
    );
  });

  it('says why there is no ordination', () => {
    const input = madeInput([{ attribute: attribute('size', 'spacing', 'ratio'), values: [2, 2, 2] }]);
    const found = computeOrdination(input, options({}));
    expect(ordination.words(found).answer).toBe(
      'No ordination: all records are alike, so there is nothing to spread out.',
    );
    expect(ordination.figures(found)).toEqual({});
    const gappy = madeInput([
      { attribute: attribute('size', 'spacing', 'ratio'), values: [1, null, 3] },
      { attribute: attribute('width', 'spacing', 'ratio'), values: [null, 2, null] },
    ]);
    expect(ordination.words(computeOrdination(gappy, options({ method: 'pca' }))).answer).toBe(
      'No ordination: no fragment has a value of every one of the 2 attributes; compare fewer, or choose principal coordinates (pcoa), which take gaps.',
    );
  });
});

describe('ordination of the demo', () => {
  const demo = prepareDemo();
  const input: AnalysisInput = { ...demo.prepared, unit: 'item', random: createRandom(3) };
  const found = computeOrdination(
    input,
    options({ of: ['structure', 'density1', 'density2', 'fibre'], by: 'site' }),
  );

  it('has a place for each item, and centres of sites that are their means', () => {
    const axes = available(found.axes);
    expect(ordination.tables(found).coordinates.rows.length).toBe(axes.rows.length);
    expect(
      ordination
        .tables(found)
        .coordinates.columns.map(({ id }) => id)
        .slice(0, 5),
    ).toEqual(['id', 'role', 'label', 'axis1', 'axis2']);
    const [centre] = found.centres;
    const mean = centre.members.reduce(
      (sum, place) => sum + axes.records[place].at[0] / centre.members.length,
      0,
    );
    expect(centre.at[0]).toBeCloseTo(mean, 14);
    expect(centre.hull.length).toBeGreaterThan(2);
    expect(centre.ellipse.length).toBe(49);
  });

  it('contributions of each axis sum to 1, and the sentence gives the share of the first two', () => {
    const axes = available(found.axes);
    const sum = axes.records.reduce((total, { contributions }) => total + contributions[0], 0);
    expect(sum).toBeCloseTo(1, 9);
    expect(ordination.words(found).answer).toMatch(/^The first two axes carry \d/);
    expect(ordination.words(found).unless.map(printTurn).join(' ')).toContain('Euclidean');
  });

  it('draws each site with its own colour and shape, n in the caption', () => {
    const { map } = ordination.figures(found);
    const points = map.data.filter(({ mode }) => mode === 'markers') as {
      marker: { symbol: string; color: string };
    }[];
    expect(new Set(points.map(({ marker }) => marker.symbol)).size).toBe(points.length);
    expect(new Set(points.map(({ marker }) => marker.color)).size).toBe(points.length);
    expect(map.caption).toMatch(/n = \d+ fragments of \d+ items/);
  });
});

describe('the convex hull', () => {
  it('of a square with points inside and on its edge is its four corners', () => {
    const hull = convexHull([
      [0, 0],
      [2, 0],
      [1, 1],
      [2, 2],
      [0, 2],
      [1, 0],
      [0.5, 1.5],
    ]);
    expect(hull).toEqual([
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ]);
  });
});

describe('the verdict', () => {
  const said = (input: AnalysisInput, more: Partial<OrdinationOptions>) => {
    const found = computeOrdination(input, options(more));
    const words = ordination.words(found);
    expect(faultsOfAnswer(words)).toEqual([]);
    return { found, words, tables: ordination.tables(found), figures: ordination.figures(found) };
  };
  const kinds = (...columns: string[]) =>
    madeInput(
      columns.map((values, j) => ({
        attribute: attribute(`kind${j}`, 'structure', 'nominal'),
        values: [...values],
      })),
    );

  it('multiple correspondence analysis of two attributes can be written: later axes have no share, and say why', () => {
    const { found, words, tables, figures } = said(kinds('aaabbbab', 'xxxyyyyx'), { method: 'mca' });
    // By hand: phi of the table 3 1 / 1 3 is 0.5, the eigenvalues (1 ± 0.5) / 2, the adjusted inertia 0.5², all of its total.
    expectClose(available(found.axes).eigenvalues[0], 0.75);
    expectClose(available(found.axes).shares[0] as number, 1);
    expect(available(found.axes).shares[1]).toEqual({ why: 'no more than unrelated attributes would give' });
    expect(() => requireWritable({ tables, figures, words })).not.toThrow();
    expect(tables.axes.rows[1][2]).toEqual({ why: 'no more than unrelated attributes would give' });
    expect(figures.map.layout).toMatchObject({ yaxis: { title: { text: 'axis 2' } } });
    expect(words.answer).toContain('cannot be told');
  });

  it('says so where the kinds of two attributes have nothing to do with each other', () => {
    const { words, tables } = said(kinds('aabb', 'xyxy'), { method: 'mca' });
    expect(() => requireWritable({ tables, words })).not.toThrow();
    expect(words.unless.map(printTurn).join(' ')).toContain('the kinds do not go together');
  });

  it.each(['pcoa', 'pca', 'mca', 'mixed'] as const)(
    '%s of tables too poor for it can be written',
    (method) => {
      for (const values of ['ab', 'aaab', 'abab', 'aabbc']) {
        const numbers = [...values].map((letter, i) => (letter === 'a' ? 1 : 2 + i));
        const input = madeInput([
          { attribute: attribute('size', 'spacing', 'ratio'), values: numbers },
          { attribute: attribute('kind', 'structure', 'nominal'), values: [...values] },
          { attribute: attribute('other', 'structure', 'nominal'), values: [...values].reverse() },
        ]);
        const { tables, figures, words } = said(input, { method });
        expect(() => requireWritable({ tables, figures, words })).not.toThrow();
      }
    },
  );

  it('names what goes with the axes without making them, where it goes as much', () => {
    const spread = Array.from({ length: 40 }, (_, i) => (i < 20 ? 1 : 9) + (i % 5) / 2);
    const input = madeInput([
      { attribute: attribute('size', 'spacing', 'interval'), values: spread },
      {
        attribute: attribute('width', 'spacing', 'interval'),
        values: spread.map((value, i) => ((i * 7) % 5) + value),
      },
      {
        attribute: attribute('recorder', 'context', 'nominal'),
        values: spread.map((_, i) => (i < 20 ? 'A' : 'B')),
      },
    ]);
    const { found, words } = said(input, { method: 'pca' });
    const [first] = found.besides;
    expect([first.label, first.axis]).toEqual(['recorder', 1]);
    expect(first.share).toBeGreaterThan(0.9);
    expect(words.unless[0].what).toBe('Were axis 1 one of recorder');
    expect(words.next?.join(' ')).toContain('within one recorder');
  });

  it('a table of counts is made at the level that all record, and says where the words alone would part others', () => {
    const table: Record<string, Record<string, number>> = {
      a: { openTwining: 9, closeTwining: 9, wool: 2 },
      b: { twined: 18, wool: 2 },
      c: { openTwining: 3, closeTwining: 2, wool: 15 },
    };
    const rows = Object.entries(table).flatMap(([site, line]) =>
      Object.entries(line).flatMap(([structure, count]) =>
        Array.from({ length: count }, () => ({ site, structure })),
      ),
    );
    const asked = (level: 'common' | 'recorded') =>
      said(inputFrom(rows), { method: 'ca', rows: 'site', columns: 'structure', level });
    expect(available(asked('common').found.axes).variables.map(({ label }) => label)).toEqual([
      'twined',
      'wool',
    ]);
    expect(available(asked('recorded').found.axes).variables).toHaveLength(4);
    expect(asked('common').found.level?.folds[0].because[0].label).toBe('b');
    expect(asked('common').words.answer).toMatch(/the first parts [abc] from [abc]/);
    expect(asked('common').words.unless.map(printTurn).join(' ')).toContain(
      'Counted by the words as recorded',
    );
  });

  it('the ellipses are at the confidence asked for, in the picture and below it', () => {
    const sizes = Array.from({ length: 30 }, (_, i) => ((i * 37) % 11) + (i % 3));
    const input = madeInput([
      { attribute: attribute('size', 'spacing', 'interval'), values: sizes },
      { attribute: attribute('width', 'spacing', 'interval'), values: sizes.map((_, i) => (i * 13) % 7) },
      { attribute: attribute('site', 'context', 'nominal'), values: sizes.map(() => 'S') },
    ]);
    const at = (confidence: number) =>
      said(input, { method: 'pca', by: 'site', of: ['size', 'width'], confidence });
    const radius = ({ found }: ReturnType<typeof at>) => {
      const [centre] = found.centres;
      const [x, y] = [0, 1].map((side) => (centre.ellipse[0][side] + centre.ellipse[24][side]) / 2);
      return Math.hypot(centre.ellipse[0][0] - x, centre.ellipse[0][1] - y);
    };
    // Squared radii go as the quantiles of chi-square with 2 degrees of freedom, -2 ln(1 - confidence).
    expectClose(radius(at(0.99)) / radius(at(0.9)), Math.sqrt(2), 1e-9);
    expect(at(0.9).figures.map.caption).toContain('Dotted: 90 % ellipses');
  });
});

it('the demo: the axes of its items, as read and kept, with the numbers of its tables', async () => {
  const result = demoAnswer('axes');
  expect(faultsOfAnswer(result.words)).toEqual([]);
  await expect(readable(result)).toMatchFileSnapshot('snapshots/demo-axes.txt');
  expect(numbersWithoutSource(result.words, result.tables, [result.n.items, result.n.fragments, 9])).toEqual(
    [],
  );
  const shares = result.tables.axes.rows.map((row) => row[2] as number);
  expect(result.words.answer).toContain(`${printNumber((shares[0] + shares[1]) * 100)} %`);
});
