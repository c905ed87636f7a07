/**
 * What was open stays on this machine, in the browser's own store, and goes nowhere else. Each save is one
 * transaction: whoever pulls the plug finds the state before it or after it. Tables are stored once, however
 * many steps share them.
 */
const DATABASE = 'thrum';
export const LEGACY = 'workspace';
export const SESSIONS = 'sessions';
export const FILES = 'files';

function openStore(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 2);
    request.onupgradeneeded = () => {
      const made = request.result.objectStoreNames;
      for (const name of [LEGACY, SESSIONS, FILES])
        if (!made.contains(name)) request.result.createObjectStore(name);
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error('another window holds an older store'));
  });
}

/** The result of one request, once it is there. */
export const done = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** One transaction over all that is kept: written whole or, on any fault, not at all. */
export async function inStore<T>(
  mode: IDBTransactionMode,
  work: (transaction: IDBTransaction) => Promise<T>,
): Promise<T> {
  const database = await openStore();
  try {
    const transaction = database.transaction([LEGACY, SESSIONS, FILES], mode, { durability: 'strict' });
    const ended = new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error ?? new Error('taken back'));
    });
    const result = await work(transaction);
    await ended;
    return result;
  } finally {
    database.close();
  }
}
