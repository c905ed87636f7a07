import { describe, expect, it } from 'vitest';
import { viewSource } from '../../../src/app/engine/source-view.ts';
import { questionsOf } from '../../../src/app/screens/sources/question-list.ts';
import { extendRegister } from '../../../src/attributes/register.ts';
import { quantityAt } from '../../../src/fragments/quantity.ts';
import { looksLikeCounts } from '../../../src/sources/columns/looks-like-counts.ts';
import { COUNTED_KIND } from '../../../src/sources/layout/counts.ts';
import { read, register as standard } from '../support.ts';

/** What is expected follows from the small tables, which are made here. */
const register = extendRegister(standard, { attributes: [COUNTED_KIND] });
const counted = (text: string, base?: string) =>
  read(
    text,
    { layout: { counts: { attribute: COUNTED_KIND.id, ...(base === undefined ? {} : { base }) } } },
    { register },
  );
const kindsOf = (text: string, base?: string) => {
  const column = counted(text, base).table.columns.get(COUNTED_KIND.id);
  return column?.kind === 'term' ? [...new Set([...column.codes].map((code) => column.levels[code]))] : [];
};

describe('totals of a table of counts', () => {
  it.each(['Total', 'Summe', 'Totale', 'Insgesamt', 'n', 'I alt'])('headed "%s" are no kind', (head) => {
    expect(kindsOf(`Site,jar,bowl,lid,${head}\nHolm,12,4,1,17\nPell,3,9,0,12\nVell,2,2,2,6\n`)).toEqual([
      'jar',
      'bowl',
      'lid',
    ]);
  });

  it('that are misprinted are no kind either, and the row is flagged with what its kinds come to', () => {
    const text = 'Site,jar,bowl,lid,Total\nHolm,12,4,1,17\nPell,3,9,0,21\nVell,2,2,2,6\n';
    expect(kindsOf(text)).toEqual(['jar', 'bowl', 'lid']);
    const said = counted(text).ledger.filter(({ rule }) => rule === 'total-differs');
    expect(said.map(({ row, raw, readAs }) => [row, raw, readAs])).toEqual([[3, '21', '12']]);
  });

  it('are told from a kind that only shares their letter', () => {
    expect(kindsOf('Sample,C,N,P\na,40,5,1\nb,38,6,2\nc,41,4,1\n')).toEqual(['C', 'N', 'P']);
  });

  it('stand beside measurements, which are no kinds either', () => {
    const text = 'Site,jar,bowl,Trench (m2),Depth\nHolm,12,4,40,1.25\nPell,3,9,25,0.8\n';
    expect(kindsOf(text)).toEqual(['jar', 'bowl']);
  });

  it('below the table are set aside', () => {
    expect(counted('Site,jar,bowl\nHolm,12,4\nPell,3,9\nSumme,15,13\n').rowsKept).toBe(2);
  });
});

describe('a cell that says less than a count', () => {
  const text = (odd: string) =>
    `Site,jar,netting,lid,Total\nHolm,12,3,1,16\nPell,3,6,0,9\nVell,2,1,2,5\nOuter Garth,1,${odd},2,3\n`;
  const countOf = (odd: string, site: string) => {
    const { table } = counted(text(odd));
    const kind = table.columns.get(COUNTED_KIND.id);
    const place = table.columns.get('site');
    if (kind?.kind !== 'term' || place?.kind !== 'term') throw new Error('no kinds');
    return [...kind.codes].reduce(
      (sum, code, row) =>
        kind.levels[code] === 'netting' && place.levels[place.codes[row]!] === site
          ? sum + quantityAt(table, row)
          : sum,
      0,
    );
  };

  it.each([
    ['?', 0],
    ['n/a', 0],
    ['k. A.', 0],
    ['<3', 0],
    ['c. 2', 2],
    ['2?', 2],
    ['2+', 2],
    ['2-4', 3],
  ])('%j costs its kind nothing elsewhere, counts %s and is flagged', (odd, count) => {
    expect(kindsOf(text(odd))).toEqual(['jar', 'netting', 'lid']);
    expect(countOf(odd, 'Holm')).toBe(3);
    expect(countOf(odd, 'Outer Garth')).toBe(count);
    const said = counted(text(odd)).ledger.filter(({ rule }) => rule === 'odd-count');
    expect(said).toMatchObject([{ row: 5, column: 'netting', raw: odd, level: 'flagged' }]);
  });

  it('that is no count at all is flagged as well, where somebody said that its column counts', () => {
    const table = 'Site,jar,netting\nHolm,12,3\nPell,3,many\nVell,2,-\n';
    const rule = { attribute: COUNTED_KIND.id, columns: ['jar', 'netting'] };
    const { ledger } = read(table, { layout: { counts: rule } }, { register });
    expect(ledger.filter(({ rule: of }) => of === 'odd-count')).toMatchObject([
      { raw: 'many', level: 'flagged' },
    ]);
  });

  it('leaves a total that it could explain alone, and not one that it cannot', () => {
    const flagged = (total: number) =>
      counted(
        `Site,jar,netting,lid,Total\nHolm,12,3,1,16\nPell,3,6,0,9\nVell,2,1,2,5\nOuter,1,?,2,${total}\n`,
      ).ledger.filter(({ rule }) => rule === 'total-differs').length;
    expect([3, 7, 2].map(flagged)).toEqual([0, 0, 1]);
  });

  it('makes no kind of a column of words', () => {
    expect(kindsOf('Site,jar,lid,note\nHolm,12,4,?\nPell,3,9,c. 2\nVell,2,2,n/a\n')).toEqual(['jar', 'lid']);
  });
});

describe('shares of kinds', () => {
  const text = 'Site,n,jar %,bowl (%),"lid, per cent"\nHolm,40,50.0,37.5,12.5\nPell,80,25.0,60.0,15.0\n';

  it('become counts by their base, of kinds without their per cent', () => {
    const column = counted(text, 'n').table.columns.get('quantity');
    expect(column?.kind === 'numeric' && [...column.low]).toEqual([20, 15, 5, 20, 48, 12]);
    expect(kindsOf(text, 'n')).toEqual(['jar', 'bowl', 'lid']);
  });

  it.each([
    ['with', text],
    ['without', text.replaceAll(/^(\w+),[^,]*/gm, '$1')],
  ])('%s a column of numbers beside them are a fault as long as no base is named', (_, table) => {
    expect(counted(table).faults.map(({ what }) => what)).toEqual([expect.stringContaining('come to 100')]);
  });

  it('of a base that is not there are a fault that lists the columns', () => {
    expect(counted(text, 'N').faults[0]).toMatchObject({ what: expect.stringContaining('"N"') });
  });
});

describe('a table that seems to count', () => {
  it('is asked about first, in the workbench and the terminal alike', () => {
    const reading = read('Site,jar,bowl,lid,Total\nHolm,12,4.5,1,17.5\nPell,3,9,0,12\n');
    expect(looksLikeCounts(reading)).toEqual({ columns: ['jar', 'bowl', 'lid'], shares: null });
    const [first] = questionsOf(viewSource(reading, standard, []), []);
    expect(first.kind).toBe('counts');
  });

  it('shows the columns of its file once it is read as counts, each filled as far as its rows go, and asks no more', () => {
    const view = viewSource(counted('Site,jar,bowl,Total\nHolm,12,4,16\nPell,3,9,12\n'), register, []);
    expect(view.fileHeaders).toEqual(['Site', 'jar', 'bowl', 'Total']);
    expect(view.columns.map(({ header }) => header)).toEqual(['Site', 'kind', 'Number of objects']);
    expect(view.filledShare).toEqual([1, 1, 1]);
    expect(view.examples[1]).toEqual(['jar', 'bowl']);
    expect(questionsOf(view, [])).toEqual([]);
  });

  it('in per cent names its base', () => {
    const reading = read(
      'Site,n,jar %,bowl %,lid %\nHolm,40,50,37.5,12.5\nPell,80,25,60,15\nVell,20,50,40,10\n',
    );
    expect(looksLikeCounts(reading)?.shares).toEqual({ base: 'n' });
  });

  it.each([
    ['yes and no', 'Grave,knife,bead,pin\nA,1,0,1\nB,0,0,1\n'],
    ['measurements', 'Grave,depth,span,rise\nA,1.31,2.44,3.1\nB,2.25,1.18,4.4\n'],
    ['numbered finds', 'No.,bore,rim,foot\n1,12,4,1\n2,3,9,0\n'],
  ])('is no table of %s', (_, table) => {
    expect(looksLikeCounts(read(table))).toBeNull();
  });
});
