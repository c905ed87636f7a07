import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { tablePieces } from '../../src/report/table-csv.ts';

const table = {
  title: 'Groups',
  columns: [
    { id: 'site', label: 'Site' },
    { id: 'mean', label: 'mean', unit: 'mm' },
    { id: 'high', label: 'limit' },
    { id: 'again', label: 'limit' },
  ],
  rows: [
    ['=Grebe, "Holm"', 0.1 + 0.2, Infinity, true],
    ['Teal Ness', { why: 'one value' }, null, false],
  ],
};

describe('a table of results as CSV', () => {
  const { pieces, fields, missingValues } = tablePieces(table);
  const csv = [...pieces].join('');
  const rows = Papa.parse<string[]>(csv.trimEnd()).data;

  it('keeps every digit, and says why a number is not given', () => {
    expect(rows.slice(1)).toEqual([
      [`'=Grebe, "Holm"`, '0.30000000000000004', 'INF', 'yes'],
      ['Teal Ness', 'not given: one value', '', 'no'],
    ]);
    expect(missingValues).toEqual(['', 'not given: one value']);
  });

  it('heads its columns with label and unit, each once', () => {
    expect(rows[0]).toEqual(['Site', 'mean (mm)', 'limit', 'limit 2']);
    expect(fields.map(({ name, type }) => [name, type])).toEqual([
      ['Site', 'string'],
      ['mean (mm)', 'number'],
      ['limit', 'number'],
      ['limit 2', 'string'],
    ]);
  });
});
