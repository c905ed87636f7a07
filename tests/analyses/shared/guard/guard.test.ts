import { describe, expect, it } from 'vitest';
import { contrast } from '../../../../src/analyses/contrast/index.ts';
import { crosstab } from '../../../../src/analyses/crosstab/index.ts';
import { printTurn } from '../../../../src/analyses/phrasing.ts';
import { placement } from '../../../../src/analyses/placement/index.ts';
import { standing } from '../../../../src/analyses/standing/index.ts';
import { createRandom } from '../../../../src/numerics/foundation/random.ts';
import type { Cell } from '../../../fragments/make-table.ts';
import { faultsOfAnswer } from '../../answer-rules.ts';
import { ask, inputFrom, linesOf } from '../../ask.ts';

/** Conditions planted in made-up tables, each with and without the column that reveals it. */

type Row = Readonly<Record<string, Cell>>;

const random = createRandom(5);
/** About normal, standard deviation 1: twelve uniforms. */
const noise = () => Array.from({ length: 12 }, () => random.next()).reduce((sum, value) => sum + value, -6);
const repeat = (count: number, row: (i: number) => Row): Row[] =>
  Array.from({ length: count }, (_, i) => row(i));
const without = (rows: readonly Row[], id: string): Row[] =>
  rows.map((row) => Object.fromEntries(Object.entries(row).filter(([key]) => key !== id)));

const quick = { relabellings: 499, resamples: 199 };
const contrasted = (rows: readonly Row[]) =>
  ask(contrast, inputFrom(rows), { of: ['diameter1'], by: 'site', ...quick });
const crossed = (rows: readonly Row[], columns = 'fibre') =>
  ask(crosstab, inputFrom(rows), { rows: 'site', columns, ...quick });
const turnsOf = ({ words }: ReturnType<typeof contrasted> | ReturnType<typeof crossed>) =>
  words.unless.map(printTurn).join('\n');
const verdictOf = (
  { tables }: ReturnType<typeof contrasted> | ReturnType<typeof crossed>,
  condition: string,
) => linesOf(tables.conditions).find((line) => line.condition === condition)?.verdict;

/** Counts of rows, of two sites in two kinds of a condition, and what a record of each looks like. */
function planted(
  condition: string,
  kinds: readonly [string, string],
  counts: readonly [readonly [number, number], readonly [number, number]],
  record: (site: number, kind: number) => Row,
): Row[] {
  return counts.flatMap((line, site) =>
    line.flatMap((count, kind) =>
      repeat(count, () => ({
        site: ['Aldum', 'Berrow'][site],
        [condition]: kinds[kind],
        ...record(site, kind),
      })),
    ),
  );
}

// Thick threads in twining; Aldum has more twining, and in each structure the thinner threads.
const simpson = planted(
  'structure',
  ['woven', 'twined'],
  [
    [8, 32],
    [32, 8],
  ],
  (site, kind) => ({
    diameter1: 10 + 6 * kind + 2 * site + noise(),
  }),
);
// No difference between sites; Orrin reads three more than Pell, and saw most of Aldum.
const byRecorder = planted(
  'recorder',
  ['Orrin', 'Pell'],
  [
    [34, 10],
    [10, 34],
  ],
  (_, kind) => ({
    diameter1: 10 - 3 * kind + noise(),
  }),
);
// No difference between sites; charring takes three off, and most of Berrow is charred.
const byPreservation = planted(
  'preservation',
  ['desiccated', 'charred'],
  [
    [34, 10],
    [10, 34],
  ],
  (_, kind) => ({
    diameter1: 10 - 3 * kind + noise(),
  }),
);

describe('a contrast of numbers', () => {
  it('reversed within structures: the answer says so', () => {
    const found = contrasted(simpson);
    expect(found.found.attributes[0].pairs[0].larger).toBe('first');
    expect(found.words.answer).toBe(
      'Diameter1 tends to be larger in Aldum than in Berrow, but the other way round among finds of one structure.',
    );
    expect(verdictOf(found, 'structure')).toBe('reversed within it');
    const [line] = linesOf(found.tables.conditions).filter(({ condition }) => condition === 'structure');
    // Planted: two less in Aldum within a structure, about 1.6 more overall.
    expect(line.adjustedEffect as number).toBeLessThan(-1.5);
    expect(line.adjustedEffect as number).toBeGreaterThan(-2.6);
    expect(line.plainEffect as number).toBeGreaterThan(0.8);
    expect(found.words.because.join(' ')).toMatch(/Among finds of one structure, n = 80 in two: strength/);
    expect(faultsOfAnswer(found.words)).toEqual([]);
  });

  it('and without the column that it could not be looked at', () => {
    const found = contrasted(without(simpson, 'structure'));
    expect(found.words.answer).toBe('Diameter1 tends to be larger in Aldum than in Berrow.');
    expect(turnsOf(found)).toMatch(/structure.* not recorded.*could not be looked at/);
  });

  it.each([
    ['recorder', byRecorder, 'among finds of one recorder'],
    ['preservation', byPreservation, 'among finds preserved alike'],
  ])('made by %s alone: the answer says so, or that it could not be looked at', (column, rows, words) => {
    const found = contrasted(rows);
    expect(found.found.attributes[0].told).toBe('told apart');
    expect(found.words.answer).toBe(
      `Diameter1 tends to be larger in Aldum than in Berrow, but not ${words}.`,
    );
    expect(verdictOf(found, column)).toBe('vanishes within it');
    expect(faultsOfAnswer(found.words)).toEqual([]);
    const blind = contrasted(without(rows, column));
    expect(blind.words.answer).toBe('Diameter1 tends to be larger in Aldum than in Berrow.');
    expect(turnsOf(blind)).toMatch(new RegExp(`${column}.* not recorded.*could not be looked at`, 'i'));
  });

  it('a recorder of its own for each site: the answer is that they cannot be told apart', () => {
    const rows = planted(
      'recorder',
      ['Orrin', 'Pell'],
      [
        [20, 0],
        [0, 20],
      ],
      (site) => ({
        diameter1: 10 + 3 * site + noise(),
      }),
    );
    const found = contrasted(rows);
    expect(found.words.answer).toBe(
      'Diameter1 tends to be larger in Berrow than in Aldum, which cannot be told from a difference between recorders.',
    );
    expect(turnsOf(found)).toMatch(/no two groups by site share a recorder; a habit of reading/);
    expect(found.words.next?.join(' ')).toMatch(
      /Let one person measure \d+ finds each of (?:Aldum and Berrow|Berrow and Aldum) again/,
    );
  });

  it('conditions that go together are said to be, since each is judged by itself', () => {
    // Orrin saw the dry ones and Pell the charred ones: one and the same here.
    const one = contrasted(
      byRecorder.map((row) => ({
        ...row,
        preservation: row.recorder === 'Orrin' ? 'desiccated' : 'charred',
      })),
    );
    expect(one.found.attributes[0].guard.tied).toEqual([
      { inner: 'recorder', outer: 'preservation', mutual: true },
    ]);
    expect(turnsOf(one)).toMatch(
      /Recorder and preservation divide those compared alike: each is judged by itself/,
    );
    // Some of Orrin's are charred now: neither is of one kind of the other.
    const crossing = contrasted(
      byRecorder.map((row, i) => ({
        ...row,
        preservation: (row.recorder === 'Orrin') === i % 5 > 0 ? 'desiccated' : 'charred',
      })),
    );
    expect(crossing.found.attributes[0].guard.tied).toEqual([]);
  });

  it('what one recorder saw of two sites leads, where the sites that differ most share none', () => {
    const rows = [
      ...repeat(20, () => ({ site: 'Aldum', recorder: 'Orrin', diameter1: 10 + noise() })),
      ...repeat(20, () => ({ site: 'Berrow', recorder: 'Pell', diameter1: 20 + noise() })),
      ...repeat(20, () => ({ site: 'Corm', recorder: 'Pell', diameter1: 16 + noise() })),
    ];
    const found = contrasted(rows);
    expect(found.words.answer).toBe(
      'Diameter1 differs among finds of one recorder (Berrow and Corm); otherwise a difference cannot be told from one between recorders.',
    );
    expect(found.words.next?.[0]).toMatch(
      /^Let one person measure \d+ finds each of Aldum and Berrow again, or bring a table in which one recorder describes finds of both\.$/,
    );
    expect(faultsOfAnswer(found.words)).toEqual([]);
    // The two read by one are alike now: the rest is as open as before.
    const alike = contrasted(
      rows.map((row) => (row.site === 'Corm' ? { ...row, diameter1: 20 + noise() } : row)),
    );
    expect(alike.words.answer).toMatch(
      /^Diameter1 could not be shown to differ among finds of one recorder \(Berrow and Corm\);/,
    );
  });

  it('a true difference stands where the recorders went with the sites but read alike', () => {
    const rows = planted(
      'recorder',
      ['Orrin', 'Pell'],
      [
        [28, 12],
        [12, 28],
      ],
      (site) => ({
        diameter1: 10 + 3 * site + noise(),
      }),
    );
    const found = contrasted(rows);
    expect(found.words.answer).toBe('Diameter1 tends to be larger in Berrow than in Aldum.');
    expect(verdictOf(found, 'recorder')).toBe('holds within it');
    expect(turnsOf(found)).toMatch(
      /Recorder goes with site.*the difference is there among finds of one recorder too/,
    );
  });

  it('a difference that the mixture hides is found within the structures', () => {
    const rows = planted(
      'structure',
      ['woven', 'twined'],
      [
        [10, 30],
        [30, 10],
      ],
      (site, kind) => ({
        diameter1: 10 + 4 * kind + 2 * site + noise(),
      }),
    );
    const found = contrasted(rows);
    expect(found.found.attributes[0].told).toBe('not told apart');
    expect(found.words.answer).toBe(
      'Diameter1 could not be shown to differ between Aldum and Berrow, but is among finds of one structure.',
    );
  });

  it('a condition known of a few is no condition looked at', () => {
    const rows = byRecorder.map((row, i) => (i % 3 === 0 ? row : without([row], 'recorder')[0]));
    const found = contrasted(rows);
    expect(verdictOf(found, 'recorder')).toBe('known of less than half, could not be looked at');
    expect(turnsOf(found)).toMatch(/recorder is known of less than half.*could not be looked at/);
  });
});

/** Of each site and kind of the condition how many of ten records are wool, the others lime bast. */
const kinds = (
  condition: string,
  names: readonly [string, string],
  wool: readonly [readonly [number, number], readonly [number, number]],
  counts: readonly [readonly [number, number], readonly [number, number]],
): Row[] =>
  counts.flatMap((line, site) =>
    line.flatMap((count, kind) =>
      repeat(count, (i) => ({
        site: ['Aldum', 'Berrow'][site],
        [condition]: names[kind],
        fibre: (i * 7) % 10 < wool[site][kind] ? 'wool' : 'limeBast',
      })),
    ),
  );

describe('a crosstab of kinds', () => {
  // Wool is commoner in Berrow in both structures, yet Aldum has more of it, having more weaving.
  const reversed = kinds(
    'structure',
    ['woven', 'twined'],
    [
      [7, 0],
      [9, 2],
    ],
    [
      [80, 20],
      [20, 80],
    ],
  );
  const spread: readonly [readonly [number, number], readonly [number, number]] = [
    [60, 20],
    [20, 60],
  ];

  it('reversed within structures: the answer says so, and the odds ratios', () => {
    const found = crossed(reversed);
    expect(found.found.told).toBe('told apart');
    expect(found.words.answer).toMatch(
      /^Site and fibre go together \(.*\), but the other way round among finds of one structure\.$/,
    );
    const [line] = linesOf(found.tables.conditions).filter(({ condition }) => condition === 'structure');
    expect(Math.sign((line.plainEffect as number) - 1)).toBe(-Math.sign((line.adjustedEffect as number) - 1));
    expect(faultsOfAnswer(found.words)).toEqual([]);
    const blind = crossed(without(reversed, 'structure'));
    expect(blind.words.answer).not.toContain('the other way');
    expect(turnsOf(blind)).toMatch(/structure.* not recorded.*could not be looked at/);
  });

  it.each([
    ['recorder', ['Orrin', 'Pell'], 'among finds of one recorder'],
    ['preservation', ['waterlogged', 'charred'], 'among finds preserved alike'],
  ] as const)('made by %s alone', (column, names, words) => {
    const rows = kinds(
      column,
      names,
      [
        [8, 2],
        [8, 2],
      ],
      spread,
    );
    const found = crossed(rows);
    expect(found.found.told).toBe('told apart');
    expect(found.words.answer).toMatch(
      new RegExp(`^Site and fibre go together \\(.*\\), but not ${words}\\.$`),
    );
    expect(verdictOf(found, column)).toBe('vanishes within it');
    expect(found.words.unless[0].overturns).toBe(true);
    expect(faultsOfAnswer(found.words)).toEqual([]);
    const blind = crossed(without(rows, column));
    expect(blind.words.answer).toMatch(/^Site and fibre go together: more/);
    expect(turnsOf(blind)).toMatch(new RegExp(`${column}.* not recorded.*could not be looked at`, 'i'));
  });

  it('a recorder of its own for each site cannot be told from the site', () => {
    const found = crossed(
      kinds(
        'recorder',
        ['Orrin', 'Pell'],
        [
          [8, 0],
          [0, 3],
        ],
        [
          [40, 0],
          [0, 40],
        ],
      ),
    );
    expect(found.words.answer).toMatch(/, which cannot be told from a difference between recorders\.$/);
  });

  it('what one recorder saw of two sites leads', () => {
    const rows = [
      ...repeat(40, (i) => ({ site: 'Aldum', recorder: 'Orrin', fibre: i % 10 < 9 ? 'wool' : 'limeBast' })),
      ...repeat(40, (i) => ({ site: 'Berrow', recorder: 'Pell', fibre: i % 10 < 1 ? 'wool' : 'limeBast' })),
      ...repeat(40, (i) => ({ site: 'Corm', recorder: 'Pell', fibre: i % 10 < 1 ? 'wool' : 'limeBast' })),
    ];
    expect(crossed(rows).words.answer).toBe(
      'Fibre could not be shown to differ among finds of one recorder (Berrow and Corm); otherwise a difference cannot be told from one between recorders.',
    );
  });

  it('asks with the labels in the columns as well: the verdict is the same', () => {
    const turned = ask(crosstab, inputFrom(reversed), { rows: 'fibre', columns: 'site', ...quick });
    expect(verdictOf(turned, 'structure')).toBe('reversed within it');
  });
});

describe('the standing of a site', () => {
  const spread = [
    [45, 15],
    [15, 45],
  ] as const;
  const stood = (rows: readonly Row[]) =>
    ask(
      standing,
      inputFrom([
        ...rows,
        ...rows.filter(({ site }) => site === 'Berrow').map((row) => ({ ...row, site: 'Corm' })),
      ]),
      {
        site: 'Aldum',
        of: 'fibre',
        attributes: ['fibre'],
        resamples: 199,
        relabellings: 199,
        sameWithin: [],
      },
    );

  it.each([
    ['recorder', ['Orrin', 'Pell'], 'between recorders'],
    ['preservation', ['waterlogged', 'charred'], 'of preservation'],
  ] as const)(
    'told apart by %s alone: the answer says so, or that it could not be looked at',
    (column, names, words) => {
      const rows = kinds(
        column,
        names,
        [
          [9, 1],
          [9, 1],
        ],
        spread,
      );
      const found = stood(rows);
      expect(found.found.ranking.toldApart).toEqual(['Berrow', 'Corm']);
      expect(found.words.answer).toContain(`; what tells it apart may be a difference ${words}`);
      expect(linesOf(found.tables.conditions).find(({ condition }) => condition === column)?.verdict).toBe(
        'vanishes within it',
      );
      expect(faultsOfAnswer(found.words)).toEqual([]);
      const blind = stood(without(rows, column));
      expect(blind.words.answer).not.toContain('may be a difference');
      expect(blind.words.unless.map(printTurn).join(' ')).toMatch(
        new RegExp(`${column}.* not recorded.*could not be looked at`, 'i'),
      );
    },
  );

  it('reversed within structures is said', () => {
    const rows = kinds(
      'structure',
      ['woven', 'twined'],
      [
        [7, 0],
        [9, 2],
      ],
      [
        [80, 20],
        [20, 80],
      ],
    );
    expect(stood(rows).words.answer).toContain('; what tells it apart may be a difference of structure');
  });
});

describe('the placement of a find', () => {
  const placed = (rows: readonly Row[]) =>
    ask(placement, inputFrom(rows), {
      of: ['diameter1', 'density1'],
      labels: ['site'],
      find: { diameter1: '14', density1: '14' },
      draws: 20,
    });
  /** Thick threads are Orrin's reading; he saw nearly all of Aldum. */
  const shifted = (column: string, names: readonly [string, string]) =>
    planted(
      column,
      names,
      [
        [56, 2],
        [2, 56],
      ],
      (_, kind) => ({
        diameter1: 14 - 4 * kind + 0.3 * noise(),
        density1: 14 - 4 * kind + 0.3 * noise(),
      }),
    );

  it.each([
    ['recorder', ['Orrin', 'Pell'], 'between recorders'],
    ['preservation', ['desiccated', 'charred'], 'of preservation'],
    ['period', ['early', 'late'], 'of period'],
    ['structure', ['woven', 'twined'], 'of structure'],
  ] as const)(
    'a site excluded by %s alone: the answer says so, or that it could not be looked at',
    (column, names, words) => {
      const rows = shifted(column, names);
      const found = placed(rows);
      expect(found.found.sets.find(({ asked }) => asked)?.excluded).toEqual(['Berrow']);
      expect(found.words.answer).toContain(`; what excludes the others may be a difference ${words}.`);
      expect(found.words.unless[0].overturns).toBe(true);
      expect(faultsOfAnswer(found.words)).toEqual([]);
      const blind = placed(without(rows, column));
      expect(blind.words.answer).not.toContain('may be a difference');
      expect(blind.words.unless.map(printTurn).join(' ')).toMatch(
        new RegExp(`${column}.* not recorded.*could not be looked at`, 'i'),
      );
    },
  );
});
