import { describe, expect, it } from 'vitest';
import { defaultAttributes } from '../../src/fragments/compared-by-default.ts';
import type { BroadRule } from '../../src/fragments/comparison/broad.ts';
import {
  COMPARED_BLOCKS,
  type ComparisonSettings,
  compareRecords,
} from '../../src/fragments/comparison/comparison.ts';
import { recordOfRow } from '../../src/fragments/comparison/find.ts';
import { readFind } from '../../src/fragments/find-table.ts';
import { collapseItems } from '../../src/fragments/items/items.ts';
import { dissimilarityAt } from '../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities, dissimilaritiesTo } from '../../src/numerics/dissimilarity/dissimilarity.ts';
import { valueAt } from '../../src/numerics/dissimilarity/variables.ts';
import { makeTable, register } from './make-table.ts';

const SETTINGS: ComparisonSettings = {
  of: [],
  weights: {},
  attributeWeights: {},
  mode: 'blocks',
  intervals: 'midpoint',
  ordinal: 'ranks',
  scaling: 'range',
  minimumOverlap: 0,
};
const logged = {
  ...register,
  attributes: new Map(
    [...register.attributes].map(([id, one]) => [
      id,
      id === 'rowSpacing' ? { ...one, transform: 'log' as const } : one,
    ]),
  ),
};
function loggedTable(rows: Parameters<typeof makeTable>[0]) {
  const table = makeTable(rows);
  const columns = new Map(
    [...table.columns].map(([id, column]) => [id, { ...column, attribute: logged.attributes.get(id)! }]),
  );
  return { ...table, columns };
}
const apart = (
  rows: Parameters<typeof makeTable>[0],
  of: string[],
  more: Partial<ComparisonSettings> = {},
) => {
  const { spec } = compareRecords(loggedTable(rows), logged, { ...SETTINGS, of, ...more });
  const matrix = dissimilarities(spec);
  return (i: number, j: number) => dissimilarityAt(matrix, i, j);
};

describe('attributes made comparable', () => {
  it('where ratios matter, 2 to 4 mm is as far as 20 to 40 mm', () => {
    const d = apart(
      [{ rowSpacing: 2 }, { rowSpacing: 4 }, { rowSpacing: 20 }, { rowSpacing: 40 }],
      ['rowSpacing'],
    );
    expect(d(0, 1)).toBeCloseTo(d(2, 3), 14);
    expect(d(0, 3)).toBeCloseTo(1, 14);
  });

  it('a unit change leaves scaled distances as they are', () => {
    const values = [1.2, 3.4, 8.1, 2.2];
    const mm = apart(
      values.map((diameter1) => ({ diameter1 })),
      ['diameter1'],
    );
    const cm = apart(
      values.map((value) => ({ diameter1: value / 10 })),
      ['diameter1'],
    );
    for (const [i, j] of [
      [0, 1],
      [1, 2],
      [0, 3],
    ])
      expect(mm(i, j)).toBeCloseTo(cm(i, j), 14);
  });

  it('lime bast is nearer to willow bast than to wool, and tree bast sits between (Wu & Palmer 1994)', () => {
    const d = apart(
      [{ fibre: 'limeBast' }, { fibre: 'willowBast' }, { fibre: 'wool' }, { fibre: 'treeBast' }],
      ['fibre'],
    );
    expect(d(0, 1)).toBeCloseTo(0.5, 14);
    expect(d(0, 2)).toBe(1);
    // By the place of tree bast in the tree, and as the mean over lime and willow, once each.
    const inTree = apart([{ fibre: 'limeBast' }, { fibre: 'willowBast' }, { fibre: 'treeBast' }], ['fibre'], {
      broad: 'place',
    });
    expect(inTree(0, 2)).toBeCloseTo(1 / 3, 14);
    expect(d(0, 3)).toBeCloseTo(1 / 4, 14);
  });

  describe('a broad term, worked by hand: lime bast three times, willow bast once, wool, and tree bast twice', () => {
    const fibres = ['limeBast', 'limeBast', 'limeBast', 'willowBast', 'wool', 'treeBast', 'treeBast'];
    const rows = fibres.map((fibre) => ({ fibre }));
    const under = (broad: BroadRule) => {
      const d = apart(rows, ['fibre'], { broad });
      return { lime: d(0, 5), willow: d(3, 5), wool: d(4, 5), itself: d(5, 6), narrow: d(0, 3) };
    };

    it('is its kinds as often as they are recorded, and at least and at most what they allow', () => {
      // One record more spread over both: lime 3.5 of 5, willow 1.5 of 5. They are 1/2 apart (Wu & Palmer 1994), so that
      // the mean is 0.3 · 1/2 from lime and 0.7 · 1/2 from willow; two of tree bast differ with chance 2 · 0.7 · 0.3.
      const { lime, willow, wool, itself, narrow } = under('expected');
      expect(lime).toBeCloseTo(0.15, 14);
      expect(willow).toBeCloseTo(0.35, 14);
      expect(itself).toBeCloseTo(0.21, 14);
      expect([wool, narrow]).toEqual([1, 0.5]);
      expect(under('least')).toEqual({ lime: 0, willow: 0, wool: 1, itself: 0, narrow: 0.5 });
      expect(under('greatest')).toEqual({ lime: 0.5, willow: 0.5, wool: 1, itself: 0.5, narrow: 0.5 });
    });

    it('is a kind like any other where nobody names a narrower one', () => {
      const d = apart([{ fibre: 'treeBast' }, { fibre: 'treeBast' }, { fibre: 'wool' }], ['fibre'], {
        broad: 'greatest',
      });
      expect([d(0, 1), d(0, 2)]).toEqual([0, 1]);
    });

    it('of a find is read as that of a record, and is named', () => {
      const table = makeTable(rows);
      for (const [broad, lime] of [
        ['expected', 0.15],
        ['least', 0],
        ['greatest', 0.5],
      ] as const) {
        const comparison = compareRecords(table, register, { ...SETTINGS, of: ['fibre'], broad });
        const find = readFind({ fibre: 'tree bast' }, register);
        const [first] = dissimilaritiesTo(comparison.spec, recordOfRow(comparison, find.table, 0));
        expect(first).toBeCloseTo(lime, 14);
        expect(comparison.broad).toEqual([{ label: 'fibre', terms: [{ label: 'tree bast', records: 2 }] }]);
      }
    });
  });

  describe('a kind with named variants', () => {
    const vocabularies = new Map(register.vocabularies);
    vocabularies.set('fibre', {
      id: 'fibre',
      label: 'fibre',
      terms: [
        { id: 'hair', label: 'hair', inner: 'variants', source: 'test' },
        { id: 'goatHair', label: 'goat hair', parent: 'hair', source: 'test' },
      ],
    });
    const own = { ...register, vocabularies };
    // The first catalogue tells goat hair apart, so that its plain hair is a kind; the second does not.
    const table = {
      ...makeTable(
        ['hair', 'hair', 'hair', 'goatHair', 'hair'].map((fibre) => ({ fibre })),
        own,
      ),
      origin: [0, 0, 0, 0, 1].map((source, row) => ({ source, row: row + 2 })),
      sources: ['a.csv', 'b.csv'],
    };
    const under = (broad: BroadRule) => {
      const { spec } = compareRecords(table, own, { ...SETTINGS, of: ['fibre'], broad });
      const matrix = dissimilarities(spec);
      return [dissimilarityAt(matrix, 0, 1), dissimilarityAt(matrix, 0, 4), dissimilarityAt(matrix, 3, 4)];
    };

    it('is plain where its catalogue tells the variants apart, and any of them elsewhere', () => {
      // Hair to goat hair is 1 - 2/3 = 1/3; the broad one is plain 3.5 times in 5.
      const apartByTree = 1 - 2 / 3;
      const [alike, toPlain, toGoat] = under('expected');
      expect(alike).toBe(0);
      expect(toPlain).toBeCloseTo(0.1, 14);
      expect(toGoat).toBeCloseTo(0.7 / 3, 14);
      expect(under('least')).toEqual([0, 0, 0]);
      expect(under('greatest')).toEqual([0, apartByTree, apartByTree]);
    });
  });

  it('a facet that was not recorded may be any where distances are bounded, and stays a gap otherwise', () => {
    const attributes = new Map(register.attributes);
    const { appliesTo: _toTwining, ...withoutAppliesTo } = attributes.get('spacingClass')!;
    attributes.set('spacingClass', {
      ...withoutAppliesTo,
      facet: { of: 'structure', name: 'openness', stands: 'before', order: 1, words: {} },
    });
    const own = { ...register, attributes };
    const table = makeTable(
      [
        { structure: 'twined', spacingClass: 'open' },
        { structure: 'twined', spacingClass: 'close' },
        { structure: 'twined' },
        { structure: 'woven' },
      ],
      own,
    );
    // A facet of all structures is told of twining alone here, so that what is woven has no gap.
    expect(own.attributes.get('spacingClass')?.appliesTo).toBeUndefined();
    const under = (broad: BroadRule) => {
      const { spec } = compareRecords(table, own, { ...SETTINGS, of: ['structure', 'spacingClass'], broad });
      const matrix = dissimilarities(spec);
      return [dissimilarityAt(matrix, 0, 2), dissimilarityAt(matrix, 0, 3)];
    };
    // Structure and openness weigh the same: open to close is half of 1; what is woven is compared by structure alone.
    expect(under('expected')).toEqual([0, 1]);
    expect(under('least')).toEqual([0, 1]);
    expect(under('greatest')).toEqual([0.5, 1]);
  });

  it('an open end is closed at the outermost value known, and said', () => {
    const rows = [{ diameter1: 1 }, { diameter1: 5 }, { diameter1: [3, Infinity] as const }];
    const made = compareRecords(makeTable(rows), register, { ...SETTINGS, of: ['diameter1'] });
    const variable = made.spec.variables[0];
    expect(variable.kind === 'quantity' && [variable.low[2], variable.high[2]]).toEqual([3, 5]);
    expect(made.notes).toEqual(['diameter1: 1 open-ended, closed at the outermost value known']);
  });

  it('not above zero has no logarithm: it is a gap, and said', () => {
    const rows = [{ rowSpacing: 0 }, { rowSpacing: 2 }, { rowSpacing: 4 }];
    const made = compareRecords(loggedTable(rows), logged, { ...SETTINGS, of: ['rowSpacing'] });
    expect(dissimilarityAt(dissimilarities(made.spec), 0, 1)).toBeNaN();
    expect(made.notes[0]).toContain('1 not above zero');
  });

  it('grades go by rank or by step', () => {
    const rows = ['close', 'close', 'semi-open', 'open'].map((spacingClass) => ({ spacingClass }));
    // Podani 1999 by hand: close to semi-open has no record between, close to open has one: (0 + 1) / (1 + 1).
    expect(apart(rows, ['spacingClass'])(0, 2)).toBe(0.5);
    expect(apart(rows, ['spacingClass'], { ordinal: 'grades' })(0, 3)).toBe(1);
    const lopsided = ['close', 'semi-open', 'semi-open', 'semi-open', 'open'].map((spacingClass) => ({
      spacingClass,
    }));
    expect(apart(lopsided, ['spacingClass'])(0, 1)).toBe(0.25);
    expect(apart(lopsided, ['spacingClass'], { ordinal: 'grades' })(0, 1)).toBe(0.5);
  });

  it('two quartile ranges count as 1 when asked, so that one giant does not flatten the rest', () => {
    const rows = [1, 2, 3, 4, 1000].map((diameter1) => ({ diameter1 }));
    expect(apart(rows, ['diameter1'], { scaling: 'quartiles' })(0, 1)).toBe(1 / 4);
    expect(apart(rows, ['diameter1'])(0, 1)).toBeLessThan(0.002);
  });

  it('joint absence of a trait says nothing, looked-for absence against presence does', () => {
    const rows = [
      { pile: 'present', density1: 1 },
      { pile: '-absent', density1: 2 },
      { pile: '-absent', density1: 3 },
    ];
    const d = apart(rows, ['pile']);
    expect(d(0, 1)).toBe(1);
    expect(d(1, 2)).toBeNaN();
  });

  it('spacing and density of the same rows may not both count', () => {
    const table = makeTable([{ rowSpacing: 5, density2: 2 }]);
    expect(() => compareRecords(table, register, { ...SETTINGS, of: ['rowSpacing', 'density2'] })).toThrow(
      'one measurement in two units',
    );
    expect(defaultAttributes(table)).toEqual(['density2']);
  });

  it('leaves out an attribute without a value, refuses text, and says when nothing is left', () => {
    const table = makeTable([{ pile: '-not-observed', diameter1: 2, remarks: 'worn' }]);
    const made = compareRecords(table, register, { ...SETTINGS, of: ['pile', 'diameter1'] });
    expect(made.notes).toEqual(['pile: no value, left out']);
    expect(() => compareRecords(table, register, { ...SETTINGS, of: ['remarks'] })).toThrow('free text');
    expect(() => compareRecords(table, register, { ...SETTINGS, of: ['pile'] })).toThrow(
      'none of the chosen',
    );
    expect(COMPARED_BLOCKS.slice(0, 3)).toEqual(['structure', 'spacing', 'fibre']);
  });
});

describe('a find from outside', () => {
  const table = makeTable([
    { structure: 'openTwining', rowSpacing: 20, diameter1: 1, fibre: 'limeBast' },
    { structure: 'closeTwining', rowSpacing: 3, diameter1: 2, fibre: 'wool' },
    { structure: 'woven', diameter1: 0.5, fibre: 'wool' },
  ]);
  const comparison = compareRecords(table, register, {
    ...SETTINGS,
    of: ['structure', 'rowSpacing', 'diameter1', 'fibre'],
  });

  it('that says what a record says is 0 from it, whether it gives spacing or density', () => {
    for (const rows of [{ rowSpacing: '20 mm' }, { rowSpacing: '2 cm' }, { density2: '0.5' }]) {
      const find = readFind(
        { structure: 'open twining', diameter1: '1', fibre: 'lime bast', ...rows },
        register,
      );
      const values = recordOfRow(comparison, find.table, 0);
      expect(values[1].low).toBe(20);
      const [same] = dissimilaritiesTo(comparison.spec, values);
      expect(same).toBeCloseTo(0, 14);
    }
  });

  it('whose row is one of the table has that row of the matrix', () => {
    const matrix = dissimilarities(comparison.spec);
    const to = dissimilaritiesTo(comparison.spec, recordOfRow(comparison, table, 1));
    expect(to[0]).toBeCloseTo(dissimilarityAt(matrix, 1, 0), 14);
    expect(to[2]).toBeCloseTo(dissimilarityAt(matrix, 1, 2), 14);
  });

  it('whose row stands for several fragments is coded by their median where midpoints count, by its hull elsewhere', () => {
    const of = ['rowSpacing'];
    const fragments = [1, 2, 9].map((mm) => ({ item: 'one', rowSpacing: mm }));
    const own = makeTable([...fragments, { item: 'other', rowSpacing: 4 }]);
    const { table: items } = collapseItems(own, register);
    for (const intervals of ['midpoint', 'expected'] as const) {
      const made = compareRecords(items, register, { ...SETTINGS, of, intervals });
      const [value] = recordOfRow(made, items, 0);
      expect([value.low, value.high]).toEqual(intervals === 'midpoint' ? [2, 2] : [1, 9]);
      expect(value).toEqual(valueAt(made.spec.variables[0], 0));
    }
  });

  it('keeps its range, leaves out what makes no sense for its structure, and says what it could not read', () => {
    const find = readFind(
      { structure: 'woven', rowSpacing: '5', diameter1: '1-2', fibre: 'quux hair' },
      register,
    );
    expect(find.notes.some((note) => note.includes('makes no sense for the structure'))).toBe(true);
    expect(find.notes.some((note) => note.startsWith('fibre:'))).toBe(true);
    const values = recordOfRow(comparison, find.table, 0);
    expect(values[1].low).toBeNaN();
    expect([values[2].low, values[2].high]).toEqual([1, 2]);
  });

  it('that names no attribute is refused', () => {
    expect(() => readFind({ colour: 'red' }, register)).toThrow('the find names "colour"');
  });
});
