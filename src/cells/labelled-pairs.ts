import { flagged, quote, readAs } from './notes.ts';
import { readNothing } from './nothing.ts';
import type { Note } from './reading.ts';
import { foldCell, plainSigns } from './text.ts';

/** Two readings of one cell, the first for the first attribute of their pair. */
export interface LabelledPair {
  readonly parts: readonly [first: string, second: string];
  readonly note: Note;
}

interface Side {
  /** 1 or 2: which of the pair the words say that it is; 0 where they say nothing. */
  readonly place: 0 | 1 | 2;
  readonly value: string;
  readonly unknown: boolean;
}

/** Words of each place of a pair, folded: warp and weft, length and breadth. */
const PLACES: readonly (readonly [first: RegExp, second: RegExp])[] = [
  [
    /^(?:in (?:the )?)?(?:k|kd|ke|kette|kettf|ketten|ch|urd|urdim|ord|kettfaden|kettfad|kf|w|wp|wa|warps?|warp (?:threads|ends|yarns)|ends|chaines?|fils? (?:de|en) chaine|fili (?:di|d.) ?ordito|orditi|ordito|hilos de urdimbre|urdimbres?|u|o|trend|trendtrade?|kaede|kaedetrade?r?|renning|renningstrader|varp|system 1|system i)$/u,
    /^(?:in (?:the )?)?(?:s|sch|schuss|schussf|eintrag|eintrage|tr|schussfaden|schussfad|sf|wf|we|wefts?|weft (?:threads|yarns|picks)|picks|trames?|fils? (?:de|en) trame|duites|fili di trama|trame|trama|tramas|hilos de trama|pasadas|t|islaet|islaettrade?|innslag|innslagstrader|skud|skudtrade?r?|system 2|system ii)$/u,
  ],
  [
    /^(?:h|ht|haut|hauteur|hohe|hoch|alt|altezza|alto|altura|hoj|hojt|high|height|hojde|hoyde|l|lg|lge|lung|lange|length|long|longueur|lungh|lunghezza|lang|largo|lungo|longitud|laengde|lengde|leng)$/u,
    /^(?:b|br|breite|w|wd|wide|width|breadth|la|larg|largeur|largh|larghezza|breit|bred|bredt|a|an|ancho|anch|anchura|bredde)$/u,
  ],
];
const UNKNOWN = /^(?:\?|-|--|ind\.?|n\.? ?b\.?|n\.? ?d\.?|indet\.?|unbest\.?|unknown|\(\?\)|n\.? ?r\.?)$/u;
const NUMBER =
  /(?:(?:c|ca|env)\.? ?|[<>~])?\d+(?:[.,]\d+)?(?: ?(?:-|bis|to|à|til) ?\d+(?:[.,]\d+)?)?(?: ?(?:mm|cm|m))?(?: ?(?:Fd\.?|F\.?|h|Fäden|fils|fili|hilos|tråde|threads)(?![\p{L}]))?(?: ?(?:\/|per|pro|par|al|por|pr\.?) ?(?:cm|mm|dm|in))?\??/u;
const LETTER = /[sziSZI](?:[sz]|\d[sz])? ?(?:\(\?\)|\?)?/u;
const SHARED =
  /(?<=\p{L})\.? ?[([]?(?:per|pro|je|par|au|al|por|pr\.?|\/) ?(\d+)? ?(cm|dm|mm|in|inch)\.?[)\]]?$|(?<=\d) [([](?:per|pro|je|par|au|al|por|pr\.?|\/) ?(\d+)? ?(cm|dm|mm|in|inch)\.?[)\]]$/iu;
const BETWEEN =
  /\s*(?:[x×*✕;]|\s-\s(?=\p{L}{1,9}[.:]? ?\d)|(?<=\p{L}\.? ?\d+(?:[.,]\d+)?)\s(?=(?:schuss|trame|trama|weft|islæt|innslag)\.? ?\d)|\/(?! ?(?:mm|cm|dm|in)(?![\p{L}]))|(?<=\d) ?: ?(?=\d)|,(?!\d)|(?<=\d ?(?:\p{L}\/)?(?:cm|mm))\s(?=\p{L}{1,9}[.:]? ?\d)|(?<=\d (?:cm|mm) de \p{L}{4,9}|\d)\spor\s(?=\d)|\s(?:by|mal|zu|and|und|et|e|y|og)\s)\s*/iu;

/**
 * Parts a cell whose two readings are named, or of which one is not known: "12-14 K, 10 S", "Kette 12/cm, Schuss
 * 10/cm", "L 12 / B 8", "lungh. 12, largh. 8", "10 x ?", "z/?", "warp Z, weft S". What the words say goes before the
 * order of the text: "B 8, L 12" is 12 by 8. Null where the cell is nothing of the kind.
 */
export function labelledPair(text: string): LabelledPair | null {
  const whole = plainSigns(text);
  if (whole.length > 80) return null;
  const both = inBothSystems(whole);
  if (both !== null) return both;
  // "Lungo 6, largo 3" is Italian, where "largo" is the breadth; in Spanish it is the length.
  const front = namedInFront(whole);
  const plain = /(?<!\p{L})lung/iu.test(front)
    ? front.replace(/(?<!\p{L})largo(?!\p{L})/giu, 'largh')
    : front;
  // "12 warps and 10 wefts per cm": what stands behind the last holds for both.
  const shared = SHARED.exec(plain);
  const [, over = shared?.[3], length = shared?.[4]] = shared ?? [];
  const unit = length === undefined ? '' : ` per ${over === undefined ? '' : `${over} `}${length}`;
  const pieces = plain
    .slice(0, shared?.index)
    .replace(/(?<!\p{L})n\/[ad]\.?(?!\p{L})/giu, '?')
    .split(BETWEEN);
  // "12/cm, 10/cm": a slash before a unit parts nothing.
  const joined = pieces.reduce<string[]>((all, piece) => {
    const last = all.at(-1);
    if (last !== undefined && /^(?:mm|cm|dm|in)\b/u.test(piece) && /\d$/u.test(last))
      all[all.length - 1] = `${last}/${piece}`;
    else all.push(piece);
    return all;
  }, []);
  if (joined.length !== 2) return null;
  const read = PLACES.map((words) => joined.map((piece) => sideOf(piece, words)));
  const [systems, sizes] = read.map((sides) =>
    sides.every((side) => side !== null) ? (sides as Side[]) : null,
  );
  const chosen = [systems, sizes].find((sides) => sides?.some(({ place }) => place > 0)) ?? systems;
  const [a, b] = chosen ?? [];
  if (a === undefined || b === undefined) return null;
  const named = a.place > 0 && b.place > 0 && a.place !== b.place;
  const oneUnknown = a.unknown !== b.unknown && a.place !== 2 && b.place !== 1;
  // One letter behind a number may be its twist: "12 S x 10 Z" is parted elsewhere.
  if (!named && !(oneUnknown && a.place === 0 && b.place === 0) && !(oneUnknown && named)) return null;
  const values = [a, b].map(({ value }) => (/^\d[\d.,\s-]*$/u.test(value) ? `${value}${unit}` : value));
  const [first, second] = values as [string, string];
  const parts: [string, string] = a.place === 2 ? [second, first] : [first, second];
  const why = `${quote(text)} parted into ${quote(parts[0])} and ${quote(parts[1])}${named ? ', as its words say' : '; of one nothing is known'}`;
  return { parts, note: named ? readAs('named-pair', why) : flagged('pair-half-known', why) };
}

/** Words, value, words; null where a value is missing or a word is not of the pair. */
function sideOf(piece: string, words: readonly [RegExp, RegExp]): Side | null {
  const trimmed = piece.trim();
  if (UNKNOWN.test(foldCell(trimmed)) || readNothing(trimmed, 'without absent')?.state === 'not-observed')
    return { place: 0, value: '?', unknown: true };
  const [first = '', ...tail] = trimmed.split(/[ :=]+/u);
  const behind = tail.join(' ');
  if (
    tail.length > 0 &&
    (UNKNOWN.test(foldCell(behind)) || readNothing(behind, 'without absent')?.state === 'not-observed')
  ) {
    const named = placeOf(foldCell(first).replace(/[().:=]/gu, ''), words);
    if (named !== null) return { place: named, value: '?', unknown: true };
  }
  const whole = new RegExp(
    `^(?<before>[\\p{L} ().:=]*?)\\s*(?<value>${NUMBER.source}|\\?)\\s*(?<after>[\\p{L} ().]*)$`,
    'u',
  ).exec(trimmed);
  const lettered =
    whole ??
    new RegExp(
      `^(?<before>[\\p{L}.:]+(?: (?:en|in|a|i|is|ist|est|è))? )?(?<value>${LETTER.source})(?:-(?=$|\\p{L}))?(?:(?:gesponnen|gedreht|spun|twist(?:ed)?|spundet)(?=$| \\p{L}+$))?(?:(?<after>(?: ?\\([\\p{L}. ]+\\)| ?(?:in |en |i |im |in der )?(?:the |der |la )?\\p{L}+)?))$`,
      'u',
    ).exec(trimmed);
  const groups = lettered?.groups;
  if (groups === undefined) return null;
  const said = [groups.before ?? '', groups.after ?? '']
    .map((part) =>
      foldCell(part)
        .replace(/[().:=]/gu, '')
        .trim(),
    )
    .filter((part) => part !== '');
  if (said.length > 1) return null;
  const [label] = said;
  const value = groups.value ?? '';
  if (label === undefined) return { place: 0, value, unknown: value === '?' };
  const place = placeOf(label, words);
  return place === null ? null : { place, value, unknown: value === '?' };
}

const BOTH =
  /^(?:both|beide|(?:tous )?les deux(?: en)?|entrambi(?: a)?|ambos(?: en)?|begge),? ([szSZ])$|^([szSZ])(?:[- ]?(?:spun|twist(?:ed)?|gesponnen|gedreht|spundet))?,? (?:in both(?: systems)?|both(?: systems)?|in beiden(?: systemen)?|dans les deux(?: systèmes| sens)?|in entrambi(?: i sistemi)?|en ambos(?: sistemas)?|en los dos sistemas|i begge(?: systemer)?)$|^([szSZ])(?:[- ]?(?:spun|gesponnen|gedreht|spundet))? (?:in|en|i) (?:warp and weft|kette und schuss|chaîne et (?:en )?trame|ordito e (?:in )?trama|urdimbre y (?:en )?trama|trend og islæt)$|^(?:both systems|beide systeme|les deux systèmes|entrambi i sistemi|ambos sistemas|begge systemer):? ?([szSZ])$/iu;

/** "Z in both systems": one letter for each. */
function inBothSystems(plain: string): LabelledPair | null {
  const found = BOTH.exec(plain);
  const letter = found?.[1] ?? found?.[2] ?? found?.[3] ?? found?.[4];
  if (letter === undefined) return null;
  return { parts: [letter, letter], note: readAs('both-systems', `${quote(plain)} holds for both systems`) };
}

const FRONT =
  /^(?:(?:maße?|mass|abmessungen|dim(?:\.|ensions?|ensioni|ensiones)?|misure|medidas|mål|measurements?|size|größe|groesse|grösse|taille|formato?|tamaño|størrelse) ?[.:]? ?(?:in )?(cm|mm)? ?)(?=\d)/iu;
const HEADED =
  /^(warp|kette|chaîne|ordito|urdimbre|trend|renning)(?: ?[/x×,] ?)(weft|schuss|trame|trama|islæt|innslag):? ?(?=\d)/iu;

/** "Maße: 11 × 7 cm", "misure cm 11 × 7", "warp/weft: 18/12": what stands before both. */
export function namedInFront(plain: string): string {
  const [front, unit] = FRONT.exec(plain) ?? [];
  if (front !== undefined) return `${plain.slice(front.length)}${unit === undefined ? '' : ` ${unit}`}`;
  const [head, first, second] = HEADED.exec(plain) ?? [];
  const [, a, b] =
    head === undefined
      ? []
      : (/^(\d[\d.,-]*) ?[/x×] ?(\d[\d.,-]*)(?: ?(?:per|\/) ?cm)?$/u.exec(plain.slice(head.length)) ?? []);
  return a === undefined ? plain : `${first} ${a}, ${second} ${b}`;
}

/** "De largo", "en trame": a preposition before the word of a place says nothing more. */
function placeOf(said: string, words: readonly [RegExp, RegExp]): 1 | 2 | null {
  const label = said.replace(
    /^(?:(?:fils?|fili|hilos|threads|faden|trade) )?(?:de|di|d|en|in|im|i|of|af) (?:la |el |il |le |the |der )?/u,
    '',
  );
  return words[0].test(said)
    ? 1
    : words[1].test(said)
      ? 2
      : words[0].test(label)
        ? 1
        : words[1].test(label)
          ? 2
          : null;
}
