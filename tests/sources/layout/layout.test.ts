import { describe, expect, it } from 'vitest';
import { lostCells, numbers, read, termsOf, textsOf } from '../support.ts';

/** Invented tables, each in one of the layouts that catalogues come in; expectations follow from the text. */

const plain = 'Find no.,Site,Row spacing (mm),Structure\nA1,Ottmere,35,twined\nA2,Ottmere,12,tabby\n';

describe('headers', () => {
  it('are found below title rows and blank rows, which are set aside with a reason', () => {
    const reading = read(`Finds from Ottmere (an invented place),,,\n,,,\n${plain}`);
    expect(reading.headerRow).toBe(3);
    expect(reading.rowsSetAside).toEqual([
      { row: 1, reason: 'above the header' },
      { row: 2, reason: 'empty row' },
    ]);
    expect([...numbers(reading, 'rowSpacing').low]).toEqual([35, 12]);
  });

  it('may take two rows: groups above, names below, or units below', () => {
    const groups = read(
      'Find no.,System 1,,System 2,\n,density (per cm),twist,density (per cm),twist\nA1,12,Z,9,S\nA2,14,Z,10,Z\n',
    );
    expect(groups.columns.flatMap(({ attributes }) => attributes)).toEqual([
      'fragment',
      'density1',
      'twist1',
      'density2',
      'twist2',
    ]);
    expect([...numbers(groups, 'density2').low]).toEqual([9, 10]);
    const units = read('Find no.,Length,Row spacing\n,(cm),[cm]\nA1,4,3.5\nA2,5,1\n');
    expect([...numbers(units, 'rowSpacing').low]).toEqual([35, 10]);
    expect([...numbers(units, 'length').low]).toEqual([40, 50]);
  });

  it('are numbered where the file has none, and told apart where it has one twice', () => {
    const blank = read('Find no.,,Length (mm)\nA1,red,40\nA2,blue,50\n');
    expect(blank.columns.map(({ header }) => header)).toEqual(['Find no.', 'column 2', 'Length (mm)']);
    expect(textsOf(blank, 'column: column 2')).toEqual(['red', 'blue']);
    const twice = read('Find no.,Munsell,Munsell\nA1,red,dark\n');
    expect(twice.columns.map(({ header }) => header)).toEqual(['Find no.', 'Munsell', 'Munsell (2)']);
    expect(twice.faults.map(({ what }) => what)).toEqual(['columns 2 and 3 are both headed "Munsell"']);
    const settled = read('Find no.,Munsell,Munsell\nA1,red,dark\n', {
      columns: [{ header: 'Munsell (2)', attribute: 'remarks' }],
    });
    expect(settled.faults).toEqual([]);
  });

  it('named __proto__ or constructor are headers like any other', () => {
    const reading = read(
      'Find no.,__proto__,constructor,toString\nA1,x,y,z\nA2,__proto__,constructor,valueOf\n',
    );
    expect(textsOf(reading, 'column: __proto__')).toEqual(['x', '__proto__']);
    expect(textsOf(reading, 'column: constructor')).toEqual(['y', 'constructor']);
    expect(lostCells(reading)).toEqual([]);
  });

  it('shorter by one than every row leave the first column, of names, without one', () => {
    const reading = read('Length (mm),Width (mm)\nA1,40,30\nA2,50,20\n');
    expect([...numbers(reading, 'length').low]).toEqual([40, 50]);
    expect(reading.table.id).toEqual(['A1', 'A2']);
  });

  it('are not looked for where the first row is made of numbers', () => {
    const reading = read('1,35,4\n2,12,5\n');
    expect([reading.headerRow, reading.rowsKept]).toEqual([0, 2]);
  });
});

describe('rows that are no finds', () => {
  it('notes, totals, blank rows, headings and the header again are set aside', () => {
    const reading = read(
      'Find no.,Site,Length (mm)\nTrench one,,\nA1,Ottmere,35\n,,\nFind no.,Site,Length (mm)\nA2,Ottmere,12\nTotal,,47\nNote: lengths were measured along system 1 of each piece.,,\n',
    );
    expect(reading.table.id).toEqual(['A1', 'A2']);
    expect(reading.rowsSetAside.map(({ row, reason }) => `${row} ${reason}`)).toEqual([
      '2 heading between rows',
      '4 empty row',
      '5 the header again',
      '7 looks like a total or mean of other rows',
      '8 note',
    ]);
    expect(reading.rowsRead).toBe(7);
    expect(lostCells(reading)).toEqual([]);
  });

  it('come back when the profile keeps them, and go when it names them', () => {
    const reading = read('Find no.,Site,Length (mm)\nTrench one,,\nA1,Ottmere,35\n', {
      layout: { keep: [2], setAside: [3] },
    });
    expect(reading.table.id).toEqual(['Trench one']);
  });

  it('an identifier alone is a find of which nothing was observed', () => {
    const reading = read('Find no.,Site,Length (mm)\nA1,Ottmere,35\nA2,,\n');
    expect(reading.table.id).toEqual(['A1', 'A2']);
  });
});

describe('ragged rows', () => {
  it('a short row is read as far as it goes, a long one set aside; both are faults that say what mends them', () => {
    const reading = read('Find no.,Site,Length (mm)\nA1,Ottmere\nA2,Ottmere,3,5\nA3,Ottmere,12\n');
    expect(reading.table.id).toEqual(['A1', 'A3']);
    expect(reading.rowsSetAside).toEqual([{ row: 3, reason: 'ragged row: 4 cells where the header has 3' }]);
    expect(reading.faults.map(({ what, where }) => `${where.row} ${what}`)).toEqual([
      '2 the row has 2 cells where the header has 3',
      '3 the row has 4 cells where the header has 3',
    ]);
    expect(lostCells(reading)).toEqual([]);
  });

  it('are no fault once the profile says how to take them', () => {
    const reading = read('Find no.,Site,Length (mm)\nA1,Ottmere\nA2,Ottmere,3,5\n', {
      layout: { raggedRows: 'pad' },
    });
    expect([reading.faults, reading.table.id]).toEqual([[], ['A1', 'A2']]);
    expect(lostCells(reading)).toEqual([]);
  });

  it('blank cells beyond the header are no fault', () => {
    expect(read('Find no.,Site\nA1,Ottmere,,\nA2,Ottmere,,\n').faults).toEqual([]);
  });
});

describe('tables on their side, in long form, and lists', () => {
  it('one row an attribute', () => {
    const reading = read(
      'Find no.,A1,A2,A3\nSite,Ottmere,Ottmere,Pell\nRow spacing (mm),35,12,\nStructure,twined,tabby,twined\n',
    );
    expect(reading.transposed).toBe(true);
    expect(reading.table.id).toEqual(['A1', 'A2', 'A3']);
    expect([...numbers(reading, 'rowSpacing').low]).toEqual([35, 12, Number.NaN]);
    expect(lostCells(reading)).toEqual([]);
  });

  it('one reading a row: gathered, readings of one attribute side by side', () => {
    const reading = read(
      'Find no.,Site,Measurement,Value,Unit\nA1,Ottmere,row spacing,34,mm\nA1,Ottmere,row spacing,3.6,cm\nA1,Ottmere,structure,twined,\nA2,Ottmere,row spacing,12,mm\n',
    );
    expect(reading.table.id).toEqual(['A1', 'A2']);
    const spacing = numbers(reading, 'rowSpacing');
    expect([spacing.low[0], spacing.high[0], spacing.readings.get(0)]).toEqual([34, 36, [34, 36]]);
    expect(termsOf(reading, 'structure')[0]).toBe('twined');
    expect([reading.rowsRead, reading.rowsKept]).toEqual([4, 4]);
    expect(lostCells(reading)).toEqual([]);
  });

  it('several rows with one identifier are gathered when the profile says so, else told apart and flagged', () => {
    const text = 'Find no.,Site,Row spacing (mm)\nA1,Ottmere,34\nA1,Ottmere,36\nA2,Ottmere,12\n';
    const gathered = read(text, { layout: { gather: true } });
    expect(gathered.table.id).toEqual(['A1', 'A2']);
    expect(numbers(gathered, 'rowSpacing').readings.get(0)).toEqual([34, 36]);
    expect(lostCells(gathered)).toEqual([]);
    const apart = read(text);
    expect(apart.table.id).toEqual(['A1', 'A1 (2)', 'A2']);
    expect(apart.table.item).toEqual(['A1', 'A1', 'A2']);
    expect(apart.ledger.map(({ rule }) => rule)).toContain('duplicate-id');
  });

  it.each([
    ['hours of days', 'date,temp\n2010/01/01 00:00,39.4\n2010/01/01 01:00,39.2\n2010/01/01 02:00,39.0\n'],
    ['times of day', 'time,n\n08:30,4\n09:15,6\n10:00,7\n'],
    ['days by name', 'when,n\nJan 1 2000 00:00,4\nJan 1 2000 01:00,6\nJan 1 2000 02:00,7\n'],
    ['scales of drawings', 'scale,drawings\n1:20,4\n1:10,6\n1:5,7\n'],
    ['addresses', 'page,n\nhttps://a.example/1,4\nhttps://a.example/2,5\nhttps://a.example/3,6\n'],
  ])('%s are a table, and their colons part no keys', (_, text) => {
    const reading = read(text);
    expect(reading.headerRow).toBe(1);
    expect(reading.columns).toHaveLength(2);
    expect(reading.table.rows).toBe(3);
  });

  it('"key: value" lines, one block a find', () => {
    const reading = read(
      'Find no.: A1\nStructure: twined\nRow spacing: 35 mm\n\nFind no.: A2\nStructure: tabby\n',
    );
    expect(reading.table.id).toEqual(['A1', 'A2']);
    expect(termsOf(reading, 'structure')).toEqual(['twined', 'tabby']);
    expect(numbers(reading, 'rowSpacing').low[0]).toBe(35);
    expect(lostCells(reading)).toEqual([]);
  });

  it('a second table below the first is set aside, cell by cell in the ledger', () => {
    const reading = read(
      'Find no.,Length (mm),Width (mm)\nA1,35,20\nA2,12,8\n,,\nDating,,\nsample,age,error\nL1,4200,40\n',
    );
    expect(reading.table.id).toEqual(['A1', 'A2']);
    expect(reading.rowsSetAside.filter(({ reason }) => reason.startsWith('belongs')).length).toBe(3);
    expect(lostCells(reading)).toEqual([]);
  });
});

describe('cells that lean on others', () => {
  it('"idem" copies down; blanks do when the profile says so', () => {
    const ditto = read('Find no.,Site,Length (mm)\nA1,Ottmere,35\nA2,idem,12\n');
    expect(termsOf(ditto, 'site')).toEqual(['Ottmere', 'Ottmere']);
    expect(ditto.ledger.find(({ rule }) => rule === 'copied-down')).toMatchObject({
      row: 3,
      raw: 'idem',
      readAs: 'Ottmere',
    });
    const text = 'Find no.,Site,Length (mm)\nA1,Ottmere,35\nA2,,12\n';
    expect(termsOf(read(text), 'site')).toEqual(['Ottmere', null]);
    const blanks = read(text, { columns: [{ header: 'Site', copyDown: true }] });
    expect(termsOf(blanks, 'site')).toEqual(['Ottmere', 'Ottmere']);
  });

  it('two columns may hold the ends of one interval', () => {
    const reading = read(
      'Find no.,from (BC),to (BC),row spacing min (mm),row spacing max (mm)\nA1,800,550,30,40\nA2,,300,12,\n',
    );
    const date = numbers(reading, 'date');
    // 800 BC is the astronomical year -799, ISO 8601-1:2019.
    expect([date.low[0], date.high[0], date.low[1], date.high[1]]).toEqual([
      -799,
      -549,
      Number.NEGATIVE_INFINITY,
      -299,
    ]);
    const spacing = numbers(reading, 'rowSpacing');
    expect([...spacing.low, ...spacing.high]).toEqual([30, 12, 40, Number.POSITIVE_INFINITY]);
  });

  it('mixed cells are parted by kind: "8-10 Z / 7 S" fills densities and twists', () => {
    const split = {
      by: 'systems' as const,
      into: [
        { attribute: 'density1', unit: 'per cm' },
        { attribute: 'twist1' },
        { attribute: 'density2', unit: 'per cm' },
        { attribute: 'twist2' },
      ],
    };
    const reading = read('Find no.,Threads\nA1,8-10 Z / 7 S\nA2,14 x 12\n', {
      columns: [{ header: 'Threads', split }],
    });
    expect([...numbers(reading, 'density1').low]).toEqual([8, 14]);
    expect([...numbers(reading, 'density2').low]).toEqual([7, 12]);
    expect(termsOf(reading, 'twist2')).toEqual(['S', null]);
  });
});

describe('identifiers', () => {
  it('stay text: "001" is not 1', () => {
    expect(read('Find no.,Length (mm)\n001,35\n010,12\n').table.id).toEqual(['001', '010']);
  });

  it('of two sites are two finds, and two items', () => {
    const { table } = read('Find no.,Item,Site,Length (mm)\n1,T1,Ottmere,35\n1,T1,Pell,12\n');
    expect(table.id).toEqual(['1 (Ottmere)', '1 (Pell)']);
    expect(new Set(table.item).size).toBe(2);
  });
});
