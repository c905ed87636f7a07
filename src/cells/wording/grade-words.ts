import { DENYING, DETERMINING, isFilling, MODAL, stems, wordsOf } from './word-classes.ts';

/**
 * Grades in a sentence: "loosely spun", "torsione lenta", "sehr fest gedreht", "dicht gesetzte Reihen". Common
 * practice, no source.
 */

interface Grade {
  readonly term: string;
  readonly words: RegExp;
}

const TIGHTNESS: readonly Grade[] = [
  {
    term: 'loose',
    words: stems(
      `peu poco wenig lidt litt slightly loose(?:ly)? soft(?:ly)? slack(?:ly)? weak(?:ly)? lose[rns]? locker\\p{L}* schwach\\p{L}* weich\\p{L}* laches? lachement faibl\\p{L}* souples? lent[oaie] lasc[oa] allentat[oa] debol\\p{L}* floj[oa]s? laxa?o? suelt[oa]s? debil\\p{L}* lose? lost svag\\p{L}*`,
    ),
  },
  {
    term: 'medium',
    words: stems(
      'medium moderate(?:ly)? mittler\\p{L}* mittel\\p{L}* moyen(?:ne|s|nes)? moyennement medi[oaie] mediana? medianamente mediamente middel\\p{L}* middels',
    ),
  },
  {
    term: 'tight',
    words: stems(
      'tight(?:ly)? hard strong(?:ly)? firm(?:ly)? feste?[rns]? stark\\p{L}* straff\\p{L}* harte?[rns]? serree?s? fortement forte?s? strett\\p{L}* serrat[oaie] forti fuertes? fuertemente apretad[oa]s? fast[e]? haard\\p{L}* hardt? h(?:aa|a)rdt?(?:spundet|snoet|tvundet) stram\\p{L}* sterkt? staerkt?',
    ),
  },
];
const VERY = stems('very sehr tres molto muy meget svaert veldig');
const SPUN = stems(
  'spun twist(?:ed)? yarns? threads? gedreht\\p{L}* gesponnen\\p{L}* drehung drall garn faden torsion(?:e|s)? filee?s? tordue?s? fils? filat[oaie] ritort[oaie] fil[oi] torcid[oa]s? hilad[oa]s? hilos? spundet spundne spunnet snoet snoning tvundet tvunnet tvinning trad\\p{L}* trade plied gezwirnt\\p{L}* retors',
);

const SPACING: readonly Grade[] = [
  {
    term: 'close',
    words: stems(
      'close(?:ly|-set)? tight(?:ly)? compact(?:ly)? touching contiguous adjoining abutting dicht\\p{L}* eng\\p{L}* geschlossen\\p{L}* serree?s? jointif\\p{L}* jointives? contigue?s? compacte?s? fitt[oaie] serrat[oaie] accostat[oaie] ravvicinat[oaie] contigu[oaie]s? compatt[oaie] aderenti apretad[oa]s? cerrad[oa]s? juntas? compact[oa]s? taett?e? taet tette?',
    ),
  },
  {
    term: 'semi-open',
    words: stems(
      'semiopen semi-?offen halboffen\\p{L}* semiouverte?s? semiapert[oaie] semiabiert[oa]s? halvab(?:en|ne)',
    ),
  },
  {
    term: 'open',
    words: stems(
      'open(?:work|ly)? apart well-spaced spaced widely offen\\p{L}* weit\\p{L}* ouverte?s? espacee?s? ajouree?s? ecartee?s? apert[oaie] spaziat[oaie] distanziat[oaie] rad[oaie] abiert[oa]s? espaciad[oa]s? separad[oa]s? abne? aben aaben spredte?',
    ),
  },
];
const ROWS = stems(
  'auseinander aneinander well sammen together rows? set placed arranged reihen? gesetzt\\p{L}* stehend\\p{L}* liegend\\p{L}* rangs? rangees? file fil[ae]s? dispost[oaie] pasadas dispuest[oa]s raekke[rn]? rader twining zwirnbindung cordee? weave gewebe',
);

/** Grades by vocabulary; null where a word is not known, or two grades are named. */
export function gradeInWords(text: string, vocabulary: string): string | null {
  if (text.length > 60 || /[\d?/()[\]]/u.test(text)) return null;
  const [grades, nouns] =
    vocabulary === 'tightness' ? [TIGHTNESS, SPUN] : vocabulary === 'spacingClass' ? [SPACING, ROWS] : [];
  if (grades === undefined || nouns === undefined) return null;
  const words = wordsOf(text);
  if (words.length === 0 || words.length > 6) return null;
  if (words.some((word) => DENYING.test(word) || DETERMINING.test(word) || MODAL.test(word))) return null;
  const met = new Set<string>();
  let very = false;
  for (const word of words) {
    const grade = grades.find((one) => one.words.test(word));
    if (grade !== undefined) met.add(grade.term);
    else if (VERY.test(word)) very = true;
    else if (!nouns.test(word) && !isFilling(word)) return null;
  }
  const [only] = met;
  if (only === undefined || met.size > 1) return null;
  if (!very) return only;
  return only === 'tight' ? 'very tight' : vocabulary === 'spacingClass' ? only : null;
}
