import type { z } from 'zod';
import type { Register } from '../attributes/definition.ts';
import type { FragmentTable } from '../fragments/table.ts';
import type { Random } from '../numerics/foundation/random.ts';
import type { Unavailable } from '../numerics/foundation/unavailable.ts';

/**
 * The shape that every analysis shares: options in, findings out, and from the findings the figures
 * and the words. One folder an analysis: options.ts, compute.ts, figures.ts, words.ts.
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

export interface Findings {
  readonly n: Counts;
  readonly tables: Readonly<Record<string, ResultTable>>;
}

/** A plotly figure: data and layout, plain JSON. */
export interface Figure {
  readonly data: readonly Readonly<Record<string, unknown>>[];
  readonly layout: Readonly<Record<string, unknown>>;
  /** Says everything needed to read the figure on its own, n included. */
  readonly caption: string;
}

export interface Words {
  /** One sentence fit to print. */
  readonly sentence: string;
  readonly cautions: readonly string[];
}

export interface AnalysisInput {
  /** The selected fragments, one row each. */
  readonly fragments: FragmentTable;
  /** The records to analyse: the same fragments, or one row an item when the unit is the item. */
  readonly records: FragmentTable;
  readonly unit: 'fragment' | 'item';
  readonly register: Register;
  /** Bytes of the files that options name (marked `refersTo: 'file'`), by the name they are given there. */
  readonly files?: ReadonlyMap<string, Uint8Array>;
  /** Already set to this analysis's own stream. */
  readonly random: Random;
  /** Share of the work done, 0 to 1; throws when the reader has cancelled. */
  readonly onProgress?: (share: number, what: string) => void;
}

export interface Analysis<Options, Found extends Findings> {
  readonly kind: string;
  /** The question it answers, as a reader would ask it. */
  readonly question: string;
  /** The one schema: types, checks, messages, command-line help, form and JSON Schema come from it. */
  readonly options: z.ZodType<Options>;
  readonly compute: (input: AnalysisInput, options: Options) => Found;
  readonly figures: (found: Found) => Readonly<Record<string, Figure>>;
  readonly words: (found: Found) => Words;
}
