import type { AttributeDefinition } from '../../attributes/definition.ts';
import type { ColumnRule, SourceProfile } from '../../sources/profile.ts';

/**
 * The whole state of the work: one study document and the files it names (sources and their profiles).
 * It is what `thrum run` takes, so what is seen here can be run again anywhere.
 */

export type Unit = 'item' | 'fragment';

export interface StudySource {
  readonly file: string;
  readonly profile?: string;
  readonly role?: 'fragments' | 'assemblages';
}

export interface Condition {
  readonly attribute: string;
  readonly in?: readonly string[];
  readonly atLeast?: number;
  readonly atMost?: number;
}

export interface StudyAnalysis {
  readonly id: string;
  readonly kind: string;
  readonly [option: string]: unknown;
}

export interface StudyDocument {
  readonly title: string;
  readonly seed: number;
  readonly unit: Unit;
  readonly attributes?: readonly AttributeDefinition[];
  readonly terms?: readonly Readonly<Record<string, unknown>>[];
  readonly sources: readonly StudySource[];
  readonly select?: readonly Condition[];
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

export function withStudy(workspace: Workspace, change: Partial<StudyDocument>): Workspace {
  return { ...workspace, study: { ...workspace.study, ...change } };
}

const profileName = (file: string) => `${file.replace(/\.[^.]+$/, '')}.profile.json`;

/** Adds tables; a file of a name that is there already replaces its text and keeps its profile. */
export function withSources(workspace: Workspace, added: ReadonlyMap<string, Uint8Array>): Workspace {
  const files = new Map(workspace.files);
  const sources = [...workspace.study.sources];
  for (const [name, bytes] of added) {
    files.set(name, bytes);
    if (name.endsWith('.json')) continue;
    if (sources.some((source) => source.file === name)) continue;
    const profile = profileName(name);
    sources.push(files.has(profile) ? { file: name, profile } : { file: name });
  }
  const linked = sources.map((source) =>
    source.profile === undefined && files.has(profileName(source.file))
      ? { ...source, profile: profileName(source.file) }
      : source,
  );
  return { study: { ...workspace.study, sources: linked }, files };
}

export function withoutSource(workspace: Workspace, file: string): Workspace {
  const gone = workspace.study.sources.find((source) => source.file === file);
  const files = new Map(workspace.files);
  files.delete(file);
  if (gone?.profile !== undefined) files.delete(gone.profile);
  return {
    study: { ...workspace.study, sources: workspace.study.sources.filter((source) => source.file !== file) },
    files,
  };
}

/** Writes a source's profile beside it, where `thrum run` will look for it too. */
export function withProfile(workspace: Workspace, file: string, profile: SourceProfile): Workspace {
  const name = workspace.study.sources.find((source) => source.file === file)?.profile ?? profileName(file);
  const files = new Map(workspace.files);
  files.set(name, new TextEncoder().encode(`${JSON.stringify(profile, null, 2)}\n`));
  const sources = workspace.study.sources.map((source) =>
    source.file === file ? { ...source, profile: name } : source,
  );
  return { study: { ...workspace.study, sources }, files };
}

/** A profile with one column's rule changed; a key set to undefined is taken out of the rule. */
export function withColumnRule(
  profile: SourceProfile,
  header: string,
  change: { readonly [Key in keyof ColumnRule]?: ColumnRule[Key] | undefined },
): SourceProfile {
  const names = (rule: ColumnRule) => (Array.isArray(rule.header) ? rule.header : [rule.header]);
  const at = profile.columns.findIndex((rule) => names(rule).includes(header));
  const merged = Object.fromEntries(
    Object.entries({ header, ...(at < 0 ? {} : profile.columns[at]), ...change }).filter(
      ([, value]) => value !== undefined,
    ),
  ) as ColumnRule;
  const columns = at < 0 ? [...profile.columns, merged] : profile.columns.with(at, merged);
  return { ...profile, columns };
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
