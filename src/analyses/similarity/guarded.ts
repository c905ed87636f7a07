import { conditionsOf } from '../../fragments/conditions.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { AnalysisInput } from '../contract.ts';
import { guardAgainst } from '../shared/guard/compute.ts';
import type { Guard } from '../shared/guard/found.ts';
import type { Told } from '../verdicts.ts';
import type { PairRanking } from './found.ts';
import type { SimilarityOptions } from './options.ts';

/** Relabellings within a condition: only whether p passes the level is asked of them. */
const RELABELLINGS = 999;

/**
 * Is what tells assemblages apart one of who recorded, of recovery, preservation, structure, period or size? All of them
 * in counts of kinds; those that the answer calls the least alike must be comparable.
 */
export function guarded(
  { records, register, random }: AnalysisInput,
  table: CrossedTable,
  { told, least }: { readonly told: readonly Told[]; readonly least: PairRanking['least'] },
  options: SimilarityOptions,
): Guard {
  const { rows, columns, entries } = table;
  const [name] = 'why' in least ? [] : least.labels;
  const pairs = rows.flatMap((first, at) =>
    rows
      .slice(at + 1)
      .map((second, rest) => ({ name: `${first} with ${second}`, places: [at, at + 1 + rest] })),
  );
  return guardAgainst({
    by: register.attributes.get(options.assemblages)?.label ?? options.assemblages,
    labels: Int32Array.from(entries, ({ row }) => row),
    labelCount: rows.length,
    names: rows,
    items: entries.map(({ item }) => item),
    told: told.includes('told apart')
      ? 'told apart'
      : (told.find((one) => one === 'not told apart') ?? 'cannot be told'),
    named: pairs.length === 1 ? [0, 1] : (pairs.find((pair) => pair.name === name)?.places ?? []),
    conditions: conditionsOf(
      records,
      entries.map(({ record }) => record),
      [options.assemblages, options.of],
      options.assemblages,
      register,
    ),
    scores: (_, places) =>
      columns.map((__, kind) => places.map((place) => (entries[place].column === kind ? 1 : 0))),
    confidence: options.confidence,
    relabellings: Math.min(options.relabellings, RELABELLINGS),
    random: random.stream('conditions'),
  });
}
