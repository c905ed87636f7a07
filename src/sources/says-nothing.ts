import { readNothing } from '../cells/nothing.ts';
import { isBlank } from './layout/cell-shapes.ts';

/** Longer texts say something. */
const LONGEST = 40;

/**
 * Tells cells that say that nothing is known ("-", "n/a", "Not_Available", "k. A.") from cells that say something;
 * equal texts are looked up once. Words that may be a value ("no", "none") say something.
 */
export function nothingTeller(): (text: string) => boolean {
  const known = new Map<string, boolean>();
  return (text) => {
    if (isBlank(text)) return true;
    if (text.length > LONGEST) return false;
    let nothing = known.get(text);
    if (nothing === undefined) {
      const read = readNothing(text, 'without absent');
      nothing = read !== null && !read.notes.some(({ rule }) => rule === 'idem');
      known.set(text, nothing);
    }
    return nothing;
  };
}
