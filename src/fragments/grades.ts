import { greatest, least } from '../numerics/foundation/lists.ts';

/** Between two grades of which one is meant: "semi-open or open". */
export const EITHER = ' or ';

/** Places in the scale, lowest 0, that a grade may have; null for a word that is none of its grades. */
export function gradeSpan(
  grade: string,
  scale: readonly string[],
): readonly [low: number, high: number] | null {
  const own = scale.indexOf(grade);
  if (own >= 0) return [own, own];
  const places = grade.split(EITHER).map((part) => scale.indexOf(part));
  if (places.length < 2 || places.includes(-1)) return null;
  return [least(places), greatest(places)];
}
