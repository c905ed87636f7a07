import { describe, expect, it } from 'vitest';
import { extendRegister } from '../../../src/attributes/register.ts';
import {
  lostCells,
  numbers,
  readReal,
  realTablesMissing,
  register,
  savedProfile,
  termsOf,
} from '../support.ts';

/**
 * Pottery of Kiwulan, Wang and Marwick 2020 (data CC0): the bilingual field table as it was kept, the
 * authors' cleaned table, and the table of variation that they printed from it (Kwl_p_metrics_cv_test.csv).
 */
const size = (id: string, label: string) =>
  ({ id, label, block: 'find', scale: 'ratio', unit: 'mm', source: 'the field table' }) as const;
const pots = extendRegister(register, {
  attributes: [
    size('height', 'Height of the pot'),
    size('rimThickness', 'Rim thickness'),
    size('neckThickness', 'Neck thickness'),
    size('bodyThickness', 'Body thickness'),
    size('rimDiameter', 'Rim diameter'),
    size('neckDiameter', 'Neck diameter'),
    size('bodyDiameter', 'Body diameter'),
  ],
});
const RAW = 'kwl-pottery/KWL_Ceramic_final2018_with_phases.csv';
const PHASES = ['pre-e', 'post-e', 'ch-con'] as const;
/** Printed by the authors, to 6 decimals. */
const PRINTED = {
  rimThickness: [23.089305, 26.324502, 21.816563],
  neckThickness: [17.386156, 20.371592, 19.86099],
  bodyThickness: [25.933222, 28.6251, 24.188732],
  rimDiameter: [6.835501, 9.608247, 6.929983],
  neckDiameter: [10.620651, 7.721151, 7.065821],
  bodyDiameter: [9.2486, 8.855116, 6.561998],
};

function variation(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return (100 * Math.sqrt(squares / (values.length - 1))) / mean;
}

describe.skipIf(realTablesMissing)('field pottery', () => {
  it('gives the printed coefficients of variation from the cleaned 362 rows', () => {
    const reading = readReal(
      'kwl-pottery/KWL-pottery-metrics-tidy-ave.csv',
      savedProfile('kwl-cleaned'),
      pots,
    );
    expect([reading.rowsKept, reading.rowsSetAside, reading.faults]).toEqual([362, [], []]);
    const phases = termsOf(reading, 'phase');
    expect(PHASES.map((phase) => phases.filter((one) => one === phase).length)).toEqual([153, 173, 36]);
    for (const [id, printed] of Object.entries(PRINTED)) {
      const { low, high } = numbers(reading, id);
      const found = PHASES.map((phase) =>
        variation([...low].filter((value, row) => phases[row] === phase && value === high[row])),
      );
      for (const [i, value] of found.entries())
        expect(value, `${id} ${PHASES[i]}`).toBeCloseTo(printed[i], 6);
    }
    expect(lostCells(reading)).toEqual([]);
  });

  it('keeps all 508 rows of the field table, line breaks in cells included, and loses no cell', () => {
    for (const reading of [readReal(RAW), readReal(RAW, savedProfile('kwl-raw'), pots)]) {
      expect([reading.rowsRead, reading.rowsKept, reading.columns.length]).toEqual([508, 508, 45]);
      expect(lostCells(reading)).toEqual([]);
    }
  });

  it('reads "146+" as at least 146, "99, 101" as two readings, and questions a measure of another part', () => {
    const reading = readReal(RAW, savedProfile('kwl-raw'), pots);
    const height = numbers(reading, 'height');
    const first = reading.table.id.indexOf('1');
    expect([height.raw[first], height.low[first], height.high[first]]).toEqual([
      '146+',
      146,
      Number.POSITIVE_INFINITY,
    ]);
    const readings = [...reading.table.columns.values()].flatMap((column) => {
      if (column.kind !== 'numeric') return [];
      const at = column.raw.indexOf('99, 101');
      return at < 0 ? [] : [[column.low[at], column.high[at]]];
    });
    expect(readings).toEqual([[99, 101]]);
    const waist = reading.ledger.filter(({ raw }) => raw.includes('腰17') || raw.includes('底厚3'));
    expect(waist.length).toBeGreaterThan(0);
    expect(new Set(waist.map(({ level }) => level))).toEqual(new Set(['not-understood']));
    expect(reading.ledger.filter(({ raw, level }) => /^na$/i.test(raw) && level !== 'read')).toEqual([]);
  });
});
