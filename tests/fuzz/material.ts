import { readFileSync } from 'node:fs';
import { utils, write } from 'xlsx';

/** What the changes begin from: small, invented and valid, and every kind of file that Thrum reads. */

const text = (name: string): string =>
  readFileSync(new URL(`../../datasets/demo/${name}`, import.meta.url), 'utf8');

export const TABLES: readonly string[] = [
  text('pellunar-wreck.csv').split('\n').slice(0, 25).join('\n'),
  text('quorrimel-katalog.csv').split('\n').slice(0, 25).join('\n'),
  text('ulvombre-counts.csv'),
  'Find no.,Site,Structure,Row spacing (mm),Fibre\n1,Pell,twined,c. 3-4,"wool, silk"\n2,Pell,tabby,<2,wool?\n3,Holm,-,>20,n/a\n',
  'Site;A;B;C\nPell;3;0,5;2\nHolm;1;4;0\nGarth;2;2;7\n',
  'Length: 51 cm\nWidth: 12 cm\n\nLength: 40 cm\nWidth: 9 cm\n',
  "id\tdate\tlat\n1\t300 BC\t45°30'N\n2\t-0300~\t44.5\n3\tearly 2nd century\t\n",
];

const ROWS = Array.from({ length: 24 }, (_, i) =>
  [
    `T${i}`,
    ['Pell', 'Holm', 'Garth'][i % 3],
    ['tabby', 'twined', 'twill 2/2'][(i * 5) % 3],
    2 + ((i * 7) % 11),
    ['wool', 'linen', 'wool?'][i % 3],
    i % 2 ? 'Early' : 'Late',
  ].join(','),
);
export const STUDY_FILES = {
  'finds.csv': `Find no.,Site,Structure,Row spacing (mm),Fibre,Period\n${ROWS.join('\n')}\n`,
  'finds.profile.json': JSON.stringify({
    columns: [
      { header: 'Row spacing (mm)', attribute: 'rowSpacing', unit: 'mm', missing: { '-99': 'not-observed' } },
    ],
    terms: { fibre: { Wolle: 'wool' } },
    layout: { headerRow: 1 },
  }),
  'types.json': text('tabby.types.json'),
  'claims.csv': text('claims.csv').split('\n').slice(0, 12).join('\n'),
} as const;
export const STUDY = {
  title: 'By chance',
  seed: 1,
  unit: 'fragment',
  sources: [{ file: 'finds.csv', profile: 'finds.profile.json' }],
  select: [{ attribute: 'rowSpacing', atLeast: 1 }],
  analyses: [
    { id: 'a', kind: 'summary', of: ['rowSpacing', 'structure'], by: ['site'], resamples: 99 },
    { id: 'b', kind: 'contrast', of: ['rowSpacing'], by: 'site' },
    { id: 'c', kind: 'crosstab', rows: 'site', columns: 'structure' },
    { id: 'd', kind: 'similarity', assemblages: 'site', of: 'structure' },
    { id: 'e', kind: 'ordination', method: 'pcoa', of: ['rowSpacing', 'structure', 'fibre'] },
    { id: 'f', kind: 'grouping', of: ['rowSpacing', 'structure'], k: 2 },
    { id: 'g', kind: 'placement', find: { rowSpacing: 'c. 4 mm', structure: 'tabby' } },
    { id: 'h', kind: 'typology', rules: 'types.json' },
    { id: 'i', kind: 'claims', file: 'claims.csv' },
  ],
} as const;

export const PACKAGE = {
  name: 'finds',
  resources: [
    {
      name: 'finds',
      path: 'finds.csv',
      encoding: 'utf-8',
      dialect: { delimiter: ';', headerRows: [1] },
      schema: {
        missingValues: ['', '-99'],
        fields: [{ name: 'Length', type: 'number', unit: 'cm', decimalChar: ',' }],
      },
    },
  ],
};

export function workbook(): Uint8Array {
  const book = utils.book_new();
  const rows = TABLES[3]!.split('\n').map((line) => line.split(','));
  utils.book_append_sheet(book, utils.aoa_to_sheet(rows), 'Finds');
  utils.book_append_sheet(book, utils.aoa_to_sheet([['a'], [1]]), 'More');
  return new Uint8Array(write(book, { type: 'array', bookType: 'xlsx' }) as ArrayBuffer);
}
