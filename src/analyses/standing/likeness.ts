import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { itemCounts } from '../../fragments/items/counts.ts';
import { likenessInterval } from '../../numerics/assemblages/draws.ts';
import { sameSource } from '../../numerics/assemblages/same-source.ts';
import { assemblageSimilarity, isDistance } from '../../numerics/assemblages/similarity.ts';
import { condensedIndex } from '../../numerics/dissimilarity/condensed.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { adjustP } from '../../numerics/tests/adjust.ts';
import { sayDealt, toldSource } from '../likeness-rank.ts';
import type { Likeness } from './found.ts';
import type { StandingOptions } from './options.ts';

/** The part of a crossed table that counting needs; its entries may be fewer than the table's. */
export type CountedTable = Pick<CrossedTable, 'rows' | 'columns' | 'entries'>;

/** Counts of each row, added up over its items. */
function countsOf(counted: CountedTable): Float64Array[] {
  const counts = counted.rows.map(() => new Float64Array(counted.columns.length));
  for (const { row, column } of counted.entries) counts[row][column]++;
  return counts;
}

/** How alike one row is to each other row that has any entry, most alike first. */
export function likenessTo(
  counted: CountedTable,
  site: number,
  options: StandingOptions,
  random: Random,
): Likeness[] {
  const { coefficient, resamples, confidence, relabellings } = options;
  const counts = countsOf(counted);
  const items = itemCounts(counted);
  const all = assemblageSimilarity(counts, coefficient);
  const others = counted.rows.flatMap((_, row) => (row === site || items[row].length === 0 ? [] : [row]));
  const tests = others.map((row) =>
    sameSource(items[site], items[row], counted.columns.length, coefficient, {
      random: random.stream(`source ${counted.rows[row]}`),
      relabellings,
    }),
  );
  const adjusted = adjustP(
    tests.map(({ p }) => p),
    'holm',
  );
  const found = others.map((row, place): Likeness => {
    const rest = Float64Array.from(counted.columns, (_, column) =>
      counts.reduce((sum, line, other) => (other === site || other === row ? sum : sum + line[column]), 0),
    );
    return {
      label: counted.rows[row],
      items: items[row].length,
      value: all.values[condensedIndex(all.n, site, row)],
      interval: likenessInterval(items[site], items[row], rest, {
        coefficient,
        resamples,
        confidence,
        random: random.stream(`interval ${counted.rows[row]}`),
      }),
      p: tests[place].p,
      pAdjusted: adjusted[place],
      told: toldSource(tests[place], adjusted[place], confidence),
      method: sayDealt(tests[place]),
    };
  });
  const sign = isDistance(coefficient) ? 1 : -1;
  return found.sort((a, b) => sign * (a.value - b.value));
}
