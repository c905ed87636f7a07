import { readFileSync, writeFileSync } from 'node:fs';
import { PLACEMENT_SETS } from '../../src/analyses/simulated-placement-sets.ts';
import { setsTable, withTable } from './simulated-tables.ts';

/** Writes the tables of simulations into docs/methods; run with `npm run simulated` after a simulation has written its results. */
const pages = [['placement', PLACEMENT_SETS.simulation, setsTable(PLACEMENT_SETS)]] as const;
for (const [page, simulation, text] of pages) {
  const file = new URL(`../methods/${page}.md`, import.meta.url);
  writeFileSync(file, withTable(readFileSync(file, 'utf8'), simulation, text));
}
