import type { AnalysisInput } from '../../../src/analyses/contract.ts';
import { collapseItems } from '../../../src/fragments/items/items.ts';
import type { Random } from '../../../src/numerics/foundation/random.ts';
import { standardNormal } from '../../../src/numerics/modes/mixture-parts.ts';
import { attribute, madeInput } from '../../analyses/grouping/made-table.ts';

/** One fragment: where it is from, and its measurements, NaN where not recorded. */
export interface Piece {
  readonly region: string;
  readonly site: string;
  readonly item: string;
  readonly values: readonly number[];
}

export const MEASURES = ['size', 'width', 'depth'] as const;

/** Fragments of an item about the item's own values, these about the centre given; likeness is their correlation. */
export function piecesOf(
  where: Omit<Piece, 'values'>,
  centre: readonly number[],
  likeness: number,
  count: number,
  random: Random,
): Piece[] {
  const own = centre.map((value) => value + Math.sqrt(likeness) * standardNormal(random));
  return Array.from({ length: count }, () => ({
    ...where,
    values: own.map((value) => value + Math.sqrt(1 - likeness) * standardNormal(random)),
  }));
}

/** The ends of the step that a reading falls in; the reading itself where the step is 0. */
export function endsOf(value: number, step: number): readonly [low: number, high: number] {
  if (step === 0) return [value, value];
  const low = Math.floor(value / step) * step;
  return [low, low + step];
}

/** Pieces as a study whose unit is the item would have them, each measurement a range as wide as the step. */
export function inputOfPieces(made: readonly Piece[], step: number, seed: number): AnalysisInput {
  const plain = madeInput(
    [
      { attribute: attribute('site', 'context', 'nominal'), values: made.map(({ site }) => site) },
      { attribute: attribute('region', 'context', 'nominal'), values: made.map(({ region }) => region) },
      ...MEASURES.map((id, at) => ({
        attribute: attribute(id, 'spacing', 'interval'),
        values: made.map(({ values }) => (Number.isNaN(values[at]) ? null : values[at])),
      })),
    ],
    { items: made.map(({ item }) => item), unit: 'item', seed },
  );
  const columns = new Map(plain.fragments.columns);
  for (const id of MEASURES) {
    const column = columns.get(id);
    if (column?.kind !== 'numeric') continue;
    const ends = (which: 0 | 1) => column.low.map((value) => endsOf(value, step)[which]);
    columns.set(id, { ...column, low: ends(0), high: ends(1) });
  }
  const fragments = { ...plain.fragments, columns };
  return { ...plain, fragments, records: collapseItems(fragments, plain.register).table };
}

/** A find as texts: what it has, each measurement as a range where the step is above 0. Above 0 throughout, so that "a-b" is one. */
export function textsOf(values: readonly number[], step: number): Record<string, string> {
  return Object.fromEntries(
    MEASURES.flatMap((id, at) => {
      if (Number.isNaN(values[at])) return [];
      const [low, high] = endsOf(values[at], step).map((end) => end.toFixed(9));
      return [[id, low === high ? low : `${low}-${high}`]];
    }),
  );
}
