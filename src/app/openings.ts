import { recall } from './state/keep.ts';
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

/** The invented demo study, with every file that its study file names. */
export async function openDemo(): Promise<Workspace> {
  const addresses = new Map(Object.entries(DEMO).map(([path, address]) => [fileName(path), address]));
  const study = JSON.parse(
    new TextDecoder().decode(await bytesFrom(addresses.get('study.json') ?? '')),
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

/** The study that a local `thrum open` serves beside the workbench, or null where there is none. */
export async function openServed(): Promise<Workspace | null> {
  try {
    const response = await fetch('./study/manifest.json');
    if (!response.ok || !(response.headers.get('content-type') ?? '').includes('json')) return null;
    const { files } = (await response.json()) as { files: string[] };
    const study = JSON.parse(
      new TextDecoder().decode(await bytesFrom('./study/study.json')),
    ) as StudyDocument;
    const loaded = await Promise.all(
      files.map(async (name, index) => [name, await bytesFrom(`./study/files/${index}`)] as const),
    );
    return { study: complete(study), files: new Map(loaded) };
  } catch {
    return null;
  }
}

export interface Opening {
  readonly workspace: Workspace | null;
  readonly from: 'served' | 'kept' | 'nothing';
}

export async function firstOpening(): Promise<Opening> {
  const served = await openServed();
  if (served !== null) return { workspace: served, from: 'served' };
  const kept = await recall();
  return kept === null ? { workspace: null, from: 'nothing' } : { workspace: kept, from: 'kept' };
}
