import type { Register } from '../../attributes/definition.ts';
import { isWithin } from '../../attributes/tree.ts';
import type { Column, FragmentTable, TermColumn } from '../../fragments/table.ts';

/** Fragments said to be of one item whose records cannot both be true of it. */
export interface Contradiction {
  readonly item: string;
  readonly attribute: string;
  readonly rows: readonly number[];
  /** What the fragments say, one text a row. */
  readonly says: readonly string[];
}

/** Densities and spacings of one cloth differ from place to place, but seldom by more than this factor. */
const LARGEST_RATIO = 2;
const LOGICAL_BLOCKS = new Set(['structure', 'spacing', 'fibre']);

/**
 * Items whose fragments name kinds of which neither is the broader, or whose measurements of fabric lie
 * more than a factor of two apart. Size, preservation and context may differ between fragments and are
 * not compared, except that all must come from one site.
 */
export function contradictions(table: FragmentTable, register: Register): Contradiction[] {
  const items = new Map<string, number[]>();
  for (const [row, item] of table.item.entries()) {
    const rows = items.get(item);
    if (rows === undefined) items.set(item, [row]);
    else rows.push(row);
  }
  const several = [...items].filter(([, rows]) => rows.length > 1);
  const found: Contradiction[] = [];
  for (const [attribute, column] of table.columns) {
    if (column.kind === 'text' || !(LOGICAL_BLOCKS.has(column.attribute.block) || attribute === 'site'))
      continue;
    for (const [item, rows] of several) {
      const conflicting =
        column.kind === 'numeric' ? numbersConflict(column, rows) : termsConflict(column, rows, register);
      if (conflicting === null) continue;
      found.push({
        item,
        attribute,
        rows: conflicting,
        says: conflicting.map((row) => column.raw[row]!.trim()),
      });
    }
  }
  return found;
}

function numbersConflict(
  column: Extract<Column, { kind: 'numeric' }>,
  rows: readonly number[],
): readonly number[] | null {
  const { scale, block } = column.attribute;
  if (scale !== 'ratio' || block === 'find') return null;
  const known = rows.filter((row) => !Number.isNaN(column.low[row]!));
  if (known.length < 2) return null;
  const largest = known.reduce((a, b) => (column.low[b]! > column.low[a]! ? b : a));
  const smallest = known.reduce((a, b) => (column.high[b]! < column.high[a]! ? b : a));
  return column.low[largest]! > LARGEST_RATIO * column.high[smallest]! ? [smallest, largest] : null;
}

function termsConflict(
  column: TermColumn,
  rows: readonly number[],
  register: Register,
): readonly number[] | null {
  const { vocabulary: name, id } = column.attribute;
  const vocabulary = name === undefined ? undefined : register.vocabularies.get(name);
  const first = new Map<string, number>();
  for (const row of rows) {
    const code = column.codes[row]!;
    if (code >= 0 && column.certainty[row] === 0 && !first.has(column.levels[code]!))
      first.set(column.levels[code]!, row);
  }
  const terms = [...first.keys()];
  const related = (a: string, b: string): boolean =>
    vocabulary !== undefined && (isWithin(vocabulary, a, b) || isWithin(vocabulary, b, a));
  const clash = terms.find((term) => terms.some((other) => other !== term && !related(term, other)));
  if (clash === undefined || id === 'phase') return null;
  return [...first.values()];
}
