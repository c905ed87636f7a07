import type { AttributeDefinition } from '../../attributes/definition.ts';
import type { KindLanguage } from '../../attributes/naming/languages.ts';
import type { AddedTerm } from '../../attributes/register.ts';
import type { WitnessChoice } from '../../fragments/items/witness.ts';
import type { NameDecision } from '../../sources/names/name-decision.ts';
import type { DuplicateDecision } from '../../sources/profile/decisions.ts';

/**
 * The whole state of the work: one study document and the files it names (sources and their profiles).
 * It is what `thrum run` takes, so what is seen here can be run again anywhere.
 */

export type Unit = 'item' | 'fragment';

export interface StudySource {
  readonly file: string;
  readonly profile?: string;
  /** Sheet of a workbook. */
  readonly sheet?: string;
  readonly role?: 'fragments' | 'assemblages';
}

export interface SelectionCondition {
  readonly attribute: string;
  readonly in?: readonly string[];
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly certainty?: 'certain' | 'probable' | 'possible';
}

export interface StudyAnalysis {
  readonly id: string;
  readonly kind: string;
  readonly [option: string]: unknown;
}

export interface StudyDocument {
  readonly title: string;
  readonly authors?: string;
  readonly seed: number;
  readonly unit: Unit;
  readonly kindLanguage?: KindLanguage;
  readonly witness?: WitnessChoice;
  readonly shrinkage?: { readonly preservation: readonly string[]; readonly upTo: number };
  readonly names?: readonly NameDecision[];
  readonly attributes?: readonly AttributeDefinition[];
  readonly terms?: readonly AddedTerm[];
  readonly sources: readonly StudySource[];
  readonly duplicates?: readonly DuplicateDecision[];
  readonly select?: readonly SelectionCondition[];
  readonly analyses: readonly StudyAnalysis[];
}

export interface Workspace {
  readonly study: StudyDocument;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

export const EMPTY_WORKSPACE: Workspace = {
  study: { title: 'Untitled study', seed: 1, unit: 'item', sources: [], analyses: [] },
  files: new Map(),
};

/** A study file may leave out what has a default; the workbench shows the defaults. */
export function complete(study: Partial<StudyDocument>): StudyDocument {
  return { ...EMPTY_WORKSPACE.study, ...study };
}

/** The parts of a study that say how its tables are read; its title, seed and questions leave them as they are. */
export function readingPartsOf(study: object): Readonly<Record<string, unknown>> {
  const questions = ['title', 'seed', 'note', 'analyses'];
  return Object.fromEntries(Object.entries(study).filter(([part]) => !questions.includes(part)));
}

export function withStudy(workspace: Workspace, change: Partial<StudyDocument>): Workspace {
  return { ...workspace, study: { ...workspace.study, ...change } };
}

/** The study without the shrinkage that verdicts are asked again with. */
export function withoutShrinkage(workspace: Workspace): Workspace {
  const { shrinkage: _, ...study } = workspace.study;
  return { ...workspace, study };
}

/** Who answers for the study; an empty name takes the line out of the study file. */
export function withAuthors(workspace: Workspace, authors: string): Workspace {
  const { authors: _, ...rest } = workspace.study;
  return { ...workspace, study: authors === '' ? rest : { ...rest, authors } };
}

export function withFile(workspace: Workspace, name: string, bytes: Uint8Array): Workspace {
  return { ...workspace, files: new Map(workspace.files).set(name, bytes) };
}

/** Replaces the analysis of this id, or adds it at the end. */
export function withAnalysis(workspace: Workspace, analysis: StudyAnalysis): Workspace {
  const { analyses } = workspace.study;
  const at = analyses.findIndex((other) => other.id === analysis.id);
  return withStudy(workspace, { analyses: at < 0 ? [...analyses, analysis] : analyses.with(at, analysis) });
}

export function withoutAnalysis(workspace: Workspace, id: string): Workspace {
  return withStudy(workspace, {
    analyses: workspace.study.analyses.filter((analysis) => analysis.id !== id),
  });
}

/** A study file as it is saved: the document alone, two spaces deep. */
export function studyText(study: StudyDocument): string {
  return `${JSON.stringify(study, null, 2)}\n`;
}
