import type {
  Analysis,
  AnalysisInput,
  Findings,
  ResultTable,
  TableCell,
} from '../../src/analyses/contract.ts';
import type { AttributeDefinition, Register } from '../../src/attributes/definition.ts';
import { collapseItems } from '../../src/fragments/items/items.ts';
import type { FragmentTable } from '../../src/fragments/table.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { type Cell, makeTable, register as small } from '../fragments/make-table.ts';

/** The small register with what comparisons of groups need besides; made up for these tests. */
const more: readonly AttributeDefinition[] = [
  { id: 'date', label: 'date', block: 'context', scale: 'interval', unit: 'year', source: 'test' },
  { id: 'east', label: 'east', block: 'context', scale: 'interval', unit: 'km', source: 'test' },
  { id: 'north', label: 'north', block: 'context', scale: 'interval', unit: 'km', source: 'test' },
  { id: 'recorder', label: 'recorder', block: 'context', scale: 'nominal', source: 'test' },
  { id: 'recovery', label: 'recovery', block: 'context', scale: 'nominal', source: 'test' },
  { id: 'preservation', label: 'preservation', block: 'context', scale: 'nominal', source: 'test' },
  { id: 'period', label: 'period', block: 'context', scale: 'nominal', source: 'test' },
  { id: 'length', label: 'length', block: 'find', scale: 'ratio', unit: 'mm', source: 'test' },
  { id: 'excavator', label: 'excavator', block: 'context', scale: 'nominal', source: 'test' },
];
for (const attribute of more)
  (small.attributes as Map<string, AttributeDefinition>).set(attribute.id, attribute);
export const register: Register = small;

/** An input on rows of cells, items collapsed when the unit is the item. */
export function inputFrom(
  rows: readonly Readonly<Record<string, Cell>>[],
  unit: 'fragment' | 'item' = 'fragment',
  seed = 1,
): AnalysisInput {
  const fragments: FragmentTable = makeTable(rows);
  const records = unit === 'item' ? collapseItems(fragments, register).table : fragments;
  return { fragments, records, unit, register, random: createRandom(seed) };
}

/** Everything an analysis says to one question. */
export function ask<Options, Found extends Findings>(
  analysis: Analysis<Options, Found>,
  input: AnalysisInput,
  options: object,
) {
  const found = analysis.compute(input, analysis.options.parse(options));
  return {
    found,
    tables: analysis.tables(found),
    words: analysis.words(found),
    figures: analysis.figures(found),
  };
}

/** Rows of a result table as records by column id. */
export function linesOf(table: ResultTable | undefined): Record<string, TableCell>[] {
  return (table?.rows ?? []).map((row) =>
    Object.fromEntries(row.map((cell, place) => [table?.columns[place].id ?? '', cell])),
  );
}

/** Every number among results, however deep, so that none may be NaN. */
export function everyNumber(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(everyNumber);
}
