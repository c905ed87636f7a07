import type { Register } from '../../attributes/definition.ts';
import { conditionsOf, type RecordsCondition } from '../../fragments/conditions.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { commonOdds } from '../../numerics/tests/mantel-haenszel.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import { guardAgainst } from '../shared/guard/compute.ts';
import type { AdjustedEffect, Guard } from '../shared/guard/found.ts';
import type { Told } from '../verdicts.ts';
import type { QuotedCell } from './found.ts';
import type { CrosstabOptions } from './options.ts';

/** Relabellings within a condition: only whether p passes the level is asked of them. */
const RELABELLINGS = 1999;

/** Cells that an answer beside a condition has room for. */
const MOST_CITED = 2;

/** Do the two go together because of who recorded, of preservation, structure or period? */
export function guarded(
  { records, register, random }: AnalysisInput,
  table: CrossedTable,
  { told, named }: { readonly told: Told; readonly named: readonly QuotedCell[] },
  options: CrosstabOptions,
): Guard {
  const turned = labelsAreColumns(options, register);
  const labelOf = ({ row, column }: { row: number; column: number }) => (turned ? column : row);
  const kindOf = ({ row, column }: { row: number; column: number }) => (turned ? row : column);
  const [labelled, kinds] = turned ? [table.columns, table.rows] : [table.rows, table.columns];
  const across = turned ? options.columns : options.rows;
  const labels = Int32Array.from(table.entries, labelOf);
  const cited = named.slice(0, MOST_CITED).map(({ row, column }) => labelled.indexOf(turned ? column : row));
  return guardAgainst({
    by: register.attributes.get(across)?.label ?? across,
    labels,
    labelCount: labelled.length,
    names: labelled,
    items: table.entries.map(({ item }) => item),
    told,
    named: [...new Set(cited)].filter((label) => label >= 0),
    conditions: conditionsOf(
      records,
      table.entries.map(({ record }) => record),
      [options.rows, options.columns],
      across,
      register,
    ),
    scores: (_, rows) =>
      kinds.map((__, kind) => rows.map((row) => (kindOf(table.entries[row]) === kind ? 1 : 0))),
    // Odds take every count for a record of its own.
    ...(table.rows.length === 2 && table.columns.length === 2 && options.mixtures === 'whole'
      ? { adjust: (condition: RecordsCondition) => oddsWithin(table, condition, options.confidence) }
      : {}),
    confidence: options.confidence,
    relabellings: Math.min(options.relabellings, RELABELLINGS),
    random: random.stream('conditions'),
  });
}

/** The labels are the attribute of context (site, period, use); the rows where both or neither are. */
export function labelsAreColumns({ rows, columns }: CrosstabOptions, register: Register): boolean {
  const isContext = (id: string) => id === 'assemblage' || register.attributes.get(id)?.block === 'context';
  return isContext(columns) && !isContext(rows);
}

function oddsWithin(
  { entries }: CrossedTable,
  { of, kinds }: RecordsCondition,
  confidence: number,
): AdjustedEffect | Unavailable {
  const count = (belongs: (at: number) => boolean) => {
    const counts = [
      [0, 0],
      [0, 0],
    ];
    entries.forEach(({ row, column }, at) => {
      if (of[at] >= 0 && belongs(at)) counts[row][column]++;
    });
    return counts;
  };
  const plain = commonOdds([count(() => true)], confidence);
  if ('why' in plain) return plain;
  const within = commonOdds(
    kinds.map((_, kind) => count((at) => of[at] === kind)),
    confidence,
  );
  if ('why' in within) return within;
  return { plain, within, scale: 'odds ratio', random: [] };
}
