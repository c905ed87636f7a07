import { describe, expect, it } from 'vitest';
import { lostCells, read, textsOf } from '../support.ts';

/** Invented tables whose remarks hold the sign that parts the cells, and nobody put them in quotation marks. */

const HEAD = ['No.', 'Site', 'Technique', 'Spacing (mm)', 'Remarks'];
const ROWS = [
  ['1', 'Harrow', 'open twining', '12', 'charred$ brittle'],
  ['2', 'Harrow', 'close twining', '3.1', 'fine'],
  ['3', 'Kelder', 'open twining', '10', 'selvedge kept'],
  ['4', 'Kelder', 'open twining', '9', 'with selvedge$ charred$ two pieces'],
  ['5', 'Kelder', 'open twining', '11', ''],
  ['6', 'Harrow', 'close twining', '2.5', 'dark stain'],
  ['7', 'Harrow', 'close twining', '2', 'loose'],
];
const written = (sign: string, rows: readonly (readonly string[])[] = ROWS) =>
  `${[HEAD, ...rows].map((row) => row.join(sign).replaceAll('$', sign)).join('\n')}\n`;
const with_ = (at: number, row: readonly string[]) => ROWS.map((one, i) => (i === at ? row : one));

describe('what stands beyond the last column', () => {
  it.each([',', ';', '\t'])('is joined to it where only it can hold the sign "%s", and said', (sign) => {
    const reading = read(written(sign));
    expect([reading.rowsKept, reading.faults, reading.tooLong]).toEqual([7, [], undefined]);
    const remarks = textsOf(reading, 'remarks');
    expect(remarks[0]).toBe(`charred${sign} brittle`);
    expect(remarks[3]).toBe(`with selvedge${sign} charred${sign} two pieces`);
    expect(reading.ledger.filter(({ rule }) => rule === 'overflow-joined').map(({ row }) => row)).toEqual([
      2, 5,
    ]);
    expect(lostCells(reading)).toEqual([]);
  });

  it.each([
    ['a site that holds the sign', 2, ['3', 'Kelder$ north', 'open twining', '10', 'kept']],
    ['a number with a comma', 1, ['2', 'Harrow', 'close twining', '3$1', 'fine']],
    ['a technique of two words that nobody else has', 1, ['2', 'Harrow', 'twill$ brown', '3', 'fine']],
  ])('is not joined in any row where one may be %s', (_, at, row) => {
    const reading = read(written(',', with_(at, row)));
    expect(reading.ledger.some(({ rule }) => rule === 'overflow-joined')).toBe(false);
    expect(reading.tooLong).toMatchObject({ column: 'Remarks', mayJoin: true });
    expect(reading.tooLong?.rows).toContain(at + 2);
    expect(reading.rowsSetAside.map((one) => one.row)).toEqual(reading.tooLong?.rows);
    expect(reading.faults[0]?.mend).toContain('"join-last"');
    expect(lostCells(reading)).toEqual([]);
  });

  it('is not joined where a number before the remarks may have been cut in two', () => {
    const rows = with_(3, ['4', 'Kelder', 'open twining', '9$5', 'two pieces']);
    expect(read(written(',', rows)).tooLong?.rows).toEqual([2, 5]);
  });

  it('is never joined to numbers, and then joining is not offered', () => {
    const reading = read(
      'id,site,length (mm)\na,Ness,1\nb,Ness,2,3\nc,Ness,3\nd,Ness,4\ne,Ness,5\nf,Ness,6\n',
    );
    expect(reading.tooLong).toEqual({ rows: [3], column: 'length (mm)', mayJoin: false });
  });

  it('is taken as the profile says', () => {
    const text = written(',', with_(2, ['3', 'Kelder$ north', 'open twining', '10', 'kept']));
    const joined = read(text, { layout: { raggedRows: 'join-last' } });
    expect([joined.rowsKept, joined.faults, joined.tooLong]).toEqual([7, [], undefined]);
    expect(textsOf(joined, 'remarks')[2]).toBe('10,kept');
    expect(read(text, { layout: { raggedRows: 'set-aside' } }).rowsSetAside).toHaveLength(3);
    const padded = read(text, { layout: { raggedRows: 'pad' } });
    expect(textsOf(padded, 'remarks')[0]).toBe('charred');
  });
});
