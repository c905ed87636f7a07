import { describe, expect, it } from 'vitest';
import { viewSource } from '../../src/app/engine/source-view.ts';
import { questionsOf } from '../../src/app/screens/sources/question-list.ts';
import { extendRegister } from '../../src/attributes/register.ts';
import { asSort, proposeAsIs, withOwnColumns } from '../../src/sources/columns/propose-attributes.ts';
import { read, register } from '../sources/support.ts';

/** A table of 216 yes/no characters, made here: what is asked must not grow with the columns. */
const characters = Array.from({ length: 216 }, (_, i) => `c${i + 1}x`);
const rows = Array.from(
  { length: 6 },
  (_, row) => `Group ${row},${characters.map((_, i) => (row + i) % 2).join(',')}`,
);
const reading = read(`Tradition,${characters.join(',')}\n${rows.join('\n')}\n`);

describe('the questions of a table', () => {
  it('are one for two hundred columns alike', () => {
    const questions = questionsOf(viewSource(reading, register, []), []);
    expect(questions.length).toBeLessThanOrEqual(40);
    expect(questions.map(({ kind }) => kind)).toContain('as-is');
    expect(questions.filter(({ kind }) => kind === 'unknown')).toEqual([]);
  });

  it('are answered for all by one confirmation: each column becomes yes or no', () => {
    const proposals = proposeAsIs(reading, register);
    const attributes = proposals.flatMap(({ attribute }) => attribute ?? []);
    expect(attributes.filter(({ scale }) => scale === 'presence')).toHaveLength(216);
    const again = read(
      `Tradition,${characters.join(',')}\n${rows.join('\n')}\n`,
      withOwnColumns(reading.profile, proposals),
      { register: extendRegister(register, { attributes }) },
    );
    expect(again.columns.filter(({ status }) => status === 'matched').length).toBeGreaterThanOrEqual(216);
    expect(proposeAsIs(again, register)).toEqual([]);
  });

  it('let a column be taken as another sort', () => {
    const [first] = proposeAsIs(reading, register).filter(({ sort }) => sort === 'yes-no');
    if (first === undefined) throw new Error('no column of yes and no');
    expect(asSort(first, 'numbers', register)).toMatchObject({
      attribute: { scale: 'ratio' },
      rule: { header: first.header },
    });
    expect(asSort(first, 'text', register)).toMatchObject({ rule: { attribute: null } });
    expect(asSort(first, 'text', register).attribute).toBeUndefined();
  });
});

describe('the wordings that no term covers', () => {
  const words = ['qaa', 'qbb', 'qcc', 'qdd', 'qee'];
  const table = (most: number) =>
    read(
      `Find no.,Weave\nA,tabby\nB,twill\nC,satin\nD,twined\n${words
        .slice(0, most)
        .map((word, i) => `${i},${word}\nx${i},tabby`)
        .join('\n')}\n`,
    );
  const kinds = (most: number) =>
    questionsOf(viewSource(table(most), register, []), []).map(({ kind }) => kind);

  it('ask one question a column where they are many, and one each where they are few', () => {
    expect(kinds(5).filter((kind) => kind.startsWith('term'))).toEqual(['terms']);
    expect(kinds(2).filter((kind) => kind.startsWith('term'))).toEqual(['term', 'term']);
  });
});
