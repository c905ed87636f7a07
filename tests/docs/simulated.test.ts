import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  setsTable,
  splitErrorsTable,
  splitPowerTable,
  withTable,
} from '../../docs/scripts/simulated-tables.ts';
import { PLACEMENT_SETS } from '../../src/analyses/shared/simulated/placement-sets.ts';
import { SPLIT_ERRORS } from '../../src/analyses/shared/simulated/split-errors.ts';
import { SPLIT_POWER } from '../../src/analyses/shared/simulated/split-power.ts';

const page = (name: string) =>
  readFileSync(new URL(`../../docs/methods/${name}.md`, import.meta.url), 'utf8');

describe('results of simulations', () => {
  it.each([
    ['placement', PLACEMENT_SETS.simulation, setsTable(PLACEMENT_SETS)],
    ['typology', SPLIT_ERRORS.simulation, splitErrorsTable(SPLIT_ERRORS)],
    ['typology', SPLIT_POWER.simulation, splitPowerTable(SPLIT_POWER)],
  ])('stand in the page on %s as they were found (npm run simulated)', (name, simulation, table) => {
    expect(withTable(page(name), simulation, table)).toBe(page(name));
  });

  it('rest on a thousand finds or samples in each cell', () => {
    for (const { finds } of PLACEMENT_SETS.cells) expect(finds).toBeGreaterThanOrEqual(1000);
    expect(new Set(PLACEMENT_SETS.cells.map(({ design }) => design)).size).toBe(7);
  });

  it('take one kind for two in at most 6 of 100 samples, of sizes and steps together, as is wanted', () => {
    const sum = (of: (cell: (typeof SPLIT_ERRORS.cells)[number]) => number) =>
      SPLIT_ERRORS.cells.reduce((all, cell) => all + of(cell), 0);
    expect(sum(({ samples }) => samples)).toBeGreaterThanOrEqual(1000);
    expect(sum(({ found }) => found) / sum(({ samples }) => samples)).toBeLessThan(0.06);
    expect(new Set(SPLIT_ERRORS.cells.map(({ shape }) => shape)).size).toBe(20);
  });

  it('hold the true label as often as the level says, or more: the cells below it are named in the page', () => {
    const below = PLACEMENT_SETS.cells.filter(({ held, finds }) => held[1] / finds < 0.88);
    for (const { design, items } of below) expect(page('placement')).toContain(`${design}, ${items} items`);
  });
});
