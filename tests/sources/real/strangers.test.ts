import { describe, expect, it } from 'vitest';
import { readWorkbook } from '../../../src/sources/formats/workbook.ts';
import { unknownTerms } from '../../../src/sources/names/terms.ts';
import { readTexts } from '../../../src/sources/read-source.ts';
import { lostCells, readReal, realTablesMissing, register } from '../support.ts';
import { workbookOf } from './workbook-of.ts';

/**
 * The real tables read as by somebody who brings them in for the first time, without a profile: what is taken,
 * what is only suggested, what is asked. Expected from the tables themselves and their SOURCE.md.
 */
const SHEETS = 'okr-khipu-sheets/';
const plan = (path: string) =>
  new Map(
    readReal(path).columns.map(({ header, status, attributes, suggestion, assumedUnit }) => [
      header,
      { status, attribute: attributes[0] ?? suggestion?.attribute, assumedUnit },
    ]),
  );

describe.skipIf(realTablesMissing)('without a profile', () => {
  it('lengths of cords whose unit no sheet states are said to be taken as mm', () => {
    for (const name of ['SH001__Cords', 'R4303__Cords', 'JS01_Strauss_Harvard_Senior_Thesis__Pendant_Detail'])
      expect(plan(`${SHEETS}${name}.csv`).get('Length')).toMatchObject({
        status: 'matched',
        assumedUnit: 'mm',
      });
    const stated = plan(`${SHEETS}Am_1937_0213_84_khipu_1_recording_sheet__pendant_cords.csv`);
    expect(stated.get('length cm')).toMatchObject({ status: 'matched', assumedUnit: undefined });
  });

  it('knots written as codes ask one question of the column, not one of each cell', () => {
    const reading = readReal(`${SHEETS}JS01_Strauss_Harvard_Senior_Thesis__Pendant_Detail.csv`);
    expect(reading.columns.find(({ header }) => header === 'Knots')?.status).toBe('unknown');
    expect(unknownTerms(reading, register)).toEqual([]);
  });

  it('a column of numbers that all differ is suggested to name the rows', () => {
    expect(plan(`${SHEETS}okr-kh-numbers.csv`).get('OKR Number')).toEqual({
      status: 'suggested',
      attribute: 'fragment',
      assumedUnit: undefined,
    });
  });

  it('of counts per inch and per cm the second is read, which needs no turning', () => {
    const columns = plan('met-textile-counts/met_tapestry_warp_counts.csv');
    expect(columns.get('Warps per cm')).toMatchObject({ status: 'matched', attribute: 'density1' });
    expect(columns.get('Warps per inch')?.status).toBe('unknown');
  });

  it('a list of fibres is never taken to be near one of them', () => {
    const reading = readReal('met-textile-counts/met_tapestry_warp_counts.csv');
    const lists = unknownTerms(reading, register).filter(({ text }) => /^wool, (?:silk, )?/iu.test(text));
    expect(lists.length).toBeGreaterThan(5);
    expect(lists.filter(({ suggestion }) => suggestion !== undefined)).toEqual([]);
    expect(reading.ledger.find(({ raw }) => raw === 'Wool, silk, silver-gilt thread')).toMatchObject({
      rule: 'mixture',
      readAs: 'metalThread+silk+wool',
    });
  });

  it('a sheet of codes has its header above the codes, and a second table with a title of its own is no record', () => {
    const codes = readReal(`${SHEETS}Am_1937_0213_84_khipu_1_recording_sheet__code_descriptions.csv`);
    expect([codes.headerRow, codes.columns[0]?.header]).toEqual([2, 'TYPE_CODE']);
    const stacked = readReal(`${SHEETS}KHIPU_ENLAZADO_MNAAHP_15__primary_cord.csv`);
    expect([stacked.rowsKept, lostCells(stacked)]).toEqual([1, []]);
  });
});

describe.skipIf(realTablesMissing)('as a sheet of a workbook', () => {
  it.each([
    'met-textile-counts/met_tapestry_warp_counts.csv',
    'kwl-pottery/KWL_Ceramic_final2018_with_phases.csv',
    `${SHEETS}Am_1937_0213_84_khipu_3_recording_sheet__pendant_cords.csv`,
    `${SHEETS}KHIPU_ENLAZADO_MNAAHP_15__primary_cord.csv`,
  ])('%s reads as the same table does as CSV', async (path) => {
    const csv = readReal(path);
    const { grid } = await readWorkbook(workbookOf(csv.grid), 'finds.xlsx', undefined);
    const sheet = readTexts(grid, { name: csv.name, register });
    expect([sheet.rowsRead, sheet.rowsKept]).toEqual([csv.rowsRead, csv.rowsKept]);
    expect(sheet.columns.map(({ attributes, status }) => [attributes, status])).toEqual(
      csv.columns.map(({ attributes, status }) => [attributes, status]),
    );
    expect(lostCells(sheet)).toEqual([]);
    for (const [id, column] of csv.table.columns) {
      if (column.kind !== 'numeric') continue;
      expect(sheet.table.columns.get(id)).toMatchObject({ low: column.low, high: column.high });
    }
  });
});
