import { done, inStore, SESSIONS } from './store.ts';

/** What is being typed, by the place where it is typed. */
type Typed = Readonly<Record<string, unknown>>;

/** Name of what is being typed among the sessions. */
export const typedKey = (key: string) => `${key}#drafts`;

/**
 * Keeps what is being typed, which is small, by itself: one save at a time, and of what waits meanwhile the
 * newest alone.
 */
export function keepsTyped(key: string, typed: () => Typed): () => void {
  let busy = false;
  let again = false;
  const save = async () => {
    busy = true;
    do {
      again = false;
      const now = typed();
      const isKept = await keepTyped(key, now);
      if (isKept && !again) strikeTyped(key);
    } while (again);
    busy = false;
  };
  return () => {
    noteTyped(key, typed());
    if (busy) again = true;
    else void save();
  };
}

async function keepTyped(key: string, typed: Typed): Promise<boolean> {
  try {
    await inStore('readwrite', async (transaction) => {
      transaction.objectStore(SESSIONS).put(typed, typedKey(key));
    });
    return true;
  } catch {
    // The save of the session says why nothing can be kept.
    return false;
  }
}

export async function recallTyped(key: string, sessions: IDBObjectStore): Promise<Typed> {
  return notedTyped(key) ?? (await done(sessions.get(typedKey(key)))) ?? {};
}

/**
 * The store answers later, and a page that is loaded anew takes the letters of the last moment with it: so what
 * is typed is noted at once, until the store has it.
 */
const noteOf = (key: string) => `thrum typed ${key}`;

function noteTyped(key: string, typed: Typed): void {
  const name = noteOf(key);
  try {
    localStorage.setItem(name, JSON.stringify(typed));
  } catch {
    // No room, or no storage in this browser. An older note must not come back in place of what was typed since.
    crossOut(name);
  }
}

/** What the store may not have yet; null where it has all. */
function notedTyped(key: string): Typed | null {
  try {
    return JSON.parse(localStorage.getItem(noteOf(key)) ?? 'null');
  } catch {
    return null;
  }
}

export function strikeTyped(key: string): void {
  crossOut(noteOf(key));
}

function crossOut(name: string): void {
  try {
    localStorage.removeItem(name);
  } catch {
    // Where nothing can be written, nothing stands.
  }
}
