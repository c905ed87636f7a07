import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDataPackage, writeDataPackage } from '../../../src/sources/formats/datapackage.ts';
import { writeNormalised } from '../../../src/sources/formats/normalised-table.ts';
import { neutralise, restoreText } from '../../../src/sources/formats/safe-csv.ts';
import { readNormalised } from '../../../src/sources/reading/read-normalised.ts';
import { bytes, numbers, read, register } from '../support.ts';

describe('a data package by others', () => {
  it('says how its tables are to be read: delimiter, encoding, missing values, units, decimal mark', () => {
    // Table Schema and CSV Dialect, https://specs.frictionlessdata.io (version 1 names).
    const text = JSON.stringify({
      name: 'finds',
      resources: [
        {
          name: 'finds',
          path: 'finds.csv',
          encoding: 'iso-8859-1',
          dialect: { delimiter: ';' },
          schema: {
            missingValues: ['', '-99'],
            fields: [
              { name: 'Find no.', type: 'string' },
              { name: 'Length', type: 'number', unit: 'cm', decimalChar: ',' },
            ],
          },
        },
        { name: 'photo', path: 'photo.jpg' },
      ],
    });
    const tables = readDataPackage(text, 'datapackage.json');
    expect(tables.map(({ path }) => path)).toEqual(['finds.csv']);
    const length = numbers(read('Find no.;Length\nA1;3,5\nA2;-99\n', tables[0].profile), 'length');
    expect([...length.low]).toEqual([35, Number.NaN]);
    expect(length.state[1]).toBe(2);
  });
});

describe('the normalised table', () => {
  const before = read(
    'Find no.,Row spacing (mm),Structure,Note\nA1,c. 3-4,tabby ?,=SUM(A1)\nA2,>20,-,-12\nA3,"34; 36",n/a,@x\n',
  ).table;
  const files = writeDataPackage(before, { name: 'finds', title: 'Finds' });

  it('is described field by field with types and units', () => {
    const json = JSON.parse(files.get('datapackage.json') ?? '');
    const fields = json.resources[0].schema.fields as { name: string; type: string; unit?: string }[];
    expect(fields.find(({ name }) => name === 'rowSpacing.low')).toMatchObject({
      type: 'number',
      unit: 'mm',
    });
    const header = (files.get('fragments.csv') ?? '').split('\r\n')[0].split(',');
    expect(fields.map(({ name }) => name)).toEqual(header);
  });

  it('comes back from its CSV as it was', () => {
    const after = readNormalised(bytes(files.get('fragments.csv') ?? ''), 'fragments.csv', register);
    expect({ ...after, sources: before.sources }).toEqual(before);
  });

  it('holds no cell that a spreadsheet would run, and gives every text back', () => {
    const { csv } = writeNormalised(before);
    expect(csv).toContain("'=SUM(A1)");
    expect(csv).toContain("'@x");
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string().map((text) => `'=${text}`),
          fc.constantFrom('=', '-', '-5', '+', '@', "'", "''=1"),
        ),
        (text) => {
          const safe = neutralise(text);
          expect(restoreText(safe)).toBe(text);
          if (/^[=+\-@\t\r]/.test(safe))
            expect(safe).toMatch(/^(?:[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?|-INF|-)$/);
        },
      ),
    );
  });
});
