import { useEffect, useState } from 'react';
import { faultText } from '../../engine/client.ts';
import type { PairView } from '../../engine/views/records.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import { Fringe } from '../fringe.tsx';
import { percent } from '../numbers.ts';

const BLOCKS = ['structure', 'spacing', 'fibre'];

/** Why two records are as alike as they are: the share of each block, then of each attribute. */
export function PairPanel({
  left,
  right,
  analysis,
}: {
  left: string;
  right: string;
  analysis: StudyAnalysis;
}) {
  const { engine, workspace, view } = useWorkbench();
  const [pair, setPair] = useState<PairView | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const { study } = workspace;
  const key = JSON.stringify(analysis);
  // Key and view say when the answer may differ
  useEffect(() => {
    let current = true;
    engine
      .ask((remote) => remote.pair(study, analysis, left, right) as Promise<PairView>)
      .then(
        (found) => current && setPair(found),
        (error: unknown) => current && setFault(faultText(error)),
      );
    return () => {
      current = false;
    };
  }, [engine, view, key, left, right]);
  if (fault !== null) return <p className="notice">{fault}</p>;
  if (pair === null) return null;
  const blocks = pair.blocks.filter(({ block, distance }) => BLOCKS.includes(block) || distance !== null);
  return (
    <div className="stack">
      <h3>
        {left} and {right}
      </h3>
      {pair.distance === null ? (
        <p>Nothing that both record can be compared, so how alike they are is unknown.</p>
      ) : (
        <div className="line pair-head">
          <Fringe
            label={`Distance of each block: ${blocks.map((one) => `${one.block} ${one.distance === null ? 'unknown' : one.distance.toFixed(2)}`).join(', ')}`}
            pitch={22}
            height={56}
            threads={blocks.map((one) => ({
              label: one.block,
              share: one.distance,
              colour: BLOCKS.includes(one.block) ? `var(--${one.block})` : 'var(--ink-soft)',
            }))}
          />
          <div className="stack tight small">
            <p>
              Distance <strong>{pair.distance.toFixed(3)}</strong> (0 = alike in all that both record, 1 = as
              unlike as can be)
            </p>
            {blocks.map((one) => (
              <p key={one.block}>
                <span
                  className="swatch"
                  style={{
                    background: BLOCKS.includes(one.block) ? `var(--${one.block})` : 'var(--ink-soft)',
                  }}
                />
                {one.block}:{' '}
                {one.distance === null
                  ? 'not comparable'
                  : `${one.distance.toFixed(2)}${one.share === null ? '' : `, ${percent(one.share)} of the whole`}`}
              </p>
            ))}
          </div>
        </div>
      )}
      <div className="table-frame">
        <table className="table pair-table">
          <caption className="hidden-text">Attribute by attribute</caption>
          <thead>
            <tr>
              <th scope="col">Attribute</th>
              <th scope="col">{left}</th>
              <th scope="col">{right}</th>
              <th scope="col" className="number">
                share
              </th>
            </tr>
          </thead>
          <tbody>
            {pair.attributes.map((one) => (
              <tr key={one.label}>
                <td>{one.label}</td>
                <td>{one.left === '' ? <span className="soft">–</span> : one.left}</td>
                <td>{one.right === '' ? <span className="soft">–</span> : one.right}</td>
                <td className="number">
                  {one.share === null ? (
                    <span className="why">{one.distance === null ? 'unknown' : '–'}</span>
                  ) : (
                    percent(one.share)
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}
