import type { SeemingCounts } from '../../../sources/columns/looks-like-counts.ts';
import type { Proposal } from '../../../sources/columns/propose-attributes.ts';
import type { WitnessCandidate } from '../../../sources/names/witness-candidates.ts';
import type { QualityReport } from '../../../sources/quality/quality.ts';
import type { SourceReading } from '../../../sources/source-reading.ts';

/** A source as it was read, without its grid and table: those stay in the worker. */
export interface SourceView extends Omit<SourceReading, 'grid' | 'table'> {
  readonly gridRows: number;
  readonly gridColumns: number;
  /** Headers of the file where its rows were laid out anew (counts, long form); null where the columns are those of the file. */
  readonly fileHeaders: readonly string[] | null;
  /** Texts of nominal columns that match no term, most frequent first. */
  readonly openTerms: readonly OpenTerm[];
  /** Column -> a few distinct texts, for the questions. */
  readonly examples: readonly (readonly string[])[];
  /** Column -> share of kept rows with text. */
  readonly filledShare: readonly number[];
  /** Columns whose text no attribute and no text column would hold under this profile. */
  readonly lost: readonly string[];
  /** How the columns that nothing claims can be taken as they are. */
  readonly asIs: readonly Proposal[];
  /** Kinds that the table seems to count, place by place. */
  readonly counts: SeemingCounts | null;
  /** Sheets of the workbook that hold anything; none for a text table. */
  readonly sheets: readonly string[];
  readonly quality: QualityReport;
  /** Columns that may name the object, the likeliest first. */
  readonly witness: readonly WitnessCandidate[];
  /** Texts of the rows that share an identifier, in the order of `repeatedIds`. */
  readonly repeatedLines: readonly (readonly (readonly string[])[])[];
}

/** Two rows of different sources that may be one find. */
export interface DuplicateView {
  readonly first: DuplicateSide;
  readonly second: DuplicateSide;
  readonly why: string;
  /** What both say, attribute by attribute. */
  readonly says: readonly { readonly label: string; readonly first: string; readonly second: string }[];
}

export interface DuplicateSide {
  readonly source: string;
  readonly id: string;
  readonly row: number;
}

export interface OpenTerm {
  readonly header: string;
  readonly attribute: string;
  readonly text: string;
  readonly count: number;
  readonly suggestion?: { readonly term: string; readonly reason: string };
}
