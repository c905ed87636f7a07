import type { AttributeDefinition, Register } from '../../../attributes/definition.ts';
import { groupRows } from '../../../fragments/groups.ts';
import { naturalOrder } from '../../../fragments/natural-order.ts';
import type { FragmentTable } from '../../../fragments/table.ts';
import type { AnalysisInput } from '../../contract.ts';
import type { LevelSaid } from '../level/said.ts';
import { type KindStyle, kindMarker, kindStyle } from './kinds.ts';

/** Orders of labels that a study fixes: attribute -> labels, the first having the first symbol and colour. */
export type GivenMarks = Readonly<Record<string, readonly string[]>>;

/**
 * The place of every label of an attribute in the order of symbols and colours, the same in every picture of a study:
 * first those that the study names, then the others by how many fragments of the study have them, ties by name. It is
 * taken from all fragments of the study, never from those of one question. Beyond `MOST_KINDS` the neutral look is shared.
 */
export function markPlaces(
  fragments: FragmentTable,
  attribute: AttributeDefinition['id'],
  register: Register,
  given: GivenMarks = {},
): ReadonlyMap<string, number> {
  const counted = groupRows(fragments, [attribute], register).groups.map(({ labels: [label], rows }) => ({
    label,
    n: rows.length,
  }));
  const named = given[attribute] ?? [];
  const others = counted
    .filter(({ label }) => !named.includes(label))
    .sort((a, b) => b.n - a.n || naturalOrder(a.label, b.label))
    .map(({ label }) => label);
  return new Map([...named, ...others].map((label, place) => [label, place] as const));
}

/** Places of labels in the order of symbols and colours; a label without one has the neutral style. */
export type Marks = ReadonlyMap<string, number>;

/**
 * The same for what an analysis groups by or counts, none where no source records it or it is a number. A broader term that
 * stands for narrower ones has the symbol of the commonest of them, beside which it never stands.
 */
export function marksOf(
  { fragments, register, marks }: Pick<AnalysisInput, 'fragments' | 'register' | 'marks'>,
  attribute: string,
  folds: LevelSaid['folds'] = [],
): Marks {
  if (attribute !== 'assemblage' && (fragments.columns.get(attribute)?.kind ?? 'numeric') === 'numeric')
    return new Map();
  const places = markPlaces(fragments, attribute, register, marks);
  const folded = folds.flatMap(({ label, narrower }) => {
    const own = [label, ...narrower].flatMap((one) => places.get(one) ?? []);
    return own.length === 0 ? [] : [[label, own.reduce((a, b) => Math.min(a, b))] as const];
  });
  return new Map([...places, ...folded]);
}

/** The style of a label; neutral where it has no place. */
export function styleOf(marks: Marks, label: string): KindStyle {
  return markStyle(marks.get(label) ?? null);
}

/** The symbol, colour, dash and hatching of a place in that order. */
export function markStyle(place: number | null): KindStyle {
  return kindStyle(place ?? -1);
}

/** A plotly marker of several labels in one trace, each with the symbol and colour that it has everywhere. */
export function markersOf(marks: Marks, labels: readonly string[], size: number) {
  const own = labels.map((label) => kindMarker(styleOf(marks, label), size));
  const edges = own.map(({ line }) => line as { readonly color: string; readonly width: number });
  return {
    symbol: own.map(({ symbol }) => symbol),
    color: own.map(({ color }) => color),
    size,
    line: { color: edges.map(({ color }) => color), width: edges.map(({ width }) => width) },
  };
}
