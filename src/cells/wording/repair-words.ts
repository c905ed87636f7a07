import { DENYING, DETERMINING, isFilling, MODAL, stems, wordsOf } from './word-classes.ts';

/** When a find was repaired, in a few words: "ancient repair", "restauro moderno", "i oldtiden". Common practice, no source. */
const IN_USE = stems(
  'ancient antiquity antik\\p{L}* antiqu\\p{L}* antic[oahei]+ antig\\p{L}* antichita oldtid\\p{L}* contemporary original\\p{L}* prehistori\\p{L}* praehistorisch\\p{L}* prahistorisch\\p{L}* preistoric[oa] zeitgenossisch\\p{L}* use gebrauch gebrauchs benutzung utilisation uso brug',
);
const LATER = stems(
  'modern\\p{L}* recent\\p{L}* reciente?s? rezent\\p{L}* neuzeitlich\\p{L}* nyere tid restaur\\p{L}* conservation konservier\\p{L}* konserver\\p{L}* conservator\\p{L}* konservator\\p{L}* museum\\p{L}* musee museo',
);
const AROUND = stems(
  'during wahrend pendant durante under i l dans repairs? repaired darn\\p{L}* mend\\p{L}* patch\\p{L}* reparatur\\p{L}* repariert\\p{L}* ausgebessert\\p{L}* ausbesserung\\p{L}* geflickt\\p{L}* gestopft\\p{L}* flick\\p{L}* repar\\p{L}* reprise\\p{L}* riparazion[ei] riparat[oaie] rammend\\p{L}* remiend\\p{L}* zurcid[oa]s? reparation\\p{L}* stopning\\p{L}* lap[p]?\\p{L}*',
);

/** The term that a text of known words names; null where both times or neither are named. */
export function repairTimeInWords(text: string): string | null {
  if (text.length > 60 || /[\d?/]/u.test(text)) return null;
  const words = wordsOf(text);
  if (words.length === 0 || words.length > 6) return null;
  if (words.some((word) => DENYING.test(word) || DETERMINING.test(word) || MODAL.test(word))) return null;
  const [early, late] = [IN_USE, LATER].map((when) => words.some((word) => when.test(word)));
  const known = (word: string) => [IN_USE, LATER, AROUND].some((one) => one.test(word)) || isFilling(word);
  if (early === late || !words.every(known)) return null;
  return early === true ? 'inUse' : 'afterFinding';
}
