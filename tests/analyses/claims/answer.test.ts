import { beforeAll, describe, expect, it } from 'vitest';
import { checkClaims } from '../../../src/analyses/claims/compute.ts';
import type { ClaimsFound } from '../../../src/analyses/claims/found.ts';
import { claims } from '../../../src/analyses/claims/index.ts';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { prepareDemo } from '../../demo/prepared.ts';
import { demoBytes } from '../../demo/truth.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { check, type Row } from './claims.ts';

let demo: ClaimsFound;

beforeAll(() => {
  const { study, prepared } = prepareDemo();
  const { fragments, records, register } = prepared;
  const files = new Map([['claims.csv', demoBytes('claims.csv')]]);
  const material = { fragments, records, register, unit: study.unit };
  demo = checkClaims(files, { file: 'claims.csv', tables: [] }, createRandom(study.seed), material);
}, 120_000);

const RIGHT: readonly Row[] = [
  { id: 'a', set: 's', quantity: 'count', printed: '12 (40 %)', place: 'p. 3' },
  { id: 'b', set: 's', quantity: 'n', printed: '30', place: 'p. 3' },
];
const WRONG: readonly Row[] = [
  { id: 'a', set: 's', quantity: 'count', printed: '12 (42 %)', place: 'p. 3, table 1' },
  { id: 'b', set: 's', quantity: 'n', printed: '30', place: 'p. 3' },
];
const ALONE: readonly Row[] = [{ id: 'a', set: '', quantity: 'mean', printed: '3.2', place: 'p. 9' }];

describe('the answer on printed figures', () => {
  it.each([
    ['the invented paper', () => demo],
    ['all right', () => check(RIGHT)],
    ['one that cannot be', () => check(WRONG)],
    ['one alone', () => check(ALONE)],
  ])('keeps the form: %s', (_, found) => {
    expect(faultsOfAnswer(claims.words(found()))).toEqual([]);
  });

  it('counts what its tables list', () => {
    const { answer } = claims.words(demo);
    const rows = claims.tables(demo).verdicts.rows;
    const count = (verdict: string) => Number(rows.find(([name]) => name === verdict)?.[1]);
    expect(answer).toBe(
      `Of ${demo.judged.length} printed figures, ${count('cannot be')} cannot be as printed, ${count('differs')} differ, ` +
        `${count('agrees') + count('agrees only if rounded')} agree and ${count('cannot be checked')} cannot be checked.`,
    );
    expect(count('differs')).toBe(8);
  });

  it('names a figure by its place and its text, never by an id, and says what is wrong with it', () => {
    const { because, next } = claims.words(check(WRONG));
    expect(because[0]).toContain('Cannot be: p. 3, table 1, “12 (42 %)”');
    expect(because[0]).toContain('40');
    expect(next?.[0]).toContain('State the count');
  });

  it('says that agreement in print is no proof, and claims nothing where nothing can be held against it', () => {
    expect(claims.words(check(RIGHT)).answer).toContain('which does not show that they are right');
    expect(claims.words(check(ALONE)).answer).toBe('The printed figure cannot be checked without the data.');
  });

  it('puts first what would make the differences agree, with its size', () => {
    const [first] = claims.words(demo).unless;
    expect(first.overturns).toBe(true);
    expect(printTurn(first)).toContain('8 of the 9 that differ or cannot be would agree');
  });

  it('stands as reviewed, captions and axis titles with it', async () => {
    const { answer, because, unless, next = [] } = claims.words(demo);
    const figures = Object.values(claims.figures(demo)).map(({ caption, layout }) => {
      const axes = layout as Record<string, { title?: { text?: string } } | undefined>;
      return `${caption}\nx: ${axes.xaxis?.title?.text ?? ''}; y: ${axes.yaxis?.title?.text ?? ''}`;
    });
    const text = [answer, '', ...because, '', ...unless.map(printTurn), '', ...next, '', ...figures].join(
      '\n',
    );
    await expect(`${text}\n`).toMatchFileSnapshot('snapshots/demo-answer.txt');
  });
});
