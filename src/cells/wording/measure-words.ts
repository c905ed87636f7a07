import { foldCell } from '../text.ts';

/**
 * Words that name a measure beside its number, by attribute: "rows 5 mm apart", "tous les 5 mm", "lungh. cm 12". They
 * are what the column is about already. A word that would make another measure of it ("gap", "between") is not
 * among them. Common practice, no source.
 */
const stems = (list: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\d])(?:${list.trim().replace(/\s+/gu, '|')})(?:\\.|(?!\\p{L}))`, 'gu');

const SPACING =
  stems(`wefts? rows? apart spaced spacing spaziatura espaciado espaciamiento every each pitch achsabstand reihen?abstand reihen? bindungsreihen? der alle abstand interasse jede[rn]? eine?
  rangs? rangees? espacee?s? espacement tous toutes les file distant[ei]?s? between-centres from-row-to-row row-to-row distanziat[ei] distanza ogni filas? separad[oa]s? separacion cada distancia raekke[rn]? rader raekkeafstand afstand hver hvert for avstand en c-c centre-to-centre center-to-center axe-a-axe entraxe`);
const THREAD = stems(
  `dia threads? yarns? diam(?:etre|etro|eter)? dm durchm(?:esser)? dicke?[rn]? starke fadenstarke garnstarke zwirnstarke fadendurchmesser garndurchmesser traddiameter garndiameter across epais(?:seur)? ep grosor spess(?:ore)? tykkelse tradtykkelse tradtykkelsen d tyk tykt tykk dick stark thick thickness width wide du del des der des elements? fil fils fil[oi] hilos? trad garn`,
);
const GAP = stems(
  'den les las los le la de the free frei libres? liber[oaie] fri between zwischen entre tra fra mellem mellom rows reihen rangs rangees file filas raekker(?:ne)? rader(?:ne)? gaps? lichte\\p{L}*-abstand lichte\\p{L}*-weite clear opening zwischenraum lucke lichte\\p{L}* intervalle espace ecart interspazio vuoto hueco espacio libre mellemrum mellomrom',
);
const LENGTH = stems(
  'gr grosste greatest largo lungo l lg lge lgh lungh?(?:ezza)? long(?:ueur|itud|ura)? length lange laengde lengde lengd',
);
/** "Weight 2.4 g", "angle 35°", "ép. 1,5 mm". */
const WEIGHT = stems(
  'trocken dry sec secco seco tort gewicht weight wt gew poids peso vaegt vekt masse mass',
);
const ANGLE = stems('angle winkel drehwinkel angolo angulo vinkel twist');
const THICKNESS = stems(
  'thick(?:ness)? dicke? dick starke stark ep epais(?:seur)? sp spess(?:ore)? grosor espesor esp tykt tyk tykkelse tykk',
);
const WIDTH = stems(
  'b br bred(?:de)? breite larg(?:eur)? largh?(?:ezza)? lgh anch(?:o|ura)? an w wd width wide',
);
const PILE = stems(
  'lungo lunghi lunghe largo largos larga long longs langt lang pile flor(?:lange|hohe)? poils? pelo vello luv tufts? noppen length lange long(?:ueur)? lungh(?:ezza)? hohe',
);
/** The bar of a mesh; a stretched mesh and an opening are other measures. */
const BAR = stems(
  'bar knot-to-knot maschenschenkel schenkel(?:lange)? noeud-a-noeud de-noeud-a-noeud da-nodo-a-nodo nodo-a-nodo de-nudo-a-nudo nudo-a-nudo knoten-zu-knoten von-knoten-zu-knoten knude-til-knude fra-knude-til-knude knute-til-knute fra-knute-til-knute',
);
const DENSITY = stems('thread-?count fadenzahl fadendichte densit(?:y|e|a) densidad dichte');

const BY_ATTRIBUTE: Readonly<Record<string, RegExp>> = {
  rowSpacing: SPACING,
  coilPitch: SPACING,
  rowGap: GAP,
  diameter1: THREAD,
  diameter2: THREAD,
  rowWidth: stems(
    'rows? reihen? reihenbreite rangs? file filas? raekke[rn]? breit width wide breite large larghezza ancho bred bredde',
  ),
  length: LENGTH,
  width: WIDTH,
  pileLength: PILE,
  weight: WEIGHT,
  thickness: THICKNESS,
  twistAngle1: ANGLE,
  twistAngle2: ANGLE,
  meshGauge: BAR,
  density1: DENSITY,
  density2: DENSITY,
};

/** "Preserved length 9 cm": what survives of it. */
const SURVIVING =
  /^(preserved|pres|surviving|extant|remaining|erhaltene?|erh|conservee?|cons|conservata?o?|conservada?o?|bevaret|bevart|noch|still|encore|ancora|aun|endnu|resta|restano|reste|queda|quedan)\.?:? (.*\d.*)$/u;
/** "8.5 cm, torn": broken off, so at least that much. */
const TORN =
  /^(.*\d.*?),? ?\(?(?:torn|broken off|broken|abgerissen|abgebrochen|gerissen|dechiree?|arrachee?|strappat[oa]|rott[oa]|rasgad[oa]|rot[oa]|fragmentary|fragmentarisch|fragmentaire|frammentari[oa]|fragmentari[oa]|fragmentad[oa]|fragmentarisk|afrevet|ufuldstaendig\p{L}*|ufullstendig\p{L}*|unvollstandig|incomplete?|incomplet[oa]?)\)?$/u;
/** From the middle of one row to that of the next. */
const CENTRES =
  /,? ?\(?(?<!\p{L})(?:(?:on|at|between) cent(?:re|er)s?|o\.c\.|(?:von )?mitte zu mitte|d'axe (?:en|a) axe|axe a axe|entre ejes|tra i centri|entre centros|entre centres|zwischen den mitten|mellem midterne|(?:de )?eje a eje|c\/c|(?<=mm )cent(?:re|er)s|a ejes|(?:da|de) centro a centro|centro a centro|(?:fra )?midte til midte)(?!\p{L})\)?/gu;

const KNOTS =
  /(?<!\p{L})(?:(?:von |de |da |fra )?(?:knot|knoten|noeud|nodo|nudo|knude|knute) (?:to|zu|a|til) (?:knot|knoten|noeud|nodo|nudo|knude|knute))(?!\p{L})/gu;

const LONGEST = 100;
const COUNTED: ReadonlySet<string> = new Set(['rowSpacing', 'coilPitch', 'rowWidth']);

/** How even a measure is says nothing of how much it is. */
const EVENNESS =
  /,? ?\(?(?<!\p{L})(?:irregular|regular|uneven|even|overall|varies|varying|variable|varia|varie|variant|varierer|varierende|varierend|schwankt|unregelmassig|regelmassig|ungleichmassig|gleichmassig|schwankend|variierend|irreguliere?|reguliere?|irregolare|regolare|variabile|uregelmaessig|regelmaessig|ujevn|jevn|var\.)(?!\p{L})\)?/gu;

/** A folded text without the words that name its measure; the unit put behind its number where it stood before. */
export function withoutMeasureWords(text: string, attribute: string): string {
  // A measure with its name is short; no pattern is tried on prose.
  if (text.length > LONGEST) return text;
  const folded = text
    .replace(EVENNESS, '')
    .replace(TORN, '$1 incomplete')
    .replace(/(?<=lichte\p{L}*) (?=abstand|weite)/u, '-')
    .replace(KNOTS, (phrase) => phrase.replaceAll(' ', '-'))
    .replace(/^over (?=\d)/u, '> ')
    .replace(/ as (?=preserved)/u, ' ')
    .replace(/\((per|pro|par|por|pr\.?|al|\/) ?(cm|mm)\)/u, '$1 $2');
  // "5 rows in 32 mm" counts its rows.
  const counts =
    COUNTED.has(attribute) &&
    /(?<!\p{L})(?:in|auf|sur|su|over|across|per|pro|por|pr|pa)(?!\p{L})|\//u.test(folded);
  const noise = counts ? undefined : BY_ATTRIBUTE[attribute];
  const centred = noise === SPACING ? folded.replace(CENTRES, '') : folded;
  const bare =
    noise === undefined
      ? folded
      : centred
          .replace(/(?<=between|from|row|to|centre|center) (?=centres|row|to|centre|center)/gu, '-')
          .replace(noise, ' ')
          .replace(/(?<![\p{L}\d]) *[:=] *(?=\d)/u, ' ')
          .replace(/^ *ø ?= ?/u, '');
  const unitLast = /^([^\d]*?)(?<!\p{L})(mm|cm) ([^\p{L}]*\d[^\p{L}]*)$/u.exec(bare);
  const turned = unitLast === null ? bare : `${unitLast[1]} ${unitLast[3]} ${unitLast[2]}`;
  // "filas a 5 mm": what is left of "at" before the number.
  return turned
    .replace(/ +/gu, ' ')
    .trim()
    .replace(/^(?:(?:un|une|una|et|eine?|de|di|du|del|a|at|of|i|in|im|en|mit|von|af|med|with) )+(?=\d)/u, '')
    .replace(/^= ?(?=\d)/u, '')
    .replace(SURVIVING, '$2 $1')
    .replace(/[ ,]+(?:d'|de|di|i|en|in|of)$/u, '')
    .replace(/[ ,]+$/u, '');
}

const EXTENTS: Readonly<Record<string, string>> = {
  length: 'l|lg|lge|lgh|long|longueur|longitud|length|lange|lungh|lunghezza|laengde|lengde|largo',
  width: 'b|br|breite|w|width|larg|largeur|largh|larghezza|anch|anchura|ancho|bredde',
  thickness: 'th|thickness|dicke|ep|epaisseur|spess|spessore|grosor|espesor|tykkelse',
};
const MOST =
  'max|maximale?|maximum|massim[oa]|maxim[oa]|maks|maksimale?|greatest|largest|grosste[rs]?|gr|plus grande|maggiore|mayor|storste';

/**
 * "Longueur max. 8,5 cm", "größte Länge 8,5 cm": the greatest length that was measured, which is the length of a piece
 * that is not rectangular. Without the name of the measure ("max. 8,5 cm") it stays an upper bound.
 */
export function greatestExtent(text: string, attribute: string): string {
  const names = EXTENTS[attribute];
  if (names === undefined || text.length > 60) return text;
  const most = new RegExp(
    `^(?:(?:${MOST})\\.? (?:${names})|(?:${names})\\.? (?:${MOST}))\\.?:? ?(?=[\\d~<>c])`,
    'u',
  );
  const folded = foldCell(text);
  const behind = new RegExp(`^(.*\\d ?(?:mm|cm|m)?),? \\(?(?:${MOST})\\.? (?:${names})\\)?$`, 'u').exec(
    folded,
  );
  if (behind !== null) return behind[1]!;
  return most.test(folded) ? folded.replace(most, '') : text;
}
