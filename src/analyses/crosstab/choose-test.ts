import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { permutationTest } from '../../numerics/resampling/permutation.ts';
import type { Association } from '../../numerics/tests/contingency.ts';
import { fisherExact } from '../../numerics/tests/fisher-exact.ts';
import type { Unavailable } from '../contract.ts';
import type { ChosenTest } from './found.ts';
import type { CrosstabOptions } from './options.ts';

/** Least expected count in every cell, and the share of cells that may lie below FEW_EXPECTED (Cochran 1954, Biometrics 10:417). */
const LEAST_EXPECTED = 1;
const FEW_EXPECTED = 5;
const MOST_BELOW = 0.2;

/** Search of the exact test before it gives way to random tables: about a second. */
const MOST_VISITS = 100_000;

/**
 * Chi-square where the expected counts carry it (Cochran 1954: none below 1, at most a fifth below 5),
 * otherwise the exact test. Where items have several fragments neither holds, and the rows of whole
 * items are dealt again with chi-square as the statistic.
 */
export function chooseTest(
  table: CrossedTable,
  found: Association,
  options: CrosstabOptions,
  random: Random,
  visits = MOST_VISITS,
): ChosenTest | Unavailable {
  const items = new Set(table.entries.map(({ item }) => item)).size;
  if (items < table.entries.length) return dealtItems(table, found, options, random);
  const below = expectedBelow(found);
  const small = !isCarried(table, found);
  const asked = options.test !== 'choose';
  const said = `${below} of ${table.rows.length * table.columns.length} expected counts are below ${FEW_EXPECTED}, the smallest is ${Number(found.smallestExpected.toPrecision(2))}`;
  if (options.test === 'chi-square' || (options.test === 'choose' && !small)) {
    return {
      name: 'chi-square',
      p: found.p,
      method: 'chi-squared',
      reason: asked ? 'as asked' : `the expected counts carry it: ${said}`,
      asked,
    };
  }
  const exact = fisherExact(table.counts, random, options.relabellings, visits);
  if ('why' in exact) return exact;
  return {
    name: 'Fisher’s exact test',
    p: exact.p,
    method: exact.method === 'exact' ? 'exact' : `${exact.tables} random tables with the same margins`,
    reason: asked ? 'as asked' : said,
    asked,
  };
}

const expectedBelow = (found: Association): number =>
  found.expected.flat().filter((count) => count < FEW_EXPECTED).length;

/** Whether the expected counts carry chi-square. */
export function isCarried(table: CrossedTable, found: Association): boolean {
  const share = expectedBelow(found) / (table.rows.length * table.columns.length);
  return found.smallestExpected >= LEAST_EXPECTED && share <= MOST_BELOW;
}

function dealtItems(
  table: CrossedTable,
  found: Association,
  options: CrosstabOptions,
  random: Random,
): ChosenTest {
  const blocks = blocksOf(table);
  const columns = table.columns.length;
  const columnTotals = table.columns.map(
    (_, column) => table.entries.filter((entry) => entry.column === column).length,
  );
  const n = table.entries.length;
  const test = permutationTest(
    blocks.map(({ row }) => row),
    (rows) => {
      const counts = new Float64Array(table.rows.length * columns);
      const rowTotals = new Float64Array(table.rows.length);
      blocks.forEach((block, place) => {
        for (const column of block.columns) {
          counts[rows[place] * columns + column]++;
          rowTotals[rows[place]]++;
        }
      });
      let sum = 0;
      for (let row = 0; row < rowTotals.length; row++)
        for (let column = 0; column < columns; column++) {
          const expected = (rowTotals[row] * columnTotals[column]) / n;
          const gap = counts[row * columns + column] - expected;
          sum += (gap * gap) / expected;
        }
      return sum;
    },
    { random, relabellings: options.relabellings, exactLimit: 50_000 },
  );
  return {
    name: 'chi-square',
    p: test.p,
    method:
      test.method === 'exact'
        ? `exact, all ${test.relabellings} ways to deal the items`
        : `${test.relabellings} random ways to deal the items`,
    reason: `${n} fragments come from ${new Set(table.entries.map(({ item }) => item)).size} items, and chi-square of ${Number(found.chiSquared.toPrecision(4))} takes them as independent`,
    asked: false,
  };
}

export interface Block {
  readonly row: number;
  readonly columns: readonly number[];
}

/** Fragments of one item in one row stay together; an item in two rows counts as one thing in each. */
export function blocksOf(table: CrossedTable): Block[] {
  const blocks = new Map<string, { row: number; columns: number[] }>();
  for (const { item, row, column } of table.entries) {
    const key = `${row} ${item}`;
    const block = blocks.get(key) ?? { row, columns: [] };
    block.columns.push(column);
    blocks.set(key, block);
  }
  return [...blocks.values()];
}
