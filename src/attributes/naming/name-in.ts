import type { AttributeDefinition, Term } from '../definition.ts';
import { composedName, type FacetValue } from './composed-name.ts';
import { FACET_WORDS } from './facet-words.ts';
import { adjective, type KindLanguage, termIn } from './languages.ts';

/** Words that stand behind the noun in German and Danish, where adjectives go before it. */
const BEHIND = /^(?:mit|med|in|aus|i) |^\(/u;
const WITHOUT: Readonly<Record<KindLanguage, (name: string) => string>> = {
  en: (name) => `${name} not said`,
  de: (name) => `ohne Angabe: ${name}`,
  fr: (name) => `sans indication : ${name}`,
  it: (name) => `senza indicazione: ${name}`,
  es: (name) => `sin indicación: ${name}`,
  da: (name) => `uden angivelse: ${name}`,
};

/**
 * The name of a structure with some of its facets: "offene diagonale Zwirnbindung mit Flor". A facet or structure
 * without a word in the language keeps its English one. Schematic: by rule, as no catalogue need write it.
 */
export function nameIn(language: KindLanguage, term: Term, values: readonly FacetValue[]): string {
  if (language === 'en') return composedName(term, values);
  const noun = termIn(term, language);
  const words = values
    .flatMap(({ attribute: { id, facet }, value }) => {
      const said = facet?.words[value];
      if (facet === undefined || said === undefined) return [];
      const place = (facet.stands === 'after' ? 100 : 0) + facet.order;
      return [{ place, word: FACET_WORDS[language][id]?.words[value] ?? said }];
    })
    .sort((a, b) => a.place - b.place)
    .map(({ word }) => word);
  const before = language === 'de' || language === 'da' ? words.filter((word) => !BEHIND.test(word)) : [];
  const behind = words.filter((word) => !before.includes(word));
  const bent = before.map((word) => adjective(word, noun, language));
  const after = behind.map((word) => adjective(word, noun, language === 'de' ? 'en' : language) ?? word);
  if (bent.includes(null)) return [[noun, ...before].join(', '), ...after].join(' ');
  return [...bent, noun, ...after].join(' ');
}

/** A name that leaves a facet out, where silence could be taken for "none": it says so. */
export function silentIn(language: KindLanguage, name: string, { id, facet }: AttributeDefinition): string {
  const called = language === 'en' ? facet?.name : FACET_WORDS[language][id]?.name;
  return `${name}, ${WITHOUT[language](called ?? facet?.name ?? id)}`;
}
