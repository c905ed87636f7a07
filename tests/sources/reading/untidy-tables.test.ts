import { describe, expect, it } from 'vitest';
import { lostCells, numbers, read, termsOf } from '../support.ts';

/**
 * Tables as excavation specialists keep them, in six languages. All are invented; what is expected follows
 * from their texts and from the conventions of the trade that docs/reading-cells.md lists.
 */

const statusOf = (reading: ReturnType<typeof read>, header: string) =>
  reading.columns.find((column) => column.header === header);
const reasonAt = (reading: ReturnType<typeof read>, row: number) =>
  reading.rowsSetAside.find((aside) => aside.row === row)?.reason;

describe('headers', () => {
  it('of three rows (groups, names, units) are one header a column; the last group ends with its columns', () => {
    const reading = read(
      ';;System 1;;;System 2;;;\nFind;Structure;twist;count;diam.;twist;count;diam.;Site\n;;;per cm;mm;;per cm;mm;\n' +
        'A-1;tabby;Z;12;0,4;Z;10;0,5;Holm\nA-2;twill 2/2;Z;14;0,35;S;12;0,4;Holm\n',
    );
    expect(reading.rowsKept).toBe(2);
    expect(reading.columns.map(({ attributes }) => attributes[0])).toEqual([
      'fragment',
      'structure',
      'twist1',
      'density1',
      'diameter1',
      'twist2',
      'density2',
      'diameter2',
      'site',
    ]);
    expect(reading.columns.at(-1)?.header).toBe('Site');
    expect([...numbers(reading, 'diameter2').low]).toEqual([0.5, 0.4]);
    expect(
      read(
        ';;System 1;;\nFind;Site;twist;count;diam.\n;;;per cm;mm\nA;Holm;Z;12;0,4\n',
        JSON.parse(
          JSON.stringify(
            read(
              ';;System 1;;\nFind;Site;twist;count;diam.\n;;;per cm;mm\nA;Holm;Z;12;0,4\nB;Holm;Z;12;0,4\n',
            ).profile,
          ),
        ),
      ).rowsKept,
    ).toBe(1);
  });

  it('"id,site" over two columns head a table, even where the identifiers look like headers', () => {
    for (const ids of [
      ['A1', 'A2', 'A3'],
      ['D1', 'D2', 'T1'],
      ['length', 'width', 'fibre'],
    ]) {
      const reading = read(`id,site\n${ids.map((id) => `${id},Holm`).join('\n')}\n`);
      expect([reading.transposed, reading.table.id]).toEqual([false, ids]);
    }
  });

  it('that name only the system are told apart by their numbers, and only suggested', () => {
    const reading = read('Find no.,warp,weft\nA,14,12\nB,16,11\nC,c. 18,14\n');
    expect(statusOf(reading, 'warp')).toMatchObject({
      status: 'suggested',
      suggestion: { attribute: 'density1' },
    });
    const thin = read('Find no.,warp,weft\nA,0.4,0.5\nB,0.3,0.5\nC,0.4,0.6\n');
    expect(statusOf(thin, 'weft')).toMatchObject({
      status: 'suggested',
      suggestion: { attribute: 'diameter2' },
    });
  });

  it('that say nothing are helped by their cells; a measurement without numbers is none', () => {
    const reading = read('Nr,Nature,Garn,Area\n1,toile,Z,N\n2,sergé 2/2,S2z,S\n3,cordé,Z,S\n4,toile,S,N\n');
    expect(statusOf(reading, 'Nature')).toMatchObject({ suggestion: { attribute: 'structure' } });
    expect(statusOf(reading, 'Garn')).toMatchObject({ suggestion: { attribute: 'twist1' } });
    expect(statusOf(reading, 'Area')).toMatchObject({
      status: 'unknown',
      doubt: 'reads as "Area", but its cells are words rather than numbers',
    });
  });

  it('that count pieces are asked about and feed nothing by themselves', () => {
    for (const header of ['Fragments (nb)', 'Anzahl', 'n.º fragmentos', 'antal']) {
      const text = `Fundnr,${header}\nA,3\nB,1\n`;
      for (const accept of [false, true])
        expect(statusOf(read(text, {}, { accept }), header)).toMatchObject({
          status: 'suggested',
          attributes: [],
          suggestion: { attribute: 'quantity', sure: false },
        });
    }
  });
});

describe('rows that are no finds', () => {
  it.each([
    ['Total: 5 fragmentos', 'looks like a total or mean of other rows'],
    ['insg. 4 Stück', 'looks like a total or mean of other rows'],
    ['n = 45', 'looks like a total or mean of other rows'],
    ['s. d.: sin dato.', 'note'],
    ['k. A. = keine Angabe', 'note'],
    ['* Medidas tomadas tras la limpieza.', 'note'],
  ])('"%s" below the table is set aside: %s', (text, reason) => {
    const reading = read(`Nº inv.;Yacimiento;Técnica\nCA-1;Alto;tafetán\nCA-2;Alto;sarga 2/2\n${text};;\n`);
    expect([reading.rowsKept, reasonAt(reading, 4)]).toEqual([2, reason]);
    expect(lostCells(reading)).toEqual([]);
  });

  it('a note parted by the delimiter is a note; a find is never one for its remarks', () => {
    const reading = read(
      'Find no.,Site,Weave,Remarks\nA1,Holm,tabby,"Note: burnt"\nNote: sizes are, of the largest piece,,\n',
    );
    expect([reading.rowsKept, reasonAt(reading, 3)]).toEqual([1, 'note']);
  });
});

describe('cells', () => {
  it('with pairs in decimal commas, "ca." or blanks among them are suggested to be parted', () => {
    const reading = read(
      'Kat.;Fd./cm K x S;Maße (cm)\n1;12 x 10;4 x 3,5\n2;ca. 13 x 9;9,5 x 4\n3;-;-\n4;-;-\n',
    );
    expect(
      statusOf(reading, 'Fd./cm K x S')?.suggestion?.split?.into.map(({ attribute }) => attribute),
    ).toEqual(['density1', 'density2']);
    expect(statusOf(reading, 'Maße (cm)')?.suggestion?.split?.into).toEqual([
      { attribute: 'length', unit: 'cm' },
      { attribute: 'width', unit: 'cm' },
    ]);
  });

  it('keep the accent that tells twined from rope', () => {
    const reading = read('N° inv.,Technique\n1,cordé\n2,corde\n3,tressé\n');
    expect(termsOf(reading, 'structure')).toEqual(['twined', null, 'plaited']);
  });

  it('that stop short of a kind are read as far as they go', () => {
    const reading = read('Museumsnr.,Teknikk\n1,"vevet, ubestemt"\n2,Gewebe unbestimmt\n3,indéterminée\n');
    expect(termsOf(reading, 'structure')).toEqual(['woven', 'woven', null]);
    expect(reading.ledger.filter(({ level }) => level === 'not-understood')).toEqual([]);
  });

  it.each(['non det.', 'nicht best.', 'ikke bestemt', 'n.m.', 'undated', 'indeterminada', 'unbest.'])(
    '"%s" says that nothing was observed',
    (text) => {
      const reading = read(`Find no.,Twist warp\nA,S\nB,${text}\n`);
      expect(reading.ledger.find(({ raw }) => raw === text)).toMatchObject({ rule: 'not-observed' });
    },
  );

  it.each(['ebd.', 'do.', 'idem', 'samme', 'ibid.'])('"%s" repeats the cell above', (text) => {
    expect(termsOf(read(`Find no.,Site\nA,Holm\nB,${text}\n`), 'site')).toEqual(['Holm', 'Holm']);
  });

  it('left blank below a name that stands once are asked about, and filled only when told', () => {
    const text = 'Find no.,Site\nA,Holm\nB,\nC,\nD,Garth\nE,\n';
    expect(read(text).columns[1]).toMatchObject({ header: 'Site', blanksBelow: 3 });
    expect(termsOf(read(text), 'site')).toEqual(['Holm', null, null, 'Garth', null]);
    const told = read(text, { columns: [{ header: 'Site', copyDown: true }] });
    expect(termsOf(told, 'site')).toEqual(['Holm', 'Holm', 'Holm', 'Garth', 'Garth']);
    expect(told.columns[1]?.blanksBelow).toBeUndefined();
  });
});

describe('a unit stated in the title', () => {
  it('holds for sizes whose header names none, is flagged, and leaves threads alone', () => {
    const reading = read(
      'Katalog der Textilfunde (Maße in cm);;;\nFundnr.;Länge;Breite (mm);Dm Kette\nA;4,5;30;0,4\nB;12;80;0,5\n',
    );
    expect([...numbers(reading, 'length').low]).toEqual([45, 120]);
    expect([...numbers(reading, 'width').low]).toEqual([30, 80]);
    expect([...numbers(reading, 'diameter1').low]).toEqual([0.4, 0.5]);
    expect(reading.ledger.find(({ rule }) => rule === 'unit-in-note')).toMatchObject({
      row: 1,
      level: 'flagged',
    });
  });
});

describe('catalogue numbers', () => {
  it('name the fragments where nothing else does, and a number met twice is asked about', () => {
    const reading = read('Cat. no.,Weave\n1,tabby\n2,twill\n3,tabby\n4,tabby\n4,twill\n');
    expect(reading.table.id).toEqual(['1', '2', '3', '4', '4 (2)']);
    expect(reading.repeatedIds).toEqual([{ id: '4', rows: [5, 6], decision: null }]);
  });
});
