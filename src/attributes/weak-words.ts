import { foldText, splitWords } from './folding.ts';
import { splitHeader } from './header.ts';

/**
 * Header words that name an attribute among specialists of cloth and something else everywhere else, or mean
 * something else in a neighbouring language. They are never taken for the header alone, whatever the synonyms
 * say: the cells have to speak for them, and a person confirms.
 */
const GENERAL_WORDS: ReadonlySet<string> = new Set(
  (
    'age form forma forme type typ tipo reference references ref referanse reference source quelle fuente fonte kilde ' +
    'level niveau nivel livello layer layers lag lagen strato horizon horizont stage state stato estado etat status ' +
    'condition zustand tilstand position part parte partie portion part zone zona surface square ' +
    'unit komplex feature locus corte other divers rights droits diritti derechos use usage uso bruk brug function funktion ' +
    'fonction funzione funcion funksjon treatment design pattern motif muster deposit deposits deposito depot residue ' +
    'from to start end begin until von bis ab de da dal al fin fine final fra til data dato zeit stufe edad eta epoch ' +
    'station amt beleg nachweis joins fait us ue landscape destination points point punti punto sting stich balance rate remate del ' +
    'fundart occupation specialist spezialist strata stratum'
  ).split(' '),
);

/**
 * Words of the craft that are words of everyday use, of bodies, or of games as well: taken where the cells speak
 * for them, or where the table is about cloth and the cells do not speak against it.
 */
const CRAFT_WORDS: ReadonlySet<string> = new Set(
  (
    'stitch stitches core kern kerne anima alma ame spacing abstand ecart gap lean slant neigung mesh ends rows reihen rader file ' +
    'filas coups picks edge edges rim kant kante kanten kanter rand bord bords bordo bordi borde bordes patch darn reprise worn folds ' +
    'lo floss flos pelo poil pile shag knot knots strands tufts item individu individuo find fund funn pieza specimen ' +
    'material materiale matiere taxon species fabric technique tech tecnica teknik teknikk technik structure struktur struttura ' +
    'binding bindung weave fibre fiber ply dye department'
  ).split(' '),
);

/** Abbreviations that are short and yet said the same way everywhere. */
const PLAIN_SHORT: ReadonlySet<string> = new Set(['id', 'lat', 'lon', 'lng', 'tpq', 'taq']);

/** Laboratories number samples of every sort. */
const OF_A_LABORATORY = /^(?!.*(?:c ?14|14 ?c|radio)).*\b(?:lab|labor\w*)\b/;

const SHORTEST = 4;

/** How much a header says by itself. */
export type WordingStrength = 'strong' | 'craft' | 'weak';

/**
 * Whether a header says so little that it can only suggest: of fewer than four letters, or a word in general
 * use. A unit in the header ("B. (mm)") says more than the letters do; a second word does too.
 */
export function wordingStrength(header: string): WordingStrength {
  const { name, unit } = splitHeader(header);
  const folded = foldText(splitWords(name));
  if (GENERAL_WORDS.has(folded)) return 'weak';
  if (CRAFT_WORDS.has(folded.replace(/ \d$/, '')) || OF_A_LABORATORY.test(folded)) return 'craft';
  if (folded === '' || unit !== undefined || PLAIN_SHORT.has(folded)) return 'strong';
  return folded.replaceAll(/[ \d]/g, '').length < SHORTEST ? 'weak' : 'strong';
}
