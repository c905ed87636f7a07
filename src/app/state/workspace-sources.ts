import type { NameDecision } from '../../sources/names/name-decision.ts';
import type { DuplicateDecision } from '../../sources/profile/decisions.ts';
import type { ColumnRule, SourceProfile } from '../../sources/profile/profile.ts';
import { sourceName } from '../../study/source-name.ts';
import { type StudySource, type Workspace, withStudy } from './workspace.ts';

/** Changes to what a study reads: its tables, how they are read, and what was decided about their rows and names. */

function profileName({ file, sheet }: Pick<StudySource, 'file' | 'sheet'>): string {
  const stem = file.replace(/\.[^.]+$/, '');
  return `${sheet === undefined ? stem : `${stem}.${sheet.replace(/[^\p{L}\p{N}]+/gu, '-')}`}.profile.json`;
}

/** Adds tables; a file of a name that is there already replaces its text and keeps its profile. */
export function withSources(workspace: Workspace, added: ReadonlyMap<string, Uint8Array>): Workspace {
  const files = new Map(workspace.files);
  const sources = [...workspace.study.sources];
  for (const [name, bytes] of added) {
    files.set(name, bytes);
    if (name.endsWith('.json')) continue;
    if (sources.some((source) => source.file === name)) continue;
    const profile = profileName({ file: name });
    sources.push(files.has(profile) ? { file: name, profile } : { file: name });
  }
  const linked = sources.map((source) =>
    source.profile === undefined && files.has(profileName(source))
      ? { ...source, profile: profileName(source) }
      : source,
  );
  return { study: { ...workspace.study, sources: linked }, files };
}

/** @param name of the source, as `sourceName` gives it. */
export function withoutSource(workspace: Workspace, name: string): Workspace {
  const { sources, duplicates = [] } = workspace.study;
  const gone = sources.find((source) => sourceName(source) === name);
  const left = sources.filter((source) => source !== gone);
  const files = new Map(workspace.files);
  // Another sheet of the workbook may still be a source.
  if (gone !== undefined && !left.some(({ file }) => file === gone.file)) files.delete(gone.file);
  if (gone?.profile !== undefined) files.delete(gone.profile);
  const decided = duplicates.filter(({ first, second }) => first.source !== name && second.source !== name);
  const study = { ...workspace.study, sources: left };
  return { study: duplicates.length === 0 ? study : { ...study, duplicates: decided }, files };
}

/** Writes a source's profile beside it, where `thrum run` will look for it too. */
export function withProfile(workspace: Workspace, name: string, profile: SourceProfile): Workspace {
  const source = workspace.study.sources.find((one) => sourceName(one) === name);
  const path = source?.profile ?? profileName(source ?? { file: name });
  const files = new Map(workspace.files);
  files.set(path, new TextEncoder().encode(`${JSON.stringify(profile, null, 2)}\n`));
  const sources = workspace.study.sources.map((one) => (one === source ? { ...one, profile: path } : one));
  return { study: { ...workspace.study, sources }, files };
}

/** Reads another sheet of the workbook in the place of this source; its profile was for the sheet before. */
export function withSheet(workspace: Workspace, name: string, sheet: string): Workspace {
  const sources = workspace.study.sources.map((source) => {
    if (sourceName(source) !== name) return source;
    const { profile: _profile, ...rest } = source;
    return { ...rest, sheet };
  });
  return withStudy(workspace, { sources });
}

/** Takes a further sheet of a workbook in as a table of its own. */
export function withFurtherSheet(workspace: Workspace, file: string, sheet: string): Workspace {
  return withStudy(workspace, { sources: [...workspace.study.sources, { file, sheet }] });
}

/** Adds a decision about two rows that may be one find, in the place of an earlier one about them. */
export function withDecision(workspace: Workspace, decision: DuplicateDecision): Workspace {
  const key = ({ first, second }: Pick<DuplicateDecision, 'first' | 'second'>) =>
    JSON.stringify([first.source, first.id, second.source, second.id]);
  const others = (workspace.study.duplicates ?? []).filter((one) => key(one) !== key(decision));
  return withStudy(workspace, { duplicates: [...others, decision] });
}

export function withoutDecision(workspace: Workspace, decision: DuplicateDecision): Workspace {
  return withStudy(workspace, {
    duplicates: (workspace.study.duplicates ?? []).filter((one) => one !== decision),
  });
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

/** What was decided about a name, beside what was decided about it before. */
export function withName(workspace: Workspace, decision: NameDecision): Workspace {
  const names = workspace.study.names ?? [];
  const at = names.findIndex(
    ({ attribute, name }) => attribute === decision.attribute && name === decision.name,
  );
  const before = names[at];
  const merged = {
    ...decision,
    also: [...new Set([...(before?.also ?? []), ...decision.also])],
    not: [...new Set([...(before?.not ?? []), ...decision.not])],
    ...(decision.oneOf === undefined ? {} : { oneOf: [...new Set(decision.oneOf)] }),
  };
  return withStudy(workspace, { names: at < 0 ? [...names, merged] : names.with(at, merged) });
}
