import { midpoint, termAt } from '../../fragments/accessors.ts';
import { compareRecords } from '../../fragments/comparison.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import { takeRecords } from '../../numerics/condensed.ts';
import { dissimilarities } from '../../numerics/dissimilarity.ts';
import { euclideanReport } from '../../numerics/euclidean.ts';
import { correctDissimilarities } from '../../numerics/euclidean-correction.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import { correlation, correlationRatio } from '../../numerics/in-common.ts';
import { principalCoordinates } from '../../numerics/principal-coordinates.ts';
import { comparisonSettings } from '../comparison-options.ts';
import type { AnalysisInput } from '../contract.ts';
import { printNumber } from '../phrasing.ts';
import { type AxesOrWhy, entriesOf, type Place } from './axes.ts';
import type { OrdinationOptions } from './options.ts';
import { activeAttributes } from './supplementary.ts';

/** Principal coordinates of the block dissimilarity, with each attribute's share of every axis. */
export function coordinatesOf(input: AnalysisInput, options: OrdinationOptions): AxesOrWhy {
  const { records, register } = input;
  const comparison = compareRecords(records, register, {
    ...comparisonSettings(options),
    of: activeAttributes(records, options),
  });
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
        return square(
          correlation(
            rows.map((row) => midpoint(column, row)),
            at,
          ),
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

const square = (value: number) => value * value;
