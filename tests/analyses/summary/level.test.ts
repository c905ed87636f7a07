import { describe, expect, it } from 'vitest';
import { summary } from '../../../src/analyses/summary/index.ts';
import { ask, inputFrom, linesOf } from '../ask.ts';

const rows = [
  ...Array.from({ length: 8 }, () => ({ site: 'Holm', fibre: 'treeBast' })),
  ...Array.from({ length: 2 }, () => ({ site: 'Holm', fibre: 'wool' })),
  ...Array.from({ length: 6 }, () => ({ site: 'Pell', fibre: 'limeBast' })),
  ...Array.from({ length: 4 }, () => ({ site: 'Pell', fibre: 'wool' })),
];

describe('shares of kinds that one place names only in the broad word', () => {
  const { tables, figures } = ask(summary, inputFrom(rows), { of: ['fibre'], by: ['site'] });
  it('stand as recorded, with the bounds that the broad word allows', () => {
    const holm = linesOf(tables.kinds).filter(({ site }) => site === 'Holm');
    expect(holm.map(({ term, count }) => [term, count])).toEqual([
      ['tree bast', 8],
      ['wool', 2],
    ]);
    const all = linesOf(tables.kinds).find(({ site, term }) => site === 'all' && term === 'lime bast');
    expect(all).toMatchObject({ count: 6, couldBe: 8, least: 6 / 20, greatest: 14 / 20 });
  });
  it('and beside that at the level by which the groups may be compared', () => {
    const pell = linesOf(tables.kindsAtLevel).filter(({ site }) => site === 'Pell');
    expect(pell.map(({ term, count }) => [term, count])).toEqual([
      ['tree bast', 6],
      ['wool', 4],
    ]);
    expect(tables.kindsAtLevel?.note).toContain('tree bast for lime bast, since Holm says no more of 8 of 8');
  });
  it('are drawn at that level, the words as recorded in a figure of their own', () => {
    const named = (id: string) => figures[id].data.map(({ name }) => name);
    expect(named('fibre')).toEqual(['tree bast', 'wool']);
    expect(figures.fibre.caption).toContain('Counted at the finest level that all record');
    expect(named('fibreAsRecorded')).toEqual(['tree bast', 'wool', 'lime bast']);
    expect(figures.fibreAsRecorded.caption).toContain('By the words as recorded');
  });
});

it('nothing is set side by side: the words as recorded are all there is', () => {
  const { tables, figures } = ask(summary, inputFrom(rows), { of: ['fibre'] });
  expect(tables.kindsAtLevel).toBeUndefined();
  expect(Object.keys(figures)).toEqual(['fibre']);
});

it('what says less than the level is left out there, and could be any kind under it', () => {
  const { tables } = ask(
    summary,
    inputFrom([
      ...Array.from({ length: 18 }, () => ({ site: 'Holm', fibre: 'limeBast' })),
      ...Array.from({ length: 2 }, () => ({ site: 'Holm', fibre: 'willowBast' })),
      { site: 'Holm', fibre: 'treeBast' },
      ...Array.from({ length: 9 }, () => ({ site: 'Pell', fibre: 'willowBast' })),
    ]),
    { of: ['fibre'], by: ['site'] },
  );
  const holm = linesOf(tables.kindsAtLevel).find(({ site, term }) => site === 'Holm' && term === 'lime bast');
  expect(holm).toMatchObject({ count: 18, share: 18 / 20, couldBe: 1, least: 18 / 21, greatest: 19 / 21 });
  expect(tables.kindsAtLevel?.note).toContain('Left out: 1 fragment that say no more than tree bast');
});
