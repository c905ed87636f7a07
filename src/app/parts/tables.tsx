import { useState } from 'react';
import type { ResultTable } from '../../analyses/contract.ts';
import { useWorkbench } from '../state/workbench.tsx';
import { Toggles } from './controls.tsx';
import { pickedAfter } from './records/picked-panel.tsx';
import { ResultTableView } from './result-table.tsx';

/** Several tables behind one row of names; records named in them can be picked. */
export function Tables({ tables }: { tables: readonly (readonly [string, ResultTable])[] }) {
  const { picked, pick } = useWorkbench();
  const [shown, setShown] = useState('');
  const [first] = tables;
  if (first === undefined) return <p className="soft">The numbers come with the first answer.</p>;
  const [name, table] = tables.find(([id]) => id === shown) ?? first;
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
    </div>
  );
}
