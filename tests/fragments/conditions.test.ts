import { expect, it } from 'vitest';
import { defaultRegister } from '../../src/attributes/register.ts';
import { conditionsOf } from '../../src/fragments/conditions.ts';
import { composeKinds } from '../../src/fragments/kinds/kinds.ts';
import { type Cell, makeTable } from './make-table.ts';

/** Twenty twined finds of two sites: pile and openness part them by turns, the structure is one for all. */
const FINDS = Array.from(
  { length: 20 },
  (_, at): Record<string, Cell> => ({
    structure: 'twined',
    pile: at % 2 === 0 ? 'present' : 'absent',
    spacingClass: at % 4 < 2 ? 'open' : 'close',
    site: at < 10 ? 'Holm' : 'Ness',
    diameter1: 1 + at / 10,
    rowSpacing: 10 + at,
  }),
);

function structureBeside(about: readonly string[], asked?: readonly string[]) {
  const bare = defaultRegister();
  const { table, register } = composeKinds(makeTable(FINDS, bare), bare, asked);
  const rows = FINDS.map((_, row) => row);
  const found = conditionsOf(table, rows, ['site', ...about], 'site', register);
  return found.find(({ id }) => id === 'structure');
}

it('structure is looked at as the kind of fabric, with the facets that all recorded', () => {
  const found = structureBeside(['diameter1']);
  expect(found).toMatchObject({ label: 'Kind of fabric', state: 'looked at' });
  expect(found?.kinds).toEqual([
    'close twining',
    'close twining with pile',
    'open twining',
    'open twining with pile',
  ]);
});

it('a facet that follows from what is compared is no condition of it', () => {
  expect(structureBeside(['rowSpacing'])?.kinds).toEqual(['twined', 'twining with pile']);
  expect(structureBeside(['gapRatio'])?.kinds).toEqual(['twined', 'twining with pile']);
  // Nor is the structure where the question is about a side of it.
  expect(structureBeside(['pile'])).toBeUndefined();
});

it('a study that composes its kinds of the structure alone is taken at its word', () => {
  expect(structureBeside(['diameter1'], ['structure'])).toMatchObject({ label: 'Structure', state: 'one' });
  expect(structureBeside(['diameter1'], ['structure', 'pile'])?.kinds).toEqual([
    'twined',
    'twining with pile',
  ]);
});
