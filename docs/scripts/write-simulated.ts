import { readFileSync, writeFileSync } from 'node:fs';
import { PLACEMENT_SETS } from '../../src/analyses/shared/simulated/placement-sets.ts';
import { SPLIT_ERRORS } from '../../src/analyses/shared/simulated/split-errors.ts';
import { SPLIT_POWER } from '../../src/analyses/shared/simulated/split-power.ts';
import { setsTable, splitErrorsTable, splitPowerTable, withTable } from './simulated-tables.ts';

/** Writes the tables of simulations into docs/methods; run with `npm run simulated` after a simulation has written its results. */
const pages = [
  ['placement', PLACEMENT_SETS.simulation, setsTable(PLACEMENT_SETS)],
  ['typology', SPLIT_ERRORS.simulation, splitErrorsTable(SPLIT_ERRORS)],
  ['typology', SPLIT_POWER.simulation, splitPowerTable(SPLIT_POWER)],
] as const;
for (const [page, simulation, text] of pages) {
  const file = new URL(`../methods/${page}.md`, import.meta.url);
  writeFileSync(file, withTable(readFileSync(file, 'utf8'), simulation, text));
}
