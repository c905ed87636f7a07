import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { Limits } from '../../numerics/foundation/limits.ts';
import { noncentralityAt } from '../../numerics/foundation/noncentral.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { spreadOfPhiSquared } from '../../numerics/tests/association-spread.ts';
import {
  type Association,
  association,
  type CountTable,
  withoutEmptyLines,
} from '../../numerics/tests/contingency.ts';
import type { Unavailable } from '../contract.ts';
import { blocksOf } from './choose-test.ts';
import type { CrosstabOptions } from './options.ts';

/**
 * Limits of Cramér's V by noncentral chi-squared, inverted (Smithson 2003, Confidence Intervals, chapter 4), with
 * items as units: where items have several fragments, chi-square is first divided by what dealing whole items makes of
 * it when nothing is associated, over its degrees of freedom. They hold near 0, where drawing items again does not. Away
 * from it they are widened by what chi-squared spreads more in samples of such a whole than the noncentral one does.
 */
export function cramersInterval(
  table: CrossedTable,
  found: Association,
  options: CrosstabOptions,
  random: Random,
): Limits | Unavailable {
  const inflation = inflationOf(table, found, options, random);
  const chiSquared = found.chiSquared / inflation;
  const tail = (1 - options.confidence) / 2;
  const n = found.n / inflation;
  const side = Math.min(table.rows.length, table.columns.length) - 1;
  const strength = (noncentrality: number) => Math.sqrt(noncentrality / n / side);
  const low = strength(noncentralityAt(chiSquared, found.df, tail));
  // Of a table more even than chance makes them, the upper limit is that of the chi-squared that chance makes on average.
  const high = strength(noncentralityAt(Math.max(chiSquared, found.df), found.df, 1 - tail));
  const beyond = Math.max(0, chiSquared - found.df);
  const centre = strength(beyond);
  const wider = Math.sqrt(widening(table.counts, found, chiSquared, beyond));
  const held = {
    low: Math.max(0, Math.min(centre - wider * (centre - low), found.cramersVCorrected)),
    high: Math.min(1, Math.max(centre + wider * (high - centre), found.cramersVCorrected)),
  };
  return held.low < held.high ? held : { why: 'so few records give limits no width' };
}

/**
 * How much larger the variance of chi-squared is than that of the noncentral one, never less than once: its part that
 * comes with the association is as large as samples of such a whole make it. The whole is the table drawn towards no
 * association until chance has no part in it, since a thin table looks more even in its spread than what it is from.
 *
 * @param chiSquared of the table, as for records that come alone.
 * @param beyond the noncentrality that it shows.
 */
function widening(
  counts: CountTable,
  { expected, df }: Association,
  chiSquared: number,
  beyond: number,
): number {
  if (beyond <= 0) return 1;
  const kept = Math.sqrt(beyond / chiSquared);
  const whole = counts.map((line, i) => line.map((count, j) => kept * count + (1 - kept) * expected[i][j]));
  const drawn = association(whole);
  if ('why' in drawn) return 1;
  const times = spreadOfPhiSquared(whole) / (4 * (drawn.chiSquared / drawn.n));
  return Math.max(1, (2 * df + 4 * beyond * times) / (2 * df + 4 * beyond));
}

/** How much larger chi-square is, where nothing is associated, for fragments that come by items. */
function inflationOf(
  table: CrossedTable,
  found: Association,
  options: CrosstabOptions,
  random: Random,
): number {
  const blocks = blocksOf(table);
  if (blocks.length === table.entries.length) return 1;
  const rows = blocks.map(({ row }) => row);
  let sum = 0;
  const deals = Math.min(options.resamples, MOST_DEALS);
  for (let deal = 0; deal < deals; deal++) {
    for (let last = rows.length - 1; last > 0; last--) {
      const other = random.integer(last + 1);
      [rows[last], rows[other]] = [rows[other], rows[last]];
    }
    const counts = table.rows.map(() => table.columns.map(() => 0));
    for (const [place, block] of blocks.entries())
      for (const column of block.columns) counts[rows[place]][column]++;
    const dealt = association(withoutEmptyLines(counts).table);
    sum += 'why' in dealt ? 0 : dealt.chiSquared;
  }
  return Math.max(1, sum / deals / found.df);
}

/** Deals from which the size of chi-square under no association is known well enough. */
const MOST_DEALS = 499;
