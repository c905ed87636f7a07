import type { SourceView } from '../../engine/views/sources.ts';
import type { CellMark, GridColumn } from '../../parts/raw-grid.tsx';

/** How the rows of a file are marked with what was understood of them. */

export function gridColumns(
  source: SourceView,
  definitionOf: (id: string) => { readonly label: string; readonly block: string } | undefined,
): readonly GridColumn[] {
  if (source.fileHeaders !== null)
    return source.fileHeaders.map((header) => fileColumn(source, header, definitionOf));
  return source.columns.map((column, i) => {
    const names = column.attributes.map((id) => definitionOf(id)?.label ?? id);
    const block = definitionOf(column.attributes[0] ?? '')?.block ?? 'context';
    const unit = column.unit === undefined ? '' : ` (${column.unit})`;
    const suggestion = column.suggestion;
    const understood: Record<typeof column.status, string> = {
      matched: `${names.join(' + ')}${unit}`,
      suggested: `${definitionOf(suggestion?.attribute ?? '')?.label ?? 'something'}?`,
      unknown: 'kept as text',
      ignored: 'left out',
      empty: 'empty',
    };
    const tone = {
      matched: 'taken',
      suggested: 'ask',
      unknown: 'text',
      ignored: 'out',
      empty: 'out',
    } as const;
    return {
      header: column.header,
      understood: understood[column.status],
      tone: tone[column.status],
      filled: source.filledShare[i] ?? 0,
      colour: ['structure', 'spacing', 'fibre'].includes(block) ? `var(--${block})` : 'var(--ink-soft)',
    };
  });
}

/** A column of a file whose rows were laid out anew: the attribute that it feeds, or that its cells went elsewhere. */
function fileColumn(
  source: SourceView,
  header: string,
  definitionOf: (id: string) => { readonly label: string; readonly block: string } | undefined,
): GridColumn {
  const column = source.columns.find((one) => one.header === header);
  const id = column?.attributes[0];
  const label = id === undefined ? undefined : definitionOf(id)?.label;
  const elsewhere = source.profile.layout.counts === undefined ? 'laid out by rows' : 'counted';
  return {
    header,
    understood: label ?? (column === undefined ? elsewhere : 'kept as text'),
    tone: column !== undefined && label === undefined ? 'text' : 'taken',
    filled: 1,
    colour: 'var(--ink-soft)',
  };
}

export function cellMarks(source: SourceView | null): ReadonlyMap<string, CellMark> {
  const marks = new Map<string, CellMark>();
  if (source === null) return marks;
  const place = new Map(
    source.fileHeaders === null
      ? source.columns.map((column) => [column.header, column.index])
      : source.fileHeaders.map((header, index) => [header, index]),
  );
  const rank = { read: 0, flagged: 1, 'not-understood': 2 };
  for (const entry of source.ledger) {
    const column = place.get(entry.column);
    if (column === undefined || entry.row === 0) continue;
    const key = `${entry.row}:${column}`;
    const before = marks.get(key);
    if (before !== undefined && rank[before.tone] > rank[entry.level]) continue;
    marks.set(key, {
      tone: entry.level,
      why: `${entry.why}${entry.readAs === '' ? '' : ` Read as: ${entry.readAs}`}`,
    });
  }
  return marks;
}
