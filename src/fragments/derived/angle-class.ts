import { EITHER } from '../grades.ts';
import { type Interval, isNothing } from '../intervals.ts';
import type { DerivedTerm } from './fill.ts';

/**
 * Class of a measured twist angle, with its upper limit in degrees. One habit of several; after Emery 1966,
 * from memory. A word such as "medium" is never turned into degrees.
 */
const CLASSES: readonly (readonly [upTo: number, term: string])[] = [
  [10.5, 'to 10 degrees'],
  [25.5, '11 to 25 degrees'],
  [45.5, '26 to 45 degrees'],
  [Number.POSITIVE_INFINITY, 'above 45 degrees'],
];

/** The class of an angle, two classes where it reaches across one limit; null without one or across more. */
export function angleClassOf(attribute: string, angle: Interval): DerivedTerm | null {
  if (isNothing(angle)) return null;
  const middle = (angle[0] + angle[1]) / 2;
  // Half a degree of printed precision does not make a class doubtful.
  const [low, high] = angle[1] - angle[0] <= 1 ? [middle, middle] : angle;
  const at = (value: number) => CLASSES.findIndex(([upTo]) => value < upTo);
  const possible = CLASSES.slice(at(low), at(high) + 1).map(([, term]) => term);
  return possible.length > 2 ? null : { term: possible.join(EITHER), from: [attribute] };
}
