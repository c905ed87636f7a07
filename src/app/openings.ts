import { startHistory } from './state/history.ts';
import { CURRENT, type Recalled, recall } from './state/keep.ts';
import { complete, type StudyDocument, type Workspace } from './state/workspace.ts';

/** Where a session can start: the study that `thrum open` serves, what was last open here, the demo. */

const DEMO = import.meta.glob(
  ['../../datasets/demo/*.csv', '../../datasets/demo/*.json', '!**/truth.csv', '!**/mess.json'],
  {
    query: '?url',
    import: 'default',
    eager: true,
  },
);

const fileName = (path: string) => path.slice(path.lastIndexOf('/') + 1);

async function bytesFrom(address: string): Promise<Uint8Array> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${fileName(address)} could not be fetched (${response.status})`);
  return new Uint8Array(await response.arrayBuffer());
}

/** The studies of the invented demo: the whole one, and the pieces that a plain catalogue trips over. */
export type DemoStudy = 'study.json' | 'hard-cases-study.json';

/** A study of the invented demo, with every file that its study file names. */
export async function openDemo(which: DemoStudy = 'study.json'): Promise<Workspace> {
  const addresses = new Map(Object.entries(DEMO).map(([path, address]) => [fileName(path), address]));
  const study = JSON.parse(
    new TextDecoder().decode(await bytesFrom(addresses.get(which) ?? '')),
  ) as StudyDocument;
  const named = study.sources
    .flatMap((source) => [source.file, ...(source.profile === undefined ? [] : [source.profile])])
    .concat(textsOf(study.analyses))
    .filter((name) => addresses.has(name));
  const files = await Promise.all(
    named.map(async (name) => [name, await bytesFrom(addresses.get(name) ?? '')] as const),
  );
  return { study, files: new Map(files) };
}

/** Texts among the options of the analyses, of which some name files: rules, rivals, claims, tables. */
export function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsOf) : [];
}

/** A study that a local `thrum open` serves, with the name and the mark of what lies on the disk. */
export interface Served {
  readonly workspace: Workspace;
  readonly path: string;
  /** Changes when the study or a file that it names does. */
  readonly mark: string;
}

/** The study that is served beside the workbench, or null where there is none. */
export async function openServed(): Promise<Served | null> {
  try {
    const response = await fetch('./study/manifest.json');
    if (!response.ok || !(response.headers.get('content-type') ?? '').includes('json')) return null;
    const { study: path, files } = (await response.json()) as { study: string; files: string[] };
    const bytes = await bytesFrom('./study/study.json');
    const study = JSON.parse(new TextDecoder().decode(bytes)) as StudyDocument;
    const loaded = await Promise.all(
      files.map(async (name, index) => [name, await bytesFrom(`./study/files/${index}`)] as const),
    );
    const workspace = { study: complete(study), files: new Map(loaded) };
    return { workspace, path, mark: await markOf([bytes, ...workspace.files.values()]) };
  } catch {
    return null;
  }
}

async function markOf(parts: readonly Uint8Array[]): Promise<string> {
  const hashes = await Promise.all(
    parts.map((part) => crypto.subtle.digest('SHA-256', part as BufferSource)),
  );
  const hex = (hash: ArrayBuffer) =>
    [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return hashes.map(hex).join(' ');
}

export interface Opening {
  /** Name under which the session is kept. */
  readonly key: string;
  readonly session: Recalled | null;
  readonly served: Served | null;
}

/** What was last open here; of a served study the edits that were made on it, else the study itself. */
export async function firstOpening(): Promise<Opening> {
  const served = await openServed();
  if (served === null) return { key: CURRENT, session: await recall(CURRENT), served };
  const key = `served ${served.path}`;
  return { key, session: (await recall(key)) ?? sessionOf(served), served };
}

/** A session that begins with a served study as it lies on the disk. */
export function sessionOf({ workspace, mark }: Served): Recalled {
  return { history: startHistory(workspace), looks: [], drafts: {}, base: mark, revision: 0 };
}
