import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../../src/study/load.ts';
import { runStudy } from '../../../src/study/run-study.ts';
import { demoText } from '../../demo/truth.ts';
import { faultsOfAnswer } from '../answer-rules.ts';

const [head, ...lines] = demoText('truth.csv')
  .trim()
  .split('\n')
  .map((line) => line.split(','));
const at = (name: string) => head!.indexOf(name);

/** The finds of the demo as they are, written by hands that say so much of structure and fibre. */
function ask(
  structure: (kind: string, site: string) => string,
  fibre: (fibre: string, site: string) => string,
) {
  const rows = lines.map((cells) => {
    const of = (name: string) => cells[at(name)] ?? '';
    const said = [structure(of('kind'), of('site')), fibre(of('fibre'), of('site'))];
    return [of('fragment'), of('item'), ...said, of('density1'), of('diameter1')].join(',');
  });
  const study = checkStudy(
    {
      title: 't',
      witness: { is: 'column' },
      sources: [{ file: 'finds.csv' }],
      analyses: [
        {
          id: 'groups',
          kind: 'grouping',
          of: ['structure', 'density1', 'diameter1', 'fibre'],
          k: 7,
          permutations: 39,
          resamples: 5,
          variants: false,
        },
      ],
    },
    'study.json',
  );
  const text = ['No.,Item,Structure,Fibre,Density 1 (per cm),Diameter 1 (mm)', ...rows, ''].join('\n');
  return runStudy(study, new Map([['finds.csv', new TextEncoder().encode(text)]])).analyses.groups.words;
}

const same = (word: string) => word;
const turn = (words: ReturnType<typeof ask>) =>
  words.unless.find(({ what }) => what.startsWith('if broad terms'));

describe('groups and broad terms', () => {
  it('that another reading of the broad terms dissolves are said to hang on them, in the answer', () => {
    const wreck = 'Pellunar Wreck';
    const words = ask(
      (kind, site) =>
        site !== wreck ? kind : /twining/.test(kind) ? 'twining' : /tabby|repp/.test(kind) ? 'woven' : kind,
      (fibre, site) => (site === wreck && /bast|flax|hemp|nettle/.test(fibre) ? 'plant fibre' : fibre),
    );
    expect(words.answer).toMatch(/fall into seven groups, \w+ of which hangs? on broad terms/);
    expect(turn(words)).toMatchObject({ overturns: true });
    expect(turn(words)!.what).toContain('plant fibre');
    expect(turn(words)!.size).toMatch(/^gone would be .* \(least Jaccard 0\.\d+\)$/);
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('that a few broad terms leave as they are stand without that condition', () => {
    const words = ask(same, same);
    expect(words.answer).not.toContain('broad terms');
    expect(turn(words)).toMatchObject({ overturns: false });
    expect(turn(words)!.what).toContain('tree bast');
    expect(turn(words)!.size).toContain('no group would dissolve');
  });

  it('are not asked where nobody uses one', () => {
    expect(turn(ask(same, (fibre) => (fibre === 'tree bast' ? 'willow bast' : fibre)))).toBeUndefined();
  });
});
