import { useMemo, useState } from 'react';
import { printLevel } from '../../../analyses/phrasing.ts';
import { useRun } from '../../engine/use-run.ts';
import { Button } from '../../parts/controls.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import { readPlacement } from './placement-answer.ts';

export interface CompareFindsProps {
  readonly placements: readonly StudyAnalysis[];
  /** Attribute whose labels are listed, and the level at which they cannot be excluded. */
  readonly labelsOf: string | null;
  readonly level: number;
}

/** The kept finds side by side: nearest comparandum, and what cannot be excluded for each. */
export function CompareFinds({ placements, labelsOf, level }: CompareFindsProps) {
  const [shown, setShown] = useState(false);
  if (placements.length < 2) return null;
  if (!shown)
    return (
      <div>
        <Button onPress={() => setShown(true)}>Set the {placements.length} kept finds side by side</Button>
      </div>
    );
  return (
    <div className="table-frame">
      <table className="table">
        <caption>The kept finds, side by side</caption>
        <thead>
          <tr>
            <th scope="col">find</th>
            <th scope="col">nearest comparandum</th>
            <th scope="col" className="number">
              distance
            </th>
            <th scope="col">cannot be excluded at {printLevel(level)}</th>
          </tr>
        </thead>
        <tbody>
          {placements.map((placement) => (
            <FindRow key={placement.id} placement={placement} labelsOf={labelsOf} level={level} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function FindRow({
  placement,
  labelsOf,
  level,
}: {
  placement: StudyAnalysis;
  labelsOf: string | null;
  level: number;
}) {
  const { result, fault } = useRun(placement);
  const answer = useMemo(() => (result === null ? null : readPlacement(result)), [result]);
  const [nearest] = answer?.neighbours ?? [];
  const said = labelsOf === null ? null : (answer?.setAt(labelsOf, level) ?? null);
  const why = fault ?? result?.why;
  return (
    <tr>
      <th scope="row">{String(placement.title ?? placement.id)}</th>
      {why !== null && why !== undefined ? (
        <td colSpan={3}>
          <span className="why">{why}</span>
        </td>
      ) : (
        <>
          <td>{nearest?.id ?? '…'}</td>
          <td className="number">{nearest?.distance.toFixed(3) ?? ''}</td>
          <td>{said ?? ''}</td>
        </>
      )}
    </tr>
  );
}
