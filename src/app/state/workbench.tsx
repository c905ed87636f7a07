import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { createEngineClient, type EngineClient, faultText, Stopped } from '../engine/client.ts';
import type { StudyView } from '../engine/protocol.ts';
import { commit, type History, redo, startHistory, undo } from './history.ts';
import { forget, keep } from './keep.ts';
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
}

const Context = createContext<Workbench | null>(null);

export function useWorkbench(): Workbench {
  const workbench = useContext(Context);
  if (workbench === null) throw new Error('a screen stands outside the workbench');
  return workbench;
}

export interface WorkbenchProviderProps {
  readonly start: Workspace;
  readonly startScreen: string;
  readonly children: ReactNode;
}

export function WorkbenchProvider({ start, startScreen, children }: WorkbenchProviderProps) {
  const [history, setHistory] = useState<History<Workspace>>(() => startHistory(start));
  const [view, setView] = useState<StudyView | null>(null);
  const [reading, setReading] = useState(false);
  const [fault, setFault] = useState<string | null>(null);
  const [picked, setPicked] = useState<readonly string[]>([]);
  const [screen, setScreen] = useState(startScreen);
  const engine = useMemo(createEngineClient, []);
  const workspace = history.present.value;
  const { study, files } = workspace;

  // Only what changes the reading is read again: titles, seeds and analyses leave the tables as they are.
  const { sources, attributes, terms, select, unit, duplicates } = study;
  const readingKey = JSON.stringify([sources, attributes, terms, select, unit, duplicates]);
  const latest = useRef(workspace);
  latest.current = workspace;
  // The key and the files say when to read again
  useEffect(() => {
    let current = true;
    const asked = latest.current;
    if (asked.study.sources.length === 0) {
      setView(null);
      setFault(null);
      return;
    }
    setReading(true);
    (async () => {
      try {
        await engine.sync(asked.files);
        const next = await engine.ask((remote) => remote.open(asked.study) as Promise<StudyView>);
        if (current) {
          setView(next);
          setFault(null);
        }
      } catch (error) {
        if (current && !(error instanceof Stopped)) setFault(faultText(error));
      } finally {
        if (current) setReading(false);
      }
    })();
    return () => {
      current = false;
    };
  }, [readingKey, files, engine]);

  useEffect(() => {
    if (workspace === EMPTY_WORKSPACE) return;
    const timer = setTimeout(() => void keep(workspace), 400);
    return () => clearTimeout(timer);
  }, [workspace]);

  const change = useCallback((update: (workspace: Workspace) => Workspace, what: string) => {
    setHistory((before) => commit(before, update(before.present.value), what));
  }, []);
  const startOver = useCallback(() => {
    void forget();
    setHistory(startHistory(EMPTY_WORKSPACE));
    setPicked([]);
    setScreen('sources');
  }, []);

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
    ],
  );
  return <Context value={workbench}>{children}</Context>;
}
