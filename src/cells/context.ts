import type { Register, Vocabulary } from '../attributes/definition.ts';
import type { CellState } from './reading.ts';

/** What a cell cannot tell by itself: the habits of its source and of its column. */
export interface CellContext {
  /** Decimal mark of the column; decides whether "1,200" is 1.2 or 1200. */
  readonly decimal: ',' | '.';
  /** Unit that the header states; a unit inside the cell wins over it. Era words ("BC", "cal BP") for years. */
  readonly unit?: string;
  /** Codes of the source for "nothing here"; they win over every built-in rule. The key "" is the blank cell. */
  readonly missing?: Readonly<Record<string, CellState>>;
  readonly vocabulary?: Vocabulary;
  /** With it, cells that describe several attributes at once are parted; without it they hold one term. */
  readonly register?: Register;
  /** Facets of which the source says nothing where there is nothing to say, by attribute. */
  readonly tells?: readonly string[];
  /** Wordings of the source -> term id, as its profile settled them; they win over synonyms. */
  readonly translations?: Readonly<Record<string, string>>;
  /** Relative widening of "about": 0.1 widens by 10 % on either side. Default 0.1. */
  readonly circa?: number;
  /** Reading of all-capital ply letters such as "ZS"; without it they are questioned. */
  readonly plyOrder?: 'final-first' | 'singles-first';
}

/** Relative widening of an approximate reading unless the context says otherwise. */
export const DEFAULT_CIRCA = 0.1;
