import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { setsTable, withTable } from '../../docs/scripts/simulated-tables.ts';
import { PLACEMENT_SETS } from '../../src/analyses/simulated-placement-sets.ts';

const page = (name: string) =>
  readFileSync(new URL(`../../docs/methods/${name}.md`, import.meta.url), 'utf8');

describe('results of simulations', () => {
  it.each([['placement', PLACEMENT_SETS.simulation, setsTable(PLACEMENT_SETS)]])(
    'stand in the page on %s as they were found (npm run simulated)',
    (name, simulation, table) => {
      expect(withTable(page(name), simulation, table)).toBe(page(name));
    },
  );

  it('rest on a thousand finds or samples in each cell', () => {
    for (const { finds } of PLACEMENT_SETS.cells) expect(finds).toBeGreaterThanOrEqual(1000);
    expect(new Set(PLACEMENT_SETS.cells.map(({ design }) => design)).size).toBe(7);
  });

  it('hold the true label as often as the level says, or more: the cells below it are named in the page', () => {
    const below = PLACEMENT_SETS.cells.filter(({ held, finds }) => held[1] / finds < 0.88);
    for (const { design, items } of below) expect(page('placement')).toContain(`${design}, ${items} items`);
  });
});
