import type { ResultTable, TableCell } from '../analyses/contract.ts';
import { DATE_UNIT } from '../analyses/phrasing.ts';
import { YEAR_UNIT } from '../analyses/years.ts';
import { type NormalisedField, printNumber } from '../sources/formats/normalised-table.ts';
import { csvPieces } from '../sources/formats/safe-csv.ts';

export interface CsvTable {
  readonly fields: readonly NormalisedField[];
  /** Header row of labels with units, one line a row, numbers in full precision; to be gone through once. */
  readonly pieces: Iterable<string>;
  /** Texts that stand where a number could not be computed, and the empty cell. */
  readonly missingValues: readonly string[];
}

/** A table of results as CSV, for a chapter or another program: nothing rounded, every gap with its reason. */
export function tableCsv(table: ResultTable): string {
  return [...tablePieces(table).pieces].join('');
}

/** The same piece by piece, with what describes it. */
export function tablePieces(table: ResultTable): CsvTable {
  const names = distinct(table.columns.map(({ label, unit }) => (unit ? `${label} (${unit})` : label)));
  const fields = table.columns.map(({ label, unit }, place): NormalisedField => {
    const isNumber = table.rows.some((row) => typeof row[place] === 'number');
    const isMixed = table.rows.some((row) => typeof row[place] === 'string');
    return {
      name: names[place],
      type: isNumber && !isMixed ? 'number' : 'string',
      title: label,
      ...(unit === undefined ? {} : { unit }),
    };
  });
  function* rows(): Generator<readonly string[]> {
    yield names;
    for (const row of table.rows)
      yield table.columns.map(({ id }, place) => {
        const cell = row[place] ?? null;
        return id === 'unit' && cell === DATE_UNIT ? YEAR_UNIT : textOf(cell);
      });
  }
  return { fields, pieces: csvPieces(rows()), missingValues: ['', ...reasonsIn(table)] };
}

function textOf(cell: TableCell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return printNumber(cell);
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  return typeof cell === 'string' ? cell : notGiven(cell.why);
}

/** Texts that stand for a number that could not be computed, in the order in which they come. */
function reasonsIn({ columns, rows }: ResultTable): ReadonlySet<string> {
  const reasons = new Set<string>();
  for (const row of rows)
    for (let place = 0; place < columns.length; place++) {
      const cell = row[place] ?? null;
      if (typeof cell === 'object' && cell !== null) reasons.add(notGiven(cell.why));
    }
  return reasons;
}

function notGiven(why: string): string {
  return `not given: ${why}`;
}

/** Field names must differ; a repeated label gets its number. */
function distinct(names: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return names.map((name) => {
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return count === 1 ? name : `${name} ${count}`;
  });
}
