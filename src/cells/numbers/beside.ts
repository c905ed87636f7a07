import { flagged, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';
import { foldCell } from '../text.ts';

/** What stands beside a number and is not of it, taken off. */
export interface Bare {
  readonly text: string;
  readonly notes: readonly Note[];
}

const LONGEST = 60;

const ESTIMATED =
  /^(.*\d.*?) ?[([]?(?:est|estimated|estimate|gesch|geschatzt|estime|estimee|stimato|stimata|estimado|estimada|approximate|approximately|approximativ|approssimativ[oa]|aproximad[oa]|anslaet|anslatt|ansl|skonnet|ca|circa|approx|env|environ|aprox)\.?[)\]]?$/u;
/** "Une quinzaine": about so many. */
const ROUND: Readonly<Record<string, number>> = {
  dizaine: 10,
  douzaine: 12,
  quinzaine: 15,
  vingtaine: 20,
  trentaine: 30,
  quarantaine: 40,
  decina: 10,
  dozzina: 12,
  quindicina: 15,
  ventina: 20,
  trentina: 30,
  dozen: 12,
  dutzend: 12,
  dusin: 12,
  decena: 10,
  docena: 12,
  quincena: 15,
  veintena: 20,
  treintena: 30,
};
const ROUND_NUMBER = new RegExp(
  `^(?:about |etwa |environ |circa )?(?:une?|una|an?|eine?|et) (${Object.keys(ROUND).join('|')})(?!\\p{L})(?: (?:de|di|d'))?`,
  'u',
);
const TWIST_BEHIND = /^(.*?\d)( ?)[sz](?= ?(?:\/|per|pro|par|al|por|pr\b)|$)(.*)$/u;
const TWIST_LAST = /^(.*\d ?\/ ?cm) ?[sz]$/u;
const SYSTEM =
  /^(?:warps?|wefts?|kette|schuss|chaine|trame|ordito|trama|urdimbre|trend|islaet|renning|innslag|k|s)[.:]? +(?=[\d<>~c])/u;
/** "22 fili/cm ordito": the system named behind. */
const SYSTEM_BEHIND =
  /(?<=\d ?(?:\p{L}+ ?)?(?:\/|per|pro|par|al|por|pr\.?) ?cm) \(?(?:in |en |i |di |de |d')?(?:warps?|wefts?|kette|schuss|chaine|trame|ordito|trama|urdimbre|trend|islaet|renning|innslag)\)?$/u;
const DIAMETER = /^(?:d|ø|o)[.:]? ?(?=\d)/u;

/**
 * Takes off what is beside a number: "12 (est.)" is about 12, "12-14 Z/cm" a count with the twist of its threads,
 * "Kette 12" names the system, which the column does too, "D. 0,8" the measure.
 */
export function withoutBeside(text: string, unit: string | undefined): Bare {
  const notes: Note[] = [];
  // A number with what stands beside it is short; no pattern is tried on prose.
  if (text.length > LONGEST) return { text, notes };
  let rest = foldCell(text);
  if (!/\d/u.test(rest) && !ROUND_NUMBER.test(rest)) return { text, notes };
  const before = rest;
  const tens = ROUND_NUMBER.exec(rest);
  if (tens !== null) rest = `c. ${ROUND[tens[1]!]}${rest.slice(tens[0].length)}`;
  const estimated = ESTIMATED.exec(rest);
  if (estimated !== null) rest = `c. ${estimated[1]}`;
  if (unit === 'per cm') {
    const twisted = TWIST_LAST.exec(rest) ?? TWIST_BEHIND.exec(rest);
    if (twisted !== null) {
      rest = `${twisted[1]}${twisted[3] ?? ''}`;
      notes.push(
        flagged(
          'twist-beside',
          'the letter behind the count is the twist of its threads, and is not kept here',
        ),
      );
    }
    rest = rest.replace(SYSTEM_BEHIND, '');
    const named = SYSTEM.exec(rest);
    if (named !== null) {
      rest = rest.slice(named[0].length);
      notes.push(flagged('system-named', 'the cell names the system; check that it is that of the column'));
    }
  }
  if (unit === 'mm') {
    rest = rest.replace(/(?<=\d ?(?:[mc]m)?) ?ø$|(?<=\d ?[mc]m) ?o$/u, '');
    const named = DIAMETER.exec(rest);
    if (named !== null) {
      rest = rest.slice(named[0].length);
      notes.push(readAs('measure-named', 'the cell names the measure'));
    }
  }
  return rest === before ? { text, notes: [] } : { text: rest, notes };
}
