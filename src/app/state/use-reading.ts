import { useEffect, useRef, useState } from 'react';
import { type EngineClient, faultText, Stopped } from '../engine/client.ts';
import type { StudyView } from '../engine/views/study.ts';
import { readingPartsOf, type Workspace } from './workspace.ts';

/** How the sources of a workspace were read, as the worker last said it; read again when what is read changes. */
export function useReading(engine: EngineClient, workspace: Workspace) {
  const [view, setView] = useState<StudyView | null>(null);
  const [reading, setReading] = useState(false);
  const [fault, setFault] = useState<string | null>(null);
  const { study, files } = workspace;

  // Only what changes the reading is read again: titles, seeds and analyses leave the tables as they are.
  const readingKey = JSON.stringify(readingPartsOf(study));
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
  return { view, reading, fault };
}
