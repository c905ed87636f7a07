import { printCount } from '../../analyses/phrasing.ts';
import { isOfSide, LOOK_ALIKES, type LookAlike, type LookSide } from '../../attributes/look-alikes.ts';
import { termAt } from '../../fragments/accessors.ts';
import { viewItems } from '../../fragments/items/items.ts';
import { composeKinds, KIND } from '../../fragments/kinds/kinds.ts';
import type { FragmentTable, TermColumn } from '../../fragments/table.ts';
import type { Material } from '../prepare.ts';
import type { WhatIf } from './otherwise.ts';

/** Finds of either side below which no verdict is asked again (common practice, no source): so few carry none. */
const FEWEST = 3;
/** Questions that weigh the structure and the fibre of every find, whatever they name. */
const WEIGHING: ReadonlySet<string> = new Set(['grouping', 'ordination', 'placement']);
/** Questions that count their table with look-alikes as one themselves. */
const COUNTED_THERE: ReadonlySet<string> = new Set(['crosstab', 'similarity']);

/**
 * The same question with terms that a piece may show alike taken as one: linking and sprang, cross-knit looping and
 * knitting, spliced and draft-spun yarn. Pairs of two attributes (a weave and its face) are told in words alone.
 *
 * @param used attributes that the question rests on.
 * @param question kind of the analysis.
 */
export function lookAlikesAsOne(
  prepared: Material,
  used: readonly string[],
  question: string,
): readonly WhatIf[] {
  if (COUNTED_THERE.has(question)) return [];
  return LOOK_ALIKES.flatMap((pair): WhatIf[] => {
    const [one, other] = pair.sides;
    if (one.attribute !== other.attribute || !restsOn(prepared, one.attribute, used, question)) return [];
    const column = prepared.fragments.columns.get(one.attribute);
    if (column?.kind !== 'term') return [];
    const [first, second] = pair.sides.map((side) => rowsOf(prepared, column, side)) as [number[], number[]];
    if (Math.min(first.length, second.length) < FEWEST) return [];
    const rows = [...first, ...second];
    return [
      {
        what: `${pair.pair.charAt(0).toUpperCase()}${pair.pair.slice(1)} (${printCount(first.length, 'find')} and ${second.length}), which a piece may show alike, taken as one`,
        open: 'look-alikes',
        hangsOn: `Cannot be told yet: it hangs on whether ${pair.pair} were told apart rightly; taken as one the answer differs.`,
        next: `Look again at what tells ${pair.pair} apart: ${pair.tells}.`,
        prepared: () => asOne(prepared, column, pair, rows),
      },
    ];
  });
}

function restsOn(
  { fragments, register }: Material,
  attribute: string,
  used: readonly string[],
  question: string,
): boolean {
  if (used.includes(attribute) || WEIGHING.has(question)) return true;
  if (!used.includes(KIND)) return false;
  const composedOf = fragments.columns.get(KIND)?.attribute.composedOf;
  const facet = register.attributes.get(attribute)?.facet?.of === 'structure';
  return attribute === 'structure' || (facet && composedOf?.includes(attribute) !== false);
}

function rowsOf({ register, fragments }: Material, column: TermColumn, side: LookSide): number[] {
  const vocabulary = register.vocabularies.get(column.attribute.vocabulary ?? '');
  if (vocabulary === undefined) return [];
  return Array.from({ length: fragments.rows }, (_, row) => row).filter((row) => {
    const term = termAt(column, row);
    return term !== null && isOfSide(side, column.attribute.id, term, vocabulary);
  });
}

/** The material with all of both sides under the term of the first, or of the second where that is the common one. */
function asOne(
  prepared: Material,
  column: TermColumn,
  { sides, secondIsCommon }: LookAlike,
  rows: readonly number[],
): Material {
  const [term] = sides[secondIsCommon === true ? 1 : 0].terms;
  const known = column.levels.indexOf(term!);
  const levels = known < 0 ? [...column.levels, term!] : column.levels;
  const codes = Int32Array.from(column.codes);
  for (const row of rows) codes[row] = known < 0 ? levels.length - 1 : known;
  const table: FragmentTable = {
    ...prepared.fragments,
    columns: new Map([...prepared.fragments.columns, [column.attribute.id, { ...column, levels, codes }]]),
  };
  const { study, unit } = prepared;
  const composed = composeKinds(table, prepared.register, study.kind, study.kindLanguage);
  return {
    ...prepared,
    register: composed.register,
    fragments: composed.table,
    records: unit === 'item' ? viewItems(composed.table, composed.register) : composed.table,
  };
}
