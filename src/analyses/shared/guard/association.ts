import type { RecordsCondition } from '../../../fragments/conditions.ts';
import type { Random } from '../../../numerics/foundation/random.ts';
import { testAssociation } from '../../../numerics/tests/association-test.ts';
import { withoutEmptyLines } from '../../../numerics/tests/contingency.ts';
import type { Unavailable } from '../../contract.ts';

/** Records, their labels and the objects they are of. */
export interface Labelled {
  readonly labels: Int32Array;
  readonly labelCount: number;
  readonly items: readonly string[];
  readonly random: Random;
}

/** Does a condition go with the labels? Items, not fragments: an item of one label and kind counts once. */
export function associationWith(
  { labels, labelCount, items, random }: Labelled,
  { id, of, kinds }: RecordsCondition,
): { readonly p: number | Unavailable; readonly v: number | Unavailable } {
  const seen = new Set<string>();
  const counts = Array.from({ length: labelCount }, () => new Array<number>(kinds.length).fill(0));
  labels.forEach((label, row) => {
    const key = `${label} ${of[row]} ${items[row]}`;
    if (of[row] < 0 || seen.has(key)) return;
    seen.add(key);
    counts[label][of[row]]++;
  });
  const found = testAssociation(withoutEmptyLines(counts).table, random.stream(`${id} and labels`));
  return {
    p: found.p,
    v: 'why' in found.association ? found.association : found.association.cramersVCorrected,
  };
}
