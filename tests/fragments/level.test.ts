import { describe, expect, it } from 'vitest';
import { termAt } from '../../src/fragments/accessors.ts';
import { atLevel, type LevelSettings } from '../../src/fragments/level/common-level.ts';
import type { FragmentTable, TermColumn } from '../../src/fragments/table.ts';
import { makeTable, register } from './make-table.ts';

/** Records by site, all of one source unless `sources` says which site is of which. */
function region(
  sites: Readonly<Record<string, readonly string[]>>,
  sources: Readonly<Record<string, number>> = {},
): FragmentTable {
  const rows = Object.entries(sites).flatMap(([site, fibres]) => fibres.map((fibre) => ({ site, fibre })));
  const table = makeTable(rows);
  return {
    ...table,
    sources: ['a', 'b', 'c'],
    origin: rows.map(({ site }, row) => ({ source: sources[site] ?? 0, row: row + 1 })),
  };
}

function counted(table: FragmentTable, settings: LevelSettings = {}) {
  const found = atLevel(table, 'fibre', 'site', register, settings);
  const column = found.table.columns.get('fibre') as TermColumn;
  return { found, kinds: Array.from({ length: table.rows }, (_, row) => termAt(column, row)) };
}

describe('the common level', () => {
  it('folds what one of the compared records only in the broad word, and names whose words they are', () => {
    const table = region({
      Holm: ['limeBast', 'willowBast', 'wool'],
      Pell: ['treeBast', 'treeBast', 'wool'],
    });
    const { found, kinds } = counted(table);
    expect(kinds).toEqual(['treeBast', 'treeBast', 'wool', 'treeBast', 'treeBast', 'wool']);
    expect(found.differs).toBe(true);
    expect(found.folds).toEqual([
      expect.objectContaining({
        term: 'treeBast',
        records: 2,
        because: [{ label: 'Pell', broad: 2, of: 2 }],
      }),
    ]);
    expect(found.folds[0]?.narrower).toHaveLength(2);
  });

  it('leaves everything as it is where all record to the same depth', () => {
    const table = region({ Holm: ['limeBast', 'wool'], Pell: ['willowBast', 'wool'] });
    const { found } = counted(table);
    expect(found.table).toBe(table);
    expect(found).toMatchObject({ differs: false, folds: [], tooBroad: [] });
  });

  it('folds nothing for a tenth of broad records: they are left out, counted, and could be any of the kinds', () => {
    const nine = Array.from({ length: 9 }, () => 'limeBast');
    const { found, kinds } = counted(region({ Holm: [...nine, 'treeBast'], Pell: ['willowBast'] }));
    expect(kinds[9]).toBeNull();
    expect(kinds.slice(0, 9)).toEqual(nine);
    expect(found.folds).toEqual([]);
    expect(found.tooBroad).toEqual([
      { term: 'treeBast', label: 'tree bast', rows: [9], couldBe: ['lime bast', 'willow bast'] },
    ]);
    // One more broad record among them is more than a tenth.
    expect(counted(region({ Holm: [...nine, 'treeBast', 'treeBast'], Pell: ['willowBast'] })).kinds[0]).toBe(
      'treeBast',
    );
  });

  it('folds only the branch that somebody did not tell apart', () => {
    const { kinds } = counted(region({ Holm: ['limeBast', 'flax'], Pell: ['treeBast', 'nettle'] }));
    expect(kinds).toEqual(['treeBast', 'flax', 'treeBast', 'nettle']);
  });

  it('counts at the terms that are named, leaves broader records out and other branches as recorded', () => {
    const table = region({ Holm: ['limeBast', 'flax'], Pell: ['bast', 'wool'] });
    const { found, kinds } = counted(table, { level: ['treeBast'] });
    expect(kinds.slice(0, 2)).toEqual(['treeBast', 'flax']);
    expect(kinds[3]).toBe('wool');
    expect(found.folds).toEqual([expect.objectContaining({ term: 'treeBast', records: 1 })]);
  });

  it('keeps the words as they stand when asked to', () => {
    const table = region({ Holm: ['limeBast'], Pell: ['treeBast'] });
    expect(counted(table, { level: 'recorded' }).kinds).toEqual(['limeBast', 'treeBast']);
  });

  it('does not hang on the order of the records', () => {
    const sites = { Holm: ['limeBast', 'willowBast', 'wool'], Pell: ['treeBast', 'wool'] };
    const turned = Object.fromEntries(Object.entries(sites).reverse());
    const sorted = (of: Readonly<Record<string, readonly string[]>>) => counted(region(of)).kinds.sort();
    expect(sorted(turned)).toEqual(sorted(sites));
  });
});

describe('a kind with named variants', () => {
  const tabbyHasVariants = {
    ...register,
    vocabularies: new Map(
      [...register.vocabularies].map(([id, vocabulary]) => [
        id,
        {
          ...vocabulary,
          terms: vocabulary.terms.map((term) =>
            term.id === 'treeBast' ? { ...term, inner: 'variants' as const } : term,
          ),
        },
      ]),
    ),
  };
  const kindsOf = (table: FragmentTable) => {
    const column = atLevel(table, 'fibre', 'site', tabbyHasVariants).table.columns.get('fibre') as TermColumn;
    return Array.from({ length: table.rows }, (_, row) => termAt(column, row));
  };

  it('is plain where its catalogue tells the variants apart', () => {
    const sites = { Holm: ['treeBast', 'limeBast'], Pell: ['limeBast', 'treeBast'] };
    expect(kindsOf(region(sites, { Pell: 1 }))).toEqual(['treeBast', 'limeBast', 'limeBast', 'treeBast']);
  });

  it('is broad where its catalogue never names one', () => {
    const sites = { Holm: ['treeBast', 'limeBast'], Pell: ['treeBast', 'treeBast'] };
    expect(kindsOf(region(sites, { Pell: 1 }))).toEqual(['treeBast', 'treeBast', 'treeBast', 'treeBast']);
  });
});
