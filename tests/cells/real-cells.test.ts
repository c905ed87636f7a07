import { existsSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readCell } from '../../src/cells/read-cell.ts';
import type { NumericReading } from '../../src/cells/reading.ts';
import { splitCell } from '../../src/cells/split-cell.ts';
import { ATTRIBUTES, type AttributeKey, contextFor } from './attributes.ts';

/** Open data sets beside the project; their SOURCE.md states origin, licence and the documented numbers. */
const REAL = new URL('../../../shared/real/', import.meta.url).pathname;
const present = existsSync(REAL);

function rows(file: string): Record<string, string>[] {
  const text = readFileSync(`${REAL}${file}`, 'utf8').replace(/^\ufeff/u, '');
  return Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;
}

function number(text: string, on: AttributeKey, unit?: string): NumericReading {
  const reading = readCell(text, ATTRIBUTES[on], contextFor(on, unit === undefined ? {} : { unit }));
  if (reading.kind !== 'numeric') throw new Error('not numeric');
  return reading;
}

const middle = ({ low, high }: NumericReading) => (low + high) / 2;
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

// met-textile-counts/SOURCE.md: the self-check that a unit converter must pass (211 objects, counts stated both ways).
describe.skipIf(!present)('museum textiles with counts per inch and per cm', () => {
  const table = present ? rows('met-textile-counts/met_tapestry_warp_counts.csv') : [];
  const perCm = table.map((row) => middle(number(row['Warps per cm'] ?? '', 'density', 'per cm')));
  const perInch = table.map((row) => middle(number(row['Warps per inch'] ?? '', 'density', 'per inch')));

  it('gives the documented mean, median and standard deviation of the counts per cm', () => {
    expect(table.length).toBe(211);
    const sorted = [...perCm].sort((a, b) => a - b);
    expect(mean(perCm)).toBeCloseTo(8.358, 3);
    expect(sorted[105]).toBe(8.5);
    const centre = mean(perCm);
    const variance = perCm.reduce((sum, value) => sum + (value - centre) * (value - centre), 0) / 210;
    expect(Math.sqrt(variance)).toBeCloseTo(1.358, 3);
  });

  it('gives the documented differences between counts per cm and per inch', () => {
    const differences = perCm.map((value, at) => value - (perInch[at] ?? Number.NaN));
    expect(mean(differences)).toBeCloseTo(0.22, 3);
    expect(Math.max(...differences)).toBeCloseTo(1.823, 3);
    expect(differences.filter((difference) => Math.abs(difference) > 1).length).toBe(10);
  });

  it('parts every plain size into two lengths that agree in inches and centimetres', () => {
    const plain = table
      .map((row) => row.Dimensions ?? '')
      .filter((text) =>
        /^(?:H\. )?[\d /]+ ?[x×] ?(?:W\. )?[\d /]+ (?:in\.|inches) \([\d.]+ [x×] [\d.]+ cm\)$/u.test(text),
      );
    expect(plain.length).toBeGreaterThan(60);
    for (const text of plain) {
      const split = splitCell(text, { decimal: '.' });
      expect(split?.parts.length).toBe(2);
      for (const part of split?.parts ?? []) {
        const reading = number(part, 'spacing');
        expect(reading.state).toBe('measured');
        expect(reading.notes.some(({ rule }) => rule.startsWith('two-units'))).toBe(true);
      }
    }
  });
});

// okr-khipu-sheets/SOURCE.md: "length cm" = number + termination letter; "32.OK", "20.K" are the messy ones.
describe.skipIf(!present)('cord sheets', () => {
  it('reads or flags every length with its trailing letter, and parts it', () => {
    const table = present
      ? rows('okr-khipu-sheets/Am_1937_0213_84_khipu_1_recording_sheet__pendant_cords.csv')
      : [];
    const lengths = table.map((row) => row['length cm'] ?? '').filter((text) => /^\d/u.test(text));
    expect(lengths.length).toBeGreaterThan(50);
    for (const text of lengths) {
      const split = splitCell(text, { decimal: '.' });
      expect(split?.parts).toHaveLength(2);
      const reading = number(split?.parts[0] ?? '', 'spacing', 'cm');
      expect(reading.low).toBeCloseTo(10 * Number.parseFloat(text.replace('O', '0')), 9);
    }
  });

  it('parts spin, ply and attachment', () => {
    const table = present
      ? rows('okr-khipu-sheets/Am_1937_0213_84_khipu_1_recording_sheet__pendant_cords.csv')
      : [];
    const cells = table.map((row) => row['spin/ply/attach.'] ?? '').filter((text) => text.trim() !== '');
    expect(cells.length).toBeGreaterThan(50);
    for (const text of cells) {
      const parts = splitCell(text, { decimal: '.' })?.parts ?? [];
      expect(parts.length).toBeGreaterThanOrEqual(2);
      expect(readCell(parts[1] ?? '', ATTRIBUTES.twist, contextFor('twist'))).toMatchObject({ term: 'S' });
    }
  });

  it('counts the final twists that the sheet notes', () => {
    // R4303 note: "All cords are final twist S"; 124 of its 147 cells hold a letter (counted with Python's csv module).
    const table = present ? rows('okr-khipu-sheets/R4303__Cords.csv') : [];
    const terms = table.map((row) => readCell(row.Twist ?? '', ATTRIBUTES.twist, contextFor('twist')));
    expect(terms.length).toBe(147);
    const named = terms.filter((reading) => reading.kind === 'term' && reading.term !== null);
    expect(named.every((reading) => reading.kind === 'term' && reading.term === 'S')).toBe(true);
    expect(named.length).toBe(124);
  });
});

// kwl-pottery/SOURCE.md: "146+", "99, 101", "腰17", 'na' beside 'NA' in the raw field table of 508 rows.
describe.skipIf(!present)('a bilingual field table of pottery', () => {
  const table = present ? rows('kwl-pottery/KWL_Ceramic_final2018_with_phases.csv') : [];
  const measures = [
    'Hight',
    'Thick1_Rim',
    'Thick1_Neck',
    'Thick1_Body',
    'Diameter1_Rim',
    'Diameter1_Neck',
    'Diameter1_Body',
    'H_Rim',
  ];

  it('loses no cell: each is a value or carries a note', () => {
    expect(table.length).toBe(508);
    for (const row of table) {
      for (const column of measures) {
        const text = row[column] ?? '';
        const reading = number(text, 'spacing');
        if (text.trim() !== '' && Number.isNaN(reading.low)) expect(reading.notes.length).toBeGreaterThan(0);
      }
    }
  });

  it('keeps "146+" as a lower bound and questions measures of another part', () => {
    for (const row of table) {
      for (const column of measures) {
        const text = (row[column] ?? '').trim();
        const reading = number(text, 'spacing');
        if (/^\d+(\.\d+)?\+$/u.test(text)) expect(reading.high).toBe(Number.POSITIVE_INFINITY);
        if (/^[腰底]/u.test(text))
          expect(reading.notes.some(({ level }) => level === 'not-understood')).toBe(true);
      }
    }
  });
});

// ikat-textiles/SOURCE.md: 36 traditions; 872 ones and 1 "?" in one coding, TRUE/FALSE/NA in the other.
describe.skipIf(!present)('one table in two codings', () => {
  it('finds 872 presences in 0/1/? and the same in TRUE/FALSE/NA', () => {
    const count = (file: string) => {
      const table = present ? rows(file) : [];
      const readings = table.flatMap((row) =>
        Object.values(row)
          .slice(1)
          .map((text) => readCell(text, ATTRIBUTES.pile, contextFor('pile'))),
      );
      const present_ = readings.filter(
        (reading) => reading.kind === 'term' && reading.term === 'present',
      ).length;
      const unknown = readings.filter((reading) => reading.kind === 'term' && reading.term === null).length;
      return [present_, unknown];
    };
    expect(count('ikat-textiles/ikat_Data_S1.csv')).toEqual([872, 1]);
    expect(count('ikat-textiles/textiles_ikat_seasia_decoded.csv')).toEqual([872, 1]);
  });
});
