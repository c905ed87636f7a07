import type { ResultTable } from '../../analyses/contract.ts';
import type { PageParts } from '../../report/html.ts';
import type { Progress } from '../../study/prepare.ts';
import type { AnalysisResult } from '../../study/results/results.ts';
import type { StudyAnalysis, StudyDocument } from '../state/workspace.ts';
import type { ClaimsView } from './views/claims.ts';
import type { DrawingView, PairView, RecordView } from './views/records.ts';
import type { StudyView } from './views/study.ts';
import type { TypesView } from './views/types.ts';

/** What the screens may ask of the worker. All of it is plain data. */

/** How a typed text is read for an attribute. */
export interface TypedReading {
  readonly said: string;
  /** Id of the term or grade, where the attribute takes one. */
  readonly term?: string;
  readonly understood: boolean;
  readonly warnings: readonly string[];
}

/** How a description of a structure is parted, as far as it has been typed. */
export interface DescribedView {
  /** The structure that it names; null where it names none. */
  readonly structure: { readonly id: string; readonly label: string } | null;
  /** The facets that it sets, in the order of the register; values as the find would write them. */
  readonly facets: readonly {
    readonly id: string;
    readonly label: string;
    readonly value: string;
    readonly said: string;
  }[];
  /** Wordings that were not used, each with what it may mean and the description with that in its place. */
  readonly unused: readonly {
    readonly text: string;
    readonly why: string;
    readonly mend?: { readonly meant: string; readonly text: string };
  }[];
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

export type ClaimsForm = 'csv' | 'json' | 'markdown' | 'html';

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
  ): Promise<{ readonly ids: readonly string[]; readonly labels: Labels; readonly orders: Labels }>;
  record(study: StudyDocument, id: string): Promise<RecordView | null>;
  pair(study: StudyDocument, analysis: StudyAnalysis, left: string, right: string): Promise<PairView>;
  typed(study: StudyDocument, attribute: string, text: string): Promise<TypedReading>;
  described(study: StudyDocument, text: string): Promise<DescribedView>;
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
  /** The normalised table as Parquet. */
  parquet(study: StudyDocument): Promise<Uint8Array>;
  /** The normalised table, the ledger and their description: file name -> text. */
  dataPackage(study: StudyDocument): Promise<ReadonlyMap<string, string>>;
  /** All that `thrum run` would write, by file name. */
  runFiles(
    study: StudyDocument,
    parts: PageParts,
    onProgress: Progress,
  ): Promise<ReadonlyMap<string, string>>;
}
