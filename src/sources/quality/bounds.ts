import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { unitKind } from '../../attributes/header.ts';
import { usualOf } from '../../attributes/usual-by-structure.ts';
import { termAt } from '../../fragments/accessors.ts';
import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import { inWords } from '../ledger/ledger.ts';

/** A reading outside the bounds within which its attribute is plausible; flagged, never excluded. */
export interface OutOfBounds {
  readonly attribute: string;
  readonly row: number;
  readonly raw: string;
  readonly low: number;
  readonly high: number;
  /** `limit`: hardly possible; `usual`: possible but rare. */
  readonly beyond: 'limit' | 'usual';
  /** The bounds are those of the row's own structure, narrower than anywhere. */
  readonly ofStructure?: true;
  /** The slip that would explain it, as a question: "35 cm? 35 mm?". */
  readonly likely?: string;
}

interface Slip {
  /** What the stored number has to be multiplied with if the slip was made. */
  readonly factor: number;
  readonly question: string;
}

const LENGTH_SLIPS: readonly Slip[] = [
  { factor: 10, question: 'written in cm, read as mm?' },
  { factor: 0.1, question: 'written in mm, read as cm?' },
  { factor: 25.4, question: 'written in inches, read as mm?' },
  { factor: 1000, question: 'written in m, read as mm?' },
  { factor: 0.001, question: 'written in µm, read as mm?' },
];
const COUNT_SLIPS: readonly Slip[] = [
  { factor: 0.1, question: 'counted per 10 cm, read as per cm?' },
  { factor: 10, question: 'counted per mm, read as per cm?' },
  { factor: 0.2, question: 'counted per 5 cm, read as per cm?' },
  { factor: 1 / 2.54, question: 'counted per inch, read as per cm?' },
];
const POINT_SLIPS: readonly Slip[] = [
  { factor: 0.1, question: 'a decimal mark lost?' },
  { factor: 0.01, question: 'a decimal mark lost?' },
];

/**
 * Readings outside `plausible` bounds, with the unit slip that would bring them back within what is
 * usual: in fabrics of the row's structure where that has bounds of its own. An interval counts when it lies
 * wholly outside.
 */
export function outOfBounds(table: FragmentTable, register: Register): OutOfBounds[] {
  const found: OutOfBounds[] = [];
  const structures = table.columns.get('structure');
  const vocabulary = register.vocabularies.get('structure');
  const structureAt = (row: number) => (structures?.kind === 'term' ? termAt(structures, row) : null);
  for (const [id, column] of table.columns) {
    if (column.kind !== 'numeric' || column.attribute.plausible === undefined) continue;
    for (let row = 0; row < table.rows; row++) {
      const usualHere = usualOf(id, structureAt(row), vocabulary);
      const beyond = beyondBounds(column, row, usualHere);
      if (beyond === null) continue;
      const likely = likelySlip(column.attribute, column.low[row]!, column.high[row]!);
      const base = {
        attribute: id,
        row,
        raw: column.raw[row]!,
        low: column.low[row]!,
        high: column.high[row]!,
        beyond,
        ...(usualHere === undefined ? {} : { ofStructure: true as const }),
      };
      found.push(likely === null ? base : { ...base, likely });
    }
  }
  return found;
}

function beyondBounds(
  column: NumericColumn,
  row: number,
  usualHere: readonly [number, number] | undefined,
): OutOfBounds['beyond'] | null {
  const low = column.low[row]!;
  const high = column.high[row]!;
  if (Number.isNaN(low)) return null;
  const outside = (bounds: readonly [number, number] | undefined): boolean =>
    bounds !== undefined && (low > bounds[1] || high < bounds[0]);
  const { limit, usual } = column.attribute.plausible!;
  if (outside(limit)) return 'limit';
  return outside(usualHere ?? usual) ? 'usual' : null;
}

/** The first slip that brings a reading within the usual bounds (the limit where nothing is usual). */
export function likelySlip(attribute: AttributeDefinition, low: number, high: number): string | null {
  const bounds = attribute.plausible?.usual ?? attribute.plausible?.limit;
  if (bounds === undefined || !Number.isFinite(low) || !Number.isFinite(high)) return null;
  const kind = attribute.unit === undefined ? undefined : unitKind(attribute.unit);
  const slips = kind === 'length' ? LENGTH_SLIPS : kind === 'count' ? COUNT_SLIPS : POINT_SLIPS;
  const slip = slips.find(({ factor }) => low * factor >= bounds[0] && high * factor <= bounds[1]);
  if (slip === undefined) return null;
  const read = `${inWords(low, high)} ${attribute.unit ?? ''}`.trim();
  const meant = `${inWords(low * slip.factor, high * slip.factor)} ${attribute.unit ?? ''}`.trim();
  return `${read}? ${meant}? (${slip.question})`;
}

/** An attribute most of whose readings are unusual in the same way: the unit of the whole column is in doubt. */
export interface ColumnSlip {
  readonly attribute: string;
  readonly outside: number;
  readonly readings: number;
  readonly likely: string;
}

/** Columns in which more than half of the readings lie outside what is usual and one slip explains them. */
export function columnSlips(table: FragmentTable, found: readonly OutOfBounds[]): ColumnSlip[] {
  const slips: ColumnSlip[] = [];
  for (const [id, column] of table.columns) {
    if (column.kind !== 'numeric') continue;
    const mine = found.filter(({ attribute, likely }) => attribute === id && likely !== undefined);
    const readings = column.low.reduce((count, low) => count + (Number.isNaN(low) ? 0 : 1), 0);
    if (readings < 3 || mine.length <= 0.5 * readings) continue;
    const questions = new Map<string, number>();
    for (const { likely } of mine) {
      const question = /\(([^)]*)\)$/.exec(likely!)?.[1] ?? '';
      questions.set(question, (questions.get(question) ?? 0) + 1);
    }
    const [likely, count] = [...questions].sort((a, b) => b[1] - a[1])[0]!;
    if (count > 0.5 * readings) slips.push({ attribute: id, outside: mine.length, readings, likely });
  }
  return slips;
}
