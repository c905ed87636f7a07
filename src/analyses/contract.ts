import type { z } from 'zod';
import type { Register } from '../attributes/definition.ts';
import type { FragmentTable } from '../fragments/table.ts';
import type { Random } from '../numerics/foundation/random.ts';
import type { Unavailable } from '../numerics/foundation/unavailable.ts';

/**
 * The shape that every analysis shares: options in, findings out, and from the findings the tables, the
 * figures and the answer. One folder an analysis: options.ts (what may be asked), found.ts (the typed
 * findings, verdicts among them), compute.ts (table and options -> found), tables.ts, figures.ts, words.ts
 * (found -> what is shown), index.ts (binds them).
 */

export type { Unavailable } from '../numerics/foundation/unavailable.ts';

export type TableCell = number | string | boolean | null | Unavailable;

export interface ResultColumn {
  /** The statistic's standard name: n, missing, mean, sd, median, q1, q3, p, low, high … */
  readonly id: string;
  readonly label: string;
  readonly unit?: string;
}

export interface ResultTable {
  readonly title: string;
  readonly columns: readonly ResultColumn[];
  readonly rows: readonly (readonly TableCell[])[];
  /** Said below the table: how to read it, what was left out. */
  readonly note?: string;
  /** Ids of the columns that a narrow place shows, where not all fit; the leading ones if left out. */
  readonly briefly?: readonly string[];
}

export interface SetAside {
  readonly reason: string;
  readonly fragments: number;
}

/** How many records an answer rests on. `items` counts distinct original objects. */
export interface Counts {
  readonly fragments: number;
  readonly items: number;
  readonly setAside: readonly SetAside[];
}

/**
 * What an analysis found. Verdicts (does p pass the level, does a label stay in the set, is a group stable)
 * are typed values in here, made once in compute.ts; everything that shows them only words them.
 */
export interface Findings {
  readonly n: Counts;
}

/** A plotly figure: data and layout, plain JSON. */
export interface Figure {
  readonly data: readonly Readonly<Record<string, unknown>>[];
  readonly layout: Readonly<Record<string, unknown>>;
  /** Says everything needed to read the figure on its own, n included. */
  readonly caption: string;
}

/** What would change a verdict: how the finds were recorded, kept, dated or counted. */
export interface Turn {
  /** What is done or known otherwise: "counted by what all five catalogues record". */
  readonly what: string;
  /** What the verdict then is, or how far it moves: "Saltmere is the most alike, 152 of 200". */
  readonly size: string;
  /** Whether it was tried and does change the verdict, or only could. */
  readonly overturns: boolean;
}

/** What is said of a question, through every door in the same words. */
export interface Answer {
  /** The verdict in one sentence of at most 30 words, without symbols but units: made after the cautions. */
  readonly answer: string;
  /** At most four lines of evidence: n, the effect with its interval, p; what a colleague would check. */
  readonly because: readonly string[];
  /** What would change this verdict here, worst first. */
  readonly unless: readonly Turn[];
  /** What would settle it: a measurement, a table, a confirmation. */
  readonly next?: readonly string[];
}

export interface AnalysisInput {
  /** The selected fragments, one row each. */
  readonly fragments: FragmentTable;
  /** The records to analyse: the same fragments, or one row an item when the unit is the item. */
  readonly records: FragmentTable;
  readonly unit: 'fragment' | 'item';
  readonly register: Register;
  /** Orders of labels that the study fixes for symbols and colours: attribute -> labels. */
  readonly marks?: Readonly<Record<string, readonly string[]>>;
  /** Bytes of the files that options name (marked `refersTo: 'file'`), by the name they are given there. */
  readonly files?: ReadonlyMap<string, Uint8Array>;
  /** Already set to this analysis's own stream. */
  readonly random: Random;
  /** Nothing but the verdict and the answer is wanted: what only a table or a figure shows need not be computed. */
  readonly alone?: boolean;
  /** Share of the work done, 0 to 1; throws when the reader has cancelled. */
  readonly onProgress?: (share: number, what: string) => void;
}

/** Labels of one attribute that stay possible; none where all are excluded. */
export interface LabelsLeft {
  readonly attribute: string;
  readonly labels: readonly string[];
}

/** Who comes first in a ranking, nobody where that cannot be told, and who cannot be ruled out as first. */
export interface FirstOf {
  readonly rank: 'most' | 'least';
  /** As a sentence names it: "which are most alike". */
  readonly which: string;
  readonly first: readonly string[];
  readonly open: readonly string[];
}

/** What is told of one attribute or table, and the conditions that it is said under, as nouns. */
export interface ToldUnder {
  readonly of: string;
  readonly told: string;
  readonly under: readonly string[];
}

/**
 * A verdict in short. Texts are the same verdict where they are equal; sets of labels are contrary where they share none,
 * rankings where neither leader is possible in the other, tests where they tell another thing.
 */
export type ShortVerdict = string | readonly (LabelsLeft | FirstOf | ToldUnder)[];

export interface Leads {
  readonly figure?: string;
  readonly table?: string;
}

export interface Analysis<Options, Found extends Findings> {
  readonly kind: string;
  /** The question it answers, as a reader would ask it. */
  readonly question: string;
  /** The one schema: types, checks, messages, command-line help, form and JSON Schema come from it. */
  readonly options: z.ZodType<Options>;
  /** What holds of every answer of this kind; said once at the end of a report, not under each answer. */
  readonly always?: readonly string[];
  readonly compute: (input: AnalysisInput, options: Options) => Found;
  readonly tables: (found: Found) => Readonly<Record<string, ResultTable>>;
  readonly figures: (found: Found) => Readonly<Record<string, Figure>>;
  readonly words: (found: Found) => Answer;
  /**
   * Attributes whose labels are the answer (the groups contrasted, the places compared, the labels judged): fragments
   * without one take no part, and are counted in the lead. Absent where no label is.
   */
  readonly labels?: (options: Options, input: AnalysisInput) => readonly string[];
  /**
   * The verdict in short, to be held against that of the same question asked otherwise. Absent where an analysis describes and judges nothing.
   */
  readonly verdict?: (found: Found) => ShortVerdict;
  /** The options with all left out that the verdict does not rest on, where that is much: for asking it otherwise. */
  readonly verdictAlone?: (options: Options) => Options;
  /** The figure and the table that carry the answer, by the beginnings of their names; the first ones if left out. */
  readonly leads?: Leads;
}
