import { type PrintedFigure, perUnitOf } from '../claim.ts';
import type { DecimalMark } from '../numbers.ts';
import { readPrinted } from '../printed-text.ts';
import { mannersIn } from '../symbols.ts';
import type { Quantity, TestMethod } from '../terms.ts';
import type { TextPart } from '../text-part.ts';
import { isBlank } from './blank.ts';
import { type BracketKind, bracketKind } from './brackets.ts';
import { bracketed } from './cell-contents.ts';
import type { Role } from './heads.ts';
import type { Layout, TableColumn, TableRow } from './laid.ts';
import { OF_TEST } from './role-kinds.ts';
import { variationInPerCent } from './roles.ts';
import type { TableSays } from './says.ts';

export type RoledColumn = TableColumn & { readonly role: Role };

/** A table whose columns have their roles. */
export interface Roled {
  readonly name: string;
  readonly laid: Layout;
  readonly columns: readonly RoledColumn[];
  readonly samples: boolean;
  readonly mark: DecimalMark;
  readonly says: TableSays;
  readonly caption: string;
}

const OF_RECORDS = /^\W*(?:%|per\s?cent|prozent|pct|pour\s?cent|share|anteil|prop)/iu;

/** The figures of each row and column; what could not be read is told with its place. */
export function figuresOfCells({ name, laid, columns, samples, mark, says, caption }: Roled): {
  readonly cells: PrintedFigure[][][];
  readonly unread: readonly string[];
} {
  const unread: string[] = [];
  const perCent = variationInPerCent(laid, columns, mark);
  const stepAt = columns.findIndex(({ role }) => role === 'step');
  const inBrackets = bracketKind(laid, columns, caption, mark);
  const ids = new Map<string, number>();
  const cells = laid.rows.map((row, r) =>
    columns.map((column, c): PrintedFigure[] => {
      const text = laid.texts[r][c] ?? '';
      if (isBlank(text) || column.role === 'step') return [];
      const id = cellId(name, row.label, column.head);
      const quantity = quantityOf(column.role, row, text, samples);
      const read =
        quantity === null
          ? null
          : readPrinted(bracketed(text), quantity, {
              mark,
              ...(column.reading.second === undefined ? {} : { second: column.reading.second }),
              ...(column.reading.ends === undefined ? {} : { ends: column.reading.ends }),
            });
      if (read === null) {
        if (column.role !== 'not part' && row.line !== 'summary' && row.line !== 'aside')
          unread.push(`${id}: “${text}”`);
        return [];
      }
      for (const word of read.unused)
        if (/\d{2,}|[\p{L}]{2,}/u.test(word)) unread.push(`${id}: “${word}” of “${text}”`);
      const sum = !samples && (column.line === 'total' || row.line === 'total' || row.line === 'subtotal');
      const step = stepAt < 0 ? (says.step ?? '') : (laid.texts[r][stepAt] ?? '');
      return bracketParts(read.parts, inBrackets).map((part, i) => {
        const label = uniqueId(ids, i === 0 ? id : `${id} (${part.quantity})`);
        const total =
          sum && i === 0 && (part.quantity === 'count' || part.quantity === 'share' || part.quantity === 'n');
        return {
          ...figureBase(part, text, methodAt(row, column)),
          ...(part.quantity === 'p'
            ? {
                manners: [
                  ...new Set([
                    ...(part.manners ?? []),
                    ...mannersIn(`${column.head} ${row.holds === null ? '' : row.label}`),
                  ]),
                ],
              }
            : {}),
          // Nobody says what an unknown column holds; beside means, "Moisture (%)" is a measure.
          vague:
            part.vague === true ||
            (column.role === 'unknown' && row.holds === null) ||
            (samples && part.quantity === 'share' && !OF_RECORDS.test(column.own)),
          id: label,
          set: name,
          line: `${name}: ${row.label}${column.group === '' ? '' : ` / ${column.group}`}`,
          cell: { row: r, column: c },
          quantity: total && row.line !== 'n' && row.line !== 'percent' ? 'total' : part.quantity,
          perUnit: perUnitOf(step),
          attributes: samples && says.attribute !== undefined ? [says.attribute] : [],
          // Which records a label means is told by the data, if there are any.
          select: [],
          counted: [],
          selectText: sampleName(row, column, columns, c, samples),
          values: part.values.map((value) =>
            inParts(value, part.quantity, column.role === 'cv' ? perCent : true),
          ),
        };
      });
    }),
  );
  return { cells: cells.map(ofModels), unread };
}

/** What stands beside a coefficient is of a fitted model, which is not computed here. */
function ofModels(line: PrintedFigure[][]): PrintedFigure[][] {
  if (!line.flat().some(({ quantity }) => quantity === 'estimate')) return line;
  return line.map((figures) =>
    figures.map((figure) => ({ ...figure, manners: [...figure.manners, 'another test' as const] })),
  );
}

/** The method that a head or a label names, where its line does hold what it names: "D" may be a kind. */
function methodAt(row: TableRow, { reading, role }: RoledColumn): TestMethod | null {
  return row.holds?.method ?? (reading.role === role ? (reading.method ?? null) : null);
}

/** The number in brackets behind a count is what the table as a whole shows it to be. */
function bracketParts(parts: readonly TextPart[], kind: BracketKind): readonly TextPart[] {
  if (kind === 'share' || parts.length < 2 || parts[0].quantity !== 'count') return parts;
  return parts.flatMap((part) =>
    part.quantity !== 'share'
      ? [part]
      : kind === 'expected'
        ? [{ ...part, quantity: 'expected' as const }]
        : [{ ...part, quantity: 'reading' as const, vague: true as const }],
  );
}

/** What of a figure does not hang on where it stands. */
export function figureBase(part: TextPart, text: string, method: TestMethod | null) {
  return {
    // Its id says where it stands.
    place: '',
    method: part.method ?? method,
    sided: part.sided ?? ('' as const),
    versus: [],
    versusText: '',
    vague: part.vague === true,
    stars: part.stars === true,
    manners: part.manners ?? [],
    level: part.level ?? null,
    unused: [],
    printed: text,
    note: '',
  };
}

/** Shares are kept as parts of one, whatever their sign; a column of shares whose cells are all up to 1 stays. */
function inParts(value: TextPart['values'][number], quantity: Quantity, perCent: boolean) {
  if (quantity !== 'share' && quantity !== 'cv') return value;
  if (!perCent && !value.percent) return value;
  return { ...value, percent: true, number: { ...value.number, decimals: value.number.decimals + 2 } };
}

function quantityOf(role: Role, row: TableRow, text: string, samples: boolean): Quantity | null {
  const held = row.holds?.role ?? role;
  if (OF_TEST.has(role)) return role as Quantity;
  if (OF_TEST.has(held)) return held as Quantity;
  // "Alcohol (%)" under "mean" is a measure, whose unit that is.
  const open = role === 'count' || role === 'share' || role === 'unknown';
  if (row.holds !== null && open && !/[([]/.test(text)) return held as Quantity;
  if (row.line === 'summary' && !samples) return null;
  if (row.line === 'aside') return /expected|erwartet/i.test(row.kind || row.label) ? 'expected' : null;
  if (role === 'cumulative') return 'share';
  if (row.line === 'percent' && (role === 'count' || role === 'share' || role === 'unknown')) return 'share';
  // Below coefficients: how many records; "base" may be a term.
  if (role === 'estimate' && /^n$/iu.test(row.label.trim()) && /^\d+$/.test(text)) return 'n';
  if (row.line === 'n' && (open || role === 'n')) return 'n';
  if (role === 'unknown') return 'reading';
  if (role === 'not part' || role === 'step') return null;
  if (role === 'share' && /^\d[\d ]*\s*[([].*%/.test(text)) return 'count';
  if (role === 'count' && /%/.test(text) && !/[([/,]/.test(text)) return 'share';
  return role;
}

/** Statistics of one row describe one sample, unless heads that span part them or one is said twice. */
function sampleName(
  row: TableRow,
  column: TableColumn,
  columns: readonly (TableColumn & { readonly role: Role })[],
  at: number,
  samples: boolean,
): string {
  if (!samples) return row.label;
  const earlier = columns
    .slice(0, at)
    .filter(({ role, group }) => role === columns[at].role && group === column.group).length;
  return `${row.label}${column.group === '' ? '' : `, ${column.group}`}${earlier === 0 ? '' : ` (${earlier + 1})`}`;
}

/** Names the figure in the row of this label, under this head; a second number of the cell adds its quantity. */
export function cellId(table: string, label: string, head: string): string {
  return `${table}: ${label} / ${head}`;
}

function uniqueId(ids: Map<string, number>, id: string): string {
  const before = ids.get(id) ?? 0;
  ids.set(id, before + 1);
  return before === 0 ? id : `${id} ${before + 1}`;
}
