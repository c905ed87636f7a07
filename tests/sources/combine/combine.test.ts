import { describe, expect, it } from 'vitest';
import { combineSources } from '../../../src/sources/combine/combine.ts';
import type { DuplicateDecision } from '../../../src/sources/profile/decisions.ts';
import type { ProfileInput } from '../../../src/sources/profile/profile.ts';
import { readSource } from '../../../src/sources/read-source.ts';
import { bytes, numbers, register, termsOf } from '../support.ts';

/** Invented sources; what is expected follows from the texts. */
const source = (name: string, text: string, profile: ProfileInput = {}) =>
  readSource(bytes(text), { name, register, profile });

const a = source(
  'a.csv',
  'Find no.,Item,Site,Phase,Length (mm),Structure\n1,T1,Ottmere,I,35,tabby\n2,T2,Ottmere,II,12,twill\n',
);
const b = source(
  'b.csv',
  'Fund-Nr.;Objekt-Nr.;Fundort;Phase;Breite (mm)\n1;T1;Pell;I;7,5\n3;T2;Ottmere;III;9\n',
  {
    columns: [{ header: 'Objekt-Nr.', attribute: 'item' }],
  },
);
const assemblages = source(
  'assemblages.csv',
  'site,phase,region,from,to\nOTTMERE,I,Coast,800 BC,550 BC\nOttmere,II,Coast,550 BC,AD 1\nVell,I,Hills,1,100\n',
  { role: 'assemblages' },
);

describe('several sources', () => {
  const { table, unmatched, ledger } = combineSources([a, assemblages, b], register);

  it('stand one below the other, columns of one not observed in the other', () => {
    expect([table.rows, table.sources]).toEqual([4, ['a.csv', 'b.csv']]);
    expect([...numbers({ table }, 'length').low]).toEqual([35, 12, Number.NaN, Number.NaN]);
    expect([...numbers({ table }, 'width').low]).toEqual([Number.NaN, Number.NaN, 7.5, 9]);
    expect(termsOf({ table }, 'structure')).toEqual(['tabby', 'twill', null, null]);
  });

  it('keep identifiers apart; an item of one site that two sources name is one item', () => {
    expect(table.id).toEqual(['1 (a.csv)', '2', '1 (b.csv)', '3']);
    expect(table.item).toEqual(['T1 (Ottmere)', 'T2 (Ottmere)', 'T1 (Pell)', 'T2 (Ottmere)']);
  });

  it('take region and dates from the table of assemblages, years counted astronomically', () => {
    expect(termsOf({ table }, 'region')).toEqual(['Coast', 'Coast', null, null]);
    const date = numbers({ table }, 'date');
    // ISO 8601: 800 BC = -799, 550 BC = -549, AD 1 = 1.
    expect([date.low[0], date.high[0], date.low[1], date.high[1]]).toEqual([-799, -549, -549, 1]);
  });

  it('report keys without a partner from both sides', () => {
    expect(unmatched.map(({ side, key, rows }) => `${side} ${key.join('/')} ${rows}`)).toEqual([
      'fragments Pell/I 1',
      'fragments Ottmere/III 1',
      'assemblages Vell/I 1',
    ]);
    expect(ledger.filter(({ rule }) => rule === 'unmatched-key')).toHaveLength(3);
  });

  it('keep what a fragment states itself, and say where the table of assemblages differs', () => {
    const own = source('own.csv', 'Find no.,Site,Phase,Region\n9,Ottmere,I,Island\n');
    const combined = combineSources([own, assemblages], register);
    expect(termsOf(combined, 'region')).toEqual(['Island']);
    expect(combined.ledger.find(({ rule }) => rule === 'join-differs')).toMatchObject({
      source: 'own.csv',
      row: 2,
      raw: 'Island',
    });
  });

  it('take the years of a period from a table of periods', () => {
    const finds = source('finds.csv', 'Find no.,Site,Period\n9,Ottmere,Early\n');
    const periods = source('periods.csv', 'Period,from,to\nEarly,400 BC,150 BC\n', { role: 'assemblages' });
    const date = numbers(combineSources([finds, periods], register), 'date');
    expect([date.low[0], date.high[0]]).toEqual([-399, -149]);
  });
});

describe('likely duplicates', () => {
  const head = 'Find no.,Site,Length (mm),Width (mm),Threads per cm (warp),Threads per cm (weft)\n';
  const one = source('one.csv', `${head}OT-17,Ottmere,35,22,12,9\nOT-18,Ottmere,40,30,14,9\n`);

  it('are listed with how much they share, and both rows stay', () => {
    const two = source('two.csv', `${head}Kat. 5,Ottmere,35,22,12,9\nKat. 6,Ottmere,99,98,3,4\n`);
    const { table, duplicates } = combineSources([one, two], register);
    expect(table.rows).toBe(4);
    expect(duplicates).toMatchObject([
      { ids: ['OT-17', 'Kat. 5'], sources: ['one.csv', 'two.csv'], comparable: 4, equal: 4 },
    ]);
  });

  it('are none when the sites differ or the rows are of one source', () => {
    const elsewhere = source('two.csv', `${head}Kat. 5,Pell,35,22,12,9\n`);
    expect(combineSources([one, elsewhere], register).duplicates).toEqual([]);
    expect(
      combineSources([source('s.csv', `${head}1,Pell,35,22,12,9\n2,Pell,35,22,12,9\n`)], register).duplicates,
    ).toEqual([]);
  });
});

describe('a decision about two rows that may be one find', () => {
  const head = 'Find no.,Site,Length (mm),Width (mm),Threads per cm (warp),Threads per cm (weft)\n';
  const one = source('one.csv', `${head}OT-17,Ottmere,35,22,12,9\nOT-18,Ottmere,40,30,14,9\n`);
  const two = source('two.csv', `${head}Kat. 5,Ottmere,35,22,12,9\nKat. 6,Ottmere,99,98,3,4\n`);
  const decide = (decision: DuplicateDecision['decision']) =>
    combineSources([one, two], register, [
      { first: { source: 'one.csv', id: 'OT-17' }, second: { source: 'two.csv', id: 'Kat. 5' }, decision },
    ]);

  it('sets one of them aside, with every text of it in the ledger', () => {
    const { table, duplicates, setAside, ledger } = decide('first-only');
    expect(table.id).toEqual(['OT-17', 'OT-18', 'Kat. 6']);
    expect(setAside.get('two.csv')).toEqual([
      { row: 2, reason: 'the same find as row 2 of one.csv, by decision' },
    ]);
    expect(duplicates).toEqual([]);
    const texts = ledger.filter(({ rule }) => rule === 'row-set-aside').map(({ raw }) => raw);
    expect(texts.sort()).toEqual(['12', '22', '35', '9', 'Kat. 5', 'Ottmere']);
    expect(decide('second-only').table.id).toEqual(['OT-18', 'Kat. 5', 'Kat. 6']);
  });

  it('makes one item of them, and asks no more', () => {
    const { table, duplicates } = decide('one-item');
    expect(table.item).toEqual(['OT-17', 'OT-18', 'OT-17', 'Kat. 6']);
    expect(duplicates).toEqual([]);
  });

  it('keeps both as they are, and asks no more', () => {
    const { table, duplicates } = decide('two-finds');
    expect(table.item).toEqual(['OT-17', 'OT-18', 'Kat. 5', 'Kat. 6']);
    expect(duplicates).toEqual([]);
  });

  it('that names a find which is not there is a fault with its remedy', () => {
    const { faults, table } = combineSources([one, two], register, [
      {
        first: { source: 'one.csv', id: 'OT-99' },
        second: { source: 'two.csv', id: 'Kat. 5' },
        decision: 'first-only',
      },
    ]);
    expect(table.rows).toBe(4);
    expect(faults).toMatchObject([
      { what: 'a decision about duplicates names the find "OT-99", which is not there' },
    ]);
  });
});
