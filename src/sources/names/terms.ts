import type { Register } from '../../attributes/definition.ts';
import { matchTerm } from '../../attributes/matching.ts';
import { takeDoubt } from '../../cells/certainty.ts';
import type { SourceProfile } from '../profile/profile.ts';
import type { SourceReading } from '../source-reading.ts';

/** A wording that no term answers to, with how often it stands in the source. */
export interface UnknownTerm {
  readonly attribute: string;
  readonly column: string;
  readonly text: string;
  readonly count: number;
  /** Rows of the grid, the first few. */
  readonly rows: readonly number[];
  readonly suggestion?: { readonly term: string; readonly reason: string };
}

const ROWS_SHOWN = 5;
/** Words of a description that were not used although the rest of it was. */
const PARTS_ASKED = new Set(['description-rest', 'suggested-term', 'ambiguous-word']);

/**
 * The wordings of a source that were not understood as terms, most frequent first. Each has to be mapped
 * once (`translateTerm`); a near match is named, never taken.
 */
export function unknownTerms(reading: SourceReading, register: Register): UnknownTerm[] {
  const attributeOf = new Map<string, readonly string[]>(
    reading.columns.map(({ header, attributes }) => [header, attributes]),
  );
  const found = new Map<
    string,
    { attribute: string; column: string; text: string; rows: number[]; count: number; list: boolean }
  >();
  for (const { level, column, raw, row, rule } of reading.ledger) {
    const asked = level === 'not-understood' || PARTS_ASKED.has(rule);
    if (!asked || row === 0 || rule === 'row-set-aside') continue;
    const attribute = attributeOf.get(column)?.find((id) => takesTerms(id, register));
    if (attribute === undefined) continue;
    // A mark of doubt is the cell's own: mapped with it, the wording would be taken as certain.
    const text = takeDoubt(raw).rest || raw.trim();
    const key = JSON.stringify([column, text]);
    const known = found.get(key);
    // Where a cell names several kinds, one that is near to the whole is not what it means.
    const list = rule === 'several' || rule === 'alternative';
    if (known === undefined) found.set(key, { attribute, column, text, rows: [row], count: 1, list });
    else {
      known.count++;
      if (known.rows.length < ROWS_SHOWN) known.rows.push(row);
    }
  }
  return [...found.values()]
    .sort((a, b) => b.count - a.count || a.rows[0]! - b.rows[0]!)
    .map(({ list, ...one }) => ({
      ...one,
      ...(list ? {} : suggestionFor(one.attribute, one.text, register)),
    }));
}

function takesTerms(id: string, register: Register): boolean {
  const scale = register.attributes.get(id)?.scale;
  return scale === 'nominal' || scale === 'ordinal' || scale === 'binary' || scale === 'presence';
}

function suggestionFor(
  id: string,
  text: string,
  register: Register,
): { suggestion?: { term: string; reason: string } } {
  const name = register.attributes.get(id)?.vocabulary;
  const vocabulary = name === undefined ? undefined : register.vocabularies.get(name);
  if (vocabulary === undefined) return {};
  const match = matchTerm(text, vocabulary);
  return match.kind === 'suggested' ? { suggestion: { term: match.id, reason: match.reason } } : {};
}

/** The profile with one more wording settled: from now on `text` means `term`. */
export function translateTerm(
  profile: SourceProfile,
  attribute: string,
  text: string,
  term: string,
): SourceProfile {
  return {
    ...profile,
    terms: { ...profile.terms, [attribute]: { ...profile.terms[attribute], [text]: term } },
  };
}
