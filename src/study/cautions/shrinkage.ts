import { printCount, printList } from '../../analyses/phrasing.ts';
import { withDescendants } from '../../attributes/tree.ts';
import { columnsOnDemand } from '../../fragments/columns-on-demand.ts';
import { viewItems } from '../../fragments/items/items.ts';
import type { Column, FragmentTable, NumericColumn } from '../../fragments/table.ts';
import type { WhatIf } from '../otherwise/otherwise.ts';
import type { Material } from '../prepare.ts';
import type { ReadinessLine } from '../results/results.ts';

/**
 * Charring and drying shrink what is measured, by an amount that nobody can read off the piece. A study states how
 * much at most; every verdict on lengths and counts is then asked again as if that had happened. Nothing is ever
 * corrected by it: the readings stay as they are.
 */

/** Modes of preservation whose pieces have shrunk since they were made (common practice, no source). */
const SHRINKS = ['charred', 'desiccated', 'impression'];

/** By what power of the growth a reading of each unit changes: a length by the first, a count per cm by its inverse. */
const POWER: Readonly<Record<string, number>> = { mm: 1, cm: 1, cm2: 2, mm2: 2, 'per cm': -1, 'per cm2': -2 };
/** Places and levels are measured in the ground, not on the piece. */
const ON_THE_PIECE: readonly string[] = ['structure', 'spacing', 'fibre', 'find'];

/**
 * The same finds as if those of the stated preservation had been larger, before they shrank, by the stated share.
 *
 * @param used attributes that the question rests on; none where it rests on what it finds.
 */
export function asBeforeShrinking(prepared: Material, used: readonly string[]): WhatIf | null {
  const { study, fragments, register } = prepared;
  if (study.shrinkage === undefined) return null;
  const { preservation, upTo } = study.shrinkage;
  const rows = rowsOf(prepared, preservation);
  const changes = [...fragments.columns.values()].filter((column) => scales(column.attribute));
  const asked = changes.filter(({ attribute }) => used.length === 0 || used.includes(attribute.id));
  if (rows.length === 0 || asked.length === 0) return null;
  const percent = `${Math.round(100 * upTo)} %`;
  const modes = printList(preservation.map((id) => labelOf(prepared, id)));
  return {
    what: `With the lengths and counts of ${printCount(rows.length, 'fragment')} (${modes}) as before shrinking by ${percent}`,
    open: 'how far they shrank',
    hangsOn:
      'Cannot be told yet: with and without the shrinkage that the study allows for, the answers differ.',
    next: `Compare pieces of one preservation alone, or narrow the shrinkage of ${modes} finds by trials on their fibre.`,
    prepared: () => {
      const grown = grow(fragments, rows, 1 + upTo);
      return {
        ...prepared,
        fragments: grown,
        records: prepared.unit === 'item' ? viewItems(grown, register) : grown,
      };
    },
  };
}

/** How many pieces have shrunk by an unknown amount, and whether the study allows for it. */
export function shrinkageLine(prepared: Material): readonly ReadinessLine[] {
  const shrunk = SHRINKS.map((id) => ({ label: labelOf(prepared, id), rows: rowsOf(prepared, [id]).length }));
  const found = shrunk.filter(({ rows }) => rows > 0);
  const measured = [...prepared.fragments.columns.values()].some(({ attribute }) => scales(attribute));
  if (found.length === 0 || !measured) return [];
  const said = printList(found.map(({ label, rows }) => `${label} ${rows}`));
  const stated = prepared.study.shrinkage;
  if (stated !== undefined)
    return [
      {
        topic: 'shrinkage',
        state: 'ready',
        says: `Shrunk since they were made, by an unknown amount: ${said} of ${prepared.fragments.rows} fragments. Verdicts on lengths and counts are asked again as before shrinking by ${Math.round(100 * stated.upTo)} %.`,
      },
    ];
  return [
    {
      topic: 'shrinkage',
      state: 'mind',
      says: `Shrunk since they were made, by an unknown amount: ${said} of ${prepared.fragments.rows} fragments. Their counts are higher and their threads thinner than they were.`,
      mend: 'Say how much at most ("shrinkage" in the study, or on Sources): verdicts are then asked again with it.',
    },
  ];
}

function scales({ unit, block }: NumericColumn['attribute']): boolean {
  return unit !== undefined && POWER[unit] !== undefined && ON_THE_PIECE.includes(block);
}

function rowsOf({ fragments, register }: Material, preservation: readonly string[]): number[] {
  const column = fragments.columns.get('preservation');
  const vocabulary = register.vocabularies.get('preservation');
  if (column?.kind !== 'term' || vocabulary === undefined) return [];
  const within = new Set(preservation.flatMap((id) => withDescendants(vocabulary, id)));
  return Array.from(column.codes.keys()).filter(
    (row) => column.codes[row] >= 0 && within.has(column.levels[column.codes[row]]),
  );
}

function labelOf({ register }: Material, id: string): string {
  return register.vocabularies.get('preservation')?.terms.find((term) => term.id === id)?.label ?? id;
}

function grow(table: FragmentTable, rows: readonly number[], growth: number): FragmentTable {
  const make = (id: string) => {
    const column = table.columns.get(id) as Column;
    return column.kind === 'numeric' && scales(column.attribute) ? growColumn(column, rows, growth) : column;
  };
  return { ...table, columns: columnsOnDemand(table.columns.keys(), make) };
}

function growColumn(column: NumericColumn, rows: readonly number[], growth: number): NumericColumn {
  const power = POWER[column.attribute.unit ?? ''] ?? 0;
  // A whole power by multiplication, so that every engine gives the same bytes.
  const once = power < 0 ? 1 / growth : growth;
  const factor = Math.abs(power) === 2 ? once * once : once;
  const [low, high] = [column.low.slice(), column.high.slice()];
  const centre = column.centre?.slice();
  const step = column.step.slice();
  const readings = new Map(column.readings);
  for (const row of rows) {
    low[row] *= factor;
    high[row] *= factor;
    step[row] *= factor;
    if (centre !== undefined) centre[row] *= factor;
    const listed = readings.get(row);
    if (listed !== undefined)
      readings.set(
        row,
        listed.map((value) => value * factor),
      );
  }
  return { ...column, low, high, step, readings, ...(centre === undefined ? {} : { centre }) };
}
