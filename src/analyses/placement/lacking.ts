import { isKnown } from '../../fragments/comparison/find.ts';
import { pickVariables } from '../../numerics/dissimilarity/dissimilarity.ts';
import { type PreparedComparison, prepareComparison } from '../../numerics/dissimilarity/prepare.ts';
import { type DissimilaritySpec, valueAt } from '../../numerics/dissimilarity/variables.ts';

/** Records that lack the same of what a find has. */
export interface Lacking {
  /** Their places among the records of the label. */
  readonly members: readonly number[];
  /** Places of the variables that they have. */
  readonly places: readonly number[];
  /** All records of the label, laid out for comparison on these variables alone; made when first needed. */
  readonly prepared: () => PreparedComparison;
}

/** The records parted by what they lack; none where no record lacks anything. */
export function lackingAlike(spec: DissimilaritySpec, records: number): readonly Lacking[] {
  const groups = new Map<string, { members: number[]; places: readonly number[] }>();
  for (let row = 0; row < records; row++) {
    const places = spec.variables.flatMap((variable, place) =>
      isKnown(valueAt(variable, row)) ? [place] : [],
    );
    const key = places.join();
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { members: [row], places });
    else group.members.push(row);
  }
  if ([...groups.values()].every(({ places }) => places.length === spec.variables.length)) return [];
  return [...groups.values()].map((group) => ({
    ...group,
    prepared: once(() => layout(spec, group.places)),
  }));
}

const layout = (spec: DissimilaritySpec, places: readonly number[]) =>
  prepareComparison(pickVariables(spec, places));

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
