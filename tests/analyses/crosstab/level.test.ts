import { describe, expect, it } from 'vitest';
import { crosstab } from '../../../src/analyses/crosstab/index.ts';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, inputFrom, linesOf } from '../ask.ts';

const question = { rows: 'site', columns: 'fibre', relabellings: 199, resamples: 199 };

/** Records of two sites in one table, by counts of terms. */
const rowsOf = (sites: Readonly<Record<string, Readonly<Record<string, number>>>>) =>
  Object.entries(sites).flatMap(([site, fibres]) =>
    Object.entries(fibres).flatMap(([fibre, count]) =>
      Array.from({ length: count }, () => ({ site, fibre })),
    ),
  );

describe('a table of kinds that one place names only in the broad word', () => {
  const broad = rowsOf({ Holm: { treeBast: 12, wool: 6 }, Pell: { limeBast: 12, wool: 6 } });
  const { words, tables, figures, found } = ask(crosstab, inputFrom(broad), question);

  it('is counted at the level that both record, and the other verdict stands beside it', () => {
    expect(found.table.columns).toEqual(['tree bast', 'wool']);
    expect(found.told).toBe('not told apart');
    expect(words.answer).toBe(
      'Site and fibre could not be shown to go together at the level that all record; by the words as recorded they go together.',
    );
    expect(words.unless[0]).toMatchObject({ what: 'counted by the words as recorded', overturns: true });
    expect(words.unless[0].size).toContain('go together (p < 0.001');
    expect(faultsOfAnswer(words)).toEqual([]);
  });
  it('quotes no cell that only the words make', () => {
    expect(found.quoted).toEqual([]);
    expect(tables.quoted).toBeUndefined();
  });
  it('says under table, shares and mosaic at which level it was counted', () => {
    const note = 'tree bast for lime bast, since Holm says no more of 12 of 12';
    expect(tables.counts.note).toContain(note);
    expect(figures.shares.caption).toContain(note);
    expect(figures.mosaic.caption).toContain(note);
  });
  it('bounds the shares that the broad word leaves open', () => {
    expect(linesOf(tables.bounds)).toEqual([
      { row: 'Holm', column: 'lime bast', count: 0, could: 12, base: 18, low: 0, high: 12 / 18 },
      { row: 'Holm', column: 'wool', count: 6, could: 0, base: 18, low: 6 / 18, high: 6 / 18 },
      { row: 'Pell', column: 'lime bast', count: 12, could: 0, base: 18, low: 12 / 18, high: 12 / 18 },
      { row: 'Pell', column: 'wool', count: 6, could: 0, base: 18, low: 6 / 18, high: 6 / 18 },
    ]);
    expect(words.unless.map(printTurn)).toContain(
      'If broader words were recorded more closely: lime bast in Holm could be 0 to 12 of 18.',
    );
  });
  it('asked for by the words as recorded, it holds the common level against them', () => {
    const asked = ask(crosstab, inputFrom(broad), { ...question, level: 'recorded' });
    expect(asked.found.table.columns).toEqual(['tree bast', 'lime bast', 'wool']);
    expect(asked.words.answer).toBe(
      'Site and fibre go together by the words as recorded; at the level that all record they could not be shown to go together.',
    );
    expect(asked.found.quoted).toEqual([]);
    expect(asked.words.unless.map(printTurn).join(' ')).toContain(
      'Tree bast stands beside narrower kinds of the same',
    );
    expect(faultsOfAnswer(asked.words)).toEqual([]);
  });
  it('keeps a difference that is there at either level', () => {
    const other = ask(
      crosstab,
      inputFrom(rowsOf({ Holm: { treeBast: 20, wool: 2 }, Pell: { limeBast: 3, wool: 20 } })),
      question,
    );
    expect(other.words.answer).toContain('Site and fibre go together: more');
    expect(other.words.because.join(' ')).toContain(
      'Counted as tree bast for lime bast, since Holm says no more',
    );
    expect(other.words.because.join(' ')).toContain('by the words as recorded (V');
  });
});

describe('a few broad records', () => {
  it('fold nothing: they are left out, counted, and bound the shares', () => {
    const { found, tables, words } = ask(
      crosstab,
      inputFrom(
        rowsOf({
          Holm: { treeBast: 2, limeBast: 20, willowBast: 4, wool: 9 },
          Pell: { limeBast: 4, willowBast: 20, wool: 9 },
        }),
      ),
      question,
    );
    expect(found.table.columns).toEqual(['lime bast', 'willow bast', 'wool']);
    expect(found.n.setAside).toEqual([{ reason: 'fibre no closer than tree bast', fragments: 2 }]);
    expect(linesOf(tables.bounds)[0]).toMatchObject({
      row: 'Holm',
      column: 'lime bast',
      low: 20 / 35,
      high: 22 / 35,
    });
    expect(words.answer).toContain('Site and fibre go together');
  });
});

it('a table with one level everywhere has no bounds and no other level', () => {
  const { found, tables } = ask(
    crosstab,
    inputFrom(rowsOf({ Holm: { limeBast: 12, wool: 6 }, Pell: { limeBast: 2, wool: 16 } })),
    question,
  );
  expect(tables.bounds).toBeUndefined();
  expect(found.otherwise.every(({ change }) => change === 'line left out')).toBe(true);
});

it('rows that are kinds themselves are folded where the columns need it', () => {
  const rows = [
    ...Array.from({ length: 9 }, () => ({ structure: 'twined', fibre: 'limeBast' })),
    ...Array.from({ length: 9 }, () => ({ structure: 'openTwining', fibre: 'wool' })),
    ...Array.from({ length: 9 }, () => ({ structure: 'woven', fibre: 'wool' })),
  ];
  const { found } = ask(crosstab, inputFrom(rows), { ...question, rows: 'structure' });
  expect(found.table.rows).toEqual(['woven', 'twined']);
});

describe('broad records that are few, but too many to leave out unasked', () => {
  // Three of Holm's ten basts are told no closer: the common level folds them for all.
  const few = rowsOf({
    Holm: { limeBast: 7, treeBast: 3, wool: 6 },
    Pell: { willowBast: 10, wool: 6 },
  });
  const { words, found, tables } = ask(crosstab, inputFrom(few), question);

  it('fold the branch, and the answer has what the rest tells apart beside it', () => {
    expect(found.table.columns).toEqual(['tree bast', 'wool']);
    expect(words.answer).toBe(
      'Site and fibre could not be shown to go together at the level that all record; in narrower kinds they go together.',
    );
    expect(words.unless[0]).toMatchObject({
      what: 'counted more closely, without the few that say no more',
      overturns: true,
    });
    expect(linesOf(tables.otherwise)[0]).toMatchObject({
      change: 'told apart, the few that say no more left out',
      told: 'told apart',
    });
    expect(faultsOfAnswer(words)).toEqual([]);
  });
  it('that are half or more leave nothing to tell more closely', () => {
    const half = ask(
      crosstab,
      inputFrom(rowsOf({ Holm: { limeBast: 4, treeBast: 6, wool: 6 }, Pell: { willowBast: 10, wool: 6 } })),
      question,
    );
    expect(half.found.otherwise.map(({ change }) => change)).not.toContain('told more closely');
    expect(half.words.answer).toContain('by the words as recorded');
  });
});
