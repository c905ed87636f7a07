import type { Target } from './target.ts';

/** Leads to a row of the raw table. */
export function RowLink({
  row,
  column,
  onTarget,
}: {
  readonly row: number;
  readonly column?: number;
  readonly onTarget: (target: Target) => void;
}) {
  return (
    <button type="button" className="to-column small" onClick={() => onTarget({ row, column: column ?? 0 })}>
      row {row}
    </button>
  );
}
