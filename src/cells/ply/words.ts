/** Words of ply notations in six languages, folded. Common practice, no source. */

const words = (text: string): RegExp => new RegExp(`^(?:${text.trim().replace(/\s+/gu, '|')})$`, 'u');

/** After their letter: "S-plied". */
export const PLIED = words(
  'pl(?:y|ied|ies|yed|ying) gezwirnt\\p{L}* zwirn\\p{L}* verzwirnt\\p{L}* tvundet tvundne tvunnet tvunne tvinnet tvinnede slaet slaede doubled cabled fach facher? fadig\\p{L}*',
);
/** Before their letter: "retors S", "torsión S". */
export const PLIED_BEFORE = words(
  'retors retor(?:se|ses)? retordue?s? cablee?s? ritort[oaie] torsion torsione torcid[oa]s? retorcid[oa]s? retorsion finale? final tors torses? zusammengedreht',
);
export const SPUN = words(
  'spun spin gesponnen\\p{L}* spundet spundne spunnet spunne singles? einzelfaden einfach\\p{L}*',
);
export const SPUN_BEFORE = words('filee?s? fils filat[oaie] hilad[oa]s? simples?');
/** What a plied yarn is made of: with these and a number alone a cell says of how many. */
export const STRANDS_OF_PLY = words('strand(?:s|ed)? bouts? cabos? brins? cap[oi] hebras? tradet strange?n');
export const STRANDS = words(
  'strand(?:s|ed)? bouts? cabos? brins? cap[oi] hebras? trad trade[rn]? tradet yarns? threads? garne?n? garnern faden hilos? fili strange?n elementi? elements? ends',
);
export const BETWEEN = words(
  'a of from ensemble da du de aus di af av mit with and in the an? en un et y e og und to into als zu together by',
);
export const NOISE = words(
  'twist(?:ed)? gedreht\\p{L}* drehung cord schnur direction right seil rope string twine cordelettes? cordes? ficelles? corda cordicella cordino spago cuerda cordel soga snor snore reb tau gezwirnter twine twined torsion',
);
/** The number of strands in one word with their plying: "zweifach", "totrådet". */
export const FOLD = words(
  '(?:zwei|drei|vier|sechs)fach\\p{L}* (?:zwei|drei|vier)fadig\\p{L}* (?:to|tre|fire)trads? (?:to|tre|fire)trad\\p{L}*',
);
export const NUMBERS: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  six: 6,
  eins: 1,
  zwei: 2,
  drei: 3,
  vier: 4,
  deux: 2,
  trois: 3,
  quatre: 4,
  due: 2,
  tre: 3,
  quattro: 4,
  dos: 2,
  tres: 3,
  cuatro: 4,
  to: 2,
  fire: 4,
  sechs: 6,
  double: 2,
  doppelt: 2,
};
