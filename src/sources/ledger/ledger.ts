import type { Note, Reading } from '../../cells/reading.ts';
import type { LedgerEntry } from '../source-reading.ts';

const RANK: Readonly<Record<Note['level'], number>> = { read: 0, flagged: 1, 'not-understood': 2 };

/** A ledger under construction for one source. */
export interface Ledger {
  readonly source: string;
  readonly entries: LedgerEntry[];
}

export function openLedger(source: string): Ledger {
  return { source, entries: [] };
}

export function enter(ledger: Ledger, entry: Omit<LedgerEntry, 'source'>): void {
  const { row, column, raw, readAs, level, rule, why } = entry;
  ledger.entries.push({ source: ledger.source, row, column, raw, readAs, level, rule, why });
}

/** What the notes of one reading come to: the gravest level, its rule, and all sentences in one. */
export function summariseNotes(notes: readonly Note[]): Note | null {
  if (notes.length === 0) return null;
  let gravest = notes[0]!;
  for (const note of notes) if (RANK[note.level] > RANK[gravest.level]) gravest = note;
  const why = notes.length === 1 ? gravest.why : [...new Set(notes.map((note) => note.why))].join(' ');
  return { level: gravest.level, rule: gravest.rule, why };
}

/** A reading in words, for the ledger: "35 to 40 mm", "about 3.15 to 3.85 mm", "absent". */
export function describeReading(reading: Reading, unit?: string): string {
  if (reading.state !== 'measured' && reading.state !== 'approximate') return reading.state.replace('-', ' ');
  if (reading.kind === 'text') return reading.text;
  if (reading.kind === 'term') {
    const sure = reading.certainty === 'certain' ? '' : ` (${reading.certainty})`;
    return reading.term === null ? '' : `${reading.term}${sure}`;
  }
  const { low, high } = reading;
  if (Number.isNaN(low)) return '';
  const about = reading.state === 'approximate' ? 'about ' : '';
  return `${about}${inWords(low, high)}${unit === undefined ? '' : ` ${unit}`}`;
}

/** "35", "35 to 40", "at least 35", "at most 40". */
export function inWords(low: number, high: number): string {
  if (low === high) return short(low);
  if (high === Number.POSITIVE_INFINITY) return `at least ${short(low)}`;
  if (low === Number.NEGATIVE_INFINITY) return `at most ${short(high)}`;
  return `${short(low)} to ${short(high)}`;
}

/** Enough digits to recognise the number, none of the binary tail. */
function short(value: number): string {
  return String(Number(value.toPrecision(6)));
}

/** In the order of the file: rows first, then as entered. A counting sort, for ledgers of large tables. */
export function sortLedger(entries: readonly LedgerEntry[]): LedgerEntry[] {
  let last = 0;
  for (const { row } of entries) if (row > last) last = row;
  const starts = new Int32Array(last + 2);
  for (const { row } of entries) starts[row + 1]!++;
  for (let row = 1; row < starts.length; row++) starts[row]! += starts[row - 1]!;
  const sorted: LedgerEntry[] = [...entries];
  for (const entry of entries) sorted[starts[entry.row]!++] = entry;
  return sorted;
}
