import { InputError } from '../../errors.ts';
import { groupRows } from '../../fragments/groups.ts';
import { atLevel, type LevelFound } from '../../fragments/level/common-level.ts';
import { isMissing } from '../../fragments/missing.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import type { AnalysisInput } from '../contract.ts';
import type { ChronologyOptions } from './options.ts';

/** A find with a closed span of years. */
export interface Entry {
  readonly row: number;
  readonly item: string;
  readonly low: number;
  readonly high: number;
  readonly kind: string | null;
  readonly place: string | null;
  readonly phase: string | null;
}

export interface Entries {
  readonly entries: readonly Entry[];
  readonly level: LevelFound;
  /** Labels in the order of the vocabulary or of nature. */
  readonly kinds: readonly string[];
  readonly places: readonly string[];
  readonly phases: readonly string[];
  readonly lacking: readonly { readonly reason: string; readonly rows: readonly number[] }[];
}

/** @throws InputError where no source records the date or the kinds, or the date is not a number. */
export function gatherEntries(input: AnalysisInput, options: ChronologyOptions): Entries {
  const { records, register } = input;
  const dates = dateColumn(input, options.date);
  const level = atLevel(
    records,
    options.of,
    has(records, options.places) ? options.places : options.of,
    register,
    {
      level: options.level,
    },
  );
  const kinds = labelsIn(level.table, options.of, register);
  const places = labelsIn(records, options.places, register);
  const phases = labelsIn(records, options.phases, register);
  const undated: number[] = [];
  const open: number[] = [];
  const entries: Entry[] = [];
  for (let row = 0; row < records.rows; row++) {
    const [low, high] = [dates.low[row], dates.high[row]];
    if (isMissing(dates, row)) undated.push(row);
    else if (!Number.isFinite(low) || !Number.isFinite(high)) open.push(row);
    else
      entries.push({
        row,
        item: records.item[row],
        low,
        high,
        kind: kinds.of.get(row) ?? null,
        place: places.of.get(row) ?? null,
        phase: phases.of.get(row) ?? null,
      });
  }
  const { label } = dates.attribute;
  return {
    entries,
    level,
    kinds: kinds.labels,
    places: places.labels,
    phases: phases.labels,
    lacking: [
      { reason: `${label} not recorded`, rows: undated },
      { reason: `${label} open-ended`, rows: open },
    ].filter(({ rows }) => rows.length > 0),
  };
}

function dateColumn(input: AnalysisInput, id: string): NumericColumn {
  const column = requireColumn(input.records, id, input.register);
  const { unit } = column.attribute;
  if (column.kind === 'numeric' && (unit === undefined || unit === 'year')) return column;
  throw new InputError(
    `"${column.attribute.label}" (${id}) is not a number of years`,
    { path: 'date' },
    'name an attribute that holds years, such as date',
  );
}

function has(table: FragmentTable, id: string): boolean {
  return id === 'assemblage' || table.columns.has(id);
}

/** The label of every row that has one; none at all where no source records the attribute, which a default may name. */
export function labelsIn(
  table: FragmentTable,
  id: string,
  register: AnalysisInput['register'],
): { readonly labels: readonly string[]; readonly of: ReadonlyMap<number, string> } {
  if (!has(table, id)) return { labels: [], of: new Map() };
  const { groups } = groupRows(table, [id], register);
  return {
    labels: groups.map(({ labels }) => labels[0]),
    of: new Map(groups.flatMap(({ labels, rows }) => rows.map((row) => [row, labels[0]] as const))),
  };
}
