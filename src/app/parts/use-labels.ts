import { useEffect, useState } from 'react';
import type { Labels } from '../engine/protocol.ts';
import { useWorkbench } from '../state/workbench.tsx';

export interface RecordLabels {
  readonly ids: readonly string[];
  readonly labels: Labels;
  /** The labels of each attribute in the order of their symbols and colours. */
  readonly orders: Labels;
}

/** What every record is, in words, for the attributes asked for; null until it is known. */
export function useLabels(attributes: readonly string[]): RecordLabels | null {
  const { engine, workspace, view } = useWorkbench();
  const [answer, setAnswer] = useState<RecordLabels | null>(null);
  const key = attributes.join();
  // The view says when the material has changed
  useEffect(() => {
    if (view === null) return;
    let current = true;
    engine
      .ask((remote) => remote.labels(workspace.study, attributes) as Promise<RecordLabels>)
      .then(
        (found) => current && setAnswer(found),
        () => undefined,
      );
    return () => {
      current = false;
    };
  }, [engine, view, key]);
  return answer;
}
