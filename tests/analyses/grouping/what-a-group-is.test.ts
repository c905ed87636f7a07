import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grouping } from '../../../src/analyses/grouping/index.ts';
import { groupingOptions } from '../../../src/analyses/grouping/options.ts';
import { separatingRules } from '../../../src/analyses/grouping/rules.ts';
import { attribute, type MadeColumn, madeInput } from './made-table.ts';

const a = attribute('a', 'structure', 'nominal', { label: 'A' });
const b = attribute('b', 'structure', 'nominal', { label: 'B' });
const size = attribute('size', 'spacing', 'interval', { label: 'Size', unit: 'mm' });

function rulesOf(columns: readonly MadeColumn[], membership: readonly number[]) {
  const { records, register } = madeInput(columns);
  const rows = membership.map((_, row) => row);
  const ids = columns.map(({ attribute: one }) => one.id);
  return separatingRules(records, ids, rows, membership, Math.max(...membership) + 1, register);
}

describe('the shortest rule that separates a group', () => {
  it('has one condition where one is enough, and cuts numbers half-way', () => {
    const [low, high] = rulesOf([{ attribute: size, values: [1, 2, 3, 7, 8, 9] }], [0, 0, 0, 1, 1, 1]);
    expect(low).toMatchObject({ conditions: 1, recall: 1, precision: 1 });
    expect(low.text).toMatch(/5 mm/);
    expect(high.text).toMatch(/5 mm/);
  });

  it('joins two conditions where neither is enough', () => {
    const columns = [
      { attribute: a, values: ['x', 'x', 'x', 'x', 'y', 'y', 'y', 'y'] },
      { attribute: b, values: ['u', 'u', 'v', 'v', 'u', 'u', 'v', 'v'] },
    ];
    const [, rule] = rulesOf(columns, [1, 1, 0, 0, 0, 0, 0, 0]);
    expect(rule).toMatchObject({ conditions: 2, recall: 1, precision: 1 });
    expect(rule.text.split(' and ').sort()).toEqual(['A x', 'B u']);
  });

  it('states its recall and precision as they are counted by hand, gaps fulfilling nothing', () => {
    const values = ['x', 'x', 'x', null, 'x', 'y', 'y', 'y'];
    const [rule] = rulesOf([{ attribute: a, values }], [0, 0, 0, 0, 1, 1, 1, 1]);
    // Three of four members fulfil "x", and of four that fulfil it three are members.
    expect(rule).toMatchObject({ text: 'A x', recall: 3 / 4, precision: 3 / 4 });
  });

  it('of two kinds of two attributes is as good as the best of all rules of up to two conditions, by trying each', () => {
    const kinds = fc.array(fc.constantFrom('p', 'q', 'r'), { minLength: 12, maxLength: 12 });
    const groups = fc.array(fc.nat(1), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(kinds, kinds, groups, (first, second, membership) => {
        fc.pre(membership.includes(0) && membership.includes(1));
        const [rule] = rulesOf(
          [
            { attribute: a, values: first },
            { attribute: b, values: second },
          ],
          membership,
        );
        const f1Of = (holds: (row: number) => boolean) => {
          const chosen = membership.flatMap((_, row) => (holds(row) ? [row] : []));
          const both = chosen.filter((row) => membership[row] === 0).length;
          return (2 * both) / (chosen.length + membership.filter((group) => group === 0).length);
        };
        const tried = ['p', 'q', 'r'].flatMap((x) => [
          f1Of((row) => first[row] === x),
          f1Of((row) => second[row] === x),
          ...['p', 'q', 'r'].map((y) => f1Of((row) => first[row] === x && second[row] === y)),
        ]);
        const f1 = (2 * rule.recall * rule.precision) / (rule.recall + rule.precision || 1);
        // A longer rule must be better by 0.02 to be taken.
        expect(f1).toBeGreaterThan(Math.max(...tried) - 0.02 - 1e-12);
      }),
      { seed: 8, numRuns: 200 },
    );
  });
});

describe('borderline members', () => {
  it('are those whose silhouette width is at most 0.05, counted and marked', () => {
    const values = [0, 0.1, 0.2, 0.3, 5.15, 10, 10.1, 10.2, 10.3];
    const found = grouping.compute(
      madeInput([{ attribute: size, values }]),
      groupingOptions.parse({ of: ['size'], k: 2, resamples: 0, permutations: 0, variants: false }),
    );
    const { columns, rows } = grouping.tables(found).membership;
    const at = (id: string) => columns.findIndex((column) => column.id === id);
    const borderline = rows.filter((row) => row[at('borderline')] === true);
    expect(borderline.map((row) => row[at('id')])).toEqual(['F5']);
    expect(found.groups.reduce((sum, group) => sum + group.borderline, 0)).toBe(1);
  });
});
