import { foldText } from '../../../attributes/matching.ts';
import type { Condition } from '../../../fragments/select.ts';
import type { FragmentTable } from '../../../fragments/table.ts';
import { fitOfWays } from '../conventions/way.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { PrintedTable } from '../reading/printed-table.ts';
import type { Quantity } from '../reading/terms.ts';
import type { Material } from './check-data.ts';
import { recompute } from './quantities.ts';
import { termsOf, type View } from './values.ts';

/**
 * What a printed table is of, where nobody said: the attribute whose terms its labels are, and, of a table of
 * means, the one measure under which most of its cells come out as printed. Without a clear answer the table is
 * held against itself only.
 */
export function ofTheData(table: PrintedTable, { records, register, unit }: Material): PrintedTable {
  if (table.figures.some(({ select }) => select.length > 0)) return table;
  const view: View = { table: records, register, unit };
  const parts = table.rows.flatMap(({ line }, r) => (line === 'part' ? [r] : []));
  const rows = labelled(
    parts.map((r) => table.rows[r].label),
    view,
  );
  if (table.kind === 'samples') {
    if (rows === null) return table;
    const placed = table.figures.map((figure) => placedInRow(figure, table, rows));
    const measure = measureOf(placed, view);
    if (measure === null) return table;
    return rebuilt(
      table,
      placed.map((figure) => (SAMPLED.has(figure.quantity) ? { ...figure, attributes: [measure] } : figure)),
    );
  }
  const heads = table.columns.flatMap(({ line, role }, c) =>
    line === 'part' && (role === 'count' || role === 'share') ? [c] : [],
  );
  const columns = labelled(
    heads.map((c) => table.columns[c].head),
    view,
  );
  if (rows === null || columns === null || rows.attribute === columns.attribute) return table;
  return rebuilt(
    table,
    table.figures.map((figure) => {
      const inRow = placedInRow(figure, table, rows);
      const at = figure.cell;
      if (at === null || figure.quantity === 'share') return inRow;
      const term = columns.terms.get(table.columns[at.column].head);
      return term === undefined
        ? inRow
        : { ...inRow, counted: [{ attribute: columns.attribute, in: [term] }] };
    }),
  );
}

const SAMPLED: ReadonlySet<Quantity> = new Set<Quantity>([
  'n',
  'mean',
  'sd',
  'se',
  'cv',
  'median',
  'q1',
  'q3',
  'iqr',
  'min',
  'max',
  'range',
  'low',
  'high',
]);

interface Labels {
  readonly attribute: string;
  /** Label as printed -> term of the data. */
  readonly terms: ReadonlyMap<string, string>;
}

/** The attribute of kinds whose terms most labels are; null where none or several are. */
function labelled(labels: readonly string[], view: View): Labels | null {
  if (labels.length < 2) return null;
  const candidates = [...view.table.columns.keys()].flatMap((attribute): Labels[] => {
    const terms = termsIn(attribute, view);
    const found = new Map(
      labels.flatMap((label) => {
        const term = terms.get(foldText(label));
        return term === undefined ? [] : [[label, term] as const];
      }),
    );
    return found.size === labels.length || (found.size >= 3 && found.size * 4 >= labels.length * 3)
      ? [{ attribute, terms: found }]
      : [];
  });
  return candidates.length === 1 ? candidates[0] : null;
}

function termsIn(attribute: string, view: View): ReadonlyMap<string, string> {
  const all = Array.from({ length: view.table.rows }, (_, row) => row);
  const found = termsOf(view, attribute, all);
  if ('why' in found) return new Map();
  const vocabulary = view.register.vocabularies.get(
    view.register.attributes.get(attribute)?.vocabulary ?? '',
  );
  const label = (term: string) => vocabulary?.terms.find(({ id }) => id === term)?.label ?? term;
  return new Map(
    [...new Set(found)].flatMap((term) =>
      term === null ? [] : [[foldText(term), term] as const, [foldText(label(term)), term] as const],
    ),
  );
}

function placedInRow(figure: PrintedFigure, { rows }: PrintedTable, labels: Labels): PrintedFigure {
  if (figure.cell === null) return figure;
  const { label, line } = rows[figure.cell.row];
  if (line === 'total') return { ...figure, selectText: '' };
  const term = labels.terms.get(label);
  const select: readonly Condition[] =
    term === undefined ? [] : [{ attribute: labels.attribute, in: [term] }];
  return { ...figure, select };
}

/** The one measure that gives most of the table; two of equal claim are none. */
function measureOf(figures: readonly PrintedFigure[], view: View): string | null {
  const tested = figures.filter(
    ({ quantity, select, vague }) =>
      select.length > 0 &&
      !vague &&
      (quantity === 'mean' ||
        quantity === 'sd' ||
        quantity === 'median' ||
        quantity === 'min' ||
        quantity === 'max'),
  );
  if (tested.length < 2) return null;
  const scored = [...numericOf(view.table)]
    .map((attribute) => ({
      attribute,
      fits: tested.filter((figure) => {
        const found = recompute({ ...figure, attributes: [attribute] }, view);
        return !('why' in found) && fitOfWays(figure, found.ways) !== null;
      }).length,
    }))
    .sort((a, b) => b.fits - a.fits);
  const [best, next] = scored;
  if (best === undefined || best.fits * 2 <= tested.length || best.fits === next?.fits) return null;
  return best.attribute;
}

function numericOf(table: FragmentTable): string[] {
  return [...table.columns].flatMap(([id, column]) => (column.kind === 'numeric' ? [id] : []));
}

function rebuilt(table: PrintedTable, figures: readonly PrintedFigure[]): PrintedTable {
  const byId = new Map(figures.map((figure) => [figure.id, figure]));
  const same = (figure: PrintedFigure) => byId.get(figure.id) ?? figure;
  return {
    ...table,
    figures,
    cells: table.cells.map((row) => row.map((cell) => cell.map(same))),
    body: {
      ...table.body,
      cells: table.body.cells.map((row) => row.map((cell) => (cell === null ? null : same(cell)))),
    },
  };
}
