import { type History, type Step, startHistory } from './history.ts';
import { recallTyped, strikeTyped, typedKey } from './keep-typed.ts';
import type { Look } from './looks.ts';
import { done, FILES, inStore, LEGACY, SESSIONS } from './store.ts';
import type { StudyDocument, Workspace } from './workspace.ts';

/** All that is to be found again: the study with every step that can be undone, what was looked at, what is being typed. */
export interface Session {
  readonly history: History<Workspace>;
  readonly looks: readonly Look[];
  readonly drafts: Readonly<Record<string, unknown>>;
  /** Mark of the file on the disk that the edits were made on, null where there is none. */
  readonly base: string | null;
}

export interface Recalled extends Session {
  /** Count of saves; a save that finds another count than it left knows of another window. */
  readonly revision: number;
}

interface StoredStep {
  readonly what: string;
  readonly study: StudyDocument;
  readonly files: readonly (readonly [name: string, id: string])[];
}

interface Stored {
  readonly revision: number;
  readonly base: string | null;
  readonly looks: readonly Look[];
  readonly past: readonly StoredStep[];
  readonly present: StoredStep;
  readonly future: readonly StoredStep[];
}

/** kept; elsewhere: another window has saved since; full: no room; refused: the browser keeps nothing. */
export type Kept = 'kept' | 'elsewhere' | 'full' | 'refused';

const ids = new WeakMap<Uint8Array, string>();
const stored = new Set<string>();

/** The session of this name that was last kept here, or null. */
export async function recall(key: string): Promise<Recalled | null> {
  try {
    return await inStore('readonly', async (transaction) => {
      const sessions = transaction.objectStore(SESSIONS);
      const kept = (await done(sessions.get(key))) as Stored | undefined;
      const drafts = await recallTyped(key, sessions);
      if (kept === undefined) return await legacy(transaction, key);
      const files = transaction.objectStore(FILES);
      const known = new Map<string, Uint8Array>();
      for (const id of idsOf(kept)) {
        const bytes = (await done(files.get(id))) as Uint8Array | undefined;
        if (bytes === undefined) return null;
        known.set(id, bytes);
        ids.set(bytes, id);
        stored.add(id);
      }
      const step = ({ what, study, files: named }: StoredStep): Step<Workspace> => ({
        what,
        value: { study, files: new Map(named.map(([name, id]) => [name, known.get(id) as Uint8Array])) },
      });
      const { past, present, future, looks, base, revision } = kept;
      const history = { past: past.map(step), present: step(present), future: future.map(step) };
      return { history, looks, drafts, base, revision };
    });
  } catch {
    return null;
  }
}

/** What an earlier version kept: the study alone. */
async function legacy(transaction: IDBTransaction, key: string): Promise<Recalled | null> {
  if (key !== CURRENT) return null;
  const kept = (await done(transaction.objectStore(LEGACY).get('current'))) as Workspace | undefined;
  if (kept?.study === undefined || !(kept.files instanceof Map)) return null;
  return { history: startHistory(kept), looks: [], drafts: {}, base: null, revision: 0 };
}

/** Name of the session where no study is served. */
export const CURRENT = 'current';

/**
 * Keeps a session.
 *
 * @param revision of the last save or recall of this window.
 */
export async function keep(key: string, session: Session, revision: number): Promise<Kept> {
  const fresh = new Map<string, Uint8Array>();
  const step = ({ what, value }: Step<Workspace>): StoredStep => ({
    what,
    study: value.study,
    files: [...value.files].map(([name, bytes]) => {
      const id = ids.get(bytes) ?? crypto.randomUUID();
      ids.set(bytes, id);
      if (!stored.has(id)) fresh.set(id, bytes);
      return [name, id] as const;
    }),
  });
  const { past, present, future } = session.history;
  const record: Stored = {
    revision: revision + 1,
    base: session.base,
    looks: session.looks,
    past: past.map(step),
    present: step(present),
    future: future.map(step),
  };
  try {
    const outcome = await inStore('readwrite', async (transaction): Promise<Kept> => {
      const sessions = transaction.objectStore(SESSIONS);
      const before = (await done(sessions.get(key))) as Stored | undefined;
      if ((before?.revision ?? 0) !== revision) return 'elsewhere';
      const files = transaction.objectStore(FILES);
      for (const [id, bytes] of fresh) files.put(bytes, id);
      sessions.put(record, key);
      const wanted = new Set(idsOf(record));
      const gone = before === undefined ? [] : idsOf(before).filter((id) => !wanted.has(id));
      for (const id of gone) {
        files.delete(id);
        stored.delete(id);
      }
      return 'kept';
    });
    if (outcome === 'kept') for (const id of fresh.keys()) stored.add(id);
    return outcome;
  } catch (fault) {
    return (fault as Error).name === 'QuotaExceededError' ? 'full' : 'refused';
  }
}

/** Lets the next save of this window go over what another window saved. @returns the revision to name then. */
export async function takeOver(key: string): Promise<number> {
  stored.clear();
  try {
    return await inStore('readonly', async (transaction) => {
      const kept = (await done(transaction.objectStore(SESSIONS).get(key))) as Stored | undefined;
      return kept?.revision ?? 0;
    });
  } catch {
    return 0;
  }
}

export async function forget(key: string): Promise<void> {
  strikeTyped(key);
  try {
    await inStore('readwrite', async (transaction) => {
      const sessions = transaction.objectStore(SESSIONS);
      const kept = (await done(sessions.get(key))) as Stored | undefined;
      for (const id of kept === undefined ? [] : idsOf(kept)) {
        transaction.objectStore(FILES).delete(id);
        stored.delete(id);
      }
      sessions.delete(key);
      sessions.delete(typedKey(key));
      transaction.objectStore(LEGACY).delete('current');
    });
  } catch {
    // Nothing was kept, so there is nothing to forget.
  }
}

function idsOf({ past, present, future }: Stored): string[] {
  const steps = [...past, present, ...future];
  return [...new Set(steps.flatMap(({ files }) => files.map(([, id]) => id)))];
}
