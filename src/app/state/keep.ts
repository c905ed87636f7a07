import type { Workspace } from './workspace.ts';

/**
 * What was open stays on this machine, in the browser's own store, and goes nowhere else.
 * A browser that refuses the store (private windows) simply keeps nothing.
 */
const DATABASE = 'thrum';
const STORE = 'workspace';
const KEY = 'current';

function openStore(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

async function withStore<T>(
  mode: IDBTransactionMode,
  use: (store: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  const database = await openStore();
  try {
    return await new Promise((resolve, reject) => {
      const request = use(database.transaction(STORE, mode).objectStore(STORE));
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  } finally {
    database.close();
  }
}

/** The workspace that was last open here, or null. */
export async function recall(): Promise<Workspace | null> {
  try {
    const kept = (await withStore('readonly', (store) => store.get(KEY))) as Workspace | undefined;
    return kept?.study === undefined || !(kept.files instanceof Map) ? null : kept;
  } catch {
    return null;
  }
}

/** @returns whether the browser kept it. */
export async function keep(workspace: Workspace): Promise<boolean> {
  try {
    await withStore('readwrite', (store) => store.put(workspace, KEY));
    return true;
  } catch {
    return false;
  }
}

export async function forget(): Promise<void> {
  try {
    await withStore('readwrite', (store) => store.delete(KEY));
  } catch {
    // Nothing was kept, so there is nothing to forget.
  }
}
