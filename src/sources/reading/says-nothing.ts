import { readNothing } from '../../cells/nothing.ts';
import { remembered } from '../../numerics/foundation/remembered.ts';
import { isBlank } from '../layout/cell-shapes.ts';

/** Longer texts say something. */
const LONGEST = 40;

const lookUp = remembered((text) => {
  const read = readNothing(text, 'without absent');
  return read !== null && !read.notes.some(({ rule }) => rule === 'idem');
});

/**
 * Tells cells that say that nothing is known ("-", "n/a", "Not_Available", "k. A.") from cells that say something.
 * Words that may be a value ("no", "none") say something.
 */
export function saysNothing(text: string): boolean {
  return isBlank(text) || (text.length <= LONGEST && lookUp(text));
}
