import { describe, expect, it } from 'vitest';
import { extendRegister } from '../../../src/attributes/register.ts';
import { combineSources } from '../../../src/sources/combine/combine.ts';
import { readSource } from '../../../src/sources/read-source.ts';
import { bytes, readReal, realTablesMissing, register, savedProfile, textsOf } from '../support.ts';

/** Rows of one source that may be one find, written down twice under two identifiers. */

const HEAD = 'Find no.,Site,Length (mm),Width (mm),Threads per cm (warp),Threads per cm (weft),Structure\n';
/** Thirty invented rows of which no two agree in two measurements; then what a test adds. */
const plain = Array.from(
  { length: 30 },
  (_, i) =>
    `F${i},Ottmere,${100 + i},${50 + ((i * 7) % 30)},${5 + ((i * 11) % 30)},${4 + ((i * 13) % 30)},tabby`,
);
const of = (...more: string[]) =>
  combineSources(
    [readSource(bytes(`${HEAD}${[...plain, ...more].join('\n')}\n`), { name: 's.csv', register })],
    register,
  );

describe('two rows of one source', () => {
  it('that agree in four rare measurements are asked about, and both stay', () => {
    const { duplicates, table } = of('G1,Ottmere,103,71,8,13,tabby');
    expect(table.rows).toBe(31);
    expect(duplicates).toMatchObject([
      { ids: ['F3', 'G1'], sources: ['s.csv', 's.csv'], equal: 4, why: expect.stringContaining('all 4') },
    ]);
  });

  it('are two finds where one thing that both have differs: a number, a kind, a site', () => {
    expect(of('G1,Ottmere,103,71,8,14,tabby').duplicates).toEqual([]);
    expect(of('G1,Ottmere,103,71,8,13,twill').duplicates).toEqual([]);
    expect(of('G1,Pell,103,71,8,13,tabby').duplicates).toEqual([]);
  });

  it('are not asked about where their values are common', () => {
    const common = Array.from({ length: 20 }, (_, i) => `C${i},Ottmere,40,30,12,10,tabby`);
    expect(of(...common).duplicates).toEqual([]);
  });

  it('are settled by a decision as two rows of two sources are', () => {
    const reading = readSource(bytes(`${HEAD}${[...plain, 'G1,Ottmere,103,71,8,13,tabby'].join('\n')}\n`), {
      name: 's.csv',
      register,
    });
    const { table, duplicates, setAside } = combineSources([reading], register, [
      { first: { source: 's.csv', id: 'F3' }, second: { source: 's.csv', id: 'G1' }, decision: 'first-only' },
    ]);
    expect([table.rows, duplicates, setAside.get('s.csv')]).toEqual([
      30,
      [],
      [{ row: 32, reason: 'the same find as row 5 of s.csv, by decision' }],
    ]);
  });
});

/**
 * The field table of Kiwulan (Wang and Marwick 2020, CC0) lists vessels found in several grid squares once a
 * square; its column `filename` names the vessel and is not used by the search.
 */
describe.skipIf(realTablesMissing)('the field table of Kiwulan', () => {
  const size = (id: string) =>
    ({ id, label: id, block: 'find', scale: 'ratio', unit: 'mm', source: 'the field table' }) as const;
  const pots = extendRegister(register, {
    attributes: [
      'height',
      'rimThickness',
      'neckThickness',
      'bodyThickness',
      'rimDiameter',
      'neckDiameter',
      'bodyDiameter',
    ].map(size),
  });

  it('names no two vessels that differ, and finds 147 of the 155 pairs of rows that are one vessel', () => {
    const reading = readReal(
      'kwl-pottery/KWL_Ceramic_final2018_with_phases.csv',
      savedProfile('kwl-raw'),
      pots,
    );
    const { duplicates } = combineSources([reading], pots);
    const vessel = textsOf(reading, 'column: filename');
    const wrong = duplicates.filter(({ rows: [a, b] }) => vessel[a] !== vessel[b]);
    const count = new Map<string, number>();
    for (const name of vessel) count.set(name, (count.get(name) ?? 0) + 1);
    const pairs = [...count.values()].reduce((sum, n) => sum + (n * (n - 1)) / 2, 0);
    expect([wrong.length, duplicates.length, pairs]).toEqual([0, 147, 155]);
  });

  it('is without any such pair once the authors had cleaned it', () => {
    const cleaned = readReal(
      'kwl-pottery/KWL-pottery-metrics-tidy-ave.csv',
      savedProfile('kwl-cleaned'),
      pots,
    );
    expect(combineSources([cleaned], pots).duplicates).toEqual([]);
  });
});
