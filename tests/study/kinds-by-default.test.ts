import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { runStudy } from '../../src/study/run-study.ts';

/** What is counted where a study does not say of what: the structure with the facets that every place recorded. */
const ANALYSES = [
  { id: 'map', kind: 'map', deals: 199 },
  { id: 'standing', kind: 'standing', site: 'Ness', resamples: 199 },
  { id: 'chronology', kind: 'chronology', draws: 5, relabellings: 99 },
  { id: 'threadcount', kind: 'threadcount', draws: 5 },
];

const table = (structures: Readonly<Record<'Ness' | 'Holm', readonly string[]>>) =>
  [
    'find no.,item,site,structure,date,warp/cm,weft/cm',
    ...Object.entries(structures).flatMap(([site, all]) =>
      Array.from(
        { length: 12 },
        (_, i) =>
          `${site}${i},${site}${i},${site},${all[i % all.length]},${i < 6 ? '400 BC' : '200 BC'},${4 + (i % 5)},${3 + (i % 4)}`,
      ),
    ),
  ].join('\n');

const run = (text: string, head = {}) => {
  const study = checkStudy(
    { title: 't', witness: { is: 'column' }, sources: [{ file: 'finds.csv' }], analyses: ANALYSES, ...head },
    'study.json',
  );
  return runStudy(study, new Map([['finds.csv', new TextEncoder().encode(text)]])).analyses;
};

/** All that an analysis says. */
const textsOf = (analyses: ReturnType<typeof run>, id: string): string => {
  const { tables, figures, words } = analyses[id]!;
  return JSON.stringify([tables, figures, words]);
};

describe('kinds where a study names none', () => {
  const both = run(
    table({
      Ness: ['open twining', 'close twining', 'tabby'],
      Holm: ['open twining', 'close twining', 'tabby'],
    }),
  );
  const one = run(
    table({ Ness: ['open twining', 'close twining', 'tabby'], Holm: ['twining', 'twining', 'tabby'] }),
  );

  it.each(ANALYSES.map(({ id }) => id))('%s counts the openness that both places recorded', (id) => {
    expect(both[id]!.options[id === 'threadcount' ? 'by' : 'of']).toBe('kind');
    expect(textsOf(both, id)).toContain('open twining');
    // A map colours by one kind alone.
    if (id !== 'map') expect(textsOf(both, id)).toContain('close twining');
  });

  it.each(['map', 'chronology', 'threadcount'])(
    '%s leaves out the openness that one of them did not',
    (id) => {
      expect(textsOf(one, id)).toContain('twined');
      expect(textsOf(one, id)).not.toMatch(/(?:open|close) twining/u);
    },
  );

  it('the same finds in two vocabularies are one kind at both places', () => {
    const [first] = one.standing!.words.because;
    expect(first).toContain('Holm 200 of 200');
  });

  it('says that structures are lacking where a table has none', () => {
    const { map } = run(['id,site,weight (g)', 'a,Ness,1', 'b,Holm,2'].join('\n'), {
      analyses: [{ id: 'map', kind: 'map', deals: 99 }],
    });
    expect(map!.words.answer).toMatch(/kind of fabric/iu);
  });
});
