import { alternation } from '../text.ts';

/**
 * Words around numbers in the languages of reports, folded (no accents, lower case). Each kind is one
 * list: English, German, French, Italian, Spanish, Danish/Norwegian.
 */
export type WordKind =
  | 'about'
  | 'atMost'
  | 'below'
  | 'atLeast'
  | 'above'
  | 'orMore'
  | 'orLess'
  | 'to'
  | 'or'
  | 'and'
  | 'from'
  | 'mean'
  | 'centres'
  | 'spaces'
  | 'within'
  | 'label'
  | 'broken';

const LISTS: readonly (readonly [WordKind, string])[] = [
  [
    'about',
    "a peu pres|all'incirca|mehr oder weniger|more or less|plus ou moins|piu o meno|mere eller mindre|" +
      'c.|ca.|ca|c|or so|um die|um|ung.|grob|approximativement|approssimativamente|mas o menos|scarcely|knappe|knapper|gute|circa|cca|cca.|approx.|approx|approximately|about|around|roughly|etwa|ungefahr|ungef.|rund|zirka|' +
      'almost|nearly|just under|just over|just below|just above|barely|knapp|gut|fast|beinahe|nahezu|a peine|presque|quasi|appena|scarso|casi|apenas|cerca de|knap|godt|naesten|nesten|drygt|snaut|est.|estimated|geschatzt|gesch.|' +
      'autour de|intorno a|attorno a|intorno ai|en torno a|rundt om|rundt regnet|environ|env.|env|aprox.|aprox|aproximadamente|alrededor de|unos|unas|omkring|omtrent|cirka|omtr.',
  ],
  [
    'atMost',
    "max.|max|maximum|maximal|at most|no more than|not more than|up to|hochstens|bis zu|jusqu'a|au plus|au maximum|" +
      'al massimo|massimo|como maximo|maximo|nicht mehr als|pas plus de|non piu di|no mas de|ikke mere end|ikke mer enn|hojst|hoyst|maks.|maks|op til|opp til|inntil|indtil',
  ],
  [
    'below',
    'under|below|less than|fewer than|smaller than|unter|weniger als|kleiner als|moins de|inferieur a|meno di|' +
      'inferiore a|menos de|inferior a|mindre end|mindre enn|faerre enn|faerre end',
  ],
  [
    'atLeast',
    'min.|min|minimum|minimal|at least|no less than|not less than|no fewer than|not fewer than|nicht weniger als|pas moins de|non meno di|no menos de|mindestens|mind.|wenigstens|au moins|au minimum|almeno|' +
      'minimo|al menos|como minimo|mindst|minst',
  ],
  [
    'above',
    'over|above|more than|greater than|larger than|uber|mehr als|grosser als|plus de|superieur a|piu di|oltre|' +
      'superiore a|mas de|superior a|mere end|mer enn|flere end|flere enn',
  ],
  [
    'orMore',
    'or more|and more|oder mehr|und mehr|u. mehr|ou plus|et plus|o piu|e piu|o mas|y mas|eller mere|eller mer',
  ],
  ['orLess', 'or less|oder weniger|ou moins|o meno|o menos|eller mindre'],
  ['to', 'to|till|through|bis|a|til|fino a|hasta'],
  ['or', 'or|oder|od.|ou|o|eller'],
  ['and', 'and|und|u.|et|e|y|og'],
  ['from', 'between|from|zwischen|zw.|zw|von|entre|de|tra|fra|da|desde|mellem|mellom'],
  [
    'mean',
    'mean|avg.|avg|average|averaging|av.|mittel|mittelwert|im mittel|mw|durchschnitt|durchschn.|im durchschnitt|' +
      'moyenne|moy.|en moyenne|media|in media|de media|gennemsnit|gns.|gjennomsnitt|snitt|median|mediane|mediana',
  ],
  [
    'centres',
    'centre to centre|center to center|centre-to-centre|c-c|c/c|first to last|von mitte zu mitte|mitte zu mitte|' +
      'achsabstand|axe a axe|entraxe|da centro a centro|de centro a centro|centro a centro|fra midte til midte|' +
      'midte til midte|fra senter til senter|senter til senter',
  ],
  [
    'spaces',
    'spaces|intervals|abstande|zwischenraume|intervalles|espaces|intervalli|spazi|intervalos|espacios|mellemrum',
  ],
  [
    'label',
    'long|wide|thick|high|tall|length|width|height|thickness|diameter|diam.|diam|dm.|dm|l.|h.|b.|w.|br.|durchmesser|durchm.|lang|breit|dick|hoch|lange|breite|dicke|hohe|' +
      'longueur|largeur|epaisseur|hauteur|diametre|lunghezza|larghezza|spessore|altezza|diametro|longitud|ancho|anchura|grosor|grueso|altura|' +
      'laengde|bredde|tykkelse|hojde|hoyde|lengde|bred|tyk|tykk|hoj|hoy|gesamt|total',
  ],
  [
    'broken',
    'incomplete|broken|preserved|pres.|pres|surviving|remaining|extant|noch|cons.|cons|frag.|fragmentary|erh.|erh|erhalten|noch erhalten|unvollstandig|abgebrochen|' +
      'erhaltene|conserves|conservees|conservati|conservate|conservados|conservadas|conserve|conservee|incomplet|incomplete|casse|conservato|conservata|incompleto|incompleta|frammentario|conservado|conservada|' +
      'bevaret|bevart|ufuldstaendig|ufullstendig',
  ],
  ['within', 'in|over|across|on|auf|sur|su|en|pa|an'],
];

/** word -> kind, for words that stand alone. */
export const WORD_KINDS: ReadonlyMap<string, WordKind> = new Map(
  LISTS.flatMap(([kind, words]) => words.split('|').map((word): [string, WordKind] => [word, kind])),
);

/** Matches the longest known wording at a place in a folded text; words never end inside a longer word. */
export const WORD_PATTERN = new RegExp(
  `(?:${alternation(LISTS.flatMap(([, words]) => words.split('|')))})(?!\\p{L})`,
  'uy',
);

/** Names of months and their short forms in the same languages. */
const MONTHS = alternation(
  (
    'jan|january|januar|janvier|gen|gennaio|ene|enero|feb|febr|fev|february|februar|fevrier|febbraio|febrero|' +
    'mar|mars|marz|maerz|mrz|march|marts|marzo|apr|avr|abr|april|avril|aprile|abril|may|mai|maj|mag|maggio|mayo|' +
    'jun|june|juni|juin|giu|giugno|junio|jul|july|juli|juil|juillet|lug|luglio|julio|aug|august|aout|ago|agosto|' +
    'sep|sept|september|septembre|set|settembre|septiembre|oct|okt|october|oktober|octobre|ott|ottobre|octubre|' +
    'nov|november|novembre|noviembre|dec|dez|dic|des|december|dezember|decembre|dicembre|diciembre|desember'
  ).split('|'),
);

/** What a spreadsheet makes of "3-4": a day with a month, or a full date. */
export const DATE_LIKE = new RegExp(
  `^(?:\\d{1,4}[-. /]{1,2}(?:${MONTHS})\\.?(?:[-. /]{1,2}\\d{2,4})?|(?:${MONTHS})\\.?[-. /]{1,2}\\d{1,4}|` +
    '\\d{1,2}\\.\\d{1,2}\\.(?:\\d{2,4})?|\\d{1,2}/\\d{1,2}/\\d{2,4}|\\d{4}-\\d{2}-\\d{2}(?:[t ][\\d:.]+z?)?)$',
  'u',
);
