import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';

/**
 * A table as sums read it. A sum is printed once for many lines, and which lines it takes is asked of all of
 * them together: of the ways to read it, the one under which most lines add up.
 */
export interface SumLine {
  /** The figure that is a sum. */
  readonly sum: PrintedFigure;
  readonly parts: readonly PrintedFigure[];
}

/** One way to read a row or a column of sums. */
export interface SumReading {
  readonly said: string;
  readonly lines: readonly SumLine[];
}

type At = (row: number, column: number) => PrintedFigure | null;

/** The first number of a cell that is of this kind; a column of sums holds totals. */
function figureAt({ cells }: PrintedTable, kind: 'count' | 'share'): At {
  return (row, column) => {
    const figures = cells[row]?.[column] ?? [];
    const wanted = figures.find(
      ({ quantity, values: [value] }) =>
        quantity === kind ||
        ((quantity === 'total' || quantity === 'n') && (kind === 'share') === (value.percent === true)),
    );
    return wanted ?? null;
  };
}

/** Sums of rows, and sums of columns: for each its readings, the plainest first. */
export function sumsOf(table: PrintedTable, kind: 'count' | 'share'): SumReading[][] {
  const at = figureAt(table, kind);
  const turned: At = (column, row) => at(row, column);
  const rows = table.rows.map(({ line, label }) => ({ line, group: '', head: label, holds: true }));
  const columns = table.columns.map(({ line, group, head, role }) => ({
    line: role === 'n' && line === 'part' ? ('n' as const) : line,
    group,
    head,
    holds: role === kind || (role === 'n' && kind === 'count'),
  }));
  return [...sumsAlong(columns, rows, at), ...sumsAlong(rows, columns, turned)];
}

interface Line {
  readonly line: string;
  readonly group: string;
  readonly head: string;
  readonly holds: boolean;
}

/**
 * Every line of `own` that may be a sum of the others, read along `across`: each reading says which others it
 * takes. `at(across, own)` is a figure.
 */
function sumsAlong(own: readonly Line[], across: readonly Line[], at: At): SumReading[][] {
  const isSum = (line: Line) => line.line === 'total' || line.line === 'subtotal';
  const readings: SumReading[][] = [];
  own.forEach((line, place) => {
    if (!line.holds || !(isSum(line) || line.line === 'n')) return;
    const inside = own.flatMap((other, i) =>
      other.holds && other.line === 'part' && i !== place ? [i] : [],
    );
    const subtotals = own.flatMap((other, i) =>
      other.holds && other.line === 'subtotal' && i !== place ? [i] : [],
    );
    const others = own.flatMap((other, i) => (other.holds && isSum(other) && i !== place ? [i] : []));
    const before = others.filter((i) => i < place);
    const last = before.length > 0 ? before[before.length - 1] : -1;
    const after = others.find((i) => i > place) ?? own.length;
    const since = inside.filter((i) => i > last && i < place);
    const until = inside.filter((i) => i > place && i < after);
    const grouped = inside.filter((i) => own[i].group === line.group && line.group !== '');
    const parity = inside.filter((i) => last0(own[i].head) === last0(line.head));
    const candidates: (readonly [string, readonly number[]])[] = [
      ['all of them', inside],
      ['those of its head', grouped],
      ['those since the sum before', since],
      ['those up to the next sum', until],
      ['the subtotals', subtotals],
      ['the sums before', before],
      ['the subtotals and what has none', [...subtotals, ...inside.filter((i) => !covered(i, own))]],
      ['those of the same kind', parity],
      ['those before it', inside.filter((i) => i < place)],
      ['those after it', inside.filter((i) => i > place)],
    ];
    const seen = new Set<string>();
    const ways = candidates.flatMap(([said, takes]): SumReading[] => {
      const key = [...takes].sort((a, b) => a - b).join();
      if (takes.length < 2 || seen.has(key)) return [];
      seen.add(key);
      const lines = across.flatMap((other, i): SumLine[] => {
        if (!other.holds || other.line === 'summary' || other.line === 'percent' || other.line === 'aside')
          return [];
        const sum = at(i, place);
        const parts = takes.flatMap((one) => at(i, one) ?? []);
        return sum === null || parts.length < 2 ? [] : [{ sum, parts }];
      });
      return lines.length === 0 ? [] : [{ said, lines }];
    });
    if (ways.length > 0) readings.push(ways);
  });
  return readings;
}

/** Whether a later subtotal takes it in: it stands between two of them. */
function covered(place: number, own: readonly Line[]): boolean {
  return own.some((line, i) => i > place && line.line === 'subtotal');
}

/** "Quorrimel n" and "Total n" end alike. */
function last0(head: string): string {
  return head.split(' ').pop()?.toLowerCase() ?? '';
}
