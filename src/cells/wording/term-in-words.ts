import type { Vocabulary } from '../../attributes/definition.ts';
import { matchTerm } from '../../attributes/matching.ts';
import { reachOf } from '../../attributes/method-reach.ts';
import { FIBRE_METHOD } from '../../attributes/vocabularies/fibre-method.ts';
import { flagged, quote, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';
import { bastOf, besideFibre, isBast, plainFibre } from './fibre-words.ts';
import { inflectedTerm } from './inflected-term.ts';
import { preservationInWords } from './preservation-words.ts';
import { repairTimeInWords } from './repair-words.ts';

/** A term said with more words than its name. */
export interface WordedTerm {
  readonly term: string;
  /** Steps of certainty that what stands beside it takes away. */
  readonly doubt: number;
  readonly notes: readonly Note[];
}

/** Where a thing is on its piece says nothing of its kind. */
const PLACE =
  /[,;]? ?(?<!\p{L})(?:\(?(?:on |at |auf |am |an |à |a |en |på |i |sur |su )?(?:the |der |dem |le |la |il |los? |den )?(?:(?:des )?deux côtés|beiden Seiten|entrambi i lati|ambos lados|begge sider|d['’]un côté|un lato|un lado|left|right|top|bottom|upper|lower|one side|both sides|one edge|both edges|sx|dx|sin\.|izq\.|dcha\.|li\.|re\.|links|rechts|oben|unten|beidseitig|einseitig|linke?r?|rechte?r?|gauche|droite|sinistra|destra|izquierd[ao]|derech[ao]|venstre|højre|høyre|1 side|2 sides|1 Seite|2 Seiten)(?: (?:side|edge|Seite|Kante|côté|lato|lado|side))?\)?)(?!\p{L})/giu;
/** "Rolled hem", "Rollsaum", "ourlet roulé": how a hem is made keeps it a hem. */
const HEMMED =
  /^(?:(?:rolled|narrow|double|single|turned|folded|sewn|stitched|doppelter?|schmaler?|umgeschlagener?) |Roll(?=saum)|Doppel(?=saum)|rulle(?=søm))?(hem|saum|ourlet|dobladillo|sømmet|orlo cucito)s?(?:,? (?:sewn|stitched|genäht|cousu|cosido|cucito|roulée?|simple|double|étroite?|enrollado|doble|estrecho|arrotolato|doppio))?$/iu;
/** The thread of which a way of making it ready is said. */
const YARN =
  /^(?:(?:the )?(?:yarns?|threads?|fib(?:re|er)s?|fasern?|fäden) (?:is|are|sind|ist) )|^(?:yarns?|threads?|fib(?:re|er)s?|fils?|fibres?|fil[oi]|hilos?|fibras?|garn|tråd\p{L}*) | (?:yarns?|threads?|fib(?:re|er)s?|garne?|fasern?|tråd\p{L}*|fibre?r?)$|(?<=gespleißte?)s?(?: garn| fäden)$/iu;
const CAST =
  /^(?:(?:silicone?|latex|plaster|resin|rubber|gips|silikon|kunststoff|plâtre|résine|gesso|yeso|silicona|gummi)[- ]?(?:cast|abguss|afstøbning)(?: of (?:the |an )?impression)?|(?:moulage|calco|vaciado|copia) (?:en|in|de) \p{L}+)$/iu;
/** What any method is. */
const ANALYSIS =
  /[- ]?(?<!\p{L}\p{L})(?:analys[ei]s?|analisi|análisis|Untersuchung|Bestimmung|identification|determination|undersøgelse|undersøkelse)$/iu;
/** Short vocabularies of nouns, in which stems tell the terms apart. */
const INFLECTED: ReadonlySet<string> = new Set([
  'edge',
  'knot',
  'stitch',
  'foundation',
  'processing',
  'observedOn',
  'treatment',
]);
const BY_WAY_OF =
  /^(?:examen|analyse|analisi|análisis|examination|identification|Bestimmung|undersøgelse) (?:au|à l['’]|al|par|by|con|mit|im|am|med|i|under the) ?/iu;
const ALONE = /^(?:only|nur|kun|solo|sólo|seulement|uniquement) |,? (?:only|seulement|solamente|soltanto)$/iu;
const PLACED: ReadonlySet<string> = new Set(['edge', 'knot', 'stitch']);

/** Reads a term among known words: a fibre with its method, a mode of preservation with its metal, an edge with its side. */
export function termInWords(text: string, vocabulary: Vocabulary): WordedTerm | null {
  if (text.length > 90) return null;
  if (vocabulary.id === 'fibre') return fibreInWords(text, vocabulary);
  if (vocabulary.id === 'preservation') {
    const term = preservationInWords(text);
    return term === null ? null : simple(term, text);
  }
  if (vocabulary.id === 'observedOn' && CAST.test(text)) return simple('cast', text);
  if (vocabulary.id === 'observedOn')
    return preservationInWords(text) === 'impression' ? simple('impression', text) : null;
  if (vocabulary.id === 'repairTime') {
    const term = repairTimeInWords(text);
    return term === null ? null : simple(term, text);
  }
  const bare =
    vocabulary.id === 'fibreMethod'
      ? text.replace(ANALYSIS, '').replace(BY_WAY_OF, '').replace(ALONE, '').trim()
      : vocabulary.id === 'processing'
        ? text.replace(YARN, '').trim()
        : PLACED.has(vocabulary.id)
          ? text
              .replace(PLACE, '')
              .replace(/selvage/giu, 'selvedge')
              .replace(/Webekante/gu, 'Webkante')
              .replace(HEMMED, '$1')
              .trim()
          : '';
  const inflected = INFLECTED.has(vocabulary.id)
    ? inflectedTerm(bare === '' ? text : bare, vocabulary)
    : null;
  if (inflected !== null) return simple(inflected, text);
  if (bare === '' || (bare === text.trim() && !bare.includes(','))) return null;
  // "Webkante, einfach": the adjective behind its noun.
  const [noun, adjective, ...more] = bare.split(/, ?/u);
  const turned =
    adjective === undefined || more.length > 0
      ? []
      : [`${adjective} ${noun}`, `${adjective}e ${noun}`, `${noun} ${adjective}`];
  for (const form of [bare, ...turned]) {
    const match = matchTerm(form, vocabulary);
    if (match.kind === 'exact') return simple(match.id, text);
  }
  return null;
}

const simple = (term: string, text: string): WordedTerm => ({
  term,
  doubt: 0,
  notes: [readAs('in-words', `${quote(text)} read as ${term}`)],
});

function fibreInWords(text: string, vocabulary: Vocabulary): WordedTerm | null {
  const beside = besideFibre(text);
  const method = beside === null ? null : matchTerm(beside.beside, FIBRE_METHOD);
  if (beside !== null && method?.kind === 'exact') {
    const fibre = fibreNamed(beside.fibre, vocabulary);
    if (fibre === null) return null;
    const reach = reachOf(fibre, method.id, vocabulary, FIBRE_METHOD);
    if (reach?.reach === 'cannot') return null;
    const doubt = reach === null ? 0 : ['certain', 'probable', 'possible'].indexOf(reach.reach);
    const note =
      doubt === 0
        ? readAs('method-beside', `${quote(text)} names the method too`)
        : flagged(
            'method-beside',
            `${quote(text)}: ${reach!.by.why}, so ${fibre} is no more than ${reach!.reach}`,
          );
    return { term: fibre, doubt, notes: [note] };
  }
  const named = fibreNamed(text, vocabulary);
  return named === null ? null : simple(named, text);
}

function fibreNamed(text: string, vocabulary: Vocabulary): string | null {
  const plain = plainFibre(text);
  // "Wollgarn": the stem of a compound lacks its ending.
  for (const form of [text, plain, ...(plain === text ? [] : [`${plain}e`])]) {
    if (form === '') continue;
    const match = matchTerm(form, vocabulary);
    if (match.kind === 'exact') return match.id;
    const plant = bastOf(form);
    const bast = plant === null ? null : matchTerm(plant, vocabulary);
    if (bast?.kind === 'exact' && isBast(bast.id, vocabulary)) return bast.id;
  }
  return null;
}
