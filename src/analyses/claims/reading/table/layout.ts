import { type HeadReading, type LineRole, lineRole, type Role, readHead, sizeIn } from './heads.ts';
import { kindOf, labelsOf, lineOf, unique } from './labels.ts';

/** One column of numbers. */
export interface TableColumn {
  /** The head as it stands, with the head that spans it. */
  readonly head: string;
  /** The head that spans several columns; empty where none does. */
  readonly group: string;
  readonly reading: HeadReading;
  readonly line: LineRole;
  /** The number of records that the head gives; null for none. */
  readonly size: number | null;
}

export interface TableRow {
  /** The label as it stands, with that of its section; made unique by a number where two are alike. */
  readonly label: string;
  readonly line: LineRole;
  /** The section it stands in: a label alone above it, or the first of several labels; empty for none. */
  readonly section: string;
  /** The row of counts whose per cents this row holds. */
  readonly under: number | null;
  /** What the row holds, where rows hold several things: "% within row"; empty elsewhere. */
  readonly kind: string;
  /** The number of records that the label gives; null for none. */
  readonly size: number | null;
}

/** Cells with what each row and column is called and holds. */
export interface Layout {
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  /** One text a row and column. */
  readonly texts: readonly (readonly string[])[];
  readonly corner: string;
  /** The rows were columns in print. */
  readonly turned: boolean;
}

const EMPTY = new Set(['', '-', '–', '—', '.', '·', 'n/a', 'na', 'n.d.', '…', '..', 'nd', '/']);

export function isBlank(text: string): boolean {
  return EMPTY.has(text.trim().toLowerCase());
}

const isNumber = (text: string) => /^[<>≤≥~(]?\s?[-+−–]?[\d.,]*\d/.test(text.trim());

/** Finds heads, sections and labels; turns a table whose statistics stand in the first column. */
export function layOut(grid: readonly (readonly string[])[], roles: Readonly<Record<string, Role>>): Layout {
  const headRows = hasTwoHeads(grid) ? 2 : 1;
  const labelColumns = countLabelColumns(grid.slice(headRows));
  const body = grid.slice(headRows);
  const rows = labelsOf(body, labelColumns);
  const texts = rows.map(({ at }) => body[at].slice(labelColumns));
  const heads = headsOf(grid.slice(0, headRows), labelColumns);
  const corner = grid[0].slice(0, labelColumns).join(' ').trim();
  const named = rows.filter(
    ({ own }) => !/^[^n](?:\s*[([,].*)?$/iu.test(own) && isStatistic(readHead(own)),
  ).length;
  const headed = heads.filter(({ head }) => isStatistic(readHead(head))).length;
  if (named >= 2 && named > headed && labelColumns === 1)
    return {
      columns: rows.map(({ own, section }) => column(own, section, roles)),
      rows: unique(heads.map(({ head, group }) => (group === '' ? head : `${group}, ${head}`))).map(
        (label, i) => ({
          label,
          line: lineRole(heads[i].head),
          section: heads[i].group,
          under: null,
          kind: '',
          size: sizeIn(heads[i].head) ?? sizeIn(heads[i].group),
        }),
      ),
      texts: heads.map((_, i) => texts.map((row) => row[i] ?? '')),
      corner,
      turned: true,
    };
  const labels = unique(rows.map(({ own, section }) => (section === '' ? own : `${section}, ${own}`)));
  return {
    columns: heads.map(({ head, group }) => column(letterHead(head, heads), group, roles)),
    rows: rows.map(({ own, under, section, first }, i) => ({
      label: labels[i],
      line: under === null ? sized(lineOf(own), own, texts[i], rows) : 'percent',
      section: section === '' ? first : section,
      under,
      kind: kindOf(own),
      size: sizeIn(own),
    })),
    texts,
    corner,
    turned: false,
  };
}

/** "n" beside "y" is a kind. */
function letterHead(head: string, heads: readonly { readonly head: string }[]): string {
  const others = heads.filter((one) => one.head !== head);
  const letters = others.filter((one) => /^[a-z]$/.test(one.head) && readHead(one.head) === undefined).length;
  return /^n$/.test(head) && letters > 0 && letters * 2 >= others.length ? `kind ${head}` : head;
}

/** "N" among other single letters, or beside counts with per cents, is a kind and not a number of records. */
function sized(
  line: LineRole,
  own: string,
  texts: readonly string[],
  rows: readonly { readonly own: string }[],
): LineRole {
  if (line !== 'n') return line;
  const same = /\p{Lu}/u.test(own) ? /^\p{Lu}$/u : /^\p{Ll}$/u;
  const letters = rows.filter((row) => row.own !== own && same.test(row.own)).length;
  const closes = letters > 2 && rows[rows.length - 1].own === own;
  const mixed = texts.some((text) => /\d\s*%?\s*[([]|[.,]\d{1,2}$/.test(text.trim()));
  return (/^n$/i.test(own) && letters > 0 && !closes) || mixed ? 'part' : 'n';
}

function column(head: string, group: string, roles: Readonly<Record<string, Role>>): TableColumn {
  const said = roles[group === '' ? head : `${group} ${head}`] ?? roles[head];
  // What a column holds is its role; of its line only matters whether it sums.
  const sums = (text: string) => {
    const line = lineRole(text);
    return line === 'total' || line === 'subtotal' ? line : null;
  };
  const line = sums(head) ?? (group === '' ? null : sums(group)) ?? 'part';
  const reading: HeadReading =
    said !== undefined ? { role: said } : (readHead(head) ?? readHead(group) ?? { role: 'unknown' as const });
  return {
    head: group === '' ? head : head === '' ? group : `${group} ${head}`,
    group,
    reading,
    line,
    size: sizeIn(head) ?? sizeIn(group),
  };
}

const STATISTICS: ReadonlySet<Role> = new Set<Role>([
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
  'interval',
  'p',
  'df',
  'sum-of-squares',
  'mean-square',
]);

/** Whether a head names a statistic beyond doubt; "low", "n" and "d" may be kinds or numbers of anything. */
export function isStatistic(reading: HeadReading | undefined): boolean {
  return reading !== undefined && (STATISTICS.has(reading.role) || reading.role === 'n');
}

/** A second row of heads holds words, or single signs such as "n" and "%", under heads that span. */
function hasTwoHeads(grid: readonly (readonly string[])[]): boolean {
  if (grid.length < 3) return false;
  const [first, second, third] = grid;
  const cells = second.slice(1);
  const words = cells.filter((cell) => cell !== '' && !isNumber(cell) && !isBlank(cell)).length;
  const filled = cells.filter((cell) => cell !== '').length;
  const spanning =
    first.slice(1).some((cell) => cell === '') || (third.slice(1).some(isNumber) && second[0] === '');
  return words >= 2 && words * 2 > filled && spanning && third.slice(1).some((cell) => isNumber(cell));
}

/** Leading columns of words; the first is always one of labels. */
function countLabelColumns(body: readonly (readonly string[])[]): number {
  const width = body[0]?.length ?? 0;
  let count = 1;
  while (count < width - 1) {
    const cells = body.map((row) => row[count]).filter((cell) => !isBlank(cell));
    const words = cells.filter((cell) => !isNumber(cell) && !/^(?:n\.?\s?s\.?|\*+)$/i.test(cell)).length;
    if (cells.length === 0 || words * 2 <= cells.length) break;
    count++;
  }
  return count;
}

function headsOf(rows: readonly (readonly string[])[], labelColumns: number) {
  const [upper, lower] = rows.map((row) =>
    row.slice(labelColumns).map((cell) => cell.replaceAll(/\s+/g, ' ').trim()),
  );
  if (lower === undefined)
    return unique(upper.map((head, i) => (head === '' ? `column ${i + 1}` : head))).map((head) => ({
      head,
      group: '',
    }));
  let group = '';
  return upper.map((over, i) => {
    if (over !== '') group = over;
    const under = lower[i] ?? '';
    return under === ''
      ? { head: over === '' ? `column ${i + 1}` : over, group: '' }
      : { head: under, group };
  });
}
