import { describe, expect, it } from 'vitest';
import { viewSource } from '../../src/app/engine/source-view.ts';
import { onOnePage, questionKey, questionsOf } from '../../src/app/screens/sources/question-list.ts';
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

describe('a page of questions', () => {
  it('has no more than forty, however many there are, the first of them first', () => {
    const text = `Find no.,Site\n${Array.from({ length: 120 }, (_, row) => `F${row % 60},Harrow`).join('\n')}\n`;
    const questions = questionsOf(viewSource(read(text), register, []), []);
    expect(questions.length).toBeGreaterThan(60);
    expect(onOnePage(questions, true)).toEqual(questions.slice(0, 40));
    expect(onOnePage(questions, false)).toEqual(questions.slice(0, 8));
  });

  it('asks of a column once: what is suggested is not asked again among the columns to take as they are', () => {
    const text =
      'Find no.,Structure,Yarn diam.,Qaa,Qbb,Qcc\n' +
      '1,tabby,0.4,x,red,3\n2,tabby,0.5,,blue,4\n3,twill,0.6,x,red,9\n4,twill,0.5,,red,7\n';
    const source = viewSource(read(text), register, []);
    const questions = questionsOf(source, []);
    const asked = questions.flatMap((question) =>
      question.kind === 'as-is'
        ? question.proposals.map(({ header }) => header)
        : 'column' in question
          ? [question.column.header]
          : [],
    );
    expect(source.columns.find(({ header }) => header === 'Yarn diam.')?.status).toBe('suggested');
    expect(asked).toContain('Yarn diam.');
    expect(questions.map(({ kind }) => kind)).toContain('as-is');
    expect(new Set(asked).size).toBe(asked.length);
    expect(new Set(questions.map(questionKey)).size).toBe(questions.length);
  });
});
