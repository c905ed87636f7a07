import { IDEM_AHEAD } from './idem.ts';
import { alternation, plainSigns } from './text.ts';

/** "Ebd., Grab 5", "id. 2003": words for "as above" that a cell follows up with something of its own. */
const AHEAD = new RegExp(
  `^(?:${alternation(IDEM_AHEAD)})(?: ?[,;:] ?| (?=\\p{L}+\\.? ?\\d|\\d))(?=\\S)`,
  'iu',
);
const YEAR = /(?<!\d)(?:1[5-9]|20)\d\d[a-z]?(?!\d)/u;

/** What a cell adds to "as above": "ebd., Grab 5" -> "Grab 5"; null where it adds nothing, or is no ditto. */
export function dittoAddition(text: string): string | null {
  const plain = plainSigns(text);
  const found = AHEAD.exec(plain);
  return found === null ? null : plain.slice(found[0].length).trim();
}

/**
 * The text above with what the cell says anew. The addition takes the place of the part of its kind ("Grab 2"
 * for "Grab 5", "pl. 1" for "pl. 3", a page for a page, a year and what follows for a year); where the text
 * above has no such part, it comes behind the whole.
 *
 * - above "Holm, Grab 2", cell "ebd., Grab 5" -> "Holm, Grab 5"
 * - above "Vester 1998, 12, pl. 1", cell "ibid., pl. 3" -> "Vester 1998, 12, pl. 3"
 * - above "Vester 1998, 12", cell "id. 2003, 4" -> "Vester 2003, 4"
 * - above "Holm", cell "ebd., Grab 5" -> "Holm, Grab 5"
 */
export function withAddition(above: string, addition: string): string {
  const whole = above.trim();
  if (YEAR.exec(addition)?.index === 0) {
    const year = YEAR.exec(whole);
    if (year !== null && year.index > 0) return `${whole.slice(0, year.index)}${addition}`;
  }
  const parts = whole.split(/\s*,\s*/u);
  const kind = kindOf(addition);
  const at = parts.findIndex((part, i) => i > 0 && kindOf(part) === kind);
  return [...(at < 0 ? parts : parts.slice(0, at)), addition].join(', ');
}

/** "Grab 5" and "grab 12" are of a kind, and so are two bare numbers. */
function kindOf(part: string): string {
  const word = /^\p{L}+/u.exec(part)?.[0];
  return word === undefined ? (/^\d/u.test(part) ? '#' : part) : word.toLowerCase();
}
