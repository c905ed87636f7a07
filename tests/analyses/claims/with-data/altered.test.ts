import { describe, expect, it } from 'vitest';
import { checkClaims } from '../../../../src/analyses/claims/compute.ts';
import type { JudgedFigure } from '../../../../src/analyses/claims/found.ts';
import { createRandom } from '../../../../src/numerics/foundation/random.ts';
import { claimsBytes, type Row } from '../claims.ts';
import { number } from '../second-bed/styles.ts';
import { WRITERS } from './hands.ts';
import { at, materialOf, type OpenSet, type SampleSet, sets } from './material.ts';

/**
 * The same open records with figures printed wrongly: one digit altered, and the errors that are made in earnest,
 * each with the reason that must be named. Values by R, alterations by a seeded chance.
 */
const [hand] = WRITERS;
const materials = new Map(sets.map((set) => [set, materialOf(set)] as const));

function judged(set: OpenSet, rows: readonly Row[]): readonly JudgedFigure[] {
  return checkClaims(
    new Map([['c.csv', claimsBytes(rows.map((row, i) => ({ ...row, id: `c${i}` })))]]),
    { file: 'c.csv', tables: [] },
    createRandom(1),
    materials.get(set) ?? null,
  ).judged;
}

const against = ({ verdict }: JudgedFigure) => verdict === 'differs' || verdict === 'cannot be';
const print = (value: number, decimals = 2) => number(value, { ...hand, minus: '-' }, decimals);

const WHAT = ['n', 'mean', 'sd', 'se', 'median', 'q1', 'q3', 'min', 'max'] as const;
type What = (typeof WHAT)[number];

const who = (sample: SampleSet, g: number): Row => ({
  attribute: sample.measure,
  select: `${sample.by} in ${sample.groups[g]}`,
});

/** Of the largest set each search for a reason takes long. */
const SMALL = sets.filter(({ csv }) => csv.length < 20_000);

/** Every statistic of every group, right. */
const right = SMALL.flatMap((set) =>
  set.samples.flatMap((sample) =>
    sample.values.flatMap((values, g) =>
      WHAT.map((what) => ({ set, sample, g, what, values, value: values[at[what]] })),
    ),
  ),
);

/** Groups of five or more whose deviation is no nought, so that each error changes the print. */
const groups = right.filter(({ what, values }) => what === 'mean' && values[at.n] >= 5 && values[at.sd] > 0);

interface Slip {
  readonly name: string;
  /** Null where the error would print the right figure. */
  readonly rows: (of: (typeof groups)[number], i: number) => { set: OpenSet; rows: Row[] } | null;
  readonly reason: RegExp;
}

const single = (of: (typeof groups)[number], quantity: What, wrong: string, truth: number) => {
  const decimals = wrong.split('.')[1]?.length ?? 0;
  // Under no rounding is it right.
  const close = [truth - 10 ** -decimals / 2, truth, truth + 10 ** -decimals / 2].map((one) =>
    print(one, decimals),
  );
  return close.includes(wrong)
    ? null
    : { set: of.set, rows: [{ ...who(of.sample, of.g), quantity, printed: wrong }] };
};

const SLIPS: readonly Slip[] = [
  {
    name: 'standard error for standard deviation',
    rows: (of) => single(of, 'sd', print(of.values[at.se], 3), of.values[at.sd]),
    reason: /standard error instead of the standard deviation/,
  },
  {
    name: 'standard deviation for standard error',
    rows: (of) => single(of, 'se', print(of.values[at.sd], 3), of.values[at.se]),
    reason: /standard deviation instead of the standard error/,
  },
  {
    name: 'divisor n',
    rows: (of) => {
      const n = of.values[at.n];
      return single(of, 'sd', print(of.values[at.sd] * Math.sqrt((n - 1) / n), 4), of.values[at.sd]);
    },
    reason: /divisor n instead of n/,
  },
  {
    name: 'median for mean',
    rows: (of) => single(of, 'mean', print(of.values[at.median], 3), of.values[at.mean]),
    reason: /median instead of the mean/,
  },
  {
    name: 'two neighbouring digits exchanged',
    rows: (of) => {
      const text = print(of.values[at.mean], 3);
      const turned = text.replace(/^(\d)(\d)/, '$2$1');
      // Nobody prints "05.53".
      return /^0\d/.test(turned) ? null : single(of, 'mean', turned, of.values[at.mean]);
    },
    reason: /digits exchanged/,
  },
  {
    name: 'decimal point misplaced',
    rows: (of) => single(of, 'mean', print(of.values[at.mean] * 10, 3), of.values[at.mean]),
    reason: /ten times too large/,
  },
  {
    name: 'two groups swapped',
    rows: (of) => {
      const other = (of.g + 1) % of.sample.groups.length;
      const [a, b] = [of.values, of.sample.values[other]].map((values) => print(values[at.mean], 3));
      return a === b
        ? null
        : {
            set: of.set,
            rows: [
              { ...who(of.sample, of.g), quantity: 'mean', printed: b },
              { ...who(of.sample, other), quantity: 'mean', printed: a },
            ],
          };
    },
    reason: /swapped/,
  },
  {
    name: 'the figure of another group',
    rows: (of) => {
      const other = (of.g + 1) % of.sample.groups.length;
      const [a, b] = [of.values, of.sample.values[other]].map((values) => print(values[at.mean], 4));
      return a === b
        ? null
        : {
            set: of.set,
            rows: [
              { ...who(of.sample, of.g), quantity: 'mean', printed: b },
              { ...who(of.sample, other), quantity: 'mean', printed: b },
            ],
          };
    },
    reason: /the figure of|swapped/,
  },
  {
    name: 'rounded up instead of to the nearest',
    rows: (of) => {
      const mean = of.values[at.mean];
      const up = (Math.floor(mean * 100) + 1) / 100;
      // Rounded to the nearest it would be the one below.
      return up - mean < 0.0051 || up - mean > 0.0099
        ? null
        : {
            set: of.set,
            rows: [{ ...who(of.sample, of.g), quantity: 'mean', printed: up.toFixed(2) }],
          };
    },
    reason: /rounded up/,
  },
  {
    name: 'per cent of another total',
    rows: ({ set, sample, g, values }) => {
      const table = set.counts.find(
        ({ rows, rowTerms }) => rows === sample.by && rowTerms.includes(sample.groups[g]),
      );
      if (table === undefined || values[at.n] < 5) return null;
      const r = table.rowTerms.indexOf(sample.groups[g]);
      const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);
      const count = table.cells[r][0];
      const [ofRow, ofColumn] = [sum(table.cells[r]), sum(table.cells.map((line) => line[0]))];
      const wrong = print((100 * count) / ofColumn, 2);
      return count === 0 || Math.abs(count / ofRow - count / ofColumn) < 0.0002
        ? null
        : {
            set,
            rows: [
              {
                quantity: 'share',
                select: `${table.rows} in ${table.rowTerms[r]}`,
                counted: `${table.columns} in ${table.columnTerms[0]}`,
                printed: `${wrong} %`,
              },
            ],
          };
    },
    reason: /a percentage of/,
  },
];

describe('figures printed wrongly, with the records open', () => {
  it('one digit altered is found out in 98 of a hundred', () => {
    const random = createRandom(11);
    let [all, found] = [0, 0];
    const missed: string[] = [];
    for (const { set, sample, g, what, value } of right) {
      if (random.next() > 0.35) continue;
      const text = print(value, what === 'n' ? 0 : 1 + Math.floor(random.next() * 3));
      const places = [...text.matchAll(/\d/g)].map(({ index }) => index);
      const place = places[Math.floor(random.next() * places.length)];
      const digit = (Number(text[place]) + 1 + Math.floor(random.next() * 9)) % 10;
      const altered = text.slice(0, place) + digit + text.slice(place + 1);
      // A cut-off of the same value is right, and said so.
      if (Number(altered) === Number(text)) continue;
      all++;
      const [one] = judged(set, [{ ...who(sample, g), quantity: what, printed: altered }]);
      if (one !== undefined && (against(one) || one.verdict === 'agrees only if rounded')) found++;
      else missed.push(`${set.data} ${sample.groups[g]} ${what} ${text} -> ${altered}: ${one?.why}`);
    }
    process.stdout.write(
      `altered digits, with data: ${all}, found out ${((100 * found) / all).toFixed(2)} %\n`,
    );
    expect(all).toBeGreaterThan(400);
    expect(found / all, missed.slice(0, 3).join('\n')).toBeGreaterThanOrEqual(0.98);
  });

  it.each(SLIPS)('$name: found out, and called by its name in 95 of a hundred', ({ name, rows, reason }) => {
    let [all, found, named] = [0, 0, 0];
    const missed: string[] = [];
    groups.forEach((of, i) => {
      if (i % 2 !== 0) return;
      const made = rows(of, i);
      if (made === null) return;
      all++;
      const list = judged(made.set, made.rows);
      const wrong = list.filter(against);
      if (wrong.length > 0) found++;
      if (
        wrong.some(
          ({ explained, why }) => reason.test(explained) || (/More than one/.test(why) && reason.test(why)),
        )
      )
        named++;
      else
        missed.push(
          list.map(({ figure, why, explained }) => `${figure.printed}: ${why} ${explained}`).join(' | '),
        );
    });
    process.stdout.write(`${name}: ${all} made, ${found} found out, ${named} called by their name\n`);
    expect(all).toBeGreaterThan(10);
    expect(found / all, missed.slice(0, 3).join('\n')).toBeGreaterThanOrEqual(0.98);
    expect(named / all, missed.slice(0, 3).join('\n')).toBeGreaterThanOrEqual(0.95);
  });
});
