import type { Findings } from '../contract.ts';
import type { PrintedFigure } from './reading/claim.ts';

/** The five answers that a printed figure can get. */
export const VERDICTS = [
  'agrees',
  'agrees only if rounded',
  'differs',
  'cannot be',
  'cannot be checked',
] as const;
export type ClaimVerdict = (typeof VERDICTS)[number];

/**
 * What one check says. `passes`: nothing speaks against the figure, yet the check does not settle its
 * digits (a bound, an order); `open`: something is missing.
 */
export type Outcome = ClaimVerdict | 'passes' | 'open';

export interface FigureCheck {
  /** Id of the figure that is judged. */
  readonly figure: string;
  /** What is checked, in a few words. */
  readonly name: string;
  readonly from: 'print' | 'data';
  readonly outcome: Outcome;
  /** How the figure would have to be rounded, of `agrees only if rounded`. */
  readonly rounded?: string;
  /** The convention under which it agrees, where that is not the first to be thought of: "Welch's correction". */
  readonly under?: string;
  /** The reading under which it agrees, where the one that was named does not: "counted by kind". */
  readonly when?: string;
  /** Agreement with so coarse a print that it says nothing of the figures it rests on: "p < .001". */
  readonly coarse?: true;
  /** The arithmetic, in sentences. */
  readonly working: string;
  /** What would explain a difference, where exactly one of the usual reasons fits. */
  readonly explained?: string;
  /** The shortest way to settle it. */
  readonly resolve?: string;
  /** Of `open` from the data: what is missing. */
  readonly missing?: string;
  /** Ids of the other figures it rests on. */
  readonly with: readonly string[];
}

/** A printed figure with everything that was found about it. */
export interface JudgedFigure {
  readonly figure: PrintedFigure;
  readonly verdict: ClaimVerdict;
  /** As a reader reads it: "agrees only if rounded half to even". */
  readonly says: string;
  readonly checks: readonly FigureCheck[];
  /** Of the check that decides. */
  readonly why: string;
  readonly explained: string;
  readonly resolve: string;
  /** Why it was not held against the data that are open; empty where it was, or where no data are. */
  readonly unheld: string;
}

/** Figures that could not be checked and would be by the same thing. */
export interface Unchecked {
  readonly resolve: string;
  readonly entries: readonly JudgedFigure[];
}

/** How the last printed digits of a column of readings are spread. */
export interface LastDigits {
  readonly set: string;
  readonly attribute: string;
  readonly n: number;
  /** How often each of 0 … 9 occurs. */
  readonly digits: readonly number[];
  readonly zeroOrFive: number;
  readonly statistic: number;
  readonly p: number;
  /** Whether the digits are spread so unevenly that the step of measuring was likely coarser. */
  readonly uneven: boolean;
}

/** What a printed table was read as. */
export interface ReadTable {
  readonly name: string;
  readonly caption: string;
  readonly kind: 'counts' | 'shares' | 'samples';
  readonly columns: readonly { readonly head: string; readonly role: string; readonly line: string }[];
  readonly rows: readonly { readonly label: string; readonly line: string }[];
  /** The attributes of the data that its labels were taken to name; empty where it is held against itself only. */
  readonly ofData: readonly string[];
}

export interface ClaimsFound extends Findings {
  /** Title and source of the paper; empty where nobody said. */
  readonly paper: string;
  readonly judged: readonly JudgedFigure[];
  readonly counts: Readonly<Record<ClaimVerdict, number>>;
  readonly unchecked: readonly Unchecked[];
  /** Figures with another verdict that were held against other figures only although data are open, by what is missing. */
  readonly unheld: readonly Unchecked[];
  readonly digits: readonly LastDigits[];
  /** Whether data stood behind the answer. */
  readonly withData: boolean;
  /** Columns of the claims file that were not read. */
  readonly ignored: readonly string[];
  /** What could not be read and is left out, each in a sentence. */
  readonly unread: readonly string[];
  /** The printed tables as they were read: what each row and column was taken for. */
  readonly tables: readonly ReadTable[];
  /** Open questions of the data's own tables, each in a sentence. */
  readonly doubts: readonly string[];
}
