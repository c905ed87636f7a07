import { foldCell } from '../text.ts';

/**
 * How many, with the word for what is counted: "two layers", "zweilagig", "à trois brins", "3-strand", "de dos cabos".
 * A word that counts something else than the column ("3 fragments" of one object) is not among them. Common practice,
 * no source.
 */
const NUMBERS: Readonly<Record<string, string>> = {
  1: 'one single un une uno una ein eine einer en et ett',
  2: 'two double zwei deux due dos to',
  3: 'three triple drei trois tre tres',
  4: 'four vier quatre quattro cuatro fire',
  5: 'five funf cinq cinque cinco fem',
  6: 'six sechs sei seis seks',
  8: 'eight acht huit otto ocho otte atte',
};
const STRANDS =
  'ply|plies|strands?|stranded|fach|fachig|fadig\\p{L}*|strangig\\p{L}*|strange?|brins?|bouts?|cap[oi]|cabos?|ramal(?:es)?|hebras?|elementi?|elements?|elementos?|trade?|tradet|tradede|trader?|stranget|strenget|strenge|strands? per row|strand twining';
/** What so many strands make up: it says no other number. */
const MADE_UP =
  'yarns?|threads?|cords?|garne?|schnure?|fils?|cordelettes?|filat[oi]|fil[oi]|hilos?|cuerdas?|plied|gezwirnt\\p{L}*|verzwirnt\\p{L}*|retors|ritort[oaie]|torcid[oa]s?|retorcid[oa]s?|tvundet|tvundne|tvunnet';
const NOUNS: Readonly<Record<string, string>> = {
  layers:
    '(?:layers?|lagen|couches|strati|capas|lag) (?:superposee?s?|superimposed|sovrappost[ie]|superpuestas?|ubereinander|over hinanden)|layers?|layered|lagig\\p{L}*|lagen?|schicht(?:en|ig)\\p{L}*|couches?|epaisseurs?|strat[oi]|capas?|lag|lags',
  plyCount1: STRANDS,
  plyCount2: STRANDS,
  strands: `${STRANDS}|wefts?`,
  strandsPerRow: `${STRANDS}|wefts?|hilos?|fils|fili|faden`,
  quantity:
    'pieces?|pcs?|items?|objects?|stuck|stk|exemplare?|pieces|pezz[oi]|piezas?|objets?|oggetti|objetos?|stykker?|genstande',
};

/** The number alone, where the text is no more than a number and a word for what the column counts; else the text. */
export function withoutCountedWords(text: string, attribute: string): string {
  const nouns = NOUNS[attribute];
  if (nouns === undefined || text.length > 40) return text;
  const folded = foldCell(text).replace(/[.]$/u, '');
  const made = nouns === STRANDS ? `(?: (?:${MADE_UP}))?` : '';
  const found = new RegExp(
    `^(?:a |of |de |di |da |aus |con |mit |en |af |only |nur |seulement |solo )?(\\d{1,2}|\\p{L}+?)(?: (?:seule?|solo|sola|single|einzige))?(?:[ -]?(?:${nouns}))?${made}$`,
    'u',
  ).exec(folded);
  const said = found?.[1];
  if (said === undefined) return text;
  if (/^\d/u.test(said)) return said;
  return Object.entries(NUMBERS).find(([, words]) => words.split(' ').includes(said))?.[0] ?? text;
}
