import { describe, expect, it } from 'vitest';
import { crosstab } from '../../../../src/analyses/crosstab/index.ts';
import { printTurn } from '../../../../src/analyses/phrasing.ts';
import { leastMissingThatTurns } from '../../../../src/analyses/shared/missing/compute.ts';
import { similarity } from '../../../../src/analyses/similarity/index.ts';
import type { Cell } from '../../../fragments/make-table.ts';
import { ask, inputFrom } from '../../ask.ts';

/** How far the missing would have to differ, against the two-by-two chi-square written out: n (ad - bc)² over the margins. */

const chiSquare = ([[a, b], [c, d]]: readonly (readonly number[])[]) =>
  ((a + b + c + d) * (a * d - b * c) ** 2) / ((a + b) * (c + d) * (a + c) * (b + d));
/** Upper 5 % point of chi-square with one degree of freedom, as in every handbook's table. */
const BEYOND = 3.841;

type Row = Readonly<Record<string, Cell>>;
const finds = (site: string, counts: Readonly<Record<string, number>>): Row[] =>
  Object.entries(counts).flatMap(([fibre, count]) =>
    Array.from({ length: count }, (): Row => (fibre === 'none' ? { site } : { site, fibre })),
  );
const quick = { relabellings: 199, resamples: 199 };
const crossed = (rows: readonly Row[], more: object = {}) =>
  ask(crosstab, inputFrom(rows), { rows: 'site', columns: 'fibre', ...quick, ...more });
const unlessOf = ({ words }: ReturnType<typeof crossed>) => words.unless.map(printTurn).join('\n');

describe('a table of counts', () => {
  const rows = [
    ...finds('Aldum', { wool: 20, limeBast: 10 }),
    ...finds('Berrow', { wool: 10, limeBast: 20, none: 20 }),
  ];

  it('names the fewest of the missing that turn it, and no fewer would do', () => {
    const { turn, lines } = crossed(rows).found.missing ?? { lines: [], turn: null };
    expect(lines).toEqual([{ label: 'Berrow', missing: 20 }]);
    expect(turn).toMatchObject({ label: 'Berrow', missing: 20, kind: 'wool' });
    const withWool = (count: number) =>
      chiSquare([
        [20, 10],
        [10 + count + (20 - count) / 3, 20 + (2 * (20 - count)) / 3],
      ]);
    expect(
      chiSquare([
        [20, 10],
        [10, 20],
      ]),
    ).toBeGreaterThan(BEYOND);
    expect(withWool(turn?.count ?? 0)).toBeLessThan(BEYOND);
    expect(withWool((turn?.count ?? 0) - 1)).toBeGreaterThan(BEYOND);
  });

  it('says so, whichever way round the table stands', () => {
    const said =
      /Were \d+ of the 20 fragments of Berrow without fibre wool, .*: the two could not be shown to go together/i;
    expect(unlessOf(crossed(rows))).toMatch(said);
    expect(unlessOf(crossed(rows, { rows: 'fibre', columns: 'site' }))).toMatch(said);
  });

  it('says that it would stand where no missing of one line can turn it, and nothing where none is missing', () => {
    const sure = [
      ...finds('Aldum', { wool: 60, limeBast: 2 }),
      ...finds('Berrow', { wool: 2, limeBast: 60, none: 3 }),
    ];
    expect(unlessOf(crossed(sure))).toMatch(/missing: 3 of Berrow\): the two would still go together/);
    expect(crossed(sure.filter((row) => 'fibre' in row)).found.missing).toBeNull();
  });
});

it('a likeness names the missing that would put others first', () => {
  const rows = [
    ...finds('Aldum', { wool: 20, limeBast: 10 }),
    ...finds('Berrow', { wool: 19, limeBast: 11, none: 60 }),
    ...finds('Corrin', { wool: 4, limeBast: 26 }),
  ];
  const found = ask(similarity, inputFrom(rows), { assemblages: 'site', of: 'fibre', ...quick });
  expect(found.words.answer).toMatch(/most alike are Aldum and Berrow/);
  expect(found.found.missing?.turn).toMatchObject({ label: 'Berrow', missing: 60, kind: 'lime bast' });
  expect(found.words.unless.map(printTurn).join('\n')).toMatch(/: others would be the most alike/);
});

it('shares out the missing that are of no one kind as those recorded there', () => {
  const seen: (readonly (readonly number[])[])[] = [];
  leastMissingThatTurns(
    {
      rows: ['A', 'B'],
      columns: ['x', 'y'],
      counts: [
        [3, 1],
        [2, 2],
      ],
    },
    [8, 0],
    (counts) => {
      seen.push(counts);
      return false;
    },
  );
  expect(seen[0]).toEqual([
    [9, 3],
    [2, 2],
  ]);
  expect(seen).toContainEqual([
    [11, 1],
    [2, 2],
  ]);
  expect(seen.every(([, other]) => other[0] === 2 && other[1] === 2)).toBe(true);
});
