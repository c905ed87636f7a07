import { describe, expect, it } from 'vitest';
import { detectDelimiter } from '../../../src/sources/formats/dialect.ts';
import { partLeniently } from '../../../src/sources/formats/stray-quotes.ts';
import { lostCells, read, textsOf } from '../support.ts';

/** Quotation marks as exports leave them; what is right follows from RFC 4180 and from the lines themselves. */

describe('a quotation mark that closes no cell', () => {
  it('swallows no row: as many rows as lines, the text as it stands', () => {
    const reading = read('Find no.,Kind,Site\n1,""name"" type,Holm\n2,bowl,Holm\n3,"jar, wide",Pell\n');
    expect([reading.lines, reading.rowsRead, reading.rowsKept]).toEqual([4, 3, 3]);
    expect(textsOf(reading, 'column: Kind')).toEqual(['"name" type', 'bowl', 'jar, wide']);
    expect(reading.ledger.filter(({ rule }) => rule === 'odd-quotation-mark').map(({ row }) => row)).toEqual([
      2,
    ]);
    expect(lostCells(reading)).toEqual([]);
  });

  it('and is never closed leaves the rows below as they are', () => {
    const reading = read('Find no.,Kind,Site\n1,"bowl,Holm\n2,jar,Holm\n3,cup,Pell\n');
    expect(reading.rowsKept).toBe(3);
    expect(textsOf(reading, 'column: Kind')).toEqual(['"bowl', 'jar', 'cup']);
  });

  it('is no reason to part a cell of several lines', () => {
    const text = 'Find no.,Note,Site\n1,"two\nlines, of text",Holm\n2,plain,Holm\n';
    expect(partLeniently(text, ',')).toEqual({
      grid: [
        ['Find no.', 'Note', 'Site'],
        ['1', 'two\nlines, of text', 'Holm'],
        ['2', 'plain', 'Holm'],
      ],
      mended: [],
    });
    expect([read(text).lines, read(text).rowsRead]).toEqual([4, 2]);
  });
});

describe('headers', () => {
  it('of numbered types or years at equal steps are headers', () => {
    for (const head of ['Site,1,2,3,4', ',1950,1960,1970,1980']) {
      const reading = read(`${head}\nHolm,12,0,4,1\nPell,3,5,0,2\n`);
      expect([reading.headerRow, reading.rowsKept]).toEqual([1, 2]);
    }
  });

  it('are asked about where there is none', () => {
    const reading = read('12,3.5,7\n13,4.5,9\n15,2.5,1\n');
    expect([reading.headerRow, reading.faults.length]).toEqual([0, 1]);
    expect(reading.faults[0]?.mend).toContain('or 0 if none does');
    expect(read('12,3.5,7\n13,4.5,9\n15,2.5,1\n', { layout: { headerRow: 0 } }).faults).toEqual([]);
  });
});

it('a mark that one delimiter leaves open and another closes is read by the one that closes it', () => {
  expect(detectDelimiter(',";"""\n,')).toBe(',');
  expect(detectDelimiter('a;"b,"\nc;"d,"\n')).toBe(';');
});
