import { useMemo } from 'react';
import type { StudyAnalysis } from '../state/workspace.ts';
import { type Run, useRun } from './use-run.ts';

export interface PreviewedRun extends Run {
  /** Whether what is shown is a quick preview that the full answer has yet to replace. */
  readonly preview: boolean;
}

/**
 * Asks a question twice: with quicker settings for a first look, then as the study asks it. What stays in
 * sight is the full answer, the same as a run of the study gives; a preview is marked as one.
 *
 * @param quicker settings of the preview, such as fewer resamples; they are used for nothing else.
 */
export function usePreviewed(
  analysis: StudyAnalysis | null,
  quicker: Readonly<Record<string, unknown>>,
  pause = 60,
): PreviewedRun {
  const quick = useMemo(
    () => (analysis === null ? null : ({ ...analysis, ...quicker } as StudyAnalysis)),
    [analysis, quicker],
  );
  const first = useRun(quick, pause, false);
  const full = useRun(first.current || first.fault !== null ? analysis : null, pause);
  return full.current ? { ...full, preview: false } : { ...first, ...stateOf(first, full), preview: true };
}

/** While the full answer is computed, its progress and its end are what is told. */
function stateOf(first: Run, full: Run): Pick<Run, 'running' | 'fault' | 'stopped' | 'stop' | 'again'> {
  const { running, fault, stopped, stop, again } = first.current ? full : first;
  return { running, fault, stopped, stop, again };
}
