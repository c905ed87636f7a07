import type { ResultTable, TableCell } from '../analyses/contract.ts';
import { DATE_UNIT } from '../analyses/phrasing.ts';
import { YEAR_UNIT } from '../analyses/years.ts';
import { type NormalisedField, printNumber } from '../sources/formats/normalised-table.ts';
import { writeCsv } from '../sources/formats/safe-csv.ts';

export interface CsvTable {
  readonly fields: readonly NormalisedField[];
  /** Header row of labels with units, one line a row, numbers in full precision. */
  readonly csv: string;
  /** Texts that stand where a number could not be computed, and the empty cell. */
  readonly missingValues: readonly string[];
}

/** A table of results as CSV, for a chapter or another program: nothing rounded, every gap with its reason. */
export function tableCsv(table: ResultTable): CsvTable {
  const reasons = new Set<string>();
  const text = (cell: TableCell) => {
    if (cell === null) return '';
    if (typeof cell === 'number') return printNumber(cell);
    if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
    if (typeof cell === 'string') return cell;
    reasons.add(notGiven(cell.why));
    return notGiven(cell.why);
  };
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
  const rows = table.rows.map((row) =>
    table.columns.map(({ id }, place) => {
      const cell = row[place] ?? null;
      return id === 'unit' && cell === DATE_UNIT ? YEAR_UNIT : text(cell);
    }),
  );
  return { fields, csv: writeCsv([names, ...rows]), missingValues: ['', ...reasons] };
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
