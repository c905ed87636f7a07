import { beforeAll, describe, expect, it } from 'vitest';
import { checkClaims } from '../../../src/analyses/claims/compute.ts';
import type { ClaimsFound } from '../../../src/analyses/claims/found.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { prepareDemo } from '../../demo/prepared.ts';
import { demoBytes, demoText } from '../../demo/truth.ts';
import { verdictOf } from './claims.ts';

/**
 * The invented paper: 40 claims whose right figures were computed with pandas and scipy
 * (datasets/scripts/printed-paper.py), nine of them then printed wrongly in nine ways.
 */
const WRONG: readonly (readonly [id: string, verdict: string, reason: string])[] = [
  ['c9', 'differs', 'fragments counted instead of items'],
  ['c13', 'differs', 'ten times too small'],
  ['c18', 'differs', 'another type of quantile (6 of'],
  ['c25', 'differs', 'the divisor n instead of n − 1'],
  ['c27', 'differs', 'missing readings counted as 0'],
  ['c31', 'differs', 'a one-sided p'],
  ['c32', 'differs', 'the two groups swapped'],
  ['c33', 'differs', '12/36'],
  ['c40', 'cannot be', '69/20'],
];

let found: ClaimsFound;

beforeAll(() => {
  const { study, prepared } = prepareDemo();
  found = checkClaims(
    new Map([['claims.csv', demoBytes('claims.csv')]]),
    { file: 'claims.csv', tables: [] },
    createRandom(study.seed),
    {
      fragments: prepared.fragments,
      records: prepared.records,
      register: prepared.register,
      unit: study.unit,
    },
  );
}, 120_000);

describe('the invented paper', () => {
  it('has 40 claims, each of them as it stands in the paper', () => {
    const ids = new Set(found.judged.map(({ figure }) => figure.id.replace(/ \(.*$/, '')));
    expect(ids.size).toBe(40);
    const paper = demoText('printed-paper.md');
    for (const { figure } of found.judged) expect(paper, figure.id).toContain(figure.printed);
  });

  it.each(WRONG)('%s %s, and the reason is named: %s', (id, verdict, reason) => {
    const one = verdictOf(found, id);
    expect(one.verdict).toBe(verdict);
    expect(verdict === 'cannot be' ? one.why : one.explained).toContain(reason);
    expect(one.resolve).not.toBe('');
  });

  it('finds no fault with any other; one, which the data know nothing of, cannot be checked', () => {
    const wrong = new Set(WRONG.map(([id]) => id));
    const others = found.judged.filter(({ figure }) => !wrong.has(figure.id));
    expect(others.filter(({ verdict }) => verdict !== 'agrees').map(({ figure }) => figure.id)).toEqual([
      'c39',
    ]);
    expect(verdictOf(found, 'c39').verdict).toBe('cannot be checked');
  });

  it('words nothing as a reproach', () => {
    const texts = found.judged.flatMap(({ why, explained, resolve, checks }) => [
      why,
      explained,
      resolve,
      ...checks.map(({ working }) => working),
    ]);
    expect(texts.join(' ')).not.toMatch(
      /fraud|fabricat|manipulat|dishonest|error by the author|wrong|false|suspicious/i,
    );
  });
});
