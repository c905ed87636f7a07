import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { AssemblageSpan } from '../../fragments/where-when.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { correspondence, projectRow } from '../../numerics/ordination/correspondence.ts';
import { permutationTest } from '../../numerics/resampling/permutation.ts';
import { spearman } from '../../numerics/tests/trend.ts';
import type { Unavailable } from '../contract.ts';
import { toldAt } from '../verdicts.ts';
import type { AxisPlaces, DateAgreement } from './found.ts';
import type { SimilarityOptions } from './options.ts';

const DRAWS = 999;

/** Correspondence analysis of the counts, assemblages that are placed afterwards, and the order against the dates. */
export function axisPlaces(
  table: CrossedTable,
  spans: readonly (AssemblageSpan | null)[],
  options: SimilarityOptions,
  random: Random,
): AxisPlaces | Unavailable {
  const placed = table.rows.map((label) => options.supplementary.includes(label));
  const active = placed.flatMap((late, row) => (late ? [] : [row]));
  const columns = table.columns.length;
  const found = correspondence(
    active.flatMap((row) => table.counts[row]),
    active.length,
    columns,
  );
  if ('why' in found) return found;
  const two = (coordinates: ArrayLike<number>, from: number): [number, number] => [
    coordinates[from],
    found.axes > 1 ? coordinates[from + 1] : 0,
  ];
  const rows = table.rows.map((_, row): [number, number] | null => {
    if (placed[row]) {
      const at = projectRow(found, table.counts[row]);
      return 'why' in at ? null : two(at.coordinates, 0);
    }
    const kept = found.keptRows.indexOf(active.indexOf(row));
    return kept < 0 ? null : two(found.rows.coordinates, kept * found.axes);
  });
  const kinds = table.columns.map((_, column): [number, number] | null => {
    const kept = found.keptColumns.indexOf(column);
    return kept < 0 ? null : two(found.columns.coordinates, kept * found.axes);
  });
  const onAxis = table.rows.flatMap((_, row) => {
    const at = rows[row];
    return at === null ? [] : [{ row, at: at[0] }];
  });
  const dated = onAxis.flatMap(({ row, at }) => {
    const span = spans[row];
    return span === null ? [] : [{ at, span }];
  });
  const rho = spearman(
    dated.map(({ at }) => at),
    dated.map(({ span }) => span.middle),
  );
  const along = 'why' in rho || rho.statistic >= 0 ? 1 : -1;
  return {
    found,
    rows,
    columns: kinds,
    placed,
    order: [...onAxis].sort((a, b) => along * (a.at - b.at) || a.row - b.row).map(({ row }) => row),
    againstDates:
      'why' in rho
        ? {
            why:
              dated.length < 3
                ? `${dated.length === 0 ? 'no assemblage on the axis is' : `only ${dated.length} on the axis are`} dated`
                : 'all are dated alike',
          }
        : agreement(dated, rho.statistic, options, random),
  };
}

function agreement(
  dated: readonly { readonly at: number; readonly span: AssemblageSpan }[],
  rho: number,
  options: SimilarityOptions,
  random: Random,
): DateAgreement {
  const places = dated.map(({ at }) => at);
  const size = (years: readonly number[]) => {
    const found = spearman(places, years);
    return 'why' in found ? Number.NaN : Math.abs(found.statistic);
  };
  const middles = dated.map(({ span }) => span.middle);
  const test = permutationTest(
    middles.map((_, place) => place),
    (labels) => size(Array.from(labels, (label) => middles[label])),
    { random: random.stream('dealt'), relabellings: options.relabellings, exactLimit: 5040 },
  );
  const years = random.stream('years');
  const drawn = sortedValues(
    Array.from({ length: DRAWS }, () =>
      size(dated.map(({ span }) => span.from + years.next() * (span.to - span.from))),
    ),
  );
  const tail = (1 - options.confidence) / 2;
  return {
    rho: Math.abs(rho),
    p: test.p,
    method:
      test.method === 'exact'
        ? `exact, all ${test.relabellings} orders`
        : `${test.relabellings} random orders`,
    n: dated.length,
    low: drawn.length === 0 ? Math.abs(rho) : quantileSorted(drawn, tail),
    high: drawn.length === 0 ? Math.abs(rho) : quantileSorted(drawn, 1 - tail),
    told: toldAt(test.p, options.confidence),
  };
}
