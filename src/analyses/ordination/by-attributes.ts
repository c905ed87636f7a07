import { InputError } from '../../errors.ts';
import { midpoint, termAt } from '../../fragments/accessors.ts';
import { loggedByFit, scaleOf } from '../../fragments/comparison/numbers.ts';
import { termLabel } from '../../fragments/groups.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import type { Column, TermColumn } from '../../fragments/table.ts';
import { ln } from '../../numerics/foundation/elementary.ts';
import type { DualityDiagram } from '../../numerics/ordination/duality.ts';
import { correlationRatio } from '../../numerics/ordination/in-common.ts';
import { type MixedColumn, mixedAnalysis, projectMixed } from '../../numerics/ordination/mixed.ts';
import { multipleCorrespondence, projectKinds } from '../../numerics/ordination/multiple-correspondence.ts';
import type { PassivePoint } from '../../numerics/ordination/passive-point.ts';
import { principalComponents, projectScores } from '../../numerics/ordination/pca.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import { printCount } from '../phrasing.ts';
import { entriesOf, passivePlace } from './axes.ts';
import { type Axes, type AxesOrWhy, type InCommon, PASSIVE_RECORD, type PlacedPoint } from './found.ts';
import type { OrdinationOptions } from './options.ts';
import { activeAttributes } from './supplementary.ts';
import type { ActiveAndPassive } from './supplementary-records.ts';

interface Prepared {
  readonly columns: readonly Exclude<Column, { kind: 'text' }>[];
  /** Active rows without a gap, or all of them where gaps of numbers were filled. */
  readonly rows: readonly number[];
  /** The same of supplementary rows; their kinds are kinds that active ones have. */
  readonly passiveRows: readonly number[];
  readonly setAside: Axes['setAside'];
  readonly notes: readonly string[];
  /** Number or code of a column at a row that is kept. */
  readonly value: (column: number, row: number) => number;
  readonly levels: readonly (readonly string[])[];
}

/** Principal components of the numeric attributes, by logarithm where the attribute or its readings say so. */
export function componentsOf(
  input: AnalysisInput,
  options: OrdinationOptions,
  split: ActiveAndPassive,
): AxesOrWhy {
  const made = prepare(input, options, split, ['numeric'], 'numbers');
  if (made.rows.length === 0) return noneComplete(input, made);
  const columns = made.columns.map((_, j) => made.rows.map((row) => made.value(j, row)));
  const found = principalComponents(columns, { scale: options.scale });
  if ('why' in found) return found;
  const { axes, eigenvalues, explained, scores, loadings } = found;
  const most = Math.min(axes, options.axes);
  return {
    eigenvalues: [...eigenvalues.slice(0, most)],
    shares: [...explained.slice(0, most)],
    rows: made.rows,
    records: made.rows.map((row, i) => ({
      label: input.records.id[row],
      role: 'record',
      at: entriesOf(scores, i, axes, most),
      contributions: entriesOf(found.rowContributions, i, axes, most),
      cos2: entriesOf(found.rowCos2, i, axes, most),
    })),
    ...passiveOf(input, made, most, (record) => {
      const point = projectScores(found, record);
      if ('why' in point) throw new RangeError(point.why);
      return point;
    }),
    variables: found.keptColumns.map((column, j) => ({
      label: made.columns[column].attribute.label,
      role: 'attribute',
      at: entriesOf(loadings, j, axes, most),
      contributions: entriesOf(found.columnContributions, j, axes, most),
      cos2: entriesOf(found.columnCos2, j, axes, most),
    })),
    attributes: found.keptColumns.map((column, j) => ({
      label: made.columns[column].attribute.label,
      shares: entriesOf(found.columnCos2, j, axes, most),
    })),
    setAside: made.setAside,
    notes: [
      ...made.notes,
      ...found.constantColumns.map(
        (j) => `${made.columns[j].attribute.label}: the same in all records, left out`,
      ),
    ],
  };
}

/** Multiple correspondence analysis of the attributes of kinds. */
export function kindsOf(
  input: AnalysisInput,
  options: OrdinationOptions,
  split: ActiveAndPassive,
): AxesOrWhy {
  const made = prepare(input, options, split, ['term'], 'kinds');
  if (made.rows.length === 0) return noneComplete(input, made);
  const found = multipleCorrespondence(
    made.columns.map((_, j) => ({
      codes: made.rows.map((row) => made.value(j, row)),
      levels: made.levels[j].length,
    })),
  );
  if ('why' in found) return found;
  const { inertias, shares } = found.adjusted;
  const labels = found.categories.map(({ variable, code }) => categoryLabel(input, made, variable, code));
  const axes = fromDiagram(input, made, found, labels, options, (record) => projectKinds(found, record));
  const q = made.columns.length;
  return {
    ...axes,
    // Axes of no more than 1/Q carry what unrelated attributes would: they have no adjusted share.
    shares: axes.eigenvalues.map((_, k) => (k < shares.length ? shares[k] : NO_MORE_THAN_CHANCE)),
    attributes: made.columns.map(({ attribute }, j) => ({
      label: attribute.label,
      shares: Array.from(
        { length: axes.eigenvalues.length },
        (_, k) => found.discrimination[j * found.axes + k],
      ),
    })),
    notes: [
      ...made.notes,
      inertias.length === 0
        ? `No axis carries more than 1 / ${q}, as much as unrelated attributes would: the kinds do not go together`
        : `Shares of the axes are the adjusted ones (Greenacre & Blasius 2006), of the ${printCount(inertias.length, 'axis', 'axes')} above 1 / ${q}`,
    ],
  };
}

const NO_MORE_THAN_CHANCE: Unavailable = { why: 'no more than unrelated attributes would give' };

/** Factor analysis of numbers and kinds together. */
export function mixtureOf(
  input: AnalysisInput,
  options: OrdinationOptions,
  split: ActiveAndPassive,
): AxesOrWhy {
  const made = prepare(input, options, split, ['numeric', 'term'], 'numbers or kinds');
  if (made.rows.length === 0) return noneComplete(input, made);
  const columns = made.columns.map((column, j): MixedColumn => {
    const values = made.rows.map((row) => made.value(j, row));
    if (column.kind === 'numeric') return { kind: 'quantity', values };
    return { kind: 'kinds', codes: values, levels: made.levels[j].length };
  });
  const found = mixedAnalysis(columns);
  if ('why' in found) return found;
  const labels = found.parts.map(({ variable, code }) =>
    code < 0 ? made.columns[variable].attribute.label : categoryLabel(input, made, variable, code),
  );
  const constant = found.constant.map(
    (j) => `${made.columns[j].attribute.label}: the same in all records, left out`,
  );
  const axes = fromDiagram(input, made, found, labels, options, (record) => projectMixed(found, record));
  const attributes = made.columns.flatMap((column, j): InCommon[] => {
    const numbers = found.parts.findIndex(({ variable, code }) => variable === j && code < 0);
    const { label } = column.attribute;
    if (column.kind === 'numeric')
      return numbers < 0 ? [] : [{ label, shares: axes.variables[numbers].cos2 }];
    const terms = made.rows.map((row) => String(made.value(j, row)));
    const along = (k: number) => axes.records.map(({ at }) => at[k]);
    return [{ label, shares: axes.eigenvalues.map((_, k) => correlationRatio(terms, along(k))) }];
  });
  return { ...axes, attributes, notes: [...made.notes, ...constant] };
}

function fromDiagram(
  input: AnalysisInput,
  made: Prepared,
  found: DualityDiagram,
  labels: readonly string[],
  options: OrdinationOptions,
  project: (record: readonly number[]) => PassivePoint,
): Axes {
  const { axes } = found;
  const most = Math.min(axes, options.axes);
  const place = (side: DualityDiagram['rows'], i: number, label: string, role: string): PlacedPoint => ({
    label,
    role,
    at: entriesOf(side.coordinates, i, axes, most),
    contributions: entriesOf(side.contributions, i, axes, most),
    cos2: entriesOf(side.cos2, i, axes, most),
  });
  return {
    eigenvalues: [...found.eigenvalues.slice(0, most)],
    shares: Array.from(found.eigenvalues.slice(0, most), (value) => value / found.totalInertia),
    rows: made.rows,
    records: made.rows.map((row, i) => place(found.rows, i, input.records.id[row], 'record')),
    ...passiveOf(input, made, most, project),
    variables: labels.map((label, j) =>
      place(found.columns, j, label, label.includes(': ') ? 'category' : 'attribute'),
    ),
    attributes: [],
    setAside: made.setAside,
    notes: made.notes,
  };
}

function noneComplete({ unit }: AnalysisInput, { columns }: Prepared): Unavailable {
  return {
    why:
      columns.length === 0
        ? 'none of the attributes compared fits this method'
        : `no ${unit} has a value of every one of the ${columns.length} attributes; compare fewer, or choose principal coordinates (pcoa), which take gaps`,
  };
}

/** The supplementary records, each put on finished axes by its numbers and codes. */
function passiveOf(
  input: AnalysisInput,
  made: Prepared,
  most: number,
  project: (record: readonly number[]) => PassivePoint,
): Pick<Axes, 'passiveRows' | 'passive'> {
  return {
    passiveRows: made.passiveRows,
    passive: made.passiveRows.map((row) =>
      passivePlace(
        project(made.columns.map((_, j) => made.value(j, row))),
        input.records.id[row],
        PASSIVE_RECORD,
        most,
      ),
    ),
  };
}

function categoryLabel(input: AnalysisInput, made: Prepared, variable: number, code: number): string {
  const { attribute } = made.columns[variable];
  return `${attribute.label}: ${termLabel(attribute, made.levels[variable][code], input.register)}`;
}

function prepare(
  input: AnalysisInput,
  options: OrdinationOptions,
  split: ActiveAndPassive,
  kinds: readonly ('numeric' | 'term')[],
  what: string,
): Prepared {
  const { records, register } = input;
  const asked = options.of.length > 0;
  const ids = activeAttributes(split.table, options);
  const columns = ids
    .map((id) => requireColumn(records, id, register))
    .filter((column): column is Exclude<Column, { kind: 'text' }> => {
      const fits = column.kind !== 'text' && kinds.includes(column.kind);
      if (!fits && asked) {
        throw new InputError(
          `"${column.attribute.label}" (${column.attribute.id}) does not fit this ordination, which takes ${what}`,
          {},
          'leave it out, or choose the method pcoa or mixed',
        );
      }
      return fits;
    });
  const levels = columns.map((column) => (column.kind === 'term' ? levelsOf(column, split.active) : []));
  // By the active records alone: the others have no say in the scale either.
  const scales = columns.map(({ attribute }) => {
    const active = requireColumn(split.table, attribute.id, register);
    return active.kind === 'numeric' ? scaleOf(active, options.skewed) : null;
  });
  const read = (j: number, row: number): number => {
    const column = columns[j];
    if (column.kind === 'term') return levels[j].indexOf(termAt(column, row) ?? '');
    const middle = midpoint(column, row);
    return scales[j]?.logarithm ? ln(middle) : middle;
  };
  const isGap = (j: number, row: number) => {
    const value = read(j, row);
    return columns[j].kind === 'term' ? value < 0 : !Number.isFinite(value);
  };
  const fills = options.gaps === 'mean';
  const isUsable = (row: number) =>
    columns.every((column, j) => !isGap(j, row) || (fills && column.kind === 'numeric'));
  // A kind that no active record has is read as a gap: it has no place on the axes.
  const isNew = (row: number) =>
    columns.some((column, j) => column.kind === 'term' && isGap(j, row) && termAt(column, row) !== null);
  const rows = split.active.filter(isUsable);
  const passiveRows = split.passive.filter(isUsable);
  const lost = split.passive.filter((row) => !isUsable(row));
  const means = columns.map((_, j) => {
    const known = rows.filter((row) => !isGap(j, row)).map((row) => read(j, row));
    return known.reduce((sum, value) => sum + value / known.length, 0);
  });
  const kept = [...rows, ...passiveRows];
  const filled = columns.reduce((sum, _, j) => sum + kept.filter((row) => isGap(j, row)).length, 0);
  return {
    columns,
    rows,
    passiveRows,
    levels,
    value: (j, row) => (isGap(j, row) ? means[j] : read(j, row)),
    setAside: [
      { reason: 'a value is missing', rows: split.active.filter((row) => !isUsable(row)) },
      { reason: 'supplementary, but a value is missing', rows: lost.filter((row) => !isNew(row)) },
      { reason: 'supplementary, with a kind that makes no axis', rows: lost.filter(isNew) },
    ],
    notes: [
      ...columns.flatMap((column, j) =>
        column.kind === 'numeric' && scales[j]?.byFit ? [loggedByFit(column)] : [],
      ),
      ...(filled > 0
        ? [`${printCount(filled, 'missing number')} took the mean of the attribute, as was asked`]
        : []),
    ],
  };
}

function levelsOf(column: TermColumn, rows: readonly number[]): readonly string[] {
  const terms = rows.map((row) => termAt(column, row));
  return [...new Set(terms.filter((term) => term !== null))];
}
