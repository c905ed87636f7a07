import type { Check, Verdict } from '../../analyses/claims/found.ts';
import type { Answer, Figure, ResultTable } from '../../analyses/contract.ts';
import type { AttributeDefinition, Term } from '../../attributes/definition.ts';
import type { Witness } from '../../fragments/witness.ts';
import type { PageParts } from '../../report/html.ts';
import type { Proposal } from '../../sources/columns/propose-attributes.ts';
import type { NearNames } from '../../sources/names/names.ts';
import type { QualityReport, TogetherReport } from '../../sources/quality/quality.ts';
import type { SourceReading } from '../../sources/source-reading.ts';
import type { AnalysisResult, ReadinessLine } from '../../study/results.ts';
import type { StudyAnalysis, StudyDocument } from '../state/workspace.ts';

/** What the screens may ask of the worker. All of it is plain data. */

/** A source as it was read, without its grid and table: those stay in the worker. */
export interface SourceView extends Omit<SourceReading, 'grid' | 'table'> {
  readonly gridRows: number;
  readonly gridColumns: number;
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
  /** Sheets of the workbook that hold anything; none for a text table. */
  readonly sheets: readonly string[];
  readonly quality: QualityReport;
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

export interface AttributeView {
  readonly definition: AttributeDefinition;
  /** Records that have a value, and all records, after selection, in the study's unit. */
  readonly filled: number;
  readonly records: number;
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
  readonly sources: readonly SourceView[];
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

export interface RecordCell {
  readonly attribute: string;
  readonly label: string;
  readonly unit?: string;
  readonly raw: string;
  /** "derived from …" with the cells it was computed from; absent for what was recorded. */
  readonly from?: string;
  readonly readAs: string;
  readonly state: string;
}

/** A schema of a structure, for orientation, with what it had to choose or leaves out. */
export interface DrawingView {
  readonly title: string;
  /** What passes over what. */
  readonly says: string;
  readonly notes: readonly string[];
  /** One self-standing SVG. */
  readonly svg: string;
}

/** Everything about one record: the fragments it stands for, their cells and the lines they came from. */
export interface RecordView {
  readonly id: string;
  readonly item: string;
  readonly assemblage: string;
  readonly fragments: readonly {
    readonly id: string;
    readonly source: string;
    readonly row: number;
    readonly cells: readonly RecordCell[];
    readonly drawing: DrawingView | null;
    readonly line: readonly { readonly header: string; readonly text: string }[];
  }[];
}

/** Why two records are alike. */
export interface PairView {
  readonly distance: number | null;
  readonly blocks: readonly {
    readonly block: string;
    readonly share: number | null;
    readonly distance: number | null;
  }[];
  readonly attributes: readonly {
    readonly label: string;
    readonly block: string;
    readonly left: string;
    readonly right: string;
    readonly distance: number | null;
    readonly share: number | null;
  }[];
}

/** How a typed text is read for an attribute. */
export interface TypedReading {
  readonly said: string;
  /** Id of the term or grade, where the attribute takes one. */
  readonly term?: string;
  readonly understood: boolean;
  readonly warnings: readonly string[];
}

/** What a dropped JSON file is: a study, a study that cannot be opened (and why), or something else. */
export interface StudyFileView {
  readonly study: StudyDocument | null;
  readonly fault: string | null;
}

export interface Labels {
  /** Record id -> label, for each attribute asked for. */
  readonly [attribute: string]: readonly string[];
}

/** How the rules of a typology answer for the records, type by type. */
export interface TypesView {
  /** Why the rules cannot be read, in a sentence; then everything else is empty. */
  readonly fault: string | null;
  /** Records that the typology speaks of. */
  readonly records: number;
  readonly types: readonly {
    readonly id: string;
    readonly label: string;
    readonly rule: string;
    readonly fits: number;
    readonly out: number;
    readonly cannotSay: number;
    /** Records that are of this type after all rules are asked in their order. */
    readonly taken: number;
  }[];
  readonly none: number;
  readonly several: number;
  readonly undecided: number;
  readonly overlaps: readonly { readonly first: string; readonly second: string; readonly records: number }[];
  /** Attributes that the rules cut, with their limits and the ends of the readings. */
  readonly cuts: readonly {
    readonly attribute: string;
    readonly label: string;
    readonly unit: string;
    readonly cuts: readonly number[];
    readonly least: number;
    readonly most: number;
  }[];
}

/** A printed figure with all that was found about it. */
export interface JudgedView {
  readonly id: string;
  readonly place: string;
  readonly quantity: string;
  readonly printed: string;
  readonly verdict: Verdict;
  readonly says: string;
  readonly why: string;
  readonly explained: string;
  readonly resolve: string;
  readonly checks: readonly Check[];
}

/** What printed figures say of each other and, where there are data, what the data say of them. */
export interface ClaimsView {
  /** Why the claims file as a whole cannot be read. */
  readonly fault: string | null;
  /** Each line of the claims file with text: the figures it holds, or what is missing in it. */
  readonly lines: readonly {
    readonly row: number;
    readonly id: string;
    readonly figures: readonly string[];
    readonly fault: { readonly column: string; readonly text: string } | null;
  }[];
  readonly printed: readonly {
    readonly file: string;
    readonly kind: string;
    /** What each column was taken for, by its head. */
    readonly columns: readonly { readonly head: string; readonly role: string }[];
    /** Cells and words of which nothing was made. */
    readonly unread: readonly string[];
    readonly figures: readonly string[];
    readonly fault: string | null;
  }[];
  readonly judged: readonly JudgedView[];
  readonly counts: Readonly<Record<Verdict, number>>;
  readonly withData: boolean;
  /** Null while no figure is there. */
  readonly words: Answer | null;
  readonly tables: Readonly<Record<string, ResultTable>>;
  readonly figures: Readonly<Record<string, Figure>>;
}

export type ClaimsForm = 'csv' | 'json' | 'markdown' | 'html';

export type Progress = (share: number, what: string) => void;

/** The finds of a table with their answers in short. */
export interface PlacedFinds {
  readonly table: ResultTable;
  /** Columns that were not used, rows set aside. */
  readonly notes: readonly string[];
  /** What each find was given as, in the order of the table. */
  readonly finds: readonly { readonly name: string; readonly given: Readonly<Record<string, string>> }[];
}

export interface Engine {
  /** Files by name; only those that changed need to be sent. */
  keepFiles(changed: ReadonlyMap<string, Uint8Array>, gone: readonly string[]): void;
  studyFile(text: string, name: string): StudyFileView;
  open(study: StudyDocument): Promise<StudyView>;
  gridRows(source: number, from: number, count: number): readonly (readonly string[])[];
  run(study: StudyDocument, analysis: StudyAnalysis, onProgress: Progress): Promise<AnalysisResult>;
  /**
   * Group of each record's nearest medoid under the options of this analysis, by record id; quick enough to be
   * asked while a weight is being dragged. Records that no medoid can be compared with are left out.
   */
  nearest(
    study: StudyDocument,
    analysis: StudyAnalysis,
    medoids: readonly string[],
  ): Promise<ReadonlyMap<string, number>>;
  /** Ids of the records in the study's unit, with the labels asked for. */
  labels(
    study: StudyDocument,
    attributes: readonly string[],
  ): Promise<{ readonly ids: readonly string[]; readonly labels: Labels }>;
  record(study: StudyDocument, id: string): Promise<RecordView | null>;
  pair(study: StudyDocument, analysis: StudyAnalysis, left: string, right: string): Promise<PairView>;
  typed(study: StudyDocument, attribute: string, text: string): Promise<TypedReading>;
  /** The structure of a find as far as it is described; null where it has no drawing. */
  drawing(study: StudyDocument, find: Readonly<Record<string, string>>): Promise<DrawingView | null>;
  /** How the rules in this text of a rule file answer. */
  types(study: StudyDocument, rules: string, file: string): Promise<TypesView>;
  /** Printed figures checked; a study without sources holds them against each other only. */
  claims(study: StudyDocument, analysis: StudyAnalysis): Promise<ClaimsView>;
  /** The same answer as a file to save. */
  claimsFile(study: StudyDocument, analysis: StudyAnalysis, form: ClaimsForm): Promise<string>;
  /** Every find of a table, one a row, placed under the settings of this placement. */
  placeFinds(
    study: StudyDocument,
    placement: StudyAnalysis,
    file: { readonly name: string; readonly bytes: Uint8Array; readonly profile?: Uint8Array },
    onProgress: Progress,
  ): Promise<PlacedFinds>;
  results(study: StudyDocument, onProgress: Progress): Promise<string>;
  /** The report page; `parts` are what the page carries with it. */
  report(study: StudyDocument, parts: PageParts, onProgress: Progress): Promise<string>;
  /** The brief of two pages. */
  brief(study: StudyDocument, parts: PageParts, onProgress: Progress): Promise<string>;
  /** The normalised table, the ledger and their description: file name -> text. */
  dataPackage(study: StudyDocument): Promise<ReadonlyMap<string, string>>;
  /** All that `thrum run` would write, by file name. */
  runFiles(
    study: StudyDocument,
    parts: PageParts,
    onProgress: Progress,
  ): Promise<ReadonlyMap<string, string>>;
}
