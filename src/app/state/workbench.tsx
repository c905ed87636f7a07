import { createContext, type ReactNode, useCallback, useContext, useMemo, useState } from 'react';
import { createEngineClient, type EngineClient } from '../engine/client.ts';
import type { StudyView } from '../engine/views/study.ts';
import type { Opening, Served } from '../openings.ts';
import { createDrafts, type Drafts, useDraftIn } from './drafts.ts';
import { commit, type History, redo, startHistory, undo } from './history.ts';
import { forget } from './keep.ts';
import { type Look, withLook } from './looks.ts';
import { screenOf, startOf, useAddress } from './use-address.ts';
import { type Keeping, useKeeping } from './use-keeping.ts';
import { useReading } from './use-reading.ts';
import { EMPTY_WORKSPACE, type Workspace } from './workspace.ts';

/** What every screen can see and do. */
export interface Workbench {
  readonly workspace: Workspace;
  /** How the sources of the workspace were read; null until the first reading is done. */
  readonly view: StudyView | null;
  readonly reading: boolean;
  readonly fault: string | null;
  readonly engine: EngineClient;
  /** Changes the workspace; `what` completes "Undo: …". */
  readonly change: (update: (workspace: Workspace) => Workspace, what: string) => void;
  readonly undo: (() => void) | null;
  readonly redo: (() => void) | null;
  readonly undoes: string;
  readonly redoes: string;
  /** Records picked in any plot or table; they stay picked on every screen. */
  readonly picked: readonly string[];
  readonly pick: (ids: readonly string[]) => void;
  readonly screen: string;
  readonly go: (screen: string) => void;
  readonly startOver: () => void;
  /** What was answered on any screen, newest first. */
  readonly looks: readonly Look[];
  readonly look: (look: Omit<Look, 'screen'>) => void;
  readonly drafts: Drafts;
  readonly keeping: Keeping;
  /** The study as `thrum open` serves it, null where none is served. */
  readonly served: Served | null;
  /** What was done to the served study since it was opened, oldest first. */
  readonly edits: readonly string[];
  /** Whether the file on the disk is another one than the edits were made on. */
  readonly baseChanged: boolean;
  /** Goes on from the file as it lies on the disk, or says that the edits are to stay. */
  readonly settleBase: (take: 'file' | 'edits') => void;
}

const Context = createContext<Workbench | null>(null);

export function useWorkbench(): Workbench {
  const workbench = useContext(Context);
  if (workbench === null) throw new Error('a screen stands outside the workbench');
  return workbench;
}

/** What is typed in a place, kept from the first key on; `undefined` where nothing is. */
export function useDraft<T>(place: string) {
  return useDraftIn<T>(useWorkbench().drafts, place);
}

export interface WorkbenchProviderProps {
  readonly opening: Opening;
  readonly children: ReactNode;
}

export function WorkbenchProvider({ opening, children }: WorkbenchProviderProps) {
  const { key, session, served } = opening;
  const [history, setHistory] = useState<History<Workspace>>(() => startOf(opening));
  const [looks, setLooks] = useState<readonly Look[]>(session?.looks ?? []);
  const [base, setBase] = useState(session?.base ?? null);
  const drafts = useMemo(() => createDrafts(session?.drafts), [session]);
  const [picked, setPicked] = useState<readonly string[]>([]);
  const [screen, setScreen] = useState(() => screenOf(opening));
  const engine = useMemo(createEngineClient, []);
  const workspace = history.present.value;
  const { view, reading, fault } = useReading(engine, workspace);

  const isEmpty = workspace === EMPTY_WORKSPACE;
  const kept = useMemo(
    () => (isEmpty ? null : { history, looks, base, drafts: {} }),
    [isEmpty, history, looks, base],
  );
  const keeping = useKeeping(key, kept, drafts, session?.revision ?? 0);
  useAddress(screen, workspace, setScreen, setHistory);

  const change = useCallback((update: (workspace: Workspace) => Workspace, what: string) => {
    setHistory((before) => commit(before, update(before.present.value), what));
  }, []);
  const startOver = useCallback(() => {
    void forget(key);
    drafts.replace({});
    setLooks([]);
    setHistory(startHistory(EMPTY_WORKSPACE));
    setPicked([]);
    setScreen('sources');
  }, [key, drafts]);
  const look = useCallback(
    (seen: Omit<Look, 'screen'>) => setLooks((before) => withLook(before, { ...seen, screen })),
    [screen],
  );
  const settleBase = useCallback(
    (take: 'file' | 'edits') => {
      if (served === null) return;
      if (take === 'file') setHistory((before) => commit(before, served.workspace, 'take the file'));
      setBase(served.mark);
    },
    [served],
  );
  const edits = useMemo(
    () => (served === null ? [] : [...history.past.slice(1), history.present].map(({ what }) => what)),
    [served, history],
  );

  const canUndo = history.past.length > 0;
  const canRedo = history.future.length > 0;
  const undoes = history.present.what;
  const redoes = history.future[0]?.what ?? '';
  const workbench = useMemo<Workbench>(
    () => ({
      workspace,
      view,
      reading,
      fault,
      engine,
      change,
      undo: canUndo ? () => setHistory(undo) : null,
      redo: canRedo ? () => setHistory(redo) : null,
      undoes,
      redoes,
      picked,
      pick: setPicked,
      screen,
      go: setScreen,
      startOver,
      looks,
      look,
      drafts,
      keeping,
      served,
      edits: history.past.length === 0 ? NO_EDITS : edits,
      baseChanged: served !== null && base !== served.mark,
      settleBase,
    }),
    [
      workspace,
      view,
      reading,
      fault,
      engine,
      change,
      canUndo,
      canRedo,
      undoes,
      redoes,
      picked,
      screen,
      startOver,
      looks,
      look,
      drafts,
      keeping.state,
      keeping.beside,
      served,
      edits,
      history.past.length,
      base,
      settleBase,
    ],
  );
  return <Context value={workbench}>{children}</Context>;
}

const NO_EDITS: readonly string[] = [];
