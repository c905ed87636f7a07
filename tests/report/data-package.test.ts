import { createHash } from 'node:crypto';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { dataPackage } from '../../src/report/data-package.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { analyse } from '../../src/study/run-study.ts';

const FINDS = `Cat. no.,Site,Structure,Row spacing (mm),Remarks
A1,Grebe Holm,open twining,c. 30,"=HYPERLINK(""http://x"")"
A2,Grebe Holm,tabby?,not applicable,
A3,Grebe Holm,,>40,"a, b"
`;
const prepared = prepareStudy(
  checkStudy(
    {
      title: 'Tëst & more',
      sources: [{ file: 'finds.csv' }],
      analyses: [{ id: 'spacing', kind: 'summary', of: ['rowSpacing'] }],
    },
    'study.json',
  ),
  new Map([['finds.csv', new TextEncoder().encode(FINDS)]]),
);
const results = analyse(prepared, new Map());
const files = dataPackage(prepared, results);
const rows = Papa.parse<Record<string, string>>(files.get('fragments.csv') ?? '', {
  header: true,
  skipEmptyLines: true,
}).data;

interface Descriptor {
  name: string;
  resources: {
    name: string;
    path: string;
    hash: string;
    bytes: number;
    schema?: { fields: { name: string; type: string; unit?: string }[] };
  }[];
}
const descriptor = JSON.parse(files.get('datapackage.json') ?? '') as Descriptor;

describe('the data package', () => {
  it('holds both ends of each number, its state and the text of the source', () => {
    expect(
      rows.map((row) => [
        row['rowSpacing.low'],
        row['rowSpacing.high'],
        row['rowSpacing.state'],
        row['rowSpacing.raw'],
      ]),
    ).toEqual([
      ['27', '33', 'approximate', 'c. 30'],
      ['', '', 'not-applicable', 'not applicable'],
      ['40', 'INF', 'measured', '>40'],
    ]);
  });

  it('holds terms by id with their certainty', () => {
    expect(rows.map((row) => [row.structure, row.spacingClass, row['structure.certainty']])).toEqual([
      ['twined', 'open', 'certain'],
      ['tabby', '', 'probable'],
      ['', '', 'indeterminate'],
    ]);
  });

  it('disarms what a spreadsheet would run', () => {
    expect(rows[0].remarks).toMatch(/^'=HYPERLINK/);
    expect(rows[2].remarks).toBe('a, b');
  });

  it('describes every column of its tables, in order, with units (Table Schema)', () => {
    const { schema } = descriptor.resources[0];
    expect(schema?.fields.map(({ name }) => name)).toEqual(Object.keys(rows[0]));
    expect(schema?.fields.find(({ name }) => name === 'rowSpacing.low')).toMatchObject({
      type: 'number',
      unit: 'mm',
    });
  });

  it('states size and hash of every file', () => {
    expect(descriptor.name).toBe('te-st-more');
    for (const { path, hash, bytes } of descriptor.resources) {
      const text = files.get(path) ?? '';
      expect(text).not.toBe('');
      expect(hash).toBe(`sha256:${createHash('sha256').update(text).digest('hex')}`);
      expect(bytes).toBe(Buffer.byteLength(text));
    }
  });
});
