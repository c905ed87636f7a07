import type { Remote } from 'comlink';
import { useState } from 'react';
import type { Progress } from '../../../study/prepare.ts';
import { archive } from '../../archive.ts';
import { faultText, reporting, Stopped } from '../../engine/client.ts';
import type { Engine } from '../../engine/protocol.ts';
import { download, fileStem } from '../../files.ts';
import { pageParts } from '../../parts/page-parts.ts';
import { useWorkbench } from '../../state/workbench.tsx';

/** What is being worked on, and how much of it is done, 0 to 1. */
interface Running {
  readonly share: number;
  readonly what: string;
}

/** Asks the worker for files of the study as it stands, shows how far that is, and hands them over. */
export function useSaving() {
  const { workspace, view, engine } = useWorkbench();
  const { study } = workspace;
  const [computed, setComputed] = useState<{ readonly of: unknown; readonly text: string } | null>(null);
  const [running, setRunning] = useState<Running | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const stem = fileStem(study.title);
  const results = computed?.of === workspace ? computed.text : null;

  /** Null where it was stopped or could not be done; the second is said. */
  const asking = async <T>(
    what: string,
    question: (remote: Remote<Engine>, report: Progress) => Promise<T>,
  ): Promise<T | null> => {
    setRunning({ share: 0, what });
    const report = reporting((share, now) => setRunning({ share, what: now }));
    try {
      const done = await engine.ask((remote) => question(remote, report));
      setFault(null);
      return done;
    } catch (error) {
      if (!(error instanceof Stopped)) setFault(faultText(error));
      return null;
    } finally {
      setRunning(null);
    }
  };

  const compute = async (): Promise<string | null> => {
    if (results !== null) return results;
    const of = workspace;
    const text = await asking(
      'Computing every analysis of the study',
      (remote, report) => remote.results(study, report) as Promise<string>,
    );
    if (text !== null) setComputed({ of, text });
    return text;
  };
  const save = (name: string, content: string | Uint8Array | null | undefined, type?: string) => {
    if (content !== null && content !== undefined) download(name, content, type);
  };

  return {
    running,
    /** One sentence about what went wrong last. */
    fault,
    /** The results of the study as it stands, as the text of their file; null before they were computed. */
    results,
    compute,
    saveResults: async () => save(`${stem}.results.json`, await compute()),
    saveReport: async () => {
      const page = await asking(
        'Writing the report',
        async (remote, report) => remote.report(study, await pageParts(), report) as Promise<string>,
      );
      save(`${stem}.report.html`, page, 'text/html');
    },
    saveBrief: async () => {
      const page = await asking(
        'Writing the brief',
        async (remote, report) => remote.brief(study, await pageParts(), report) as Promise<string>,
      );
      save(`${stem}.brief.html`, page, 'text/html');
    },
    saveEverything: async () => {
      const written = await asking(
        'Computing every analysis of the study',
        async (remote, report) =>
          remote.runFiles(study, await pageParts(), report) as Promise<ReadonlyMap<string, string>>,
      );
      save(`${stem}.zip`, written && archive(workspace, written, view?.restricted), 'application/zip');
    },
    saveTable: async (name: string) => {
      const written = await asking(
        'Writing the table',
        (remote) => remote.dataPackage(study) as Promise<ReadonlyMap<string, string>>,
      );
      save(name, written?.get(name), name.endsWith('.csv') ? 'text/csv' : 'application/json');
    },
    saveParquet: async () => {
      const written = await asking(
        'Writing the table',
        (remote) => remote.parquet(study) as Promise<Uint8Array>,
      );
      save('fragments.parquet', written, 'application/vnd.apache.parquet');
    },
  };
}

export type Saving = ReturnType<typeof useSaving>;
