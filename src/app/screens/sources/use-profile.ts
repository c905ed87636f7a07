import { type SourceProfile, sourceProfile } from '../../../sources/profile/profile.ts';
import { sourceName } from '../../../study/source-name.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import type { Workspace } from '../../state/workspace.ts';
import { withColumnRule, withProfile } from '../../state/workspace-sources.ts';

/** The profile of a source (by its name) as the reader has made it so far: what it leaves out is detected. */
export function ownProfile(workspace: Workspace, name: string): SourceProfile {
  const path = workspace.study.sources.find((source) => sourceName(source) === name)?.profile;
  const bytes = path === undefined ? undefined : workspace.files.get(path);
  if (bytes === undefined) return sourceProfile.parse({});
  try {
    return sourceProfile.parse(JSON.parse(new TextDecoder().decode(bytes)));
  } catch {
    return sourceProfile.parse({});
  }
}

export interface ProfileEdits {
  readonly profile: SourceProfile;
  readonly edit: (update: (profile: SourceProfile) => SourceProfile, what: string) => void;
  readonly column: (header: string, change: Parameters<typeof withColumnRule>[2], what: string) => void;
}

/** Corrections to how one source is read; each is one step that can be undone. */
export function useProfile(name: string): ProfileEdits {
  const { workspace, change } = useWorkbench();
  const edit: ProfileEdits['edit'] = (update, what) =>
    change((now) => withProfile(now, name, update(ownProfile(now, name))), what);
  return {
    profile: ownProfile(workspace, name),
    edit,
    column: (header, rule, what) => edit((profile) => withColumnRule(profile, header, rule), what),
  };
}
