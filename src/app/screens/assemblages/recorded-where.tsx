import { useMemo } from 'react';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';

/** Attributes whose record is worth knowing place by place. */
const MOST = 24;

/** Asks how many records of each place have a value of each attribute: a gap there is no finding. */
export function useRecordedWhere(places: string): StudyAnalysis | null {
  const { view } = useWorkbench();
  const of = useMemo(
    () =>
      (view?.attributes ?? [])
        .filter(
          ({ definition, recorded }) =>
            recorded > 0 &&
            definition.scale !== 'text' &&
            (definition.block !== 'context' ||
              definition.id === 'preservation' ||
              definition.id === 'date') &&
            !definition.derived,
        )
        .slice(0, MOST)
        .map(({ definition }) => definition.id),
    [view],
  );
  return useMemo<StudyAnalysis | null>(
    () =>
      of.length === 0
        ? null
        : ({ id: 'recorded', kind: 'summary', of, by: [places], resamples: 0 } as StudyAnalysis),
    [of, places],
  );
}
