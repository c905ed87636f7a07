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

const WEAVES = ['balanced tabby', 'weft-faced tabby', 'balanced tabby', 'weft-faced tabby', 'balanced 2/2 twill'];
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

  it.each(['counts', 'weft'])('counts (%s) go by the structure alone: face says them again', (id) => {
    expect(textOf(found[id]!)).toContain('tabby');
    expect(textOf(found[id]!)).not.toContain('weft-faced tabby');
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
