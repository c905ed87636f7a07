import { countCertain } from '../../fragments/certainty-groups.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { alignColumns, proposeJoins } from '../../sources/combine/align.ts';
import type { LikelyDuplicate } from '../../sources/combine/duplicates.ts';
import { reportTogether } from '../../sources/quality/quality.ts';
import type { Prepared } from '../../study/prepare.ts';
import { readinessOf } from '../../study/readiness/readiness.ts';
import { readingWords, termLabel } from './record-view.ts';
import type { DuplicateView, SourceView } from './views/sources.ts';
import type { AttributeView, StudyView } from './views/study.ts';

/** What every screen knows about the study: what was read, what is recorded, what is selected. */
export function viewStudy(prepared: Prepared, sources: readonly SourceView[]): StudyView {
  const { register, all, fragments, records } = prepared;
  const together = reportTogether(all, register);
  return {
    duplicates: prepared.duplicates.map((pair) => viewDuplicate(prepared, pair)),
    together,
    places: Object.fromEntries(
      together.contradictions.flatMap(({ rows }) => rows.map((row) => [row, placeOf(all, row)])),
    ),
    sources,
    aligned: alignColumns(prepared.sources),
    joins: proposeJoins(prepared.sources),
    unit: prepared.unit,
    restricted: prepared.restriction.withheld + prepared.restriction.placeWithheld,
    witness: prepared.witness,
    readiness: readinessOf(prepared),
    nearNames: prepared.nearNames,
    compoundNames: prepared.compoundNames,
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

const NO_KINDS = { certain: 0, doubtful: 0 };

function viewAttribute(prepared: Prepared, column: Column, records: number, recorded: number): AttributeView {
  const definition = column.attribute;
  if (column.kind === 'numeric')
    return {
      definition,
      records,
      recorded,
      levels: [],
      ...NO_KINDS,
      filled: countWhere(records, (row) => !Number.isNaN(column.low[row])),
    };
  if (column.kind === 'text')
    return {
      definition,
      records,
      recorded,
      levels: [],
      ...NO_KINDS,
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
    ...countCertain(column),
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

function placeOf(table: FragmentTable, row: number): { readonly source: string; readonly row: number } {
  const origin = table.origin[row];
  return { source: table.sources[origin?.source ?? -1] ?? '', row: origin?.row ?? 0 };
}

function viewDuplicate(
  { all, register }: Prepared,
  { rows, names, sources, why }: LikelyDuplicate,
): DuplicateView {
  const [first, second] = rows;
  const says = [...all.columns.values()]
    .filter(({ attribute }) => !attribute.derived && !attribute.id.startsWith('column: '))
    .map((column) => ({
      label: column.attribute.label,
      first: readingWords(register, column, first),
      second: readingWords(register, column, second),
    }))
    .filter((line) => line.first !== '' && line.second !== '');
  return {
    first: { source: sources[0], id: names[0], row: placeOf(all, first).row },
    second: { source: sources[1], id: names[1], row: placeOf(all, second).row },
    why,
    says,
  };
}
