import type { DescriptionWord, Synonyms, Term } from '../definition.ts';

/** Where the definitions of a family of terms stand; titles and years from memory. */
export const EMERY = 'Emery 1966, The Primary Structures of Fabrics';
export const CLASSIFICATION = 'Seiler-Baldinger 1994, Textiles: a Classification of Techniques';
export const BASKETRY = 'Adovasio 1977, Basketry Technology';
export const COMMON = 'common practice, no source';

/** Writes the terms of one family that share a source. */
export function family(source: string) {
  return (
    id: string,
    parent: string | null,
    label: string,
    definition: string,
    synonyms: Synonyms = {},
    more: Pick<Term, 'noun' | 'inner' | 'vague' | 'ingredient'> = {},
  ): Term => ({ id, label, ...(parent === null ? {} : { parent }), definition, ...more, synonyms, source });
}

/** A wording of descriptions: what it sets, how it is written, and on what that hangs. */
export function word(
  sets: Readonly<Record<string, string>>,
  synonyms: Synonyms,
  more: Omit<DescriptionWord, 'sets' | 'synonyms'> = {},
): DescriptionWord {
  return { ...more, sets, synonyms };
}

/** One that older studies and profiles may name by its id. */
export function named(
  id: string,
  label: string,
  sets: Readonly<Record<string, string>>,
  synonyms: Synonyms,
): DescriptionWord {
  return { id, label, sets, synonyms };
}
