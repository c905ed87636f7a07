import { useEffect, useRef, useState } from 'react';
import { faultText, Stopped } from '../../engine/client.ts';
import type { ClaimsView } from '../../engine/views/claims.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import { tablesOf } from './bring.tsx';
import { isBlank, type PrintedGrid } from './table-grid.ts';

export interface ClaimsAnswer {
  /** The last answer; it stays in sight while the next one is computed. */
  readonly answer: ClaimsView | null;
  readonly fault: string | null;
  readonly busy: boolean;
}

/** Keeps a list of printed figures checked in the worker whenever it, its files or the material change. */
export function useClaims(analysis: StudyAnalysis | null): ClaimsAnswer {
  const { workspace, view, engine, reading } = useWorkbench();
  const { study, files } = workspace;
  const [answer, setAnswer] = useState<ClaimsView | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const latest = useRef(study);
  latest.current = study;
  const key = analysis === null ? null : JSON.stringify([analysis, study.seed, study.sources.length === 0]);
  // The key holds the list and its options, the files its texts, the view the material
  useEffect(() => {
    if (analysis === null) {
      setAnswer(null);
      return;
    }
    if (reading || (latest.current.sources.length > 0 && view === null)) return;
    let current = true;
    setBusy(true);
    const timer = setTimeout(async () => {
      try {
        await engine.sync(files);
        const found = await engine.ask(
          (remote) => remote.claims(latest.current, analysis) as Promise<ClaimsView>,
        );
        if (!current) return;
        setAnswer(found);
        setFault(null);
      } catch (error) {
        if (current && !(error instanceof Stopped)) setFault(faultText(error));
      } finally {
        if (current) setBusy(false);
      }
    }, 60);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [key, files, view, reading, engine]);
  return { answer, fault, busy };
}

/** What can be checked: a table just laid out has nothing wrong with it; null where nothing else is there. */
export function withoutBlankTables(
  open: StudyAnalysis | null,
  gridOf: (file: string) => PrintedGrid,
): StudyAnalysis | null {
  const tables = tablesOf(open);
  const written = tables.filter(({ file }) => !isBlank(gridOf(file)));
  if (open === null || written.length === tables.length) return open;
  return written.length === 0 && open.file === undefined ? null : { ...open, tables: written };
}
