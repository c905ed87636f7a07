import { describe, expect, it } from 'vitest';
import { combineSources } from '../../../src/sources/combine/combine.ts';
import type { RepeatedIdRule } from '../../../src/sources/profile/decisions.ts';
import { lostCells, numbers, read, register } from '../support.ts';

/** What is expected follows from the invented text and from the decision. */

const TEXT =
  'Find no.,Site,Row spacing (mm)\nA1,Ottmere,34\nA2,Ottmere,12\nA1,Ottmere,36\nA1,Ottmere,38\nA3,Ottmere,9\nA3,Ottmere,10\n';
const decide = (repeatedIds: RepeatedIdRule) => read(TEXT, { repeatedIds });

describe('an identifier in several rows', () => {
  it('is listed with its rows, and its rows count as fragments of one item until somebody decides', () => {
    const reading = read(TEXT);
    expect(reading.repeatedIds).toEqual([
      { id: 'A1', rows: [2, 4, 5], decision: null },
      { id: 'A3', rows: [6, 7], decision: null },
    ]);
    expect(reading.table.id).toEqual(['A1', 'A2', 'A1 (2)', 'A1 (3)', 'A3', 'A3 (2)']);
    expect(reading.table.item).toEqual(['A1', 'A2', 'A1', 'A1', 'A3', 'A3']);
    expect(reading.ledger.filter(({ rule }) => rule === 'duplicate-id').map(({ level }) => level)).toEqual([
      'flagged',
      'flagged',
      'flagged',
    ]);
  });

  it('keeps the first row or the last, and every text of the others stays in the ledger', () => {
    for (const [decision, spacings] of [
      ['first-only', [34, 12, 9]],
      ['last-only', [12, 38, 10]],
    ] as const) {
      const reading = decide({ all: decision });
      expect([...numbers(reading, 'rowSpacing').low]).toEqual(spacings);
      expect(reading.table.id).toHaveLength(3);
      expect(new Set(reading.table.id)).toEqual(new Set(['A1', 'A2', 'A3']));
      expect([reading.rowsRead, reading.rowsKept, reading.rowsSetAside.length]).toEqual([6, 3, 3]);
      expect(lostCells(reading)).toEqual([]);
      expect(reading.columns.map(({ filled }) => filled)).toEqual([3, 3, 3]);
    }
  });

  it('is decided for one identifier apart from the others', () => {
    const reading = decide({ all: 'one-item', ids: { A3: 'two-finds' } });
    expect(reading.table.item).toEqual(['A1', 'A2', 'A1', 'A1', 'A3', 'A3 (2)']);
    expect(reading.ledger.filter(({ level }) => level === 'flagged')).toEqual([]);
  });

  it('leaves items as a column names them', () => {
    const reading = read('Find no.,Item,Site\nA1,K1,Ottmere\nA1,K1,Ottmere\n', {
      columns: [{ header: 'Item', attribute: 'item' }],
      repeatedIds: { all: 'two-finds' },
    });
    expect(reading.table.item).toEqual(['K1', 'K1']);
  });

  it('says so where a decision decides nothing', () => {
    const { ledger } = decide({ ids: { A9: 'first-only', constructor: 'two-finds' } as never });
    expect(ledger.filter(({ rule }) => rule === 'decision-unused').map(({ raw }) => raw)).toEqual([
      'A9',
      'constructor',
    ]);
  });

  it('is settled the same way by the profile that the reading gives back', () => {
    const first = decide({ all: 'last-only' });
    const second = read(TEXT, JSON.parse(JSON.stringify(first.profile)));
    expect(second.table).toEqual(first.table);
    expect(second.rowsSetAside).toEqual(first.rowsSetAside);
  });
});

/** Numbers of vessels that begin again at 1 in every complex: three pits of one site, and a second site. */
const RESTARTING =
  'Find no.,Vessel,Site,Context\n' +
  'F1,1,Ottmere,Pit A\nF2,1,Ottmere,pit a\nF3,1,Ottmere,Pit B\nF4,2,Ottmere,Pit B\nF5,1,Sallow Ness,Pit A\nF6,1,Ottmere,\n';
const VESSELS = [{ header: 'Vessel', attribute: 'item' }];

describe('numbers of items that restart', () => {
  it('are of one item only within a site and context', () => {
    const { table } = read(RESTARTING, { columns: VESSELS });
    expect(table.item).toEqual([
      '1 (Ottmere) (Pit A)',
      '1 (Ottmere) (Pit A)',
      '1 (Ottmere) (Pit B)',
      '2',
      '1 (Sallow Ness)',
      '1 (Ottmere)',
    ]);
  });

  it('are one item wherever they stand where the profile says that they are unique everywhere', () => {
    const reading = read(RESTARTING, { columns: VESSELS, itemNumbers: 'everywhere' });
    expect(reading.table.item).toEqual(['1', '1', '1', '2', '1', '1']);
    expect(reading.profile.itemNumbers).toBe('everywhere');
  });

  it('are told apart by context also where fragments alone are numbered and nobody has decided', () => {
    const text = 'Find no.,Site,Context\n1,Ottmere,Pit A\n1,Ottmere,Pit A\n1,Ottmere,Pit B\n';
    expect(read(text).table.item).toEqual(['1 (Pit A)', '1 (Pit A)', '1 (Pit B)']);
    expect(read(text, { repeatedIds: { all: 'one-item' } }).table.item).toEqual(['1', '1', '1']);
  });

  it('are told apart across sources by site and context, unless both sources say everywhere', () => {
    const text = (context: string) => `Find no.,Vessel,Site,Context\nG,7,Ottmere,${context}\n`;
    const items = (second: string, itemNumbers?: 'everywhere') => {
      const profile = { columns: VESSELS, ...(itemNumbers === undefined ? {} : { itemNumbers }) };
      return new Set(
        combineSources(
          [
            { ...read(text('Pit A'), profile), name: 'a.csv' },
            { ...read(text(second), profile), name: 'b.csv' },
          ],
          register,
        ).table.item,
      ).size;
    };
    expect(items('Pit A')).toBe(1);
    expect(items('Pit B')).toBe(2);
    expect(items('Pit B', 'everywhere')).toBe(1);
  });
});
