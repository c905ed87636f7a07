import { describe, expect, it } from 'vitest';
import type { RepeatedIdRule } from '../../src/sources/decisions.ts';
import { lostCells, numbers, read } from './support.ts';

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
