import { InputError } from '../../errors.ts';
import { groupRows } from '../../fragments/groups.ts';
import { correspondence, projectColumn, projectRow } from '../../numerics/ordination/correspondence.ts';
import type { AnalysisInput } from '../contract.ts';
import { printNumber } from '../phrasing.ts';
import { entriesOf, passivePlace } from './axes.ts';
import type { AxesOrWhy, PlacedPoint } from './found.ts';
import type { OrdinationOptions } from './options.ts';

/** Correspondence analysis of one attribute of kinds against another; supplementary ones have no say. */
export function countsOf(input: AnalysisInput, options: OrdinationOptions): AxesOrWhy {
  const { rows: rowId, columns: columnId } = options;
  if (rowId === undefined || columnId === undefined) {
    throw new InputError(
      'correspondence analysis needs the attributes of its rows and columns',
      {},
      'name both, such as "rows": "site", "columns": "structure"',
    );
  }
  const { groups, ungrouped } = groupRows(input.records, [rowId, columnId], input.register);
  const labels = [0, 1].map((side) => [...new Set(groups.map((group) => group.labels[side]))]);
  const extra = new Set(options.supplementary);
  for (const label of extra) {
    if (!labels.some((side) => side.includes(label))) {
      throw new InputError(
        `"${label}" is no label of the rows or columns`,
        { path: 'supplementary' },
        `use one of ${[...labels[0], ...labels[1]].slice(0, 12).join(', ')}`,
      );
    }
  }
  const countOf = (row: string, column: string) =>
    groups.find((group) => group.labels[0] === row && group.labels[1] === column)?.rows.length ?? 0;
  const [active, passive] = [false, true].map((passed) =>
    labels.map((side) => side.filter((one) => extra.has(one) === passed)),
  );
  const [rows, columns] = active;
  const found = correspondence(
    rows.flatMap((row) => columns.map((column) => countOf(row, column))),
    rows.length,
    columns.length,
  );
  if ('why' in found) return found;
  const { axes } = found;
  const most = Math.min(axes, options.axes);
  const place = (side: typeof found.rows, i: number, label: string, role: string): PlacedPoint => ({
    label,
    role,
    at: entriesOf(side.coordinates, i, axes, most),
    contributions: entriesOf(side.contributions, i, axes, most),
    cos2: entriesOf(side.cos2, i, axes, most),
  });
  const added = (at: ReturnType<typeof projectRow>, label: string, role: string): PlacedPoint[] =>
    'why' in at ? [] : [passivePlace(at, label, role, most)];
  return {
    eigenvalues: [...found.eigenvalues.slice(0, most)],
    shares: Array.from(found.eigenvalues.slice(0, most), (value) => value / found.totalInertia),
    rows: [],
    passiveRows: [],
    passive: [],
    records: [
      ...found.keptRows.map((i, at) => place(found.rows, at, rows[i], 'row')),
      ...passive[0].flatMap((row) =>
        added(
          projectRow(
            found,
            columns.map((column) => countOf(row, column)),
          ),
          row,
          'supplementary row',
        ),
      ),
    ],
    variables: [
      ...found.keptColumns.map((j, at) => place(found.columns, at, columns[j], 'column')),
      ...passive[1].flatMap((column) =>
        added(
          projectColumn(
            found,
            rows.map((row) => countOf(row, column)),
          ),
          column,
          'supplementary column',
        ),
      ),
    ],
    attributes: [],
    setAside: ungrouped.map((gap) => ({
      reason: `${input.register.attributes.get(gap.attribute)?.label ?? gap.attribute} not recorded`,
      rows: gap.rows,
    })),
    notes: [
      `Table of ${rows.length} by ${columns.length}, n = ${found.total}; total inertia ${printNumber(found.totalInertia)} ` +
        `(chi-square ${printNumber(found.chiSquare)})`,
    ],
  };
}

/** Rows and columns of so few records draw axes to themselves. */
const SMALL = 5;

/** Labels of the rows and columns of a table of counts that have fewer than five records. */
export function smallLines(input: AnalysisInput, options: OrdinationOptions): readonly string[] {
  const { rows, columns } = options;
  if (rows === undefined || columns === undefined) return [];
  const { groups } = groupRows(input.records, [rows, columns], input.register);
  const extra = new Set(options.supplementary);
  const totals = new Map<string, number>();
  for (const { labels, rows: own } of groups) {
    if (labels.some((label) => extra.has(label))) continue;
    for (const label of labels) totals.set(label, (totals.get(label) ?? 0) + own.length);
  }
  return [...totals].filter(([, total]) => total < SMALL).map(([label]) => label);
}
