import { describe, expect, it } from 'vitest';
import { checkClaims } from '../../../src/analyses/claims/compute.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { claimsLetter } from '../../../src/report/claims-letter.ts';
import { checkStudy } from '../../../src/study/load.ts';
import { prepareStudy } from '../../../src/study/prepare.ts';
import { reference } from '../../references/reference.ts';
import { check, claimsBytes, type Row } from './claims.ts';

// Computed and printed by R 4.2.2: tests/references/scripts/printed-review.R.
const { records, claims } = reference<{
  readonly records: readonly {
    readonly site: string;
    readonly gap: number;
    readonly diam: number;
    readonly made: string;
  }[];
  readonly claims: readonly (Row & { readonly altered: string; readonly other?: string })[];
}>('printed-review');

const csv = [
  'Site,Row gap (mm),Warp diameter (mm),Technique',
  ...records.map(({ site, gap, diam, made }) => `${site},${gap},${diam},${made}`),
].join('\n');
const study = checkStudy(
  {
    title: 'gaps',
    seed: 1,
    unit: 'item',
    witness: { is: 'row' },
    sources: [{ file: 'gaps.csv', profile: 'gaps.profile.json' }],
    analyses: [],
  },
  'gaps.study.json',
);
const profile = {
  role: 'fragments',
  columns: [
    { header: 'Site', attribute: 'site' },
    { header: 'Row gap (mm)', attribute: 'rowGap', unit: 'mm' },
    { header: 'Warp diameter (mm)', attribute: 'diameter1', unit: 'mm' },
    { header: 'Technique', attribute: 'structure' },
  ],
};
const encode = (text: string) => new TextEncoder().encode(text);
const material = prepareStudy(
  study,
  new Map([
    ['gaps.csv', encode(csv)],
    ['gaps.profile.json', encode(JSON.stringify(profile))],
  ]),
);

function held(rows: readonly Row[]) {
  const named = rows.map((row, i) => ({ ...row, id: `c${i}`, place: `p. ${i}` }));
  return checkClaims(
    new Map([['c.csv', claimsBytes(named)]]),
    { file: 'c.csv', tables: [] },
    createRandom(1),
    { ...material, unit: study.unit },
  );
}

const rowOf = ({ altered: _altered, other: _other, ...row }: (typeof claims)[number]): Row => row;
const against = ({ verdict }: { readonly verdict: string }) =>
  verdict === 'differs' || verdict === 'cannot be';

describe('figures that a reviewer types, with the records open', () => {
  it.each(claims.map((claim) => [claim.printed?.replaceAll(/\s+/g, ' ').slice(0, 90), claim] as const))(
    'nothing speaks against %s, and something against its slip',
    (_, claim) => {
      const right = held([rowOf(claim)]).judged;
      expect(right.filter(against).map(({ why }) => why)).toEqual([]);
      const wrong = held([{ ...rowOf(claim), printed: claim.altered }]).judged;
      expect(wrong.some(against)).toBe(true);
    },
  );

  it('says of every figure that data gave whether it was held against them', () => {
    const bare = claims.map((claim) => ({
      ...rowOf(claim),
      attribute: '',
      select: '',
      versus: '',
      counted: '',
    }));
    const { judged } = held(bare);
    const agreed = judged.filter(({ verdict }) => verdict.startsWith('agrees'));
    expect(agreed.length).toBeGreaterThan(20);
    const silent = agreed.filter(
      ({ unheld, says }) => unheld !== '' && !says.endsWith('not held against the data'),
    );
    expect(silent).toEqual([]);
    expect(judged.filter(against)).toEqual([]);
  });
});

describe('the same without data', () => {
  it.each([true, false])('nothing speaks against them, groups filled in: %s', (filled) => {
    const rows = claims.map((claim, i) => ({
      ...rowOf(claim),
      id: `c${i}`,
      ...(filled ? {} : { attribute: '', select: '', versus: '', counted: '' }),
    }));
    expect(
      check(rows)
        .judged.filter(against)
        .map(({ figure, why }) => `${figure.printed}: ${why}`),
    ).toEqual([]);
  });
});

describe('what a verdict says of the data', () => {
  const gap = { attribute: 'rowGap', select: 'site in Tolvane', versus: 'site in Mirrow Ness' } as const;
  const t = (text: RegExp) => claims.find(({ printed }) => text.test(printed ?? ''))?.printed ?? '';

  it('agrees when counted by kind, where that alone gives all figures of the text', () => {
    const named = claims.find(({ other }) => other === 'kind');
    if (named === undefined) throw new Error('no claim by another counting');
    const says = held([rowOf(named)]).judged.map((one) => one.says);
    expect(says.filter((one) => one === 'agrees when counted by kind')).toHaveLength(4);
  });

  it('names what is missing, in the verdict and in the letter, for each kind of test', () => {
    const rows: Row[] = [
      { quantity: 'statistic', attribute: 'rowGap', printed: 'H = 13.6, df = 2, p = 0.0011' },
      { quantity: 'statistic', attribute: 'structure', printed: 'X-squared = 2.09, df = 4, p-value = 0.72' },
      { quantity: 'statistic', printed: 'U(18, 14) = 46, p = .002' },
      { quantity: 'correlation', attribute: 'rowGap', printed: 'r(41) = .60, p = .00002' },
    ];
    const found = held(rows);
    const why = (id: string) => found.judged.find(({ figure }) => figure.id === id)?.why ?? '';
    expect(why('c0 (p)')).toContain('H needs two attributes');
    expect(why('c0 (p)')).toContain('there is only rowGap');
    expect(why('c1 (p)')).toContain('there is only structure');
    expect(why('c2 (p)')).toContain('U needs the measure');
    expect(why('c3 (p)')).toContain('r needs two attributes');
    const letter = claimsLetter(found);
    expect(letter).not.toContain('Each figure was held');
    expect(letter).toContain('What was not held against the data');
    expect(letter).toContain('there is only structure');
  });

  it('measures a difference from the way that the degrees of freedom say, else from the nearest', () => {
    const welch = t(/^t = -.*p-value = /);
    const [, statistic, df] = /t = (-[\d.]+), df = ([\d.]+)/.exec(welch) ?? [];
    const off = (Number(statistic) - 0.011).toFixed(4);
    const [one] = held([{ quantity: 'statistic', ...gap, printed: `t = ${off}, df = ${df}` }]).judged;
    expect(one.verdict).toBe('differs');
    expect(one.why).toContain('less by 0.0110');
    expect(one.why).toContain('than Welch, which its degrees of freedom say');
    const [bare] = held([{ quantity: 'statistic', ...gap, printed: `t = ${off}` }]).judged;
    expect(bare.why).toContain('less by 0.0110');
    expect(bare.why).toContain('than the nearest, Welch');
  });

  it('takes two numbers of records of two groups for those of both', () => {
    const pair = (a: number, b: number) =>
      held([{ quantity: 'statistic', ...gap, printed: `U(${a}, ${b}) = 46` }])
        .judged.filter(({ figure }) => figure.quantity === 'n')
        .map(({ verdict }) => verdict);
    expect(pair(18, 14)).toEqual(['agrees', 'agrees']);
    expect(pair(14, 18)).toEqual(['agrees', 'agrees']);
    expect(pair(18, 18)).toEqual(['agrees', 'differs']);
    expect(pair(14, 14)).toContain('differs');
  });

  it('numbers the workings of a letter one by one', () => {
    const letter = claimsLetter(held(claims.map((claim) => ({ ...rowOf(claim), printed: claim.altered }))));
    const numbers = [...letter.matchAll(/<a id="working-(\d+)">/g)].map(([, n]) => Number(n));
    expect(numbers.length).toBeGreaterThan(10);
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
  });
});

describe('an interval in a row of its own', () => {
  const gap = {
    attribute: 'rowGap',
    select: 'site in Tolvane',
    versus: 'site in Mirrow Ness',
    set: 'w',
  } as const;
  // R 4.2.2, t.test of two samples: t = -3.59690, df = 22.04, 95 % interval -2.6888 to -0.7223.
  const beside = (interval: string) =>
    check([
      { id: 't', quantity: 'statistic', ...gap, printed: 't = -3.5969, df = 22.04, p = .0016' },
      { id: 'i', quantity: 'interval', ...gap, printed: interval },
    ]).judged.find(({ figure }) => figure.id === 'i');

  it('goes with the t of its set', () => {
    expect(beside('[-2.69, -0.72]')?.verdict).toBe('agrees');
    expect(beside('[-2.69, 0.72]')?.verdict).toBe('differs');
  });

  it('of a share asks for what a share rests on', () => {
    const [low] = check([
      { quantity: 'interval', counted: 'structure in open twining', printed: '37.7-68.8 %' },
    ]).judged;
    expect(low.verdict).toBe('cannot be checked');
    expect(low.resolve).toContain('the count and n');
    expect(low.resolve).not.toContain('standard deviation');
  });

  // R 4.2.2: binom.test(23, 43)$conf.int is 0.3765 to 0.6882.
  it('of a share is held to its count and number', () => {
    const of = (interval: string) =>
      check([
        { id: 's', quantity: 'share', counted: 'structure in open twining', printed: interval },
      ]).judged.find(({ figure }) => figure.quantity === 'low')?.verdict;
    expect(of('23/43 (53.5 %; 95 % CI 37.7–68.8 %)')).toBe('agrees');
    expect(of('23/43 (53.5 %; 95 % CI 33.7–68.8 %)')).toBe('differs');
  });
});
