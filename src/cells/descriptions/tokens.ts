import { plainSigns } from '../text.ts';
import { AND, SMALL, WITH } from './function-words.ts';

/** A piece of a description: a word, an interlacing order ("2/2"), a weave notation, or a sign. */
export interface Token {
  readonly kind: 'word' | 'number' | 'order' | 'notation' | 'sign';
  /** As written. */
  readonly text: string;
  /** Small letters, composed, accents kept. */
  readonly spelled: string;
  /** Small letters without accents. */
  readonly folded: string;
  /** A full stop follows without a space before it: the word may be cut short. */
  readonly cut: boolean;
}

const PIECE =
  /(?<notation>\b[123]\d-\d\d ?\d\d-\d\d(?:-\d\d)?\b)|(?<order>\d+ ?[/:] ?\d+(?! ?[/:])|\d[x×]\d(?!\d))|(?<number>\d+(?:[.,]\d+)?)|(?<word>[\p{L}\p{M}]+(?:'[\p{L}\p{M}]+)?)|(?<sign>\s-+\s|[,;:.()[\]/+&?|\n→>=<~*#])/gu;
/** "weft- or warp-faced": the first lacks what the second has. */
const SUSPENDED = /([\p{L}\p{M}]+)-\s+(or|oder|ou|o|eller)\s+([\p{L}\p{M}]+)-([\p{L}\p{M}]+)/giu;

/** Words that are always cut short in the same way, written out. */
const SHORT: readonly (readonly [pattern: RegExp, whole: string])[] = [
  [/(?<![\p{L}\d])w\/o\.?(?![\p{L}\d])/giu, 'without'],
  [/(?<![\p{L}\d])w\/(?= ?\p{L})/giu, 'with '],
  [/(?<![\p{L}\d])m\. ?(?=\p{L}{3})/gu, 'mit '],
  [/(?<=\p{L}{3})-?fragment(?:e|en|er|et)?(?!\p{L})/giu, ' fragment'],
  // "A 1/4 (2)": Atlas with its step; "P 2/2": Panama (German usage, from memory).
  [/(?<![\p{L}\d])A ?(1[/:][4-9]|[4-9][/:]1)(?: ?\([2-5]\))?(?!\d)/gu, 'Atlas $1'],
  [/(?<=Atlas ?(?:1[/:][4-9]|[4-9][/:]1)) ?\([2-5]\)/gu, ''],
  [/(?<![\p{L}\d])P ?(2[/:]2)(?!\d)/gu, 'Panama $1'],
  [/(?<!\d)(\d) (?:over|über|sur|su|sobre) (\d)(?!\d)/giu, '$1/$2'],
  [/(?<=\p{L}{3})b(?:in)?dg(?!\p{L})\.?/giu, 'bindung'],
];

export function tokens(text: string): Token[] {
  const whole = SHORT.reduce((all, [pattern, word]) => all.replace(pattern, word), plainSigns(text));
  const plain = whole.replace(SUSPENDED, '$1-$4 $2 $3-$4');
  const found: Token[] = [];
  for (const match of plain.matchAll(PIECE)) {
    const groups = match.groups ?? {};
    const kind = (['notation', 'order', 'number', 'word', 'sign'] as const).find(
      (name) => groups[name] !== undefined,
    )!;
    const written = match[0].trim() === '' ? '\n' : match[0].trim();
    const bare = kind === 'word' ? withoutArticle(written) : written;
    if (bare === '') continue;
    const cut = kind === 'word' && plain[match.index + match[0].length] === '.';
    found.push({
      kind,
      text: written,
      spelled: bare.toLowerCase().normalize('NFC'),
      folded: fold(bare, kind),
      cut,
    });
  }
  return found;
}

/** "d'armure" is "armure"; "weaver's" is "weaver". */
function withoutArticle(word: string): string {
  const at = word.indexOf("'");
  if (at < 0) return word;
  return at <= 2 || word.slice(0, at).toLowerCase() === 'dell' ? word.slice(at + 1) : word.slice(0, at);
}

function fold(text: string, kind: Token['kind']): string {
  if (kind === 'order') return text.replace(/[ ]/g, '').replace(/[:x×]/, '/');
  if (kind !== 'word') return text;
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[ßæøœłđðþı]/gu, (letter) => SPECIAL[letter] ?? letter);
}

const SPECIAL: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  ø: 'o',
  œ: 'oe',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
};

/** Words that a phrase is looked up by: small ones dropped, "mit" and "con" one word, "und" and "&" one word. */
export function keyOf(parts: readonly Token[], spelling: 'folded' | 'spelled' | 'stem'): string {
  let key = '';
  for (const part of parts) {
    const piece = keyPiece(part, spelling);
    // Digits keep their distance: "2 12" is not "21 2".
    key += /\d$/.test(key) && /^\d/.test(piece) ? ` ${piece}` : piece;
  }
  return key;
}

function keyPiece(part: Token, spelling: 'folded' | 'spelled' | 'stem'): string {
  if (part.kind === 'sign') return part.text === '+' || part.text === '&' ? '&' : '';
  if (part.kind !== 'word') return part.folded;
  if (SMALL.has(part.folded)) return '';
  if (WITH.has(part.folded)) return '~';
  if (AND.has(part.folded)) return '&';
  // A letter by itself is no ending: "twining, S" is not "twinings".
  if (part.folded.length === 1) return `(${part.folded})`;
  if (spelling === 'spelled') return part.spelled;
  return spelling === 'stem' ? stem(part.folded) : part.folded;
}

const ENDING = /(?:ern|en|er|em|es|ne|as|os|et|e|s|n|a|o|i)$/u;

/** A word without what number, gender and case add to it; four letters stay at least. */
export function stem(word: string): string {
  let at = word;
  for (;;) {
    const shorter = at.replace(ENDING, '');
    if (shorter === at || shorter.length < 4) return lastLetter(at);
    at = shorter;
  }
}

/** A shorter ending may fit where the longest would leave too little. */
function lastLetter(word: string): string {
  return word.length > 4 && /[esnaoi]$/u.test(word) ? word.slice(0, -1) : word;
}
