import type { Language, Synonyms } from '../definition.ts';

/**
 * Headers that speak of one of the two systems of a fabric are made of two words: what was measured
 * ("Fadendichte") and in which system ("Kette"). Both lists are data; `forSystem` writes them out in
 * both orders, so that "Fadendichte Kette" and "Kette Fadendichte" are both known.
 *
 * System 1 is the passive one (warp, stakes, foundation), system 2 the active one (weft, rows,
 * stitches). Where a recorder could not tell warp from weft, "system 1" is the one named first.
 */
type Words = Readonly<Record<'en' | 'de' | 'fr' | 'it' | 'es' | 'da' | 'no', readonly string[]>>;

// biome-ignore format: word lists stay one language a line
export const SYSTEM_1: Words = {
  en: ['warp', 'system 1', 'system I', 'passive', 'passive system', 'passive elements', '1'],
  de: ['Kette', 'Kettfaden', 'System 1', 'System I', 'Fadensystem 1', 'passives System', 'Grundelement'],
  fr: ['chaîne', 'système 1', 'système I', 'passif', 'système passif', 'montants', 'éléments passifs'],
  it: ['ordito', 'sistema 1', 'sistema I', 'passivo', 'sistema passivo'],
  es: ['urdimbre', 'sistema 1', 'sistema I', 'pasivo', 'sistema pasivo'],
  da: ['trend', 'kæde', 'system 1', 'trådsystem 1', 'passiv'],
  no: ['renning', 'trådsystem 1', 'passivt system'],
};

// biome-ignore format: word lists stay one language a line
export const SYSTEM_2: Words = {
  en: ['weft', 'system 2', 'system II', 'active', 'active system', 'active elements', '2'],
  de: ['Schuss', 'Schuß', 'Schussfaden', 'Eintrag', 'System 2', 'System II', 'Fadensystem 2', 'aktives System'],
  fr: ['trame', 'système 2', 'système II', 'actif', 'système actif', 'éléments actifs'],
  it: ['trama', 'sistema 2', 'sistema II', 'attivo', 'sistema attivo'],
  es: ['trama', 'sistema 2', 'sistema II', 'activo', 'sistema activo'],
  da: ['islæt', 'skud', 'system 2', 'trådsystem 2', 'aktiv'],
  no: ['innslag', 'veft', 'trådsystem 2', 'aktivt system'],
};

type Given = Readonly<Partial<Record<Language, readonly string[]>>>;

/**
 * Synonyms for one quantity of one system: every quantity word joined with every system word of the
 * same language, in both orders, plus the wordings that need no system word.
 */
export function forSystem(system: Words, quantity: Given, alone: Given = {}): Synonyms {
  const found: Partial<Record<Language, readonly string[]>> = {};
  for (const language of LANGUAGES) {
    const systemWords = language === 'la' ? [] : system[language];
    const joined = (quantity[language] ?? []).flatMap((what) =>
      systemWords.flatMap((which) => [`${what} ${which}`, `${which} ${what}`]),
    );
    const all = [...(alone[language] ?? []), ...joined];
    if (all.length > 0) found[language] = all;
  }
  return found;
}

const LANGUAGES: readonly Language[] = ['en', 'de', 'fr', 'it', 'es', 'da', 'no', 'la'];
