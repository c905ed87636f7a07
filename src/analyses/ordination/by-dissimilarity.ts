import { midpoint, termAt } from '../../fragments/accessors.ts';
import { type Comparison, compareRecords } from '../../fragments/comparison/comparison.ts';
import { recordOfRow } from '../../fragments/comparison/find.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import { takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import {
  dissimilarities,
  dissimilaritiesTo,
  pickRecords,
} from '../../numerics/dissimilarity/dissimilarity.ts';
import { prepareComparison } from '../../numerics/dissimilarity/prepare.ts';
import type { Unavailable } from '../../numerics/foundation/unavailable.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import { type EuclideanReport, euclideanReport } from '../../numerics/ordination/euclidean.ts';
import {
  type Corrected,
  correctDissimilarities,
  correctValues,
} from '../../numerics/ordination/euclidean-correction.ts';
import { correlation, correlationRatio } from '../../numerics/ordination/in-common.ts';
import {
  type PrincipalCoordinates,
  principalCoordinates,
  projector,
} from '../../numerics/ordination/principal-coordinates.ts';
import type { AnalysisInput } from '../contract.ts';
import { printCount, printNumber } from '../phrasing.ts';
import { comparisonSettings } from '../shared/options/comparison.ts';
import { entriesOf, passivePlace } from './axes.ts';
import { type Axes, type AxesOrWhy, PASSIVE_RECORD, type PlacedPoint } from './found.ts';
import type { OrdinationOptions } from './options.ts';
import { activeAttributes } from './supplementary.ts';
import { type ActiveAndPassive, NO_SAY } from './supplementary-records.ts';

/** Principal coordinates of the block dissimilarity, with each attribute's share of every axis. */
export function coordinatesOf(
  input: AnalysisInput,
  options: OrdinationOptions,
  split: ActiveAndPassive,
): AxesOrWhy {
  const { records, register } = input;
  // Ranges and ranks come from the active records alone: the others have no say in them either.
  const comparison = compareRecords(split.table, register, {
    ...comparisonSettings(options),
    of: activeAttributes(split.table, options),
  });
  const matrix = dissimilarities(comparison.spec);
  const { kept, setAside } = knownRecords(matrix);
  const complete = takeRecords(matrix, kept);
  const corrected = correctDissimilarities(complete, options.correction);
  if ('why' in corrected) return corrected;
  const found = principalCoordinates(corrected.matrix, options.axes);
  if ('why' in found) return found;
  const { axes, coordinates, eigenvalues, fromCentre } = found;
  const report = euclideanReport(complete);
  const all = allThatAxesShow(found, options.correction, report);
  const rows = Array.from(kept, (place) => split.active[place]);
  const places = rows.map((row, i): PlacedPoint => {
    const at = entriesOf(coordinates, i, axes, axes);
    return {
      label: records.id[row],
      role: 'record',
      at,
      contributions: at.map((value, k) => (value * value) / eigenvalues[k]),
      cos2: at.map((value) => (fromCentre[i] > 0 ? Math.min(1, (value * value) / fromCentre[i]) : 0)),
    };
  });
  const variables = comparison.attributes.map(({ attribute }): PlacedPoint => {
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
  const added = addRecords(input, split, comparison, kept, corrected, found);
  return {
    eigenvalues: [...eigenvalues],
    shares: Array.from(eigenvalues, (value) => value / all.positive),
    sharesAtMost: !all.known,
    rows,
    records: places,
    passiveRows: added.passiveRows,
    passive: added.passive,
    variables,
    attributes: variables.map(({ label, cos2 }) => ({ label, shares: cos2 })),
    setAside: [
      {
        reason: 'could not be compared with every other record',
        rows: setAside.map(({ row }) => split.active[row]),
      },
      ...added.setAside,
    ],
    notes: [
      ...(split.drawn === '' ? [] : [split.drawn]),
      ...comparison.notes,
      ...euclideanNotes(report, options),
      ...added.notes,
    ],
  };
}

/**
 * The supplementary records on finished axes, by their dissimilarities to the active ones on the scales of
 * the active ones (Gower 1968), corrected by the same constant.
 */
function addRecords(
  { records, alone = false }: AnalysisInput,
  { passive }: ActiveAndPassive,
  comparison: Comparison,
  kept: ArrayLike<number>,
  { correction, constant }: Corrected,
  found: PrincipalCoordinates,
): Pick<Axes, 'passiveRows' | 'passive' | 'setAside' | 'notes'> {
  // Where they lie is shown on the map, and no answer rests on it.
  if (alone)
    return { passiveRows: [], passive: [], setAside: [{ reason: NO_SAY, rows: passive }], notes: [] };
  const prepared = prepareComparison(pickRecords(comparison.spec, kept));
  const project = projector(found);
  let partly = 0;
  const placed = passive.map((row) => {
    const apart = dissimilaritiesTo(prepared, recordOfRow(comparison, records, row));
    const point = project(correctValues(apart, correction, constant));
    if ('why' in point) return { row, place: null };
    if (point.used < found.n) partly++;
    return { row, place: passivePlace(point, records.id[row], PASSIVE_RECORD, found.axes) };
  });
  const shown = placed.flatMap(({ row, place }) => (place === null ? [] : [{ row, place }]));
  return {
    passiveRows: shown.map(({ row }) => row),
    passive: shown.map(({ place }) => place),
    setAside: [
      {
        reason: 'supplementary, but comparable with too few to be placed',
        rows: placed.filter(({ place }) => place === null).map(({ row }) => row),
      },
    ],
    notes: [
      ...(partly > 0
        ? [`${printCount(partly, 'supplementary record')} placed by least squares: not comparable with all`]
        : []),
      ...(constant > 0 && shown.length > 0
        ? [
            `The constant of the correction (${correction}) comes from the active records and is added to the dissimilarities of ` +
              'supplementary ones too, so a supplementary record lies nearer the centre than an active one like it would',
          ]
        : []),
    ],
  };
}

/**
 * What the axes are shares of: the positive eigenvalues, as in the second measure of fit of R's `cmdscale`. Of the whole
 * trace, from which negative ones are taken, two axes may carry more than all. Of very many records only a lower bound
 * is known.
 */
function allThatAxesShow(
  { positive, n }: PrincipalCoordinates,
  correction: OrdinationOptions['correction'],
  report: EuclideanReport | Unavailable,
): { readonly positive: number; readonly known: boolean } {
  // Corrected dissimilarities have no negative eigenvalue.
  if (correction !== 'none') return { positive, known: true };
  if (!('why' in report)) return { positive: report.positive, known: true };
  return { positive, known: n < 3 };
}

function euclideanNotes(report: EuclideanReport | Unavailable, options: OrdinationOptions): string[] {
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
