import type { Note } from '../cells/reading.ts';
import type { FaultPlace } from '../errors.ts';
import type { FragmentTable } from '../fragments/table.ts';
import type { RepeatedIdDecision } from './profile/decisions.ts';
import type { SourceProfile, SplitRule } from './profile/profile.ts';

/** What reading one source yields. All of it is plain data that can be posted to a worker. */

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';
export type Delimiter = ',' | ';' | '\t' | '|';
export type DecimalMark = ',' | '.';

export interface Dialect {
  readonly encoding: Encoding;
  readonly delimiter: Delimiter;
  /** The mark that most numeric columns of the file use; each column has its own. */
  readonly decimal: DecimalMark;
}

/** One cell (or header, or whole file: row 0) that was changed, flagged or not understood. */
export interface LedgerEntry {
  readonly source: string;
  /** Row of the grid, 1 = first; 0 where the entry is about the whole file. */
  readonly row: number;
  /** Header of the column; "" where the entry is about a whole row or the file. */
  readonly column: string;
  /** The text as it stands in the file. */
  readonly raw: string;
  /** What it was read as, in words; "" where there is no reading. */
  readonly readAs: string;
  readonly level: Note['level'];
  /** Short stable name of the rule. */
  readonly rule: string;
  /** One sentence. */
  readonly why: string;
}

export interface RowSetAside {
  /** Row of the grid, 1 = first. */
  readonly row: number;
  readonly reason: string;
}

/**
 * - `matched`: feeds an attribute (`attribute`, or several through a split).
 * - `suggested`: a near match that waits for confirmation; until then the column is kept as text.
 * - `unknown`: no attribute; kept as a text column.
 * - `ignored`: the profile leaves it out; its cells stand in the ledger.
 * - `empty`: no text below the header.
 */
export type ColumnStatus = 'matched' | 'suggested' | 'unknown' | 'ignored' | 'empty';

/** What a column may be, for somebody to confirm. */
export interface Suggestion {
  readonly attribute: string;
  readonly reason: string;
  /** 0 to 1. */
  readonly score: number;
  /** The cells hold two values: how the profile would part them. */
  readonly split?: SplitRule;
  /** What the cells say for it, and against it, in a few words each. */
  readonly speaksFor: readonly string[];
  readonly speaksAgainst: readonly string[];
  /** Header and cells agree and nothing else is as likely: taken when all that is beyond doubt is taken. */
  readonly sure: boolean;
}

export interface ColumnReading {
  /** Position in the grid, 0 = first. */
  readonly index: number;
  /** The header as used: unique, "column 3" where the file has none. */
  readonly header: string;
  readonly status: ColumnStatus;
  /** Attribute ids that the column feeds: one, or several when its cells are split. */
  readonly attributes: readonly string[];
  /** How the match was made: the synonym met, "profile", or "suggestion accepted". */
  readonly via?: string;
  readonly suggestion?: Suggestion;
  /** Unit of the source's numbers, where known. */
  readonly unit?: string;
  /** The unit in which the numbers are read although nothing in the source states one. */
  readonly assumedUnit?: string;
  readonly decimal: DecimalMark;
  /** Cells with text among the rows kept. */
  readonly filled: number;
  /** Blank cells below names that occur in one block each: they may mean "as above". */
  readonly blanksBelow?: number;
  /** Cells that list the sizes of several pieces, while nobody has said which of them to keep. */
  readonly severalPieces?: number;
  /** Why the column was not taken although its header matches, or what to look at. */
  readonly doubt?: string;
}

/** A thing the reader should put right or decide; the source is read all the same. */
export interface Fault {
  readonly what: string;
  readonly where: FaultPlace;
  readonly mend: string;
}

/** An identifier that stands in more than one row of a source. */
export interface RepeatedId {
  readonly id: string;
  /** Rows of the grid, 1 = first. */
  readonly rows: readonly number[];
  /** null: nobody has said what they are, and they count as fragments of one item. */
  readonly decision: RepeatedIdDecision | null;
}

/** Rows with more cells than the header, while nobody has said how they are read. */
export interface TooLongRows {
  /** Rows of the grid, 1 = first. */
  readonly rows: readonly number[];
  /** Header of the last column. */
  readonly column: string;
  /** It is of free text, and may hold the sign that parts the cells. */
  readonly mayJoin: boolean;
}

export interface SourceReading {
  readonly name: string;
  readonly role: 'fragments' | 'assemblages';
  readonly dialect: Dialect;
  /** Every record of the file as text; turned on its side where the file has one row an attribute. */
  readonly grid: readonly (readonly string[])[];
  readonly transposed: boolean;
  /** Row of the grid that holds the (last) header, 1 = first; 0 where the file has none. */
  readonly headerRow: number;
  readonly columns: readonly ColumnReading[];
  readonly ledger: readonly LedgerEntry[];
  readonly faults: readonly Fault[];
  /** Lines of the file; they are more than its records where cells hold line breaks. */
  readonly lines: number;
  /** Rows of the grid other than header rows. Always rowsKept + rowsSetAside.length. */
  readonly rowsRead: number;
  readonly rowsKept: number;
  readonly rowsSetAside: readonly RowSetAside[];
  readonly repeatedIds: readonly RepeatedId[];
  /** Set aside until somebody says how they are read; absent where there are none. */
  readonly tooLong?: TooLongRows;
  /** The profile that gives this reading again: the one passed in, with every detected choice written out. */
  readonly profile: SourceProfile;
  readonly table: FragmentTable;
}
