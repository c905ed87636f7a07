import { useCallback, useEffect, useRef, useState } from 'react';
import type { Drafts } from './drafts.ts';
import { type Kept, keep, type Session, takeOver } from './keep.ts';
import { keepsTyped } from './keep-typed.ts';

export interface Keeping {
  /** What became of the last save. */
  readonly state: Kept | 'keeping' | 'nothing';
  /** Whether another window of this browser has the same session open. */
  readonly beside: boolean;
  /** Keeps this window's state in the place of the other's. */
  readonly insist: () => void;
}

/** Windows of one session tell each other that they are there, and when they have saved. */
interface Word {
  readonly key: string;
  readonly says: 'here' | 'here too' | 'saved' | 'gone';
}

/**
 * Saves a session on every change, one save at a time; while one runs, only the newest state waits.
 *
 * @param session null where there is nothing to keep yet.
 */
export function useKeeping(key: string, session: Session | null, drafts: Drafts, start: number): Keeping {
  const [state, setState] = useState<Keeping['state']>('nothing');
  const [beside, setBeside] = useState(false);
  const latest = useRef(session);
  latest.current = session;
  const revision = useRef(start);
  const saving = useRef({ busy: false, again: false });
  const channel = useRef<BroadcastChannel | null>(null);

  const save = useCallback(async () => {
    if (saving.current.busy) {
      saving.current.again = true;
      return;
    }
    saving.current.busy = true;
    do {
      saving.current.again = false;
      const now = latest.current;
      if (now === null) break;
      setState('keeping');
      const outcome = await keep(key, now, revision.current);
      if (outcome === 'kept') {
        revision.current++;
        channel.current?.postMessage({ key, says: 'saved' } satisfies Word);
      }
      setState(outcome);
    } while (saving.current.again);
    saving.current.busy = false;
  }, [key]);

  useEffect(() => {
    const open = new BroadcastChannel('thrum');
    channel.current = open;
    const say = (says: Word['says']) => open.postMessage({ key, says } satisfies Word);
    open.onmessage = ({ data }: MessageEvent<Word>) => {
      if (data.key !== key) return;
      setBeside(data.says !== 'gone');
      if (data.says === 'here') say('here too');
      if (data.says === 'saved') setState('elsewhere');
    };
    say('here');
    const leave = () => say('gone');
    addEventListener('pagehide', leave);
    return () => {
      removeEventListener('pagehide', leave);
      open.close();
    };
  }, [key]);

  const history = session?.history;
  const looks = session?.looks;
  const first = useRef(true);
  // What was recalled is kept already
  useEffect(() => {
    if (first.current) {
      first.current = false;
      if (start > 0) return;
    }
    if (history !== undefined && looks !== undefined) void save();
  }, [history, looks, save, start]);

  useEffect(() => drafts.subscribe(keepsTyped(key, drafts.all)), [key, drafts]);

  const insist = useCallback(async () => {
    revision.current = await takeOver(key);
    await save();
  }, [key, save]);
  return { state, beside, insist: () => void insist() };
}
