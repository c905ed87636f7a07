import type { FigureCheck } from '../../found.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Evidence } from '../evidence.ts';
import { sumCheck } from './sum-check.ts';
import { tableSums } from './table-sums.ts';

/** Totals against what they sum: of a set of claims, and of the rows and columns of printed tables. */
export function checkTotals({ sets, tables }: Evidence): FigureCheck[] {
  return [
    ...[...sets].flatMap(([name, set]) => (tables.has(name) ? [] : setTotals(set))),
    ...[...tables.values()].flatMap(tableSums),
  ];
}

function setTotals(set: readonly PrintedFigure[]): FigureCheck[] {
  return set
    .filter(({ quantity, attributes }) => quantity === 'total' && attributes.length === 0)
    .flatMap((figure) => {
      const kind = figure.values[0].percent ? 'share' : 'count';
      const parts = set.filter(({ quantity }) => quantity === kind);
      return parts.length < 2 ? [] : [sumCheck(figure, parts)];
    });
}
