/**
 * Words that name a measure beside its number, by attribute: "rows 5 mm apart", "tous les 5 mm", "lungh. cm 12". They
 * are what the column is about already. A word that would make another measure of it ("gap", "between") is not
 * among them. Common practice, no source.
 */
const stems = (list: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\d])(?:${list.trim().replace(/\s+/gu, '|')})(?:\\.|(?!\\p{L}))`, 'gu');

const SPACING =
  stems(`rows? apart spaced spacing every each pitch reihen?abstand reihen? bindungsreihen? alle abstand interasse
  rangs? rangees? espacee?s? espacement tous toutes les file distant[ei] distanziat[ei] distanza ogni filas? separad[oa]s? separacion cada distancia raekke[rn]? rader raekkeafstand afstand hver avstand c-c centre-to-centre center-to-center axe-a-axe entraxe`);
const THREAD = stems(
  `threads? yarns? diam(?:etre|etro|eter)? dm durchm(?:esser)? dicke?[rn]? starke fadenstarke epais(?:seur)? ep grosor spess(?:ore)? tykkelse tyk tykt tykk dick thick thickness width wide elements? fil fils fil[oi] hilos? trad garn`,
);
const LENGTH = stems(
  'l lg lge lgh lungh?(?:ezza)? long(?:ueur|itud|ura)? length lange laengde lengde lengd erh',
);
const WIDTH = stems(
  'b br bred(?:de)? breite larg(?:eur)? largh?(?:ezza)? lgh anch(?:o|ura)? an w wd width wide',
);
const PILE = stems(
  'pile flor(?:lange|hohe)? poils? pelo vello luv tufts? noppen length lange long(?:ueur)? lungh(?:ezza)? hohe',
);
const DENSITY = stems('thread-?count fadenzahl fadendichte densit(?:y|e|a) densidad dichte');

const BY_ATTRIBUTE: Readonly<Record<string, RegExp>> = {
  rowSpacing: SPACING,
  coilPitch: SPACING,
  diameter1: THREAD,
  diameter2: THREAD,
  rowWidth: stems(
    'rows? reihen? reihenbreite rangs? file filas? raekke[rn]? breit width wide breite large larghezza ancho bred bredde',
  ),
  length: LENGTH,
  width: WIDTH,
  pileLength: PILE,
  density1: DENSITY,
  density2: DENSITY,
};

const COUNTED: ReadonlySet<string> = new Set(['rowSpacing', 'coilPitch', 'rowWidth']);

/** A folded text without the words that name its measure; the unit put behind its number where it stood before. */
export function withoutMeasureWords(folded: string, attribute: string): string {
  // "5 rows in 32 mm" counts its rows.
  const counts =
    COUNTED.has(attribute) &&
    /(?<!\p{L})(?:in|auf|sur|su|over|across|per|pro|por|pr|pa)(?!\p{L})|\//u.test(folded);
  const noise = counts ? undefined : BY_ATTRIBUTE[attribute];
  const bare =
    noise === undefined ? folded : folded.replace(noise, ' ').replace(/(?<![\p{L}\d]) *[:=] *(?=\d)/u, ' ');
  const unitLast = /^([^\d]*?)(?<!\p{L})(mm|cm) ([^\p{L}]*\d[^\p{L}]*)$/u.exec(bare);
  const turned = unitLast === null ? bare : `${unitLast[1]} ${unitLast[3]} ${unitLast[2]}`;
  // "filas a 5 mm": what is left of "at" before the number.
  return turned
    .replace(/ +/gu, ' ')
    .trim()
    .replace(/^(?:de|di|a|at|of|i|mit) (?=\d)/u, '')
    .replace(/[ ,]+$/u, '');
}
