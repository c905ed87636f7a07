import { describe, expect, it } from 'vitest';
import { read } from '../support.ts';

const heads = (text: string) => read(text).columns.map(({ header }) => header);

describe('names of columns that look like readings', () => {
  it('are a header beside a blank corner over rows that are named', () => {
    const classes = ',142.24,144.78,147.32\n9.4,0,0,3\n9.5,1,0,2\n9.6,4,1,0\n';
    expect(heads(classes).slice(1)).toEqual(['142.24', '144.78', '147.32']);
    expect(read(classes).rowsKept).toBe(3);
    expect(heads(',15-24 (79),25-34 (79),35-44 (79)\nfire,8,7,5\nflood,1,0,4\n').slice(1)).toEqual([
      '15-24 (79)',
      '25-34 (79)',
      '35-44 (79)',
    ]);
  });
  it('are a header where they are codes over plain numbers, below a title too', () => {
    const codes = '1a,1b,2a,2b\n5,6,2,2\n6,3,2,0\n1,0,0,4\n';
    expect(heads(codes)).toEqual(['1a', '1b', '2a', '2b']);
    expect(heads(`Traits of the finds,,,\n\n${codes}`)).toEqual(['1a', '1b', '2a', '2b']);
  });
  it('are a header where they count from one through every column', () => {
    expect(heads('1,2,3,4\n50,19,26,8\n16,40,34,18\n12,35,65,66\n')).toEqual(['1', '2', '3', '4']);
  });
  it('are asked about where the first row may be a record', () => {
    expect(read('5,19,26,8\n16,40,34,18\n12,35,65,66\n').faults[0]?.what).toContain('no header was found');
    expect(read('1,2,3,4\n1,2,3,4\n1,2,3,4\n').faults[0]?.what).toContain('no header was found');
  });
});

describe('a word for a total among short codes', () => {
  const states = (...rows: string[]) => read(`Code,Cores,Flakes\n${rows.join('\n')}\n`);
  it('is a code like the others where its numbers sum nothing up', () => {
    expect(states('SA,3,12', 'SB,1,8', 'SC,4,19', 'SD,2,7', 'SE,2,11').rowsKept).toBe(5);
    expect(states('K,14,3', 'L,2,0', 'M,30,22', 'N,7,9', 'P,1,1').rowsKept).toBe(5);
  });
  it('is the total, the mean or the deviation where they do', () => {
    expect(states('A,3,12', 'B,1,8', 'C,4,19', 'N,8,39').rowsKept).toBe(3);
    expect(states('A,3,12', 'B,1,8', 'C,4,19', 'SD,1.53,5.57').rowsKept).toBe(3);
  });
  it('is one whatever its numbers where the names are words', () => {
    expect(states('Nordby,3,12', 'Sorby,1,8', 'Vesby,4,19', 'SD,1.5,5.6').rowsKept).toBe(3);
  });
  it.each(['Stabw.', 'Desv. est.', 'Moy.', 'Dev. std.', 'Standardavvik'])('%s', (word) => {
    expect(states('1,3,12', '2,1,8', '3,4,19', `${word},1,5`).rowsKept).toBe(3);
  });
});
