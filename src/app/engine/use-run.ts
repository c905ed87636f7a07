import { useCallback, useEffect, useRef, useState } from 'react';
import type { AnalysisResult } from '../../study/results/results.ts';
import { useWorkbench } from '../state/workbench.tsx';
import type { StudyAnalysis } from '../state/workspace.ts';
import { faultText, reporting, Stopped } from './client.ts';

export interface Run {
  /** The last answer; it stays in sight while the next one is computed. */
  readonly result: AnalysisResult | null;
  /** Whether that answer is of the question and the material as they are now. */
  readonly current: boolean;
  readonly running: { readonly share: number; readonly what: string } | null;
  readonly fault: string | null;
  readonly stopped: boolean;
  readonly stop: () => void;
  readonly again: () => void;
}

interface Answered {
  readonly result: AnalysisResult;
  readonly key: string | null;
  readonly view: ReturnType<typeof useWorkbench>['view'];
}

/**
 * Keeps one analysis answered in the worker whenever it or the material changes. Of questions that
 * come quickly one after the other (a slider being dragged) only the latest is asked.
 *
 * @param isLook whether the answer counts as looked at; a quick preview of another one does not.
 */
export function useRun(analysis: StudyAnalysis | null, pause = 60, isLook = true): Run {
  const { workspace, view, engine, fault: readingFault, look } = useWorkbench();
  const [answered, setAnswered] = useState<Answered | null>(null);
  const [running, setRunning] = useState<Run['running']>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [stopped, setStopped] = useState(false);
  const [turn, setTurn] = useState(0);
  const busy = useRef<Promise<unknown>>(Promise.resolve());
  const seen = useRef(isLook);
  seen.current = isLook;
  const noted = useRef(look);
  noted.current = look;
  const study = useRef(workspace.study);
  study.current = workspace.study;
  const key = analysis === null ? null : JSON.stringify([analysis, workspace.study.seed]);
  // The key holds the analysis, the view the material
  useEffect(() => {
    if (analysis === null || view === null || readingFault !== null) {
      // A question that is taken back is not being answered any more.
      setRunning(null);
      return;
    }
    let current = true;
    setStopped(false);
    const timer = setTimeout(async () => {
      await busy.current;
      if (!current) return;
      const showing = setTimeout(() => current && setRunning({ share: 0, what: 'Computing' }), 150);
      try {
        const asked = engine.ask(
          (remote) =>
            remote.run(
              study.current,
              analysis,
              reporting(
                (share, what) => current && setRunning((now) => (now === null ? now : { share, what })),
              ),
            ) as Promise<AnalysisResult>,
        );
        busy.current = asked.catch(() => undefined);
        const answer = await asked;
        if (!current) return;
        setAnswered({ result: answer, key, view });
        if (seen.current && answer.why === undefined)
          noted.current({ analysis, answer: answer.words.answer });
        setFault(null);
      } catch (error) {
        if (!current) return;
        if (error instanceof Stopped) setStopped(true);
        else setFault(faultText(error));
      } finally {
        clearTimeout(showing);
        if (current) setRunning(null);
      }
    }, pause);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [key, view, turn, engine, pause, readingFault]);
  const stop = useCallback(() => engine.stop(), [engine]);
  const again = useCallback(() => setTurn((count) => count + 1), []);
  const result = answered?.result ?? null;
  const isCurrent = answered !== null && answered.key === key && answered.view === view;
  return { result, current: isCurrent, running, fault, stopped, stop, again };
}
