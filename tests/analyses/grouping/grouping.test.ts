import { describe, expect, it } from 'vitest';
import type { GroupingFound } from '../../../src/analyses/grouping/found.ts';
import { grouping } from '../../../src/analyses/grouping/index.ts';
import { type GroupingOptions, groupingOptions, METHODS } from '../../../src/analyses/grouping/options.ts';
import { InputError } from '../../../src/errors.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { attribute, type MadeColumn, madeInput } from './made-table.ts';

const spacing = attribute('rowSpacing', 'spacing', 'ratio', {
  label: 'Row spacing',
  unit: 'mm',
  transform: 'log',
});
const structure = attribute('structure', 'structure', 'nominal');
const fibre = attribute('fibre', 'fibre', 'nominal');
const site = attribute('site', 'context', 'nominal');

/** Three planted kinds of 20, told apart by all three attributes, at two sites. */
function planted(): MadeColumn[] {
  const random = createRandom(8);
  const kind = Array.from({ length: 60 }, (_, i) => i % 3);
  return [
    { attribute: spacing, values: kind.map((k) => [2, 8, 30][k] * (0.9 + 0.2 * random.next())) },
    { attribute: structure, values: kind.map((k) => ['close', 'open', 'netting'][k]) },
    {
      attribute: fibre,
      values: kind.map((k) => (random.next() < 0.85 ? ['flax', 'bast', 'wool'][k] : null)),
    },
    { attribute: site, values: kind.map((k) => (k === 2 ? 'Vorral' : 'Emsk')) },
  ];
}

const of = ['rowSpacing', 'structure', 'fibre'];
const options = (more: Partial<GroupingOptions> = {}): GroupingOptions =>
  groupingOptions.parse({ of, mostGroups: 5, resamples: 20, permutations: 19, ...more });
const trees = (Object.keys(METHODS) as (keyof typeof METHODS)[]).filter((method) => method !== 'kmeans');
const run = (columns: MadeColumn[], more: Partial<GroupingOptions> = {}): GroupingFound =>
  grouping.compute(madeInput(columns), options(more));

describe('grouping', () => {
  it.each(
    trees.filter(
      (method) => !['single', 'median', 'centroid', 'ward-squared', 'kmeans', 'density'].includes(method),
    ),
  )('%s recovers three planted kinds and chooses their number', (method) => {
    const found = run(planted(), { method, compareWith: 'structure' });
    expect(found.k).toBe(3);
    expect(found.agreement?.adjustedRand).toBe(1);
    expect(found.agreement?.adjustedMutualInformation).toBeCloseTo(1, 12);
    expect(found.groups.map((group) => group.size)).toEqual([20, 20, 20]);
    expect(found.groups.every((group) => 'mean' in group.stability && group.stability.mean > 0.9)).toBe(true);
    expect(found.trust.shuffled).toMatchObject({ p: 1 / 20 });
  });

  it('gives every record its group, with item and source row', () => {
    const found = run(planted());
    expect(grouping.tables(found).membership.rows).toHaveLength(60);
    expect(grouping.tables(found).membership.rows[4].slice(0, 4)).toEqual(['F5', 'F5', 'made.csv', 6]);
  });

  it('marks a group by what it has more of, positive, strongest first', () => {
    const found = run(planted());
    const open = found.records[2].group;
    const { marks, rule } = found.groups[open];
    expect(marks.find((mark) => mark.attribute === 'rowSpacing')).toMatchObject({
      effect: 1,
      insideN: 20,
      outsideN: 40,
    });
    expect(marks.map((mark) => Math.abs(mark.effect))).toEqual(
      marks.map((mark) => Math.abs(mark.effect)).sort((a, b) => b - a),
    );
    expect(rule).toMatchObject({ conditions: 1, recall: 1, precision: 1 });
  });

  it('shows the sites of a group as adjusted standardised residuals', () => {
    const found = run(planted());
    const [tally] = found.context;
    const vorral = tally.values.indexOf('Vorral');
    const netting = found.records[2].group;
    // 20 of 20 at a site with 20 of 60: (20 - 20/3) / sqrt(20/3 * (2/3) * (2/3)) = sqrt(60), by hand.
    expect(tally.residuals[netting][vorral]).toBeCloseTo(Math.sqrt(60), 10);
  });

  it('sets aside records that cannot be compared with the others, and says why', () => {
    const columns = planted().map(({ attribute: a, values }) => ({
      attribute: a,
      values: values.map((value, row) => (row === 7 && a !== site ? null : value)),
    }));
    const found = run(columns);
    expect(found.n.setAside).toEqual([
      { reason: expect.stringContaining('too little recorded'), fragments: 1 },
    ]);
    expect(found.n.fragments + 1).toBe(60);
    expect(found.records.some((record) => record.id === 'F8')).toBe(false);
  });

  it('does not claim groups in shuffled attributes', () => {
    const random = createRandom(3);
    const noise = [spacing, structure, fibre].map((a) => ({
      attribute: a,
      values: Array.from({ length: 60 }, () =>
        a === spacing ? 1 + 20 * random.next() : ['a', 'b', 'c'][random.integer(3)],
      ),
    }));
    const words = grouping.words(run(noise, { permutations: 39 }));
    expect(words.answer).toMatch(/^No evidence of groups among 60 fragments/);
    expect(words.because.join(' ')).not.toContain('structure');
  });

  it('answers the same for the same seed, and does not change its input', () => {
    const columns = planted();
    const before = JSON.stringify(columns);
    expect(JSON.stringify(grouping.tables(run(columns)))).toBe(JSON.stringify(grouping.tables(run(columns))));
    expect(JSON.stringify(columns)).toBe(before);
  });

  it('has figures and words without any number that is not one', () => {
    for (const method of trees) {
      const found = run(planted(), { method, compareWith: 'site', resamples: 2, permutations: 2 });
      const bad: string[] = [];
      JSON.stringify([grouping.figures(found), grouping.tables(found)], (key, value) => {
        if (typeof value === 'number' && !Number.isFinite(value)) bad.push(`${method} ${key}`);
        return value;
      });
      expect(bad).toEqual([]);
      expect(faultsOfAnswer(grouping.words(found))).toEqual([]);
    }
  });

  it('refuses what cannot be grouped, in one sentence with a remedy', () => {
    const few = planted().map(({ attribute: a, values }) => ({ attribute: a, values: values.slice(0, 3) }));
    expect(() => run(few)).toThrow(InputError);
    expect(() => run(planted(), { k: 50 })).not.toThrow();
    const small = planted().map(({ attribute: a, values }) => ({
      attribute: a,
      values: values.slice(0, 10),
    }));
    expect(() => run(small, { k: 10 })).toThrow(
      /10 groups are asked for among 10 records; ask for fewer than 10/,
    );
    const alike = planted().map(({ attribute: a, values }) => ({
      attribute: a,
      values: values.map(() => values[0]),
    }));
    expect(() => run(alike)).toThrow(
      /are alike in the chosen attributes, .*; name attributes in which they differ/,
    );
    expect(() => run(planted(), { compareWith: 'rowSpacing' })).toThrow(/forms no groups/);
    expect(groupingOptions.safeParse({ method: 'magic' }).success).toBe(false);
  });

  it('by means takes numbers only, complete records only, and finds the planted kinds', () => {
    const columns = planted();
    const gappy = { attribute: spacing, values: columns[0].values.map((v, row) => (row < 2 ? null : v)) };
    const found = run([gappy, ...columns.slice(1)], {
      of: ['rowSpacing'],
      method: 'kmeans',
      compareWith: 'structure',
    });
    expect(found.agreement?.adjustedRand).toBe(1);
    expect(found.n.setAside).toEqual([{ reason: expect.stringContaining('complete records'), fragments: 2 }]);
    expect(found.trust.shuffled).toEqual({ why: expect.stringContaining('one attribute') });
    expect(() => run(columns, { method: 'kmeans' })).toThrow(/"structure" \(structure\) is not one/);
  });

  it('by density leaves what lies alone in no group, and says when nothing stands out', () => {
    const columns = planted();
    const odd = { attribute: spacing, values: columns[0].values.map((v, row) => (row === 5 ? 4000 : v)) };
    const found = run([odd], { of: ['rowSpacing'], method: 'density', smallestGroup: 12 });
    expect(found.records[5].group).toBe(-1);
    expect(found.k).toBe(3);
    expect(grouping.words(found).because[0]).toContain('1 fragment in none');
    const flat = { attribute: spacing, values: columns[0].values.map((_, row) => 1 + row) };
    const none = run([{ ...flat, attribute: { ...spacing, transform: undefined } as never }], {
      of: ['rowSpacing'],
      method: 'density',
      smallestGroup: 25,
    });
    expect(grouping.words(none).answer).toBe('No two groups stand out among 60 fragments.');
    expect(() => run(columns, { method: 'density', k: 3 })).toThrow(/finds the number of groups itself/);
  });

  it('does not take a gradient for groups', () => {
    const random = createRandom(5);
    const along = Array.from({ length: 80 }, () => random.next());
    const gradient = ['density1', 'density2', 'diameter1'].map((id) => ({
      attribute: attribute(id, 'spacing', 'ratio'),
      values: along.map((at) => 10 * at + 0.4 * random.next()),
    }));
    const found = run(gradient, { of: [], permutations: 39 });
    expect(found.trust.shuffled).toMatchObject({ p: 1 / 40 });
    expect(found.verdict).toBe('no better than one heap');
    expect(grouping.words(found).answer).toMatch(
      /^No evidence of groups .* a gradient cannot be excluded\.$/,
    );
  });

  it('takes a table too large for all dissimilarities by samples, and says so', () => {
    const random = createRandom(6);
    const kind = Array.from({ length: 5200 }, () => random.integer(3));
    const columns = [
      { attribute: spacing, values: kind.map((k) => [2, 8, 30][k] * (0.9 + 0.2 * random.next())) },
      { attribute: structure, values: kind.map((k) => ['close', 'open', 'netting'][k]) },
    ];
    const found = run(columns, {
      of: [],
      resamples: 2,
      permutations: 1,
      mostGroups: 3,
      compareWith: 'structure',
    });
    expect(found.k).toBe(3);
    expect(found.agreement?.adjustedRand).toBe(1);
    expect(found.n.fragments).toBe(5200);
    expect(
      grouping
        .words(found)
        .unless.map((turn) => turn.what)
        .join(' '),
    ).toContain('if all records were judged');
    expect(() => run(columns, { of: [], method: 'average' })).toThrow(/choose medoids, which large tables/);
  }, 60_000);
});
