import type { Column } from '../../fragments/table.ts';
import type { Prepared } from '../../study/prepare.ts';
import type { AttributeView, SourceView, StudyView } from './protocol.ts';
import { termLabel } from './record-view.ts';

/** What every screen knows about the study: what was read, what is recorded, what is selected. */
export function viewStudy(prepared: Prepared, sources: readonly SourceView[]): StudyView {
  const { register, all, fragments, records } = prepared;
  return {
    sources,
    fragments: all.rows,
    items: new Set(all.item).size,
    selected: fragments.rows,
    attributes: [...all.columns.entries()].map(([id, column]) =>
      viewAttribute(
        prepared,
        records.columns.get(id) ?? column,
        records.rows,
        column.raw.filter((text) => text !== '').length,
      ),
    ),
    register: [...register.attributes.values()],
    vocabularies: [...register.vocabularies.values()],
    faults: prepared.disagreements.map(({ attribute, items }) => {
      const label = register.attributes.get(attribute)?.label ?? attribute;
      return `${label}: ${items} ${items === 1 ? 'item' : 'items'}`;
    }),
  };
}

function viewAttribute(prepared: Prepared, column: Column, records: number, recorded: number): AttributeView {
  const definition = column.attribute;
  if (column.kind === 'numeric')
    return {
      definition,
      records,
      recorded,
      levels: [],
      filled: countWhere(records, (row) => !Number.isNaN(column.low[row])),
    };
  if (column.kind === 'text')
    return {
      definition,
      records,
      recorded,
      levels: [],
      filled: countWhere(records, (row) => column.raw[row] !== ''),
    };
  const counts = new Map<string, number>();
  for (const code of column.codes) {
    const level = column.levels[code];
    if (level !== undefined) counts.set(level, (counts.get(level) ?? 0) + 1);
  }
  return {
    definition,
    records,
    recorded,
    filled: countWhere(records, (row) => (column.codes[row] ?? -1) >= 0),
    levels: [...counts]
      .map(([id, count]) => ({ id, label: termLabel(prepared.register, definition, id), count }))
      .sort((a, b) => b.count - a.count || a.label.localeCompare(b.label, 'en')),
  };
}

function countWhere(rows: number, holds: (row: number) => boolean): number {
  let count = 0;
  for (let row = 0; row < rows; row++) if (holds(row)) count++;
  return count;
}
