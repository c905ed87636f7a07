import { addTo } from '../foundation/lists.ts';
import type { Random } from '../foundation/random.ts';
import { sampleRows } from '../grouping/sampled-medoids.ts';

/**
 * Places of about `most` things, ascending: each group has as large a part of them as it has of all, but no fewer than
 * `leastOfEach`, so that a rare group does not vanish. All of them where there are no more than `most`.
 */
export function drawnByGroup(
  labels: ArrayLike<number>,
  { most, leastOfEach, random }: { most: number; leastOfEach: number; random: Random },
): Int32Array {
  const n = labels.length;
  if (n <= most) return Int32Array.from({ length: n }, (_, place) => place);
  const members = new Map<number, number[]>();
  for (let place = 0; place < n; place++) addTo(members, labels[place], place);
  const drawn = [...members].flatMap(([group, places]) => {
    const size = Math.min(places.length, Math.max(leastOfEach, Math.round((most * places.length) / n)));
    return Array.from(
      sampleRows(places.length, size, random.stream(`drawn of group ${group}`)),
      (at) => places[at],
    );
  });
  return Int32Array.from(drawn).sort();
}
