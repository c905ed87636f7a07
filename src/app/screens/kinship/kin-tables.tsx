import type { AnalysisResult } from '../../../study/results.ts';
import { count } from '../../parts/numbers.ts';
import { Tables } from '../../parts/tables.tsx';

export interface KinTablesProps {
  readonly grouping: AnalysisResult | null;
  readonly ordination: AnalysisResult | null;
}

/** Every table behind the figures, and what was set aside. */
export function KinTables({ grouping, ordination }: KinTablesProps) {
  const n = grouping?.n;
  return (
    <div className="stack">
      <Tables
        tables={[...Object.entries(grouping?.tables ?? {}), ...Object.entries(ordination?.tables ?? {})]}
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
