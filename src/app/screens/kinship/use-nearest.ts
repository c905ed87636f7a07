import { useEffect, useRef, useState } from 'react';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';

export type Nearest = ReadonlyMap<string, number>;

/**
 * While a weight is dragged: the group of each record's nearest medoid; null when nothing is. Of weights that
 * come faster than answers only the latest is asked for.
 */
export function useNearest(analysis: StudyAnalysis | null, medoids: readonly string[]): Nearest | null {
  const { engine, workspace } = useWorkbench();
  const [answer, setAnswer] = useState<Nearest | null>(null);
  const wanted = useRef<StudyAnalysis | null>(null);
  const busy = useRef(false);
  const key = analysis === null ? null : JSON.stringify(analysis);
  const asked = useRef({ study: workspace.study, medoids });
  asked.current = { study: workspace.study, medoids };
  // The key holds the analysis
  useEffect(() => {
    wanted.current = key === null ? null : (JSON.parse(key) as StudyAnalysis);
    if (key === null) setAnswer(null);
    if (busy.current) return;
    busy.current = true;
    (async () => {
      try {
        while (wanted.current !== null) {
          const now = wanted.current;
          wanted.current = null;
          const { study, medoids: centres } = asked.current;
          const found = await engine.ask((remote) => remote.nearest(study, now, centres) as Promise<Nearest>);
          setAnswer(found);
        }
      } catch {
        // The full answer follows when the weight is let go, and says what is wrong.
      } finally {
        busy.current = false;
      }
    })();
  }, [key, engine]);
  return key === null ? null : answer;
}
