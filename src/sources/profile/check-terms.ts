import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { matchTerm } from '../../attributes/matching.ts';
import { lexiconOf } from '../../cells/descriptions/lexicon.ts';
import { meaningOf } from '../../cells/descriptions/meaning.ts';
import { InputError } from '../../errors.ts';
import { attributesOf } from '../columns/claims.ts';
import { knownAttribute } from '../columns/column-rules.ts';
import type { SourceProfile } from './profile.ts';

/**
 * Every translation of a profile must lead to a term that exists: a slip there would put finds into a
 * kind of their own.
 * @throws InputError naming the first that does not.
 */
export function checkTranslations(profile: SourceProfile, register: Register, file: string): void {
  for (const [id, terms] of Object.entries(profile.terms)) {
    checkTerms(knownAttribute(id, id, register, file), terms, register, file);
  }
  for (const rule of profile.columns) {
    const split = rule.split === undefined ? {} : { split: rule.split };
    const ids = rule.attribute == null ? attributesOf(split) : [rule.attribute];
    const attributes = ids
      .map((id) => register.attributes.get(id))
      .filter((attribute) => attribute !== undefined);
    if (rule.terms === undefined || attributes.length === 0) continue;
    const takers = attributes.filter((attribute) => termIds(attribute, register) !== null);
    // A column that is split may translate the terms of any of its parts.
    if (takers.length === 1 && attributes.length === 1) checkTerms(takers[0]!, rule.terms, register, file);
  }
}

function checkTerms(
  attribute: AttributeDefinition,
  terms: Readonly<Record<string, string>>,
  register: Register,
  file: string,
): void {
  const known = termIds(attribute, register);
  if (known === null) return;
  for (const [text, term] of Object.entries(terms)) {
    if (known.has(term) || describes(term, attribute, register)) continue;
    const vocabulary =
      attribute.vocabulary === undefined ? undefined : register.vocabularies.get(attribute.vocabulary);
    const near = vocabulary === undefined ? null : matchTerm(term, vocabulary);
    const hint = near === null || near.kind === 'none' ? '' : `did you mean "${near.id}"? Otherwise `;
    throw new InputError(
      `the profile reads "${text}" as "${term}", which is no term of "${attribute.label}"`,
      { file, path: `terms.${attribute.id}` },
      `${hint}name a term that exists, or add it under "terms" in the study`,
    );
  }
}

/** A name or a text that says what a description would ("openTwining"), or "" for words that say nothing. */
function describes(term: string, attribute: AttributeDefinition, register: Register): boolean {
  const lexicon = lexiconOf(attribute, register);
  return lexicon !== null && (term === '' || meaningOf(term, attribute, register) !== null);
}

/** The ids that an attribute takes; null where every wording is its own kind. */
function termIds(attribute: AttributeDefinition, register: Register): ReadonlySet<string> | null {
  if (attribute.scale === 'binary' || attribute.scale === 'presence') return new Set(['present', 'absent']);
  if (attribute.levels !== undefined) return new Set(attribute.levels);
  const vocabulary =
    attribute.vocabulary === undefined ? undefined : register.vocabularies.get(attribute.vocabulary);
  return vocabulary === undefined || vocabulary.terms.length === 0
    ? null
    : new Set(vocabulary.terms.map(({ id }) => id));
}
