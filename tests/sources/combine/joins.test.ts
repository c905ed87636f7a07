import { describe, expect, it } from 'vitest';
import { proposeJoins } from '../../../src/sources/combine/align.ts';
import { read } from '../support.ts';

/** Which tables may describe the rows of others. Common practice of catalogues, no source; names invented. */
const named = (name: string, text: string) => ({ ...read(text), name });
const rows = (n: number, line: (i: number) => string) =>
  Array.from({ length: n }, (_, i) => line(i + 1)).join('\n');

describe('a join is proposed', () => {
  it('where a table describes in one row each what the rows of another name', () => {
    const finds = named(
      'finds',
      `Find no.,Site,Structure\n${rows(6, (i) => `f${i},${i % 2 ? 'Holm' : 'Ness'},tabby`)}\n`,
    );
    const sites = named('sites', 'Site,Period\nHolm,Early\nNess,Late\n');
    expect(proposeJoins([finds, sites])).toMatchObject([
      { finds: 'finds', describing: 'sites', by: 'site', keys: 2, matched: 2 },
    ]);
  });

  it('by the numbers of finds that another table measures', () => {
    const finds = named('finds', `Find no.,Structure\n${rows(6, (i) => `K 1${i}7,tabby`)}\n`);
    const more = named('more', `Find no.,Fibre\n${rows(4, (i) => `K 1${i}7,flax`)}\n`);
    expect(proposeJoins([finds, more])).toMatchObject([{ finds: 'finds', describing: 'more', matched: 4 }]);
  });

  it('not between two catalogues that number their rows from 1 on', () => {
    const one = named('one', `Cat. no.,Structure\n${rows(8, (i) => `${i},tabby`)}\n`);
    const other = named('other', `Cat. no.,Structure\n${rows(6, (i) => `${i},2/2 twill`)}\n`);
    expect(proposeJoins([one, other])).toEqual([]);
  });

  it('not where what is named alike is of other sites', () => {
    const one = named('one', `Find no.,Site\n${rows(8, (i) => `K ${i}07,Holm`)}\n`);
    const other = named('other', `Find no.,Site,Fibre\n${rows(6, (i) => `K ${i}07,Ness,flax`)}\n`);
    expect(proposeJoins([one, other])).toEqual([]);
  });
});
