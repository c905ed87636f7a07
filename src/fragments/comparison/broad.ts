import type { AttributeDefinition, Register, Vocabulary } from '../../attributes/definition.ts';
import { partsOf } from '../../attributes/mixtures.ts';
import { ancestors, isWithin } from '../../attributes/tree.ts';
import type { Spread, SpreadRule } from '../../numerics/dissimilarity/spread-distance.ts';
import { termAt } from '../accessors.ts';
import { termLabel } from '../groups.ts';
import { applies, familyOf, structureAt } from '../kinds/facets.ts';
import { stateAt } from '../missing.ts';
import type { FragmentTable, TermColumn } from '../table.ts';
import { plainIn } from '../told-apart.ts';

/**
 * Terms that say less than a kind, in a comparison of records. A broader term is an imprecise reading where some
 * record names a narrower one; where none does, nobody tells them apart, and it is a kind like any other.
 */

/** `place`: a broad term stands where the tree has it, above its kinds; the others as its kinds allow. */
export type BroadRule = 'place' | SpreadRule;

export interface BroadTerms {
  readonly spreads: readonly Spread[];
  /** Code of a term where it is broad; a kind with named variants has another one where it is plain. */
  readonly codes: ReadonlyMap<string, number>;
  /** Whether the term of a row is meant as a kind of its own although it has narrower ones. */
  readonly isPlain: (row: number) => boolean;
  /** Labels of the broad terms that some row has, with how many rows; most first. */
  readonly found: readonly { readonly label: string; readonly records: number }[];
}

/**
 * @param codeOf codes of all terms of the attribute; those beyond the vocabulary are kinds without narrower ones.
 * @param from first code that is free.
 */
export function broadTerms(
  column: TermColumn,
  vocabulary: Vocabulary,
  table: FragmentTable,
  register: Register,
  codeOf: ReadonlyMap<string, number>,
  from: number,
): BroadTerms {
  const isPlain = plainIn(column, vocabulary, table, register);
  const terms = new Map(vocabulary.terms.map((term) => [term.id, term]));
  // Broader than something that a record names, and so told apart by somebody.
  const told = new Set<string>();
  for (const code of new Set(column.codes)) {
    const term = column.levels[code];
    if (term !== undefined && partsOf(term, vocabulary).length === 1)
      for (const id of ancestors(vocabulary, term)) told.add(id);
  }
  for (const id of told) if (terms.get(id)?.inner === 'plain') told.delete(id);
  const [recorded, broad] = [new Map<string, number>(), new Map<string, number>()];
  for (let row = 0; row < table.rows; row++) {
    const term = termAt(column, row);
    if (term === null) continue;
    const counts = told.has(term) && !isPlain(row) ? broad : recorded;
    counts.set(term, (counts.get(term) ?? 0) + 1);
  }
  let free = from;
  const codes = new Map<string, number>();
  const spreads = [...told].map((term): Spread => {
    const variants = terms.get(term)?.inner === 'variants';
    const kinds = vocabulary.terms.filter(
      ({ id, unsettled }) =>
        unsettled !== true &&
        isWithin(vocabulary, id, term) &&
        (id === term ? variants : !told.has(id) || terms.get(id)?.inner === 'variants') &&
        partsOf(id, vocabulary).length === 1,
    );
    const code = variants ? free++ : (codeOf.get(term) ?? free++);
    codes.set(term, code);
    return {
      code,
      kinds: kinds.map(({ id }) => codeOf.get(id)!),
      // As often as recorded, and one record more spread over all of them: that nobody met a kind rules it not out
      // (Perks 1947, J. Inst. Actuaries 73:285; from memory).
      weights: kinds.map(({ id }) => (recorded.get(id) ?? 0) + 1 / kinds.length),
    };
  });
  return { spreads, codes, isPlain, found: named(broad, column.attribute, register) };
}

function named(
  counts: ReadonlyMap<string, number>,
  attribute: AttributeDefinition,
  register: Register,
): BroadTerms['found'] {
  return [...counts]
    .map(([term, records]) => ({ label: termLabel(attribute, term, register), records }))
    .sort((a, b) => b.records - a.records || (a.label < b.label ? -1 : 1));
}

/**
 * A facet that a catalogue did not record where the structure could have it may be any that others recorded: "twining"
 * is open or close. That bounds a distance; it fills no gap, and the expected distance leaves the facet out.
 *
 * @param codes of the rows, -1 where there is none.
 * @param levels codes that there are.
 * @returns codes with one more for "any", and its spread; null where nothing is to be bounded.
 */
export function anyOfFacet(
  column: TermColumn,
  codes: Int32Array,
  levels: number,
  table: FragmentTable,
  register: Register,
): { readonly codes: Int32Array; readonly spread: Spread } | null {
  const { attribute } = column;
  const recorded = [...new Set(codes)].filter((code) => code >= 0).sort((a, b) => a - b);
  if (attribute.facet === undefined || recorded.length < 2) return null;
  const families = Array.from(codes, (_, row) => familyOf(structureAt(table, row), register));
  // Of coiling nobody says how open it is, where all who do speak of twining: then it is no gap in anybody's record.
  const told = new Set(families.filter((_, row) => codes[row] >= 0));
  const open = codes.map((code, row) =>
    code < 0 &&
    told.has(families[row]) &&
    stateAt(column, row) !== 'not-applicable' &&
    applies(attribute, structureAt(table, row), register)
      ? levels
      : code,
  );
  if (!open.includes(levels)) return null;
  return { codes: open, spread: { code: levels, kinds: recorded, weights: recorded.map(() => 1) } };
}
