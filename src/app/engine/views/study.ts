import type { AttributeDefinition, Term } from '../../../attributes/definition.ts';
import type { Witness } from '../../../fragments/items/witness.ts';
import type { AlignedColumn, ProposedJoin } from '../../../sources/combine/align.ts';
import type { CompoundName } from '../../../sources/names/compound-names.ts';
import type { NearNames } from '../../../sources/names/near-names.ts';
import type { TogetherReport } from '../../../sources/quality/quality.ts';
import type { ReadinessLine } from '../../../study/results/results.ts';
import type { DuplicateView, SourceView } from './sources.ts';

export interface AttributeView {
  readonly definition: AttributeDefinition;
  /** Records that have a value, and all records, after selection, in the study's unit. */
  readonly filled: number;
  readonly records: number;
  /** Records of which it is certain, and those where it is marked as doubtful; noughts for numbers and texts. */
  readonly certain: number;
  readonly doubtful: number;
  /** Fragments whose sources say something of it; 0 where it only follows from others. */
  readonly recorded: number;
  /** Terms or grades that occur, most frequent first. */
  readonly levels: readonly { readonly id: string; readonly label: string; readonly count: number }[];
}

export interface StudyView {
  /** What one record is, and what counts as one. */
  readonly unit: 'item' | 'fragment';
  readonly witness: Witness;
  /** Whether the data carry a verdict. */
  readonly readiness: readonly ReadinessLine[];
  /** Names that may be spellings of one. */
  readonly nearNames: readonly NearNames[];
  readonly compoundNames: readonly CompoundName[];
  readonly sources: readonly SourceView[];
  /** Columns of one meaning in several tables, and tables that may describe the rows of another; none for one table. */
  readonly aligned: readonly AlignedColumn[];
  readonly joins: readonly ProposedJoin[];
  /** Records that a source withholds, or shows without their place. */
  readonly restricted: number;
  readonly fragments: number;
  readonly items: number;
  /** Fragments left after the selection. */
  readonly selected: number;
  /** Attributes that the table has. */
  readonly attributes: readonly AttributeView[];
  /** Everything that can be recorded, for mapping columns. */
  readonly register: readonly AttributeDefinition[];
  readonly vocabularies: readonly {
    readonly id: string;
    readonly label: string;
    readonly terms: readonly Term[];
  }[];
  /** Said where sources could not be joined, or disagree. */
  readonly faults: readonly string[];
  /** Finds that two sources may both have published, and that nobody has decided about. */
  readonly duplicates: readonly DuplicateView[];
  /** What only shows when all sources are put together. */
  readonly together: TogetherReport;
  /** Source and row of each row of the findings in `together`. */
  readonly places: Readonly<Record<number, { readonly source: string; readonly row: number }>>;
}
