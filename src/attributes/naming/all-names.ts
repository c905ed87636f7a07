import type { Register } from '../definition.ts';
import { FACET_WORDS } from './facet-words.ts';
import { KIND_LANGUAGES, type KindLanguage, termIn } from './languages.ts';

/** A structure, or a value of a facet, with its words in every language. */
export interface KindName {
  /** "structure", or the name of the facet. */
  readonly what: string;
  readonly value: string;
  readonly words: Readonly<Record<KindLanguage, string>>;
}

/** Everything that names of kinds are composed of: the structures, then the facets value by value. */
export function kindNames(register: Register): readonly KindName[] {
  const terms = register.vocabularies.get('structure')?.terms ?? [];
  const structures = terms.map((term) => ({
    what: 'structure',
    value: term.label,
    words: each((language) => (language === 'en' ? (term.noun ?? term.label) : termIn(term, language))),
  }));
  const facets = [...register.attributes.values()].flatMap(({ id, facet }) =>
    facet?.of !== 'structure'
      ? []
      : Object.entries(facet.words).map(([value, said]) => ({
          what: facet.name,
          value,
          words: each((language) =>
            language === 'en' ? said : (FACET_WORDS[language][id]?.words[value] ?? said),
          ),
        })),
  );
  return [...structures, ...facets];
}

function each(word: (language: KindLanguage) => string): Readonly<Record<KindLanguage, string>> {
  const of = KIND_LANGUAGES.map((language) => [language, word(language)] as const);
  return Object.fromEntries(of) as Record<KindLanguage, string>;
}
