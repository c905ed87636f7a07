import type { Association } from '../../numerics/tests/contingency.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { LevelSaid } from '../shared/level/said.ts';
import type { Told } from '../verdicts.ts';
import type { Apart, NotApart } from './apart-found.ts';
import type { Typology } from './rules.ts';
import type { HeapSplit, MovedCut } from './split-found.ts';

/** Place of a record that is of no single type. */
export const NO_TYPE = { none: -1, several: -2, undecided: -3 } as const;

/** Which type each record is of. */
export interface Assignment {
  /** Rows of the table that the typology speaks of. */
  readonly rows: Int32Array;
  /** For each of them the place of its type, or one of NO_TYPE. */
  readonly type: Int32Array;
  /** For each undecided one the attribute that keeps it so. */
  readonly blame: readonly (string | null)[];
  /** Rows that the typology does not speak of, or may not. */
  readonly setAside: readonly { readonly reason: string; readonly fragments: number }[];
  /** Pairs of types that some record fits both, with the number of records. */
  readonly overlaps: readonly { readonly first: number; readonly second: number; readonly records: number }[];
}

/** Whether the types go with something outside themselves. */
export interface Meaning {
  readonly attribute: string;
  readonly label: string;
  readonly kinds: readonly string[];
  /** counts[type][kind], empty types and kinds left out. */
  readonly counts: readonly (readonly number[])[];
  /** Places of the types that the lines of `counts` stand for. */
  readonly types: readonly number[];
  readonly association: Association | Unavailable;
  /** Exact or resampled where an expected count is below 5, from chi-squared otherwise. */
  readonly p: number | Unavailable;
  /** Over all attributes set against the types (Holm). */
  readonly pAdjusted: number | Unavailable;
  readonly method: string;
  /** The cell with the largest adjusted residual, as places in `counts`; null where there is none. */
  readonly strongest: { readonly type: number; readonly kind: number; readonly residual: number } | null;
  readonly told: Told;
  /** At which level kinds were counted, and the verdict by the words as recorded; null where that changes nothing. */
  readonly level: LevelSaid;
  readonly asRecorded: Told | null;
}

/** What a typology costs to say, and what it saves in saying everything else. */
export interface Complexity {
  /** Bits that say the rules. */
  readonly rules: number;
  /** Bits that say the attributes, each fold told by the others, for records of known type. */
  readonly values: number;
  /** The same without any type. */
  readonly withoutTypes: number;
  /** withoutTypes - values - rules: what the typology saves after all; below 0 it does not pay for itself. */
  readonly saved: number;
  readonly attributes: readonly string[];
}

/** What one typology says of the records, and how well that holds. */
export interface JudgedTypology {
  readonly typology: Typology;
  /** The rule of each type as a reader would say it. */
  readonly rules: readonly string[];
  /** Conditions that the rules hold together. */
  readonly conditions: number;
  readonly defining: readonly string[];
  readonly assignment: Assignment;
  readonly apart: Apart | NotApart;
}

/** A typology with what it costs and saves, told on the same records and attributes as its rivals. */
export interface Weighed extends JudgedTypology {
  readonly complexity: Complexity;
}

/** What all tests together say of the claim. */
export type TypesVerdict =
  | 'supported'
  /** Supported, but the types go so far with a condition that it alone may make them. */
  | 'may be a condition'
  /** No division is seen where the rules cut. */
  | 'one range'
  | 'divided elsewhere'
  | 'not distinguishable'
  | 'circular'
  | 'not testable'
  | 'open';

export interface TypologyFound extends Findings, Weighed {
  readonly unit: 'fragment' | 'item';
  readonly confidence: number;
  readonly verdict: TypesVerdict;
  /** Ids of the records that the typology speaks of, in the order of the assignment. */
  readonly ids: readonly string[];
  /** Types with too few records for anything to be said of them. */
  readonly small: readonly number[];
  readonly splits: readonly HeapSplit[];
  readonly moved: readonly MovedCut[];
  readonly meaning: readonly Meaning[];
  /** How many of so many simulated samples of one kind, recorded coarsely, the same tests take for two. */
  readonly takenForTwo: { readonly found: number; readonly samples: number };
  readonly rivals: readonly Weighed[];
  readonly labelOf: ReadonlyMap<string, string>;
  /** Place of each type in the order of symbols and colours: of kinds, that of the kind; else its own place. */
  readonly typeMarks: readonly number[];
  /** Assemblages that the typed records come from. */
  readonly assemblages: readonly string[];
}
