import { conditionsOf } from '../../fragments/conditions.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { AnalysisInput } from '../contract.ts';
import { guardAgainst } from '../shared/guard/compute.ts';
import type { Guard } from '../shared/guard/found.ts';
import type { Ranking } from './found.ts';
import type { StandingOptions } from './options.ts';

/** Relabellings within a condition: only whether p passes the level is asked of them. */
const RELABELLINGS = 999;

/**
 * Is what tells the site apart one of who recorded, of recovery, preservation, structure or period? Its items against
 * those that it is told apart from (all others where from none), in counts of kinds.
 */
export function guarded(
  items: FragmentTable,
  table: CrossedTable,
  site: number,
  { toldApart }: Ranking,
  options: StandingOptions,
  { register }: Pick<AnalysisInput, 'register'>,
  random: AnalysisInput['random'],
): Guard {
  const others = new Set(toldApart.length > 0 ? toldApart : table.rows);
  const entries = table.entries.filter(({ row }) => row === site || others.has(table.rows[row]));
  return guardAgainst({
    by: register.attributes.get(options.among)?.label ?? options.among,
    labels: Int32Array.from(entries, ({ row }) => (row === site ? 0 : 1)),
    labelCount: 2,
    places: Int32Array.from(entries, ({ row }) => row),
    items: entries.map(({ item }) => item),
    told: toldApart.length > 0 ? 'told apart' : 'not told apart',
    named: [0, 1],
    conditions: conditionsOf(
      items,
      entries.map(({ record }) => record),
      [options.among, options.of],
      options.among,
      register,
    ),
    scores: (_, rows) =>
      table.columns.map((__, column) => rows.map((row) => (entries[row].column === column ? 1 : 0))),
    confidence: options.confidence,
    relabellings: Math.min(options.relabellings, RELABELLINGS),
    random,
  });
}
