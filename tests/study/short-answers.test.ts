import { describe, expect, it } from 'vitest';
import { endingWith } from '../../src/analyses/one-sentence.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { checkStudy } from '../../src/study/load.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { faultsOfAnswer } from '../analyses/answer-rules.ts';

/**
 * An answer is one sentence of at most thirty words, whatever the table: many places with names of several words, gaps,
 * doubtful and broad words, labels that are missing, and nobody who has said what an object is.
 */

const random = createRandom(30);
const oneOf = <T>(options: readonly T[]): T => options[random.integer(options.length)];
const PLACES = [
  'Upper Ostrel Hollow by the Ford',
  'Old Keshem Quay, north basin',
  'Tull Barrow',
  'The Long Yarrin Field',
  'Vanmere Gate (second terrace)',
  '',
];
const WORDS = ['open twining', 'close twining', 'twined', 'tabby', '2/2 twill ?', 'knotted netting', ''];
const FIBRES = ['lime bast', 'willow bast', 'tree bast', 'flax ?', 'sheep wool', ''];

function oddTable(rows: number, shape: number): string {
  const head = 'id,item,site,phase,structure,row spacing (mm),warp density (per cm),fibre,preservation';
  const lines = Array.from({ length: rows }, (_, row) => {
    const place = random.integer(Math.min(PLACES.length, 2 + shape));
    return [
      `f${row}`,
      shape % 2 === 0 ? `o${Math.floor(row / 3)}` : '',
      `"${PLACES[place]}"`,
      oneOf(['Early', 'Late', shape > 3 ? '' : 'Late']),
      // Places lean to kinds of their own, so that much is told apart.
      random.next() < 0.7 ? WORDS[place % WORDS.length] : oneOf(WORDS),
      oneOf([`${3 + 4 * place + random.integer(4)}`, `c. ${5 + place}`, '']),
      oneOf([`${2 + random.integer(9)}`, '']),
      random.next() < 0.6 ? FIBRES[place % FIBRES.length] : oneOf(FIBRES),
      oneOf(['charred', 'waterlogged', place < 2 ? 'charred' : 'waterlogged']),
    ].join(',');
  });
  return [head, ...lines].join('\n');
}

const RULES = {
  title: 'Fine and coarse',
  types: [
    { id: 'fine', label: 'Fine', when: { attribute: 'rowSpacing', below: 9 } },
    { id: 'coarse', label: 'Coarse', when: { attribute: 'rowSpacing', atLeast: 9 } },
  ],
};
const few = { resamples: 199, relabellings: 99 };
const ANALYSES = [
  { id: 'summary', kind: 'summary', of: ['rowSpacing', 'structure', 'fibre'], by: ['site'], resamples: 199 },
  { id: 'contrast', kind: 'contrast', of: ['rowSpacing'], by: 'site', ...few },
  { id: 'contrasts', kind: 'contrast', of: ['rowSpacing', 'density1', 'structure'], by: 'phase', ...few },
  { id: 'crosstab', kind: 'crosstab', rows: 'site', columns: 'structure', ...few },
  { id: 'similarity', kind: 'similarity', assemblages: 'site', of: 'structure', ...few },
  { id: 'standing', kind: 'standing', site: 'Tull Barrow', of: 'structure', ...few },
  { id: 'map', kind: 'map', of: 'structure', deals: 199 },
  { id: 'typology', kind: 'typology', rules: 'types.json', of: ['density1', 'fibre'] },
  {
    id: 'placement',
    kind: 'placement',
    find: { rowSpacing: 'c. 9', structure: 'twined', fibre: 'tree bast' },
    labels: ['site', 'phase'],
    draws: 5,
  },
  { id: 'threadcount', kind: 'threadcount', x: 'rowSpacing', y: 'density1', draws: 20 },
  { id: 'grouping', kind: 'grouping', of: ['structure', 'rowSpacing'], resamples: 20, permutations: 19 },
  { id: 'ordination', kind: 'ordination', method: 'pcoa', of: ['structure', 'rowSpacing', 'fibre'] },
];
/** Those that judge: they say what they take as independent. */
const DESCRIBE = new Set(['summary', 'ordination']);

const bytes = (text: string) => new TextEncoder().encode(text);

describe.each([0, 1, 2, 3, 4])('odd table %i', (shape) => {
  const study = checkStudy(
    { title: 't', sources: [{ file: 'finds.csv' }], analyses: ANALYSES },
    'study.json',
  );
  const { analyses } = runStudy(
    study,
    new Map([
      ['finds.csv', bytes(oddTable(45 + 12 * shape, shape))],
      ['types.json', bytes(JSON.stringify(RULES))],
    ]),
  );

  it.each(ANALYSES.map(({ id }) => id))(
    '%s: one sentence within thirty words that says what counts',
    (id) => {
      const { words, why } = analyses[id];
      expect(faultsOfAnswer(words)).toEqual([]);
      if (why === undefined && !DESCRIBE.has(id))
        expect(words.answer).toMatch(/each fragment is a find|counted by fragments|^Cannot be told yet/);
    },
  );
});

describe('a clause that has to be said last', () => {
  const long =
    'In kind of fabric one two three four five six seven (eight, nine and ten) is most like eleven';
  it('never loses a part that the rest hangs on before all else is tried', () => {
    const answer =
      'Structure could not be shown to differ among finds preserved alike (Keshem Quay, Ostrel Hollow, Tull Barrow and Vanmere Gate); otherwise a difference cannot be told from one of preservation.';
    const names = [', if Keshem Qy and Keshem Quay are one name', ', near names as one'];
    expect(endingWith(answer, names, [''])).toBe(
      'Structure could not be shown to differ among finds preserved alike; otherwise a difference cannot be told from one of preservation, if Keshem Qy and Keshem Quay are one name.',
    );
    expect(endingWith(answer, [', so far'], [''])).toContain('of preservation, so far.');
    expect(
      endingWith('It differs (12 of 13), most from Ness to Holm, and much.', [` ${'so '.repeat(22)}`]),
    ).toMatch(/^It differs, most from Ness to Holm so/);
  });
  it('stands in full where there is room, and short where there is little', () => {
    expect(endingWith('It differs.', [', if each fragment is one', ', by fragments'])).toBe(
      'It differs, if each fragment is one.',
    );
    expect(
      endingWith(`${long} twelve thirteen fourteen fifteen sixteen seventeen.`, [
        `, ${'a '.repeat(9)}b`,
        ', c',
      ]),
    ).toMatch(/^In kind .*\(eight, nine and ten\).*seventeen, c\.$/);
  });
  it('takes the room of what stands in brackets, then of parts from the end', () => {
    const more = 'a b c d e f g h i j k';
    expect(endingWith(`${long} ${more}.`, [', c'])).toBe(
      `${long.replace(' (eight, nine and ten)', '')} ${more}, c.`,
    );
    expect(endingWith(`It differs, but ${'x '.repeat(27)}y.`, [', c'])).toBe('It differs, c.');
    const names = ['Skaith Hole (N)', 'Skaith Hole (S)', 'Ash (upper terrace)'];
    const alike = `in structure most alike are Skaith Hole (N) and Skaith Hole (S) (0.93), ${'far '.repeat(16)}off`;
    expect(endingWith(`${alike}.`, [', c'], [], names)).toContain('Skaith Hole (N) and Skaith Hole (S), far');
    expect(
      endingWith(`${alike}, like Ash (upper terrace) (${'x '.repeat(9)}).`, [', c'], [], names),
    ).not.toMatch(/Skaith Hole and|Hole,|Ash,/);
  });
});
