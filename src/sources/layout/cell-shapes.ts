import type { Register } from '../../attributes/definition.ts';
import { splitHeader } from '../../attributes/matching.ts';
import { headerKey, wordingsOf } from '../../attributes/wording-index.ts';
import { remembered } from '../../numerics/foundation/remembered.ts';

/** What cells and rows look like, before anything is known of their meaning. */

export function isBlank(text: string | undefined): boolean {
  if (text === undefined || text === '') return true;
  const first = text.charCodeAt(0);
  // Most cells begin with a plain letter or digit.
  return !(first > 32 && first < 127) && text.trim() === '';
}

/** Positions of the cells that hold text. */
export function filledCells(row: readonly string[]): number[] {
  const filled: number[] = [];
  for (let i = 0; i < row.length; i++) if (!isBlank(row[i])) filled.push(i);
  return filled;
}

const NUMBER_LIKE =
  /^[<>≤≥~≈±(]*\s*(?:c\.|ca\.?|about|circa|approx\.?|etwa|ungef\.?|env\.?|max\.?|min\.?|mind\.?)?\s*[-–−+]?[.,]?\d/i;

/** Starts like a measurement: "35", "c. 3,5", "<2", "-799". An identifier such as "P040" does not. */
export function isNumberLike(text: string): boolean {
  return NUMBER_LIKE.test(text.trim());
}

/** Share of the filled cells that start like a measurement; 0 for an empty row. */
export function numberShare(row: readonly string[]): number {
  const filled = filledCells(row);
  if (filled.length === 0) return 0;
  return filled.filter((i) => isNumberLike(row[i]!)).length / filled.length;
}

/** Running text rather than an identifier or a term. */
export function isProse(text: string): boolean {
  const trimmed = text.trim();
  return trimmed.length > 40 || trimmed.split(/\s+/).length > 5;
}

type Lookup = (header: string) => boolean;
const lookups = new WeakMap<Register, Lookup>();

/** Whether a header's wording is one that the register knows exactly; far cheaper than a full match. */
export function isKnownHeader(header: string, register: Register): boolean {
  if (header.length > LONGEST_HEADER) return false;
  let lookup = lookups.get(register);
  if (lookup === undefined) {
    lookup = lookupOf(register);
    lookups.set(register, lookup);
  }
  return lookup(header);
}

const LONGEST_HEADER = 120;

/** Every layout that a sheet may have is tried on the same texts, so what was found of one is kept. */
function lookupOf(register: Register): Lookup {
  const all = [...register.attributes.values()].flatMap((attribute) =>
    wordingsOf(attribute.id, attribute.label, attribute.synonyms).flatMap((wording) => [
      headerKey(wording),
      headerKey(splitHeader(wording).name),
    ]),
  );
  const keys = new Set(all.filter((key) => key !== ''));
  return remembered((header) => {
    const { name } = splitHeader(header);
    return keys.has(headerKey(name)) || (name !== header && keys.has(headerKey(header)));
  });
}

/** How many of the texts are headers that the register knows. */
export function countKnown(texts: readonly string[], register: Register): number {
  let count = 0;
  for (const text of texts)
    if (!isBlank(text) && !isNumberLike(text) && isKnownHeader(text, register)) count++;
  return count;
}
