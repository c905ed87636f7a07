import { useState } from 'react';
import type { ResultTable } from '../../../analyses/contract.ts';
import type { AnalysisResult } from '../../../study/results.ts';
import { Toggles } from '../../parts/controls.tsx';
import { count } from '../../parts/numbers.ts';
import { pickedAfter } from '../../parts/picked-panel.tsx';
import { ResultTableView } from '../../parts/result-table.tsx';
import { useWorkbench } from '../../state/workbench.tsx';

export interface KinTablesProps {
  readonly grouping: AnalysisResult | null;
  readonly ordination: AnalysisResult | null;
}

/** Every table behind the figures, and what was set aside. */
export function KinTables({ grouping, ordination }: KinTablesProps) {
  const { picked, pick } = useWorkbench();
  const [shown, setShown] = useState('');
  const tables: readonly (readonly [string, ResultTable])[] = [
    ...Object.entries(grouping?.tables ?? {}),
    ...Object.entries(ordination?.tables ?? {}),
  ];
  const [first] = tables;
  if (first === undefined) return <p className="soft">The numbers come with the first answer.</p>;
  const [name, table] = tables.find(([id]) => id === shown) ?? first;
  const n = grouping?.n;
  return (
    <div className="stack">
      <Toggles
        label="Which table"
        value={name}
        options={tables.map(([id, { title }]) => ({ id, label: title }))}
        onChange={setShown}
      />
      <ResultTableView
        key={name}
        table={table}
        picked={picked}
        pickBy="id"
        onPick={(id, add) => pick(pickedAfter(picked, [id], add))}
      />
      {n === undefined ? null : (
        <p className="small">
          Rests on {count(n.fragments, 'fragment')} of {count(n.items, 'item')}.{' '}
          {n.setAside.map(
            ({ reason, fragments }) => `Set aside: ${count(fragments, 'fragment')}, ${reason}. `,
          )}
        </p>
      )}
    </div>
  );
}
