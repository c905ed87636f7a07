import type { Variable } from '../dissimilarity/variables.ts';
import type { Random } from '../foundation/random.ts';

/**
 * The same values with every tie between attributes cut: each variable is dealt out anew among the items,
 * independently of the others, gaps included. What structure is left is what the attributes have one by
 * one; groups that rest on attributes going together are gone.
 *
 * Items exchange their values as wholes, so that fragments of one item stay as alike as they were: fragment
 * t of an item takes the value of fragment t (counted round) of the item drawn for it. With one record an
 * item this is a plain permutation of each column.
 *
 * @param items item of each record, 0, 1, …
 */
export function permutedVariables(
  variables: readonly Variable[],
  items: ArrayLike<number>,
  random: Random,
): Variable[] {
  const members: number[][] = [];
  for (let row = 0; row < items.length; row++) {
    members[items[row]] ??= [];
    members[items[row]].push(row);
  }
  return variables.map((variable) => {
    const donors = Int32Array.from(members, (_, item) => item);
    for (let last = donors.length - 1; last > 0; last--) {
      const other = random.integer(last + 1);
      [donors[last], donors[other]] = [donors[other], donors[last]];
    }
    const from = new Int32Array(items.length);
    for (const [item, rows] of members.entries()) {
      const donor = members[donors[item]];
      for (const [place, row] of rows.entries()) from[row] = donor[place % donor.length];
    }
    if (variable.kind === 'quantity') {
      const { low, high } = variable;
      return {
        ...variable,
        low: Float64Array.from(from, (row) => low[row]),
        high: Float64Array.from(from, (row) => high[row]),
      };
    }
    const { codes } = variable;
    return { ...variable, codes: Int32Array.from(from, (row) => codes[row]) };
  });
}
