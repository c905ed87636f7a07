import { strToU8, type Zippable, zipSync } from 'fflate';
import { studyText, type Workspace } from './state/workspace.ts';

/** Files carry no time of their own, so that the same study gives the same archive. */
const NO_TIME = new Date(1980, 0, 1);

/**
 * A study with everything it rests on and everything it gave, as one ZIP: study.json with its tables,
 * profiles and rules side by side, as `thrum run` and the workbench take them, and what it wrote in `out/`.
 */
export function archive(workspace: Workspace, written: ReadonlyMap<string, string>): Uint8Array {
  const entries: Zippable = { 'study.json': [strToU8(studyText(workspace.study)), { mtime: NO_TIME }] };
  for (const [name, bytes] of workspace.files) entries[name] = [bytes, { mtime: NO_TIME }];
  for (const [name, text] of written) entries[`out/${name}`] = [strToU8(text), { mtime: NO_TIME }];
  return zipSync(entries);
}
