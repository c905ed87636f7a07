import { describe, expect, it } from 'vitest';
import type { AttributeDefinition } from '../../../src/attributes/definition.ts';
import { extendRegister } from '../../../src/attributes/register.ts';
import { combineSources } from '../../../src/sources/combine/combine.ts';
import {
  lostCells,
  numbers,
  readReal,
  realTablesMissing,
  register,
  savedProfile,
  termsOf,
  textsOf,
} from '../support.ts';

/**
 * Recording sheets of knotted cord records, Open Khipu Repository (MIT). The expected counts were taken
 * from the files with Python's csv module, or stand in SOURCE.md beside the data.
 */
const own = (id: string, label: string, more: Partial<AttributeDefinition>): AttributeDefinition => ({
  id,
  label,
  block: 'structure',
  scale: 'nominal',
  source: 'the sheets themselves',
  ...more,
});
const cords = extendRegister(register, {
  attributes: [
    own('spin', 'Spin of the singles', { vocabulary: 'twist' }),
    own('finalTwist', 'Final twist', { vocabulary: 'twist' }),
    own('attachment', 'Attachment', {}),
    own('termination', 'Termination', {}),
  ],
});
const SHEETS = [
  ['Am_1937_0213_84_khipu_1_recording_sheet__pendant_cords', 'khipu-sheet', 67],
  ['Am_1937_0213_84_khipu_3_recording_sheet__pendant_cords', 'khipu-sheet', 166],
  ['KHIPU_ENLAZADO_MNAAHP_01__pendant_cords', 'khipu-linked', 16],
  ['JS01_Strauss_Harvard_Senior_Thesis__Pendant_Detail', 'khipu-thesis', 138],
  ['R4303__Cords', 'khipu-cords', 147],
  ['SH001__Cords', 'khipu-cords', 22],
] as const;
const readSheet = (name: string, profile: string) =>
  readReal(`okr-khipu-sheets/${name}.csv`, savedProfile(profile), cords);
const tally = (values: readonly (string | null)[]) =>
  Object.fromEntries(
    [...new Set(values)].map((value) => [String(value), values.filter((one) => one === value).length]),
  );

describe.skipIf(realTablesMissing)('cord records in three layouts', () => {
  it.each(SHEETS)('%s: every cord kept, no cell lost, nothing to put right', (name, profile, rows) => {
    const reading = readSheet(name, profile);
    expect(reading.rowsKept).toBe(rows);
    expect(reading.faults).toEqual([]);
    expect(lostCells(reading)).toEqual([]);
  });

  it('come together in one table of 556 cords: final twist S 524, Z 1, not recorded 31', () => {
    const { table } = combineSources(
      SHEETS.map(([name, profile]) => readSheet(name, profile)),
      cords,
    );
    expect(table.rows).toBe(556);
    expect(new Set(table.id).size).toBe(556);
    expect(tally(termsOf({ table }, 'finalTwist'))).toEqual({ S: 524, Z: 1, null: 31 });
  });

  it('bear out the notes: all twists recorded of R4303 are S; SH001 has 22 pendants', () => {
    expect(tally(termsOf(readSheet('R4303__Cords', 'khipu-cords'), 'finalTwist'))).toEqual({
      S: 124,
      null: 23,
    });
    expect(termsOf(readSheet('SH001__Cords', 'khipu-cords'), 'finalTwist')).toHaveLength(22);
  });

  it('part number and code: "21.5K" is 215 mm ending K; "20.K" is read and flagged; "B" has no length', () => {
    const third = readSheet(SHEETS[1][0], 'khipu-sheet');
    expect(numbers(third, 'length').low[0]).toBeCloseTo(215, 9);
    expect(termsOf(third, 'termination')[0]).toBe('K');
    const first = readSheet(SHEETS[0][0], 'khipu-sheet');
    const short = first.table.id.indexOf('7s1s1');
    expect(numbers(first, 'length').low[short]).toBeCloseTo(200, 9);
    expect(first.ledger.filter(({ raw }) => raw === '20.K').map(({ level }) => level)).toEqual(['flagged']);
    const bare = first.table.id.indexOf('35');
    expect(numbers(first, 'length').low[bare]).toBeNaN();
    expect(termsOf(first, 'termination')[bare]).toBe('B');
  });
});

describe.skipIf(realTablesMissing)('sheets that are no plain tables', () => {
  it('find the header of the thesis sheet in row 6 without a profile', () => {
    const reading = readReal('okr-khipu-sheets/JS01_Strauss_Harvard_Senior_Thesis__Pendant_Detail.csv');
    expect([reading.headerRow, reading.rowsKept]).toEqual([6, 138]);
    expect(lostCells(reading)).toEqual([]);
  });

  it('read "key: value" lines as one record', () => {
    const reading = readReal('okr-khipu-sheets/R4303__PrimaryCord.csv');
    expect(reading.table.rows).toBe(1);
    expect(reading.columns.map(({ header }) => header)).toEqual(
      expect.arrayContaining(['Structure', 'Length', 'Fiber', 'Twist', 'Notes']),
    );
    expect(textsOf(reading, 'remarks')[0]).toMatch(/^Primary cord starts with a pink tassel/);
    expect(lostCells(reading)).toEqual([]);
  });

  it('take the main table of stacked blocks and set the others aside, cell by cell in the ledger', () => {
    const reading = readReal('okr-khipu-sheets/Am_1937_0213_84_khipu_3_recording_sheet__primary_cord.csv');
    expect(reading.columns.map(({ header }) => header)).toContain('TWIST (FINAL)');
    expect(reading.rowsRead).toBe(reading.rowsKept + reading.rowsSetAside.length);
    expect(lostCells(reading)).toEqual([]);
  });

  it('list the register of 702: 630 issued on 2/12/24 and 72 on 12/19/25', () => {
    const reading = readReal('okr-khipu-sheets/okr-kh-numbers.csv', savedProfile('khipu-register'));
    expect([reading.rowsKept, reading.rowsSetAside, reading.table.id[0], reading.table.id[701]]).toEqual([
      702,
      [],
      'KH0001',
      'KH0702',
    ]);
    expect(tally(textsOf(reading, 'column: KH Issue Date'))).toEqual({ '2/12/24': 630, '12/19/25': 72 });
    expect(lostCells(reading)).toEqual([]);
  });
});
