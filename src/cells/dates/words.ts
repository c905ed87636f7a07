import { alternation } from '../text.ts';

/** What the parts of a written date are; words are folded (see foldCell). */
export type DateToken =
  | { readonly kind: 'number'; readonly value: number; readonly ordinal: boolean }
  | { readonly kind: 'era'; readonly era: 'BC' | 'AD' }
  | { readonly kind: 'span'; readonly years: 10 | 100 | 1000 }
  | { readonly kind: 'fraction'; readonly of: 2 | 3 | 4 }
  | {
      readonly kind: 'place';
      readonly place: 'first' | 'second' | 'third' | 'fourth' | 'last' | 'early' | 'mid' | 'late';
    }
  | {
      readonly kind:
        | 'about'
        | 'before'
        | 'after'
        | 'between'
        | 'to'
        | 'plus-minus'
        | 'calibrated'
        | 'radiocarbon';
    }
  | { readonly kind: 'noise' };

const ROMAN: Readonly<Record<string, number>> = { i: 1, v: 5, x: 10, l: 50 };

function romanValue(text: string): number {
  const values = [...text].map((letter) => ROMAN[letter] ?? 0);
  return values.reduce((sum, value, at) => sum + (value < (values[at + 1] ?? 0) ? -value : value), 0);
}

/** Short words that mean century only beside its number: "8th c." but "c. 800". */
const SHORT_CENTURY = 'c\\.?|s\\.?|sec\\.?';
const LONG_CENTURY =
  'cent\\.?|century|centuries|jh\\.?s?|jhdt?s?\\.?|jahrhunderts?|jahrhunderte|siecles?|secolo|secoli|siglos?|arh\\.?|arhundrede[rt]?|arhundre[rt]?';
const CENTURY = `${LONG_CENTURY}|${SHORT_CENTURY}`;
const MILLENNIUM =
  'mill?\\.?|millennium|millennia|jt\\.?s?|jtsd?s?\\.?|jahrtausends?|millenaires?|millennio|millenni|milenios?|artusinde[rt]?|artusen|tusenar';

type Rule = readonly [
  pattern: string,
  token: (match: RegExpExecArray) => DateToken,
  /** Whether the rule holds after the token before. */
  after?: (previous: DateToken | undefined) => boolean,
];

const afterOrdinal = (previous: DateToken | undefined) => previous?.kind === 'number' && previous.ordinal;
const afterSpan = (previous: DateToken | undefined) => previous?.kind === 'span';

const word = (words: string, token: DateToken): Rule => [
  `(?:${alternation(words.split('|'))})(?!\\p{L})`,
  () => token,
];

/** From the fifth on; the first four may be parts of a century too. */
const ORDINALS: readonly (readonly [value: number, words: string])[] = [
  [5, 'fifth|funfte|funftes|funften|cinquieme|quinto|femte'],
  [6, 'sixth|sechste|sechstes|sechsten|sixieme|sesto|sexto|sjette'],
  [7, 'seventh|siebte|siebtes|siebten|siebentes|septieme|settimo|septimo|syvende'],
  [8, 'eighth|achte|achtes|achten|huitieme|ottavo|octavo|ottende'],
  [9, 'ninth|neunte|neuntes|neunten|neuvieme|nono|noveno|niende'],
  [10, 'tenth|zehnte|zehntes|zehnten|dixieme|decimo|tiende'],
  [11, 'eleventh|elfte|elftes|elften|onzieme|undicesimo|undecimo|ellevte'],
  [12, 'twelfth|zwolfte|zwolftes|zwolften|douzieme|dodicesimo|duodecimo|tolvte'],
];

/** Tried in this order at each place; era words stand first, since "a. C." begins with a word for "to". */
const RULES: readonly Rule[] = [
  [
    '(?:b\\.? ?c\\.?(?: ?e\\.?)?|v\\. ?chr\\.?|v\\. ?u\\. ?z\\.?|vor chr(?:istus|isti geburt|\\.)?|vor unserer zeit(?:rechnung)?|' +
      'av\\. ?j\\.?-? ?c\\.?|avant j\\.?-? ?c\\.?|avant jesus-christ|(?:av\\.|avant) (?:notre|n\\.) ?(?:ere|e\\.)|avanti cristo|' +
      'a\\. ?c\\.?(?: ?n\\.)?|ac|a\\. ?e\\. ?c\\.?|a\\. ?de ?c\\.?|antes de cristo|antes de nuestra era|' +
      'f\\. ?kr\\.?|for kristus|f\\. ?v\\. ?t\\.?|fvt\\.?)(?!\\p{L})',
    () => ({ kind: 'era', era: 'BC' }),
  ],
  [
    '(?:a\\.? ?d\\.?|c\\.?e\\.?|n\\. ?chr\\.?|n\\. ?u\\. ?z\\.?|nach chr(?:istus|isti geburt|\\.)?|unserer zeit(?:rechnung)?|' +
      'apr?\\. ?j\\.?-? ?c\\.?|apres j\\.?-? ?c\\.?|apres jesus-christ|de notre ere|d\\. ?c\\.?|dopo cristo|d\\. ?de ?c\\.?|' +
      'despues de cristo|de nuestra era|e\\. ?kr\\.?|efter kristus|etter kristus|e\\. ?v\\. ?t\\.?|evt\\.?)(?!\\p{L})',
    () => ({ kind: 'era', era: 'AD' }),
  ],
  ['(?:b\\.? ?p\\.?|14c|c14)(?![\\p{L}\\d])', () => ({ kind: 'radiocarbon' })],
  word('calibrated|calibre|cal.|cal|kal.|kal|kalibriert|calibrato|calibrado', { kind: 'calibrated' }),
  ['(\\d{1,6})(?:er|s)(?! ?[.\\p{L}])(?<=0(?:er|s))', (m) => decade(m)],
  ['(\\d{1,2})\\.?(?:st|nd|rd|th|eme|ere|er|re|e|o|a|º|ª|\\.)(?![\\p{L}\\d])', (m) => number(m[1], true)],
  [
    `([ivxl]{1,7})(?:\\.|eme|er|e)?(?= ?(?:[-/]|(?:${CENTURY}|${MILLENNIUM})(?!\\p{L})))(?![\\p{L}])`,
    (m) => roman(m),
  ],
  ['([ivxl]{1,7})\\.?(?!\\p{L})', (m) => roman(m), afterSpan],
  [`(?:${SHORT_CENTURY})(?!\\p{L})`, () => ({ kind: 'span', years: 100 }), afterOrdinal],
  [`(?:ss?\\.?|secc?\\.?) ?(?=[ivxl]+(?![\\p{L}]))`, () => ({ kind: 'span', years: 100 })],
  [`(?:${LONG_CENTURY})(?!\\p{L})`, () => ({ kind: 'span', years: 100 })],
  [`(?:${MILLENNIUM})(?!\\p{L})`, () => ({ kind: 'span', years: 1000 })],
  ['(\\d{1,3})[,.](\\d{3})(?!\\d)', (m) => number(`${m[1]}${m[2]}`, false)],
  ['(\\d{1,6})', (m) => number(m[1], false)],
  word('first|erste|erster|erstes|ersten|premier|premiere|prima|primo|primer|primera|primero|forste', {
    kind: 'place',
    place: 'first',
  }),
  word(
    'second|zweite|zweiter|zweites|zweiten|deuxieme|seconde|seconda|secondo|segunda|segundo|anden|andet|andre',
    { kind: 'place', place: 'second' },
  ),
  word('dritte|dritter|drittes|dritten|troisieme|terza|tercer|tercera|tredje', {
    kind: 'place',
    place: 'third',
  }),
  word('fourth|vierte|viertes|viertem|quatrieme|quarta|cuarta|fjerde', { kind: 'place', place: 'fourth' }),
  word('last|letzte|letztes|letzter|letzten|dernier|derniere|ultimo|ultima|sidste|siste', {
    kind: 'place',
    place: 'last',
  }),
  ...ORDINALS.map(([value, words]) => word(words, { kind: 'number', value, ordinal: true })),
  word('half|halfte|haelfte|h.|halft|moitie|meta|mitad|halvdel', { kind: 'fraction', of: 2 }),
  word('quarter|viertel|quart|quarto|cuarto|fjerdedel|kvart|kvartal', { kind: 'fraction', of: 4 }),
  word('third|drittel|tiers|terzo|tercio|tredjedel', { kind: 'fraction', of: 3 }),
  word(
    'early|beginning|fruhes|fruhe|anfang|beginn|debut|inizio|inizi|inicio|inicios|principios|begyndelsen|begynnelsen|tidlig|tidligt',
    { kind: 'place', place: 'early' },
  ),
  word('mid|mid-|middle|mitte|milieu|mediados|midten|meta del', { kind: 'place', place: 'mid' }),
  word('late|end|ende|spates|spate|fin|fine|fines|finales|slutningen|slutten|sent|sen', {
    kind: 'place',
    place: 'late',
  }),
  word(
    'c.|ca.|ca|circa|about|around|approx.|approximately|roughly|um|gegen|etwa|env.|environ|vers|verso|hacia|omkring|rundt|cirka',
    { kind: 'about' },
  ),
  ['[~≈]', () => ({ kind: 'about' })],
  word(
    "before|vor|avant|prima del|antes de|antes del|for|until|up to|ante|taq|terminus ante quem|no later than|spatestens|jusqu'a|fino al",
    { kind: 'before' },
  ),
  word(
    'after|nach|apres|dopo il|dopo|despues de|despues del|efter|etter|post|tpq|terminus post quem|since|ab|seit|desde|no earlier than|fruhestens',
    { kind: 'after' },
  ),
  ['<=?|≤', () => ({ kind: 'before' })],
  ['>=?|≥', () => ({ kind: 'after' })],
  word('between|from|zwischen|von|entre|tra|fra|mellem|mellom', { kind: 'between' }),
  ['\\+/?-|±', () => ({ kind: 'plus-minus' })],
  word('to|till|bis|a|al|til|hasta|fino a|and|und|et|e|y|og', { kind: 'to' }),
  ['--?|/|\\.\\.', () => ({ kind: 'to' })],
  word(
    "of|the|des|der|das|du|de|del|della|dell'|la|le|el|il|i|en|in|af|av|l'|years|year|yrs|jahre|jahr|ans|annees|anni|anos|ar|i det|det|dem",
    { kind: 'noise' },
  ),
  ['[,.;()[\\]]', () => ({ kind: 'noise' })],
];

const PATTERNS = RULES.map(([pattern, token, after]) => ({
  pattern: new RegExp(pattern, 'uy'),
  token,
  after,
}));

function number(digits: string | undefined, ordinal: boolean): DateToken {
  return { kind: 'number', value: Number(digits), ordinal };
}

function decade(match: RegExpExecArray): DateToken {
  return { kind: 'number', value: Number(match[1]), ordinal: false };
}

function roman(match: RegExpExecArray): DateToken {
  return { kind: 'number', value: romanValue(match[1] ?? ''), ordinal: true };
}

/** Cuts a folded date text into its parts; null where a word is none that dates are made of. */
export function dateTokens(folded: string): readonly DateToken[] | null {
  const tokens: DateToken[] = [];
  let at = 0;
  while (at < folded.length) {
    if (/\s/u.test(folded[at] ?? '')) {
      at += 1;
      continue;
    }
    let found = false;
    for (const { pattern, token, after } of PATTERNS) {
      if (after !== undefined && !after(tokens.at(-1))) continue;
      pattern.lastIndex = at;
      const match = pattern.exec(folded);
      if (match === null || match[0] === '') continue;
      const made = token(match);
      if (made.kind !== 'noise') tokens.push(made);
      if (/\d0(?:er|s)$/u.test(match[0])) tokens.push({ kind: 'span', years: 10 });
      at += match[0].length;
      found = true;
      break;
    }
    if (!found) return null;
  }
  return tokens;
}
