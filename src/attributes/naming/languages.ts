import type { Term } from '../definition.ts';

/** Languages in which kinds of fabric are named; English unless a study says otherwise. */
export const KIND_LANGUAGES = ['en', 'de', 'fr', 'it', 'es', 'da'] as const;
export type KindLanguage = (typeof KIND_LANGUAGES)[number];

/** What each language is called in a list. */
export const LANGUAGE_NAMES: Readonly<Record<KindLanguage, string>> = {
  en: 'English',
  de: 'German',
  fr: 'French',
  it: 'Italian',
  es: 'Spanish',
  da: 'Danish',
};

/** Nouns of structures where the first wording of the vocabulary is not the one to build a name on. Common practice, no source. */
// biome-ignore format: one language a line
const NOUNS: Readonly<Record<KindLanguage, Readonly<Record<string, string>>>> = {
  en: {},
  de: { plaited: 'Geflecht', linked: 'Verkettung', looped: 'Verschlingung', simpleLooping: 'einfache Verschlingung', knitted: 'Gestrick', crocheted: 'Häkelei', sprang: 'Sprang', stakeAndStrand: 'Stakengeflecht', weftWrapping: 'Umschlingungsbindung', lampas: 'Lampas', taquete: 'Taqueté', twill22: 'Köper 2/2', twill21: 'Köper 2/1' },
  fr: { twined: 'cordé', satin: 'satin', lampas: 'lampas', taquete: 'taqueté', sprang: 'sprang', twill22: 'sergé 2/2', twill21: 'sergé 2/1', satinDamask: 'damas de satin', twillDamask: 'damas de sergé' },
  it: { tabby: 'tela', lampas: 'lampasso', sprang: 'sprang', plaited: 'intreccio' },
  es: { tabby: 'tafetán', twill: 'sarga', satin: 'raso', netting: 'red', sprang: 'sprang', twill22: 'sarga 2/2' },
  da: { looped: 'slyngning', plaited: 'fletværk', satin5: 'fembundet satin', satin8: 'ottebundet satin', lampas: 'lampas', sprang: 'sprang', taquete: 'taqueté', samite: 'samite' },
};

/** What a structure is called, as the noun of a composed name; the English label where the language has no word. */
export function termIn({ id, label, synonyms }: Term, language: KindLanguage): string {
  return NOUNS[language][id] ?? (language === 'en' ? label : (synonyms?.[language]?.[0] ?? label));
}

/** Beginnings or ends of nouns whose adjectives take the second form. */
const SECOND: Readonly<Record<'fr' | 'it' | 'es' | 'da', RegExp>> = {
  fr: /^(?:toile|tapisserie|gaze|vannerie|tresse|étoffe|double étoffe|ficelle|lanière|boucle)/u,
  it: /^(?:tela|armatura|saia|tessitura|rete|maglia|garza|cesteria|treccia|corda|fune|asola|striscia)/u,
  es: /^(?:sarga|red|tela|gasa|cestería|pleita|soga|trenza|tira|doble tela|espiral|cordelería)/u,
  da: /(?:net|netværk|væv|reb|garn|bundt|tøj|toskaft)$/u,
};

const GERMAN: readonly (readonly [noun: RegExp, ending: string])[] = [
  [/(?:bindung|technik|erei|schnur|verschlingung|verkettung)$/iu, 'e'],
  [
    /(?:köper(?: \d\/\d)?|atlas(?: \d\/\d)?|damast|dreher|samit|filz|zopf|wulst|stoff|sprang|lampas)$/iu,
    'er',
  ],
  [/(?:geflecht(?: \d\/\d)?|gewebe|netz|seil|garn|bündel|gestrick)$/iu, 'es'],
];

/** An adjective in the form that its noun asks for; null where the gender of a German noun is not known. */
export function adjective(word: string, noun: string, language: KindLanguage): string | null {
  const [first = word, second = first] = word.split('|');
  if (language === 'en') return first;
  if (language !== 'de') return SECOND[language].test(noun) ? second : first;
  const ending = GERMAN.find(([pattern]) => pattern.test(noun))?.[1];
  return ending === undefined ? null : `${first}${ending}`;
}
