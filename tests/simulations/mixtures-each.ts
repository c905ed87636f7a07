/**
 * How often do tables and the likeness of places tell apart what is drawn from one bag, where a mixture counts in each of its kinds?
 * Two or four invented places with finds of three fibres, every fibre and every mixture as likely at all of them; a
 * share of the finds is a mixture of two fibres, so that its two mentions go together; finds of one or of several fragments an
 * item, which share their fibre. Told apart is a p of at most 0.05. Beside it the chi-square of the mentions as if they were
 * independent, which nobody is shown. Of four places any pair told apart counts, p adjusted.
 *
 * npm run simulate -- mixtures-each [runs], some 3 minutes of one core for 1,000.
 */
import type { ResultTable } from '../../src/analyses/contract.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { association } from '../../src/numerics/tests/contingency.ts';
import { checkStudy } from '../../src/study/load.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { runsAsked } from './parts/runs.ts';

/** The numbers of one column, in the order of the rows. */
function numbersOf({ columns, rows }: ResultTable, id: string): number[] {
  const at = columns.findIndex((column) => column.id === id);
  return rows.map((row) => row[at]).filter((cell) => typeof cell === 'number');
}

const runs = runsAsked(1000, 'draws of each row');
const FIBRES = ['flax', 'wool', 'silk'];
const SITES = ['Holm', 'Ness', 'Ford', 'Skarn'];
const ROWS = [
  { sites: 2, items: 30, mixed: 0.3, fragments: 1 },
  { sites: 2, items: 30, mixed: 0.7, fragments: 1 },
  { sites: 2, items: 12, mixed: 0.5, fragments: 1 },
  { sites: 4, items: 20, mixed: 0.5, fragments: 1 },
  { sites: 2, items: 20, mixed: 0.5, fragments: 3 },
];

console.log(
  '| places | items each | fragments an item | mixtures | table | likeness | chi-square of mentions |',
);
console.log('|---|---|---|---|---|---|---|');
for (const [place, row] of ROWS.entries()) {
  const random = createRandom(20261201 + place);
  let [table, alike, naive, asked] = [0, 0, 0, 0];
  for (let run = 0; run < runs; run++) {
    const lines = ['find no.,item no.,site,fibre'];
    const counts = Array.from({ length: row.sites }, () => FIBRES.map(() => 0));
    for (let site = 0; site < row.sites; site++)
      for (let item = 0; item < row.items; item++) {
        const one = Math.min(2, Math.floor(random.next() * 3));
        const other = (one + 1 + Math.floor(random.next() * 2)) % 3;
        const kinds = random.next() < row.mixed ? [one, other] : [one];
        const name = kinds.map((kind) => FIBRES[kind]).join(' and ');
        for (let part = 0; part < row.fragments; part++) {
          lines.push(`${SITES[site]}${item}-${part},${SITES[site]}${item},${SITES[site]},${name}`);
          for (const kind of kinds) counts[site]![kind]!++;
        }
      }
    const study = checkStudy(
      {
        title: 't',
        seed: run + 1,
        unit: 'fragment',
        witness: { is: 'column' },
        sources: [{ file: 'finds.csv' }],
        analyses: [
          {
            id: 'table',
            kind: 'crosstab',
            rows: 'site',
            columns: 'fibre',
            mixtures: 'each',
            relabellings: 199,
          },
          {
            id: 'alike',
            kind: 'similarity',
            assemblages: 'site',
            of: 'fibre',
            mixtures: 'each',
            relabellings: 199,
            resamples: 199,
          },
        ],
      },
      'study.json',
    );
    const found = runStudy(
      study,
      new Map([['finds.csv', new TextEncoder().encode(lines.join('\n'))]]),
    ).analyses;
    const [p] = numbersOf(found.table!.tables.tests!, 'p');
    if (p !== undefined && p <= 0.05) table++;
    const pairs = numbersOf(found.alike!.tables.pairs!, 'pAdjusted');
    if (pairs.length > 0) asked++;
    if (pairs.some((one) => one <= 0.05)) alike++;
    const plain = association(counts);
    if (!('why' in plain) && plain.p <= 0.05) naive++;
  }
  const share = (n: number, of: number) => `${((100 * n) / of).toFixed(1)} %`;
  console.log(
    `| ${row.sites} | ${row.items} | ${row.fragments} | ${row.mixed} | ${share(table, runs)} | ${share(alike, asked)} | ${share(naive, runs)} |`,
  );
}
