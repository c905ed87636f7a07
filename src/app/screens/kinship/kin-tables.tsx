import type { AnalysisResult } from '../../../study/results/results.ts';
import { RestsOn } from '../../parts/rests-on.tsx';
import { Tables } from '../../parts/tables.tsx';

export interface KinTablesProps {
  readonly grouping: AnalysisResult | null;
  readonly ordination: AnalysisResult | null;
}

/** Every table behind the figures, and what was set aside. */
export function KinTables({ grouping, ordination }: KinTablesProps) {
  const n = grouping?.why === undefined ? grouping?.n : undefined;
  return (
    <div className="stack">
      <Tables
        tables={[...Object.entries(grouping?.tables ?? {}), ...Object.entries(ordination?.tables ?? {})]}
      />
      <RestsOn n={n} />
    </div>
  );
}
