import { describe, expect, it } from 'vitest';
import { dittoAddition, withAddition } from '../../../src/cells/ditto.ts';
import { CELL_STATES } from '../../../src/cells/reading.ts';
import { lostCells, numbers, read, textsOf } from '../support.ts';

/** "As above" with something of its own behind it. Common practice of catalogues, no source; names invented. */

describe('a ditto that adds something', () => {
  it.each([
    ['Holm, Grab 2', 'ebd., Grab 5', 'Holm, Grab 5'],
    ['Holm', 'ebd., Grab 5', 'Holm, Grab 5'],
    ['Holm, Grab 2, Schicht 3', 'ebenda, Grab 5', 'Holm, Grab 5'],
    ['Vester 1998, pl. 1', 'ibid., pl. 3', 'Vester 1998, pl. 3'],
    ['Vester 1998, 12, pl. 1', 'ibid., pl. 3', 'Vester 1998, 12, pl. 3'],
    ['Vester 1998, 12', 'ebd. 14', 'Vester 1998, 14'],
    ['Vester 1998, 12', 'ebd., 14', 'Vester 1998, 14'],
    ['Vester 1998, 12', 'id. 2003, 4', 'Vester 2003, 4'],
    ['Vester 1998, 12', 'ibid. fig. 7', 'Vester 1998, 12, fig. 7'],
    ['Holm, Grab 2', 'as above, Grab 7', 'Holm, Grab 7'],
    ['Holm, Grab 2', 's. o., Grab 7', 'Holm, Grab 7'],
    ['Holm, tomba 2', 'id., tomba 7', 'Holm, tomba 7'],
  ])('%j, then %j, is %j', (above, cell, whole) => {
    expect(withAddition(above, dittoAddition(cell) ?? '')).toBe(whole);
  });

  it.each(['ebd.', 'idem', 'Ebersheim, Grab 5', 'Idaholm 5', 'same, but coarser', 'do not wash', 'id', ''])(
    'is none in %j',
    (text) => {
      expect(dittoAddition(text)).toBeNull();
    },
  );

  it('is completed from row to row, flagged, and the text of the cell stays in the ledger', () => {
    const reading = read(
      'Nr.;Literatur;Länge (mm)\nA;Vester 1998, Taf. 2;35\nB;ebd., Taf. 3;12\nC;ebd.;7\nD;ebd., Taf. 9;ebd., 4\n',
    );
    const column = reading.columns[1];
    const id = column?.attributes[0] ?? `column: ${column?.header}`;
    expect(textsOf(reading, id)).toEqual([
      'Vester 1998, Taf. 2',
      'Vester 1998, Taf. 3',
      'Vester 1998, Taf. 3',
      'Vester 1998, Taf. 9',
    ]);
    expect(reading.ledger.filter(({ rule }) => rule === 'copied-down-in-part')).toMatchObject([
      { row: 3, raw: 'ebd., Taf. 3', readAs: 'Vester 1998, Taf. 3', level: 'flagged' },
      { row: 5, raw: 'ebd., Taf. 9', level: 'flagged' },
    ]);
    // Of a measurement nothing is pieced together.
    expect([...numbers(reading, 'length').low]).toEqual([35, 12, 7, Number.NaN]);
    expect(lostCells(reading)).toEqual([]);
  });

  it('with nothing above it stays as it stands', () => {
    const reading = read('Find no.,Site\nA,"ebd., Grab 5"\nB,Holm\n');
    expect(reading.table.columns.get('site')?.raw[0]).toBe('ebd., Grab 5');
  });

  it('"s.o." below a measurement or a term is no number or kind from above: "sans objet" as well as "siehe oben"', () => {
    const csv = 'Nr.;Fundort;Bindung;Länge (mm)\nA;Holm;Köper;35\nB;s.o.;s. o.;s.o.\nC;s.o.;s.o.;ebd.\n';
    const reading = read(csv);
    expect(textsOf(reading, 'site')).toEqual(['Holm', 'Holm', 'Holm']);
    // "Ebd." copies what stands above, here the same doubt.
    expect([...numbers(reading, 'length').low]).toEqual([35, Number.NaN, Number.NaN]);
    expect(reading.table.columns.get('structure')).toMatchObject({ raw: ['Köper', 's. o.', 's.o.'] });
    const flagged = reading.ledger.filter(({ rule, level }) => rule === 'idem' && level === 'flagged');
    expect(flagged.map(({ row, column }) => [row, column])).toEqual(
      expect.arrayContaining([
        [3, 'Länge (mm)'],
        [3, 'Bindung'],
      ]),
    );
    expect(flagged[0]?.why).toContain('sans objet');
  });

  it('what the profile has a code for is never copied down', () => {
    const csv = 'Nr.;Fundort;Länge (mm)\nA;Holm;35\nB;Ness;idem\n';
    const profile = { missing: { idem: 'not-applicable' } } as const;
    const column = numbers(read(csv, profile), 'length');
    expect([...column.low]).toEqual([35, Number.NaN]);
    expect(CELL_STATES[column.state[1]!]).toBe('not-applicable');
  });
});
