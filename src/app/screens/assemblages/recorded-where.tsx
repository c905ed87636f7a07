import { useMemo } from 'react';
import { useRun } from '../../engine/use-run.ts';
import { ResultTableView } from '../../parts/result-table.tsx';
import { RunSaid, RunStatus } from '../../parts/run-status.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';

/** Attributes whose record is worth knowing place by place. */
const MOST = 24;

/** How many records of each place have a value of each attribute: a gap there is no finding. */
export function RecordedWhere({ places }: { places: string }) {
  const { view } = useWorkbench();
  const of = useMemo(
    () =>
      (view?.attributes ?? [])
        .filter(
          ({ definition, recorded }) =>
            recorded > 0 &&
            definition.scale !== 'text' &&
            definition.block !== 'context' &&
            !definition.derived,
        )
        .slice(0, MOST)
        .map(({ definition }) => definition.id),
    [view],
  );
  const asked = useMemo<StudyAnalysis | null>(
    () =>
      of.length === 0
        ? null
        : ({ id: 'recorded', kind: 'summary', of, by: [places], resamples: 0 } as StudyAnalysis),
    [of, places],
  );
  const run = useRun(asked);
  return (
    <div className="stack">
      <RunStatus run={run} />
      {run.result === null ? (
        <RunSaid run={run} />
      ) : (
        Object.entries(run.result.tables).map(([id, table]) => (
          <ResultTableView key={id} table={table} height={420} />
        ))
      )}
    </div>
  );
}
