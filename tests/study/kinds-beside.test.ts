import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { runStudy } from '../../src/study/run-study.ts';

/**
 * Groups by the kind of fabric leave out the facets that restate what is compared between them: face follows from the
 * counts (balanced to 1.25 to 1, faced from 2 to 1, common practice), openness from the spacing of rows.
 */
const table = (structures: readonly string[], more: (i: number) => string, head: string) =>
  [
    `find no.,item,site,structure,${head}`,
    ...Array.from(
      { length: 36 },
      (_, i) => `F${i},F${i},${i < 18 ? 'Ness' : 'Holm'},${structures[i % structures.length]},${more(i)}`,
    ),
  ].join('\n');

const run = (text: string, analyses: readonly object[]) => {
  const study = checkStudy(
    { title: 't', witness: { is: 'column' }, sources: [{ file: 'finds.csv' }], analyses },
    'study.json',
  );
  return runStudy(study, new Map([['finds.csv', new TextEncoder().encode(text)]])).analyses;
};
const textOf = ({ tables, words }: { tables: unknown; words: unknown }) => JSON.stringify([tables, words]);

const WEAVES = [
  'balanced tabby',
  'weft-faced tabby',
  'balanced tabby',
  'weft-faced tabby',
  'balanced 2/2 twill',
];
const faced = (more: (i: number) => string, head: string) => table(WEAVES, more, head);

describe('kinds by which measures are compared', () => {
  const counts = (i: number) =>
    `${8 + (i % 5)},${i % 5 === 1 || i % 5 === 3 ? 24 : 8 + (i % 4)},0.${4 + (i % 4)}`;
  const found = run(faced(counts, 'warp/cm,weft/cm,warp diameter (mm)'), [
    { id: 'counts', kind: 'threadcount', draws: 5 },
    { id: 'weft', kind: 'contrast', of: ['density2'], by: 'kind' },
    { id: 'thick', kind: 'contrast', of: ['diameter1'], by: 'kind' },
    { id: 'kinds', kind: 'crosstab', rows: 'site', columns: 'kind' },
    { id: 'faces', kind: 'crosstab', rows: 'kind', columns: 'face' },
  ]);

  it('a diameter is compared, and kinds are counted, with the face that all recorded', () => {
    expect(textOf(found.thick!)).toContain('weft-faced tabby');
    expect(textOf(found.kinds!)).toContain('weft-faced tabby');
  });

  it('a count goes by the structure alone: face says it again', () => {
    expect(textOf(found.weft!)).toContain('tabby');
    expect(textOf(found.weft!)).not.toContain('weft-faced tabby');
  });

  it('both counts are looked at within kinds with and without the face that their ratio tells', () => {
    const { columns, rows } = found.counts!.tables.within!;
    const at = columns.findIndex(({ id }) => id === 'within');
    expect(rows.map((row) => row[at])).toEqual(['Kind of fabric', 'Kind of fabric without face']);
    expect(textOf(found.counts!)).toContain('weft-faced tabby');
  });

  it('what only the ratio of a face makes rise together within kinds is not shown to', () => {
    // Independent counts, and a face that is told by their ratio alone.
    const drawn = (i: number) => [6 + ((i * 7) % 13), 6 + ((i * 11 + 5) % 13)] as const;
    const lines = Array.from({ length: 169 }, (_, i) => {
      const [warp, weft] = [drawn(i % 13)[0], drawn(Math.floor(i / 13))[1]];
      return `F${i},F${i},Ness,${weft / warp > 1 ? 'weft-faced tabby' : 'balanced tabby'},${warp},${weft}`;
    });
    const twills = Array.from(
      { length: 26 },
      (_, i) => `T${i},T${i},Ness,balanced 2/2 twill,${drawn(i % 13)[0]},${drawn(i)[1]}`,
    );
    const text = ['find no.,item,site,structure,warp/cm,weft/cm', ...lines, ...twills].join('\n');
    const { counts } = run(text, [{ id: 'counts', kind: 'threadcount', draws: 5 }]);
    const { columns, rows } = counts!.tables.within!;
    const told = columns.findIndex(({ id }) => id === 'told');
    expect(rows.map((row) => row[told])).toEqual(['told apart', 'not told apart']);
    expect(counts!.words.answer).not.toContain('within one kind of fabric');
  });

  it('a facet is not crossed with the kind that holds it', () => {
    expect(textOf(found.faces!)).not.toContain('weft-faced tabby');
  });

  it('nor are spacings compared by openness, whose other facets stay', () => {
    const rows = table(
      [
        'open twining with pile',
        'close twining without pile',
        'open twining without pile',
        'close twining with pile',
      ],
      (i) => String(i % 2 === 0 ? 20 + i : 3 + (i % 3)),
      'row spacing (mm)',
    );
    const { spacing } = run(rows, [{ id: 'spacing', kind: 'contrast', of: ['rowSpacing'], by: 'kind' }]);
    expect(textOf(spacing!)).toContain('with pile');
    expect(textOf(spacing!)).not.toMatch(/(?:open|close) twining/u);
  });
});
