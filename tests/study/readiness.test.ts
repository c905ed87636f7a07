import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { readinessOf } from '../../src/study/readiness/readiness.ts';
import type { ReadinessLine } from '../../src/study/results/results.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

function linesOf(
  tables: Readonly<Record<string, string>>,
  more: object = {},
): Partial<Record<ReadinessLine['topic'], ReadinessLine>> {
  const study = checkStudy(
    { title: 't', sources: Object.keys(tables).map((file) => ({ file })), ...more },
    'study.json',
  );
  const files = new Map(Object.entries(tables).map(([file, text]) => [file, bytes(text)]));
  const lines = readinessOf(prepareStudy(study, files));
  return Object.fromEntries(lines.map((line) => [line.topic, line]));
}

const HEAD = 'Cat. no.,Item no.,Site,Recorder,Fibre\n';

describe('whether the data are ready', () => {
  it('says what counts as one, and that nobody has confirmed it', () => {
    const table = `${HEAD}1,7,Holm,A. B.,wool\n2,7,Holm,A. B.,wool\n3,8,Holm,A. B.,wool\n`;
    expect(linesOf({ 'a.csv': table }).witness).toMatchObject({
      state: 'ask',
      says: expect.stringContaining('3 fragments; numbers in the tables seem to name 2 objects'),
    });
    expect(linesOf({ 'a.csv': table }, { witness: { is: 'column', noun: 'vessel' } }).witness).toMatchObject({
      state: 'ready',
      says: '3 fragments of 2 vessels, as confirmed.',
    });
    expect(linesOf({ 'a.csv': 'Cat. no.,Site\n1,Holm\n2,Ness\n' }).witness).toMatchObject({
      state: 'mind',
      says: expect.stringContaining('each counts as a find of its own'),
    });
  });

  it('names the likeliest column of each table until one is confirmed', () => {
    const table = 'Cat. no.,Bundle,Fibre\n1,a,wool\n2,a,wool\n3,b,flax\n4,b,flax\n';
    expect(linesOf({ 'a.csv': table }).witness).toMatchObject({
      state: 'mind',
      mend: 'Name the column that does, or say that each row is one. Likeliest: “Bundle” of a.csv.',
    });
    expect(linesOf({ 'a.csv': table }, { witness: { is: 'row' } }).witness?.mend).toBeUndefined();
  });

  it('gives the least number of objects by its rule, beside the number of fragments, until a column says', () => {
    const says = (text: string, more = {}) => linesOf({ 'a.csv': text }, more).witness?.says;
    const table = 'Cat. no.,Site,Fibre\n1,Holm,wool\n2,Holm,wool\n3,Holm,flax\n4,Ness,wool\n';
    expect(says(table)).toContain(
      'They are of at least 3 objects: so many contradict one another, within source, site, phase and context, in structure, fibre or readings a fifth apart.',
    );
    expect(says(table, { witness: { is: 'row' } })).not.toContain('at least');
  });

  it('asks about names that may be one, until the study says', () => {
    const table = `${HEAD}1,,Drommavel Landing,X,wool\n2,,Drommavel ldg,X,wool\n`;
    expect(linesOf({ 'a.csv': table }).names).toMatchObject({
      state: 'ask',
      says: 'Names that may be one: “Drommavel Landing” and “Drommavel ldg”; compared as one until somebody says that they are two.',
    });
    const names = [{ attribute: 'site', name: 'Drommavel Landing', also: ['Drommavel ldg'] }];
    expect(linesOf({ 'a.csv': table }, { names }).names).toBeUndefined();
  });

  it('counts the records that lack a label, and says where they come from', () => {
    const a = `${HEAD}1,,Holm,X,wool\n2,,Ness,X,wool\n`;
    const b = `${HEAD}3,,,X,wool\n4,,,X,wool\n`;
    expect(linesOf({ 'a.csv': a, 'b.csv': b }).labels?.says).toBe(
      'Of 4 fragments, site unknown of 2 (all in b.csv): these take no part where that label is the answer.',
    );
    expect(linesOf({ 'a.csv': a }).labels).toMatchObject({ state: 'ready' });
  });

  it('names whose words are broader than those of the others', () => {
    const table = `${HEAD}1,,Holm,X,lime bast\n2,,Holm,X,willow bast\n3,,Ness,X,tree bast\n`;
    expect(linesOf({ 'a.csv': table }).level?.says).toContain(
      '“tree bast” is all that Ness (1 of 1) says where 2 others say more',
    );
  });

  it('counts what is marked as doubtful', () => {
    const table = `${HEAD}1,,Holm,X,wool?\n2,,Holm,X,wool\n`;
    expect(linesOf({ 'a.csv': table }).certainty?.says).toBe(
      'Marked as doubtful: Fibre 1; they count with the certain ones.',
    );
  });

  it('names what one table never records and another does', () => {
    const lines = (second: string) =>
      linesOf({ 'a.csv': `${HEAD}1,7,Holm,A. B.,wool\n`, 'b.csv': second }).gaps;
    expect(lines('Cat. no.,Site\n1,Ness\n')).toMatchObject({
      state: 'mind',
      says: 'Never recorded by some: Fibre (not in b.csv).',
    });
    expect(lines('Cat. no.,Site,Fibre\n1,Ness,flax\n')).toBeUndefined();
  });

  it('asks about confirmed objects that cannot each be one', () => {
    const rows = ['1,7,Holm,A. B.,wool', '2,7,Holm,A. B.,flax', '3,8,Holm,A. B.,wool', '4,8,Holm,A. B.,wool'];
    const table = (all: readonly string[]) => `${HEAD}${all.join('\n')}\n`;
    const confirmed = { witness: { is: 'column', noun: 'vessel' } };
    expect(linesOf({ 'a.csv': table(rows) }, confirmed).witness).toMatchObject({
      state: 'ask',
      says: expect.stringContaining(
        'Of 2 vessels of several fragments 1 cannot each be one: their fragments differ in fibre',
      ),
    });
    expect(linesOf({ 'a.csv': table(rows.slice(2)) }, confirmed).witness).toMatchObject({ state: 'ready' });
  });

  it('says that recorders are not known, or who they are', () => {
    expect(linesOf({ 'a.csv': 'Cat. no.,Site\n1,Holm\n2,Ness\n' }).recorders?.state).toBe('mind');
    expect(linesOf({ 'a.csv': `${HEAD}1,,Holm,A. B.,wool\n2,,Holm,C. D.,wool\n` }).recorders).toMatchObject({
      state: 'ready',
      says: '2 recorders: A. B. and C. D.',
    });
  });
});

describe('how numbers became objects', () => {
  const head = 'Frag.,Object no.,Site,Context,Fibre\n';
  const told = (text: string, profile?: object) => {
    const study = checkStudy(
      {
        title: 't',
        sources: [{ file: 'a.csv', ...(profile === undefined ? {} : { profile: 'a.json' }) }],
        witness: { is: 'column' },
      },
      'study.json',
    );
    const files = new Map([
      ['a.csv', bytes(text)],
      ['a.json', bytes(JSON.stringify(profile ?? {}))],
    ]);
    return readinessOf(prepareStudy(study, files)).filter(({ says }) => says.includes('became'));
  };
  const columns = [{ header: 'Object no.', attribute: 'item' }];

  it('is said where one number stands in several contexts or at several sites', () => {
    const table = `${head}1,7,Holm,A,wool\n2,7,Holm,B,wool\n3,8,Holm,A,wool\n4,8,Ness,A,wool\n5,9,Ness,A,wool\n6,9,Ness,A,wool\n`;
    expect(told(table, { columns })).toMatchObject([
      {
        state: 'mind',
        says: '3 numbers became 5 items because 1 stands at several sites and 1 stands in several contexts ("itemNumbers"), where numbers restart as a rule.',
      },
    ]);
  });

  it('is not said where each number is one object, or where the profile says so', () => {
    const table = `${head}1,7,Holm,A,wool\n2,7,Holm,B,wool\n`;
    expect(told(table, { columns })).toHaveLength(1);
    expect(told(table, { columns, itemNumbers: 'everywhere' })).toEqual([]);
    expect(told(`${head}1,7,Holm,A,wool\n2,7,Holm,A,wool\n`, { columns })).toEqual([]);
  });
});
