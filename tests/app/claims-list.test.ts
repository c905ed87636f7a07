import { describe, expect, it } from 'vitest';
import { readClaims } from '../../src/analyses/claims/reading/claims-file.ts';
import { nextDraft, readSheet, sheetBytes } from '../../src/app/screens/printed-figures/claims-list.ts';
import { parseCsv } from '../../src/sources/formats/parse-csv.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => readSheet(bytes(text), 'claims.csv');
const gridOf = (file: Uint8Array) => parseCsv(new TextDecoder().decode(file), 'claims.csv', ',').grid;

const PAPER = [
  'checked by;id;quantity;Page no.;printed;;note;note',
  'Wren;a;n;12;28; loose ;first;second',
  ';b;mean;"13; top";5.19;;;"two, here"',
].join('\n');

describe('a claims file as it is edited', () => {
  it('keeps columns that are no claim’s, in their place and order, through an edit', () => {
    const sheet = read(PAPER);
    const drafts = sheet.drafts.map((draft, i) => (i === 1 ? { ...draft, printed: '5.18' } : draft));
    const grid = gridOf(sheetBytes({ ...sheet, drafts }));
    expect(grid.map((line) => line.slice(0, 8))).toEqual([
      ['checked by', 'id', 'quantity', 'Page no.', 'printed', '', 'note', 'note'],
      ['Wren', 'a', 'n', '12', '28', ' loose ', 'first', 'second'],
      ['', 'b', 'mean', '13; top', '5.18', '', '', 'two, here'],
    ]);
  });

  it('adds the columns of a claim that it lacked behind them, and a claim has its texts there', () => {
    const sheet = read(PAPER);
    const drafts = sheet.drafts.map((draft) => ({ ...draft, set: 'ages', step: '1' }));
    const file = sheetBytes({ ...sheet, drafts });
    expect(gridOf(file)[0]!.slice(8)).toEqual([
      'place',
      'set',
      'test',
      'sided',
      'step',
      'attribute',
      'select',
      'versus',
      'counted',
    ]);
    const { claims, ignored } = readClaims(file, 'claims.csv');
    expect(claims.map(({ set, step, note }) => [set, step, note])).toEqual([
      ['ages', '1', 'first'],
      ['ages', '1', ''],
    ]);
    expect(ignored).toEqual(['checked by', 'Page no.', 'note']);
  });

  it('leaves the others’ texts with their rows where a figure is added or removed', () => {
    const sheet = read(PAPER);
    const more = [...sheet.drafts, nextDraft(sheet.drafts, sheet.drafts[0])].toSpliced(0, 1);
    const again = readSheet(sheetBytes({ ...sheet, drafts: more }), 'claims.csv');
    expect(again.drafts.map(({ id, others }) => [id, others])).toEqual([
      ['b', ['', '13; top', '', 'two, here']],
      ['c3', ['', '', '', '']],
    ]);
  });

  it.each([
    ['a cell beyond the header', 'quantity,printed\nn,12,more\nn,13\n'],
    ['a formula in a column of the reader’s', 'mine,quantity,printed\n=A1,n,12\n'],
    ['a row with nothing but the reader’s words', 'quantity,printed,mine\n,,to do\nn,3,\n'],
  ])('is the same when written and read again: %s', (_, text) => {
    const sheet = read(text);
    const again = readSheet(sheetBytes(sheet), 'claims.csv');
    expect(again.drafts.map(({ others: _own, ...claim }) => claim)).toEqual(
      sheet.drafts.map(({ others: _own, ...claim }) => claim),
    );
    expect(again.drafts.map(({ others }) => others)).toEqual(sheet.drafts.map(({ others }) => others));
    expect(sheet.drafts.some(({ others }) => others.some((cell) => cell !== ''))).toBe(true);
  });

  it('has all columns of a claim where it is new', () => {
    expect(gridOf(sheetBytes({ head: [], drafts: [] }))).toEqual([
      'id,place,quantity,set,test,sided,step,attribute,select,versus,counted,printed,note'.split(','),
    ]);
  });
});
