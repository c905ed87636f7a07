import { describe, expect, it } from 'vitest';
import { defaultRegister } from '../../src/attributes/register.ts';
import { compareRecords } from '../../src/fragments/comparison/comparison.ts';
import { collapseItems } from '../../src/fragments/items/items.ts';
import { registerMixtures } from '../../src/fragments/kinds/mixed.ts';
import { selectRows } from '../../src/fragments/select.ts';
import { explainPair } from '../../src/numerics/dissimilarity/explain-pair.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { analyse } from '../../src/study/run-study.ts';
import { read, termsOf } from '../sources/support.ts';

const fibreOf = (text: string, id = 'fibre') =>
  termsOf(read(`Find no.,Structure,Fibre\nA,tabby,"${text}"\nB,tabby,"warp flax, weft flax"\n`), id)[0];

// Common practice, no source.
describe('several fibres in one cell', () => {
  it.each<[text: string, term: string | null]>([
    ['Wool, silk, metal thread', 'metalThread+silk+wool'],
    ['wool and silk', 'silk+wool'],
    ['silk & wool', 'silk+wool'],
    ['Wolle mit Seide', 'silk+wool'],
    ['laine et soie', 'silk+wool'],
    ['lana con seta', 'silk+wool'],
    ['lana y seda', 'silk+wool'],
    ['uld og silke', 'silk+wool'],
    ['wool, wool', 'wool'],
    // A broader word beside a narrower one says the same again.
    ['flax and plant fibre', 'flax'],
    // One of two, which is not said.
    ['wool or silk', 'animalFibre'],
    ['wool and gossamer', null],
  ])('%s', (text, term) => {
    expect(fibreOf(text)).toBe(term);
  });

  it.each<[text: string, first: string | null, second: string | null]>([
    ['warp linen, weft wool', 'flax', 'wool'],
    ['weft wool, warp linen', 'flax', 'wool'],
    ['linen (warp), wool (weft)', 'flax', 'wool'],
    ['Kette: Leinen; Schuß: Wolle', 'flax', 'wool'],
    ['Leinen in der Kette, Wolle im Schuss', 'flax', 'wool'],
    ['lin en chaîne et laine en trame', 'flax', 'wool'],
    ['ordito lino, trama lana', 'flax', 'wool'],
    ['urdimbre de lino y trama de lana', 'flax', 'wool'],
    ['trend hør, islæt uld', 'flax', 'wool'],
    ['warp linen, weft wool and silk', 'flax', 'silk+wool'],
    ['warp and weft wool', 'wool', 'wool'],
    ['wool weft', null, 'wool'],
    ['system 1 nettle?, system 2 wool', 'nettle', 'wool'],
    ['wool', 'wool', null],
  ])('by system: %s', (text, first, second) => {
    expect([fibreOf(text), fibreOf(text, 'fibre2')]).toEqual([first, second]);
  });
});

const ROWS = ['wool', 'wool', 'silk and wool', 'silk', 'flax', 'wool and flax'];
const csv = `Find no.,Site,Structure,Fibre\n${ROWS.map((fibre, at) => `F${at},Holm,tabby,${fibre}`).join('\n')}\n`;
const table = read(csv).table;
const register = registerMixtures(table, defaultRegister());

describe('a mixture beside other records', () => {
  // By hand. Paths from the roots: animal fibre > hair > sheep wool; animal fibre > silk; plant > bast > herb bast > flax.
  // wool to silk 1 - 2/5 = 0.6; to flax 1 (no common root). Best matches, averaged within each set, and both averages:
  it.each<[a: number, b: number, distance: number, how: string]>([
    [0, 2, 0.15, 'wool to silk and wool: (0 + (0.6 + 0) / 2) / 2'],
    [3, 2, 0.15, 'silk to silk and wool: (0 + (0 + 0.6) / 2) / 2'],
    [0, 5, 0.25, 'wool to wool and flax: (0 + (0 + 1) / 2) / 2'],
    [2, 5, 0.4, 'silk and wool to wool and flax: ((0.6 + 0) / 2 + (0 + 1) / 2) / 2'],
    [4, 2, 1, 'flax to silk and wool: nothing near'],
    [0, 1, 0, 'wool to wool'],
  ])('%i and %i: %f (%s)', (a, b, distance) => {
    const { spec } = compareRecords(table, register, {
      of: ['fibre'],
      weights: {},
      attributeWeights: {},
      mode: 'plain',
      intervals: 'midpoint',
      ordinal: 'grades',
      scaling: 'range',
      minimumOverlap: 0,
    });
    expect(explainPair(spec, a, b).dissimilarity).toBeCloseTo(distance, 12);
  });

  it('meets a condition on each of its kinds', () => {
    const rows = (term: string) => [
      ...selectRows(table, [{ attribute: 'fibre', in: [term] }], register).rows,
    ];
    expect(rows('wool')).toEqual([0, 1, 2, 5]);
    expect(rows('animalFibre')).toEqual([0, 1, 2, 3, 5]);
    expect(rows('flax')).toEqual([4, 5]);
  });

  it('and pieces of one item that show less of it do not contradict each other', () => {
    const item = 'Find no.,Item,Structure,Fibre\nA,1,tabby,wool\nB,1,tabby,wool and flax\n';
    const { table: items, disagreements } = collapseItems(read(item).table, register);
    const column = items.columns.get('fibre');
    expect(column?.kind === 'term' ? column.levels[column.codes[0]!] : null).toBe('flax+wool');
    expect(disagreements).toEqual([]);
  });
});

describe('a mixture is counted', () => {
  const study = {
    title: 't',
    sources: [{ file: 'a.csv' }],
    witness: { is: 'row' },
    analyses: [
      { id: 'fibres', kind: 'summary', of: ['fibre'] },
      { id: 'where', kind: 'placement', find: { fibre: 'linen and silk', structure: 'tabby' }, nearest: 3 },
    ],
  };
  const files = new Map([['a.csv', new TextEncoder().encode(csv)]]);
  const prepared = prepareStudy(checkStudy(study, 'study.json'), files);
  const { fibres, where } = analyse(prepared, files).analyses;

  it('as a kind of its own with its name, and once in each of its kinds, which is said', () => {
    const kinds = fibres!.tables.kinds!.rows.map((row) => row.slice(0, 3));
    expect(JSON.stringify(kinds)).toContain('silk and sheep wool');
    const { rows, note } = fibres!.tables.mixtures!;
    expect(rows).toEqual([
      ['Fibre', 'flax', 1, 1, 2],
      ['Fibre', 'sheep wool', 2, 2, 4],
      ['Fibre', 'silk', 1, 1, 2],
    ]);
    expect(note).toContain('counts once for each of its kinds');
    expect(fibres!.words.because.join(' ')).toContain(
      'A mixture counts in each of its kinds: flax 2, sheep wool 4 and silk 2.',
    );
  });

  it('and a find of a mixture that no record has is near those that share a kind', () => {
    expect(where!.why).toBeUndefined();
    // By hand, in the fibre alone: flax and silk 0.25 each, wool and flax 0.3, wool 0.7.
    const nearest = where!.tables.neighbours!.rows.map((row) =>
      row.find((cell) => /^F\d$/.test(String(cell))),
    );
    expect([...nearest].sort()).toEqual(['F3', 'F4', 'F5']);
  });
});
