import { midpoint, termAt } from '../../fragments/accessors.ts';
import { compareRecords } from '../../fragments/comparison.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import { takeRecords } from '../../numerics/condensed.ts';
import { dissimilarities } from '../../numerics/dissimilarity.ts';
import { euclideanReport } from '../../numerics/euclidean.ts';
import { correctDissimilarities } from '../../numerics/euclidean-correction.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import { principalCoordinates } from '../../numerics/principal-coordinates.ts';
import { comparisonSettings } from '../comparison-options.ts';
import type { AnalysisInput } from '../contract.ts';
import { printNumber } from '../phrasing.ts';
import { type AxesOrWhy, entriesOf, type Place } from './axes.ts';
import type { OrdinationOptions } from './options.ts';

/** Principal coordinates of the block dissimilarity, with each attribute's share of every axis. */
export function coordinatesOf(input: AnalysisInput, options: OrdinationOptions): AxesOrWhy {
  const { records, register } = input;
  const comparison = compareRecords(records, register, comparisonSettings(options));
  const matrix = dissimilarities(comparison.spec);
  const { kept, setAside } = knownRecords(matrix);
  const complete = takeRecords(matrix, kept);
  const corrected = correctDissimilarities(complete, options.correction);
  if ('why' in corrected) return corrected;
  const found = principalCoordinates(corrected.matrix, options.axes);
  if ('why' in found) return found;
  const { axes, coordinates, eigenvalues, trace, fromCentre } = found;
  const rows = [...kept];
  const places = rows.map((row, i): Place => {
    const at = entriesOf(coordinates, i, axes, axes);
    return {
      label: records.id[row],
      role: 'record',
      at,
      contributions: at.map((value, k) => (value * value) / eigenvalues[k]),
      cos2: at.map((value) => (fromCentre[i] > 0 ? Math.min(1, (value * value) / fromCentre[i]) : 0)),
    };
  });
  const variables = comparison.attributes.map(({ attribute }): Place => {
    const column = requireColumn(records, attribute.id, register);
    const shares = Array.from({ length: axes }, (_, k) => {
      const at = places.map((place) => place.at[k]);
      if (column.kind === 'numeric')
        return squaredCorrelation(
          rows.map((row) => midpoint(column, row)),
          at,
        );
      if (column.kind === 'term')
        return correlationRatio(
          rows.map((row) => termAt(column, row)),
          at,
        );
      return Number.NaN;
    });
    return { label: attribute.label, role: 'attribute', at: [], contributions: [], cos2: shares };
  });
  return {
    eigenvalues: [...eigenvalues],
    shares: Array.from(eigenvalues, (value) => value / trace),
    rows,
    records: places,
    variables,
    setAside: [
      { reason: 'could not be compared with every other record', rows: setAside.map(({ row }) => row) },
    ],
    notes: [...comparison.notes, ...euclideanNotes(complete, options)],
  };
}

function euclideanNotes(matrix: Parameters<typeof euclideanReport>[0], options: OrdinationOptions): string[] {
  const report = euclideanReport(matrix);
  if ('why' in report) return [];
  const before = options.correction === 'none' ? '' : `before the correction (${options.correction}) `;
  if (report.isEuclidean)
    return [`The dissimilarities are ${before}Euclidean: nothing is lost in drawing them`];
  const share = printNumber(report.negativeShare * 100, 2);
  const broken = report.brokenTriangles > 0 ? ', and not metric' : '';
  return [
    `The dissimilarities are ${before}not Euclidean${broken}: negative eigenvalues make ${share} % of all by size, ` +
      'and no flat picture can be exact',
  ];
}

/** Squared product-moment correlation over the records that have a value; NaN where there are too few. */
function squaredCorrelation(values: readonly number[], at: readonly number[]): number {
  const pairs = values.flatMap((value, i) => (Number.isNaN(value) ? [] : [[value, at[i]] as const]));
  const mean = (side: 0 | 1) => pairs.reduce((sum, pair) => sum + pair[side] / pairs.length, 0);
  const [a, b] = [mean(0), mean(1)];
  let [together, first, second] = [0, 0, 0];
  for (const [value, place] of pairs) {
    together += (value - a) * (place - b);
    first += (value - a) * (value - a);
    second += (place - b) * (place - b);
  }
  return pairs.length > 2 && first > 0 && second > 0 ? (together * together) / (first * second) : Number.NaN;
}

/** Share of the axis' variance that lies between kinds, over the records that have one. */
function correlationRatio(terms: readonly (string | null)[], at: readonly number[]): number {
  const groups = new Map<string, number[]>();
  terms.forEach((term, i) => {
    if (term !== null) groups.set(term, [...(groups.get(term) ?? []), at[i]]);
  });
  const all = [...groups.values()].flat();
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const centre = mean(all);
  const whole = all.reduce((sum, value) => sum + (value - centre) * (value - centre), 0);
  let between = 0;
  for (const values of groups.values()) {
    const apart = mean(values) - centre;
    between += values.length * apart * apart;
  }
  return all.length > 2 && whole > 0 ? between / whole : Number.NaN;
}
