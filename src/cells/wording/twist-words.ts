import { DENYING, DETERMINING, isFilling, MODAL, OBSERVING, stems, wordsOf } from './word-classes.ts';

/**
 * A direction of twist or slant in a sentence of known words: "slightly S-spun", "Z-Drall, fest", "torsion S lâche",
 * "S (20-25°)", "no spin visible, fibres parallel", "S und Z im Wechsel". Common practice, no source.
 */
export type TwistSaid = 'S' | 'Z' | 'none' | 'both';

/** The turn itself. */
const TURN =
  stems(`twist(?:ing|s)? tvist torcitura torcedura torsade retorsion spin(?:ning)? torsion(?:e|es|i|s)? drehung\\p{L}* spinndrehung drehrichtung drall drill filatura hilatura filature spinnrichtung snoning\\p{L}* drejning\\p{L}* tvinning\\p{L}* spinding spinderetning
  direction direzione direccion richtung retning senso sentido sens pendenza pendiente pente slant lean(?:s|ing)? neigung\\p{L}* inclin\\p{L}* haeldning helning skraning`);
/** How strongly: it says nothing of the direction. */
export const STRENGTH =
  stems(`(?:very|rather|fairly|quite|over|mildly|somewhat) weak(?:ly)? strong(?:ly)? slight(?:ly)? light(?:ly)? loose(?:ly)? tight(?:ly)? medium moderate(?:ly)? hard soft(?:ly)? crepe high low slack(?:ly)? firm(?:ly)? thin thick overspun overtwisted even(?:ly)? irregular\\p{L}* irregulier\\p{L}* irregolar\\p{L}* ungleichmassig\\p{L}* ujaevnt? sottil[ei] fin[oai]s? fint delgad[oa]s? gruesa?o?s? tyndt? dunn\\p{L}* jaevnt? jevnt? regular(?:ly)? uneven(?:ly)? fine(?:ly)? coarse(?:ly)? tough
  schwach\\p{L}* stark\\p{L}* lose\\p{L}* locker\\p{L}* fest\\p{L}* mittel\\p{L}* leicht\\p{L}* hart\\p{L}* weich\\p{L}* sehr etwas ziemlich wenig recht uberdreht\\p{L}* straff\\p{L}* gleichmassig\\p{L}* regelmassig\\p{L}* unregelmassig\\p{L}* fein\\p{L}* grob\\p{L}* kraftig\\p{L}*
  faibl\\p{L}* forte?s? fortement laches? serree?s? moyen(?:ne|s)? moyennement legere?s? legerement tres peu assez marquee? prononcee? mince surtordue? souple\\p{L}* regulier\\p{L}* fine?s?
  debol[ei] debolmente strett[oaie] serrat[oaie] lent[oaie] lasc[oa] allentat[oa] medi[oaie] molto poco leggermente fortemente forti accentuat[oa] marcat[oa] regolare
  debil(?:es|mente)? fuertes? fuertemente laxa?o? flo[jx][oa]s? apretad[oa]s? prieta suaves? muy ligera\\p{L}* ligero media mediana suelt[oa]
  svag\\p{L}* sterk\\p{L}* staerk\\p{L}* kraftig\\p{L}* los[te]? lost haard\\p{L}* hardt? middel\\p{L}* stram\\p{L}* fast[e]? meget lidt litt let ret`);
/** Turned, spun. */
const TURNED = stems(
  `(?:s|z)?twisted spun gedreht\\p{L}* gesponnen\\p{L}* versponnen tordue?s? filee?s? filat[oaie] ritort[oaie] torcid[oa]s? torcer hilad[oa]s? hilar tort[oaie] torcido snoe[td]\\p{L}* spundet spundne spunnet spunne gesp gedr tvundet tvunnet tvinnet incline[es]* inclinat[oaie] inclinad[oa]s? slanting leaning geneigt\\p{L}* worked`,
);
const ELEMENTS = stems(
  `yarns? threads? garn\\p{L}* faden fil fils fil[oi] hilos? trad\\p{L}* enkelttrad\\p{L}* single simple[sx]? semplic[ei] sencill[oa]s? singol[oaie] einzelfaden\\p{L}* einfach\\p{L}* enkelt\\p{L}* unplied ungezwirnt\\p{L}* only nur uniquement seulement sol[oa]mente solo solamente kun bare consistently konsequent er all both throughout durchgehend\\p{L}* tous toutes tutt[ie] todos todas alle gennemgaende lie liegen flat flach\\p{L}* plat[ese]* piatt[ei] plan[oa]s? flad\\p{L}* bast\\p{L}* element\\p{L}* strands? fib[re]{2}s? fasern? fibr[ae]s? fiber fibrer laid lying strips? streifen lanieres? strisce tiras rows? reihen? bindungsreihen? rangs? rangees? fil[ae]s? raekke\\p{L}* rader? turns?`,
);
const PARALLEL = stems(
  'untwisted ungedreht\\p{L}* unverdreht\\p{L}* utvund\\p{L}* usno\\p{L}* unspun ungesponnen\\p{L}* unversponnen\\p{L}* uspund\\p{L}* uspunn\\p{L}* parallel\\p{L}* paralel\\p{L}* straight gerade droites? dritt[oaie] rect[oa]s? lige rett',
);
/** "Rather S", "more Z": a doubt in a small word. */
const COMPARING = stems('mas plus piu more mehr mer ya yet noch');
const BY_TURNS = stems(
  `altern\\p{L}* wechsel\\p{L}* abwechsel\\p{L}* skiftevis vekslende veksler mixed gemischt\\p{L}* melang\\p{L}* mist[oaie] mezclad[oa]s? blandet counter\\p{L}* gegenlaufig\\p{L}*`,
);
const AND = stems('and und et e y og');
const ANGLE =
  /[([]?(?:c\.|ca\.?|~)? ?\d{1,2}(?:[.,]\d)?(?: ?[-–] ?\d{1,2}(?:[.,]\d)?)? ?(?:°|º|deg\.?|grad|degrees|degrés?|gradi|grados|grader)[)\]]?/giu;

const LONGEST = 70;

/** The direction that a text of known words names; null where one word more stands in it, or none is named. */
export function twistInWords(text: string): TwistSaid | null {
  if (text.length > LONGEST) return null;
  const bare = text
    .replace(ANGLE, ' ')
    .replace(/(?<!\p{L})(?:not plied|non retors|nicht gezwirnt)(?!\p{L})/giu, ' ')
    // "Rangs alternés S/Z": beside a word for turns the slash says "and".
    .replace(/(?<=(?:altern|wechsel|skift|veksl)\p{L}* .*)([SZ]) ?\/ ?([SZ])/giu, '$1 $2');
  if (/\d|[/?]/u.test(bare)) return null;
  const all = wordsOf(bare.replace(/(?<=\p{L})-(?=\p{L})/gu, ' '));
  if (all.length === 0 || all.length > 10 || all.some((word) => MODAL.test(word))) return null;
  const letters = all.filter((word) => word === 's' || word === 'z');
  if (letters.length > 0) return named(all, letters);
  const clauses = bare
    .split(/[,;]/u)
    .map(wordsOf)
    .filter((clause) => clause.length > 0);
  // "Flat strips, not spun": what is spoken of may stand by itself.
  const names = (clause: readonly string[]) => clause.every((word) => ELEMENTS.test(word) || isFilling(word));
  return clauses.some(saysNone) && clauses.every((clause) => saysNone(clause) || names(clause))
    ? 'none'
    : null;
}

function named(all: readonly string[], letters: readonly string[]): TwistSaid | null {
  const known = (word: string) =>
    letters.includes(word) ||
    TURN.test(word) ||
    STRENGTH.test(word) ||
    TURNED.test(word) ||
    ELEMENTS.test(word) ||
    (isFilling(word) && !COMPARING.test(word));
  if (letters.length === 1) return all.every(known) ? (letters[0] === 's' ? 'S' : 'Z') : null;
  const both = letters.length === 2 && letters[0] !== letters[1];
  const turns = all.some((word) => BY_TURNS.test(word));
  const fits = all.every((word) => known(word) || BY_TURNS.test(word) || AND.test(word));
  return both && turns && fits ? 'both' : null;
}

/** "No spin", "non filé", "fibres parallel": looked at, and there is no turn. */
function saysNone(clause: readonly string[]): boolean {
  const denial = clause.findIndex((word) => DETERMINING.test(word) || DENYING.test(word));
  if (denial < 0)
    return (
      clause.some((word) => PARALLEL.test(word)) &&
      clause.every((word) => PARALLEL.test(word) || ELEMENTS.test(word) || isFilling(word))
    );
  const rest = clause.filter((_, at) => at !== denial);
  const thing = DETERMINING.test(clause[denial]!)
    ? (word: string) => TURN.test(word) || TURNED.test(word)
    : (word: string) => TURNED.test(word);
  const next = clause.slice(denial + 1).find((word) => !isFilling(word) && !OBSERVING.test(word));
  if (next === undefined || !thing(next)) return false;
  // "Nicht erkennbar gedreht" hides a question, "no visible twist" none.
  if (DENYING.test(clause[denial]!) && clause.some((word) => OBSERVING.test(word))) return false;
  return rest.every(
    (word) =>
      TURN.test(word) || TURNED.test(word) || ELEMENTS.test(word) || OBSERVING.test(word) || isFilling(word),
  );
}
