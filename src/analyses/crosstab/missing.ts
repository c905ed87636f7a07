import type { Register } from '../../attributes/definition.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { association, withoutEmptyLines } from '../../numerics/tests/contingency.ts';
import type { Unavailable } from '../contract.ts';
import { lackingKind, leastMissingThatTurns, type MissingKinds } from '../shared/missing/compute.ts';
import { type Told, toldAt } from '../verdicts.ts';
import type { ChosenTest } from './found.ts';
import { labelsAreColumns } from './guarded.ts';
import type { CrosstabOptions } from './options.ts';

/**
 * How far the missing kinds would have to differ for another verdict, by chi-square; null where nothing is missing, or
 * where chi-square does not say what the test says.
 */
export function missingFor(
  records: FragmentTable,
  table: CrossedTable,
  { test, told }: { readonly test: ChosenTest | Unavailable; readonly told: Told },
  options: CrosstabOptions,
  register: Register,
): MissingKinds | null {
  if ('why' in test || new Set(table.entries.map(({ item }) => item)).size < table.entries.length)
    return null;
  const turned = labelsAreColumns(options, register);
  const labelled = turned
    ? {
        rows: table.columns,
        columns: table.rows,
        counts: table.columns.map((_, column) => table.counts.map((line) => line[column])),
      }
    : table;
  const asked = turned
    ? { across: options.columns, kinds: options.rows }
    : { across: options.rows, kinds: options.columns };
  const toldOf = (counts: readonly (readonly number[])[]) => {
    const found = association(withoutEmptyLines(counts).table);
    return 'why' in found ? 'cannot be told' : toldAt(found.p, options.confidence);
  };
  if (toldOf(labelled.counts) !== told) return null;
  return leastMissingThatTurns(
    labelled,
    lackingKind(records, labelled.rows, asked, register),
    (counts) => toldOf(counts) !== told,
  );
}
