import { DENYING, DETERMINING, isFilling, MODAL, stems, wordsOf } from './word-classes.ts';

/** How a find lasted, in a sentence: "mineralised by copper salts", "Kupferkorrosion", "verkohlt, feucht erhalten". Common practice, no source. */

const COPPER = 'copper bronze cuivre kupfer bronzo rame cobre bronce kobber kobberlegering brass messing';
const IRON = 'iron rust eisen eisenrost rost fer rouille ferro ruggine hierro oxido-de-hierro jern rust';
const SILVER = 'silver silber argent argento plata solv';
const either = (metal: string, more: string): RegExp => stems(`(?:${metal.split(' ').join('|')})(?:${more})`);
const BEHIND =
  '(?:s|n|en)?(?:korrosion|mineralisier|mineralisation|mineralisering|korrosjon|oxid|salz|salt|legering|legierung|gegenstand|objekt|genstand)?\\p{L}{0,4}';
const METALS: readonly (readonly [RegExp, string])[] = [
  [either(COPPER, BEHIND), 'mineralisedCopper'],
  [either(IRON, BEHIND), 'mineralisedIron'],
  [either(SILVER, BEHIND), 'mineralisedSilver'],
];
const REPLACED = stems(
  'rust\\p{L}* (?:\\p{L}+)?rost rouille ruggine jernrust mineral\\p{L}* corro[ds]\\p{L}* corrosion\\p{L}* korro\\p{L}* oxi\\p{L}* oxyd\\p{L}* pseudomorph\\p{L}* ankorro\\p{L}* replaced remplacee?s? ersetzt\\p{L}* sostituit[oaie] sustituid[oa]s? erstattet salts? salze[n]? sels sali (?:kupfer|eisen|silber|bronze|kobber|jern)sal[tz]\\p{L}* (?:kupfer|eisen|silber|kobber|jern)(?:korro|mineral|oxid)\\p{L}*',
);
const BESIDE = stems(
  'next da knife blade buckle brooch pin sword ring messer klinge schnalle fibel fibula couteau fibule coltello cuchillo kniv nal salts? salz\\p{L}* products? produ\\p{L}* produkt\\p{L}* sels? sali sales salte contact kontakt contatto contacto con sobre su durch ved on through durch near object gegenstand\\p{L}* objet oggetto objeto genstand alloy legierung alliage lega aleacion preserved erhalten\\p{L}* conservee?s? conservat[oaie] conservad[oa]s? bevaret partly teilweise',
);

const CHARRED = stems(
  'charred angekohlt\\p{L}* carboni[sz]ed burnt verkohlt\\p{L}* karbonisiert\\p{L}* verbrannt\\p{L}* carbonisee?s? brulee?s? carbonizzat[oaie] carbonizad[oa]s? quemad[oa]s? forkull?e[dt]\\p{L}* braendt braent',
);
const WET = stems(
  'wet waterlogged feucht\\p{L}* nass\\p{L}* wassergesattigt\\p{L}* wassergelagert\\p{L}* vandlejret vannlagret gorgee?s? humides? humide imbibee?s? bagnat[oa] umid[oa] imbibit[oaie] intris[oa] humed[oa] empapad[oa] anegad[oa] saturad[oa] vad vandmaettet vannmettet vat',
);
const WATER = stems(
  'soft weich mou molle morbid[oa] bland[oa] blodt? water wasser eau acqua agua vand vann environment milieu medio ambiente miljo boden feuchtboden sediment preserved erhalten\\p{L}* conservee?s? conservat[oaie] conservad[oa]s? bevaret bevart kept conditions geborgen recovered found gefunden fund trouvee?s? rinvenut[oaie] fundet',
);

/** The term that a sentence of known words names, or null. */
export function preservationInWords(text: string): string | null {
  if (text.length > 80 || /[\d?/]/u.test(text)) return null;
  const words = wordsOf(text);
  if (words.length === 0 || words.length > 8) return null;
  // "No carbonizado", "could be charred": no mode is named for certain.
  if (words.some((word) => DENYING.test(word) || DETERMINING.test(word) || MODAL.test(word))) return null;
  return metalIn(words) ?? wetIn(words) ?? onlyOne(words);
}

function metalIn(words: readonly string[]): string | null {
  const met = new Set(
    METALS.flatMap(([metal, term]) => (words.some((word) => metal.test(word)) ? [term] : [])),
  );
  const replaced = words.some((word) => REPLACED.test(word));
  const known = (word: string) =>
    METALS.some(([metal]) => metal.test(word)) || REPLACED.test(word) || BESIDE.test(word) || isFilling(word);
  const [only] = met;
  return only !== undefined && met.size === 1 && replaced && words.every(known) ? only : null;
}

function wetIn(words: readonly string[]): string | null {
  const charred = words.some((word) => CHARRED.test(word));
  const wet = words.some((word) => WET.test(word) || /^feucht|^vad/u.test(word));
  if (
    !wet ||
    !words.every((word) => CHARRED.test(word) || WET.test(word) || WATER.test(word) || isFilling(word))
  )
    return null;
  return charred ? 'charredWaterlogged' : 'waterlogged';
}

/** One mode among the words for where it was found. */
const MODES: readonly (readonly [RegExp, string])[] = [
  [
    stems(
      'impressions? imprint (?:\\p{L}+)?abdruck abdrucke empreintes? impront[ae] improntas? impresion(?:es)? aftryk avtrykk',
    ),
    'impression',
  ],
  [
    stems(
      'desiccated dried dry ausgetrocknet\\p{L}* getrocknet\\p{L}* trocken\\p{L}* sec seche?s? sec[oa]s? secc[oaie] disseccat[oaie] tort? dessechee?s? essiccat[oaie] desecad[oa]s? udtorret torret torr',
    ),
    'desiccated',
  ],
  [stems('bog peat moor\\p{L}* torf tourbieres? torbier[ae] turber[ao]s? mose mosefund myr'), 'bog'],
  [CHARRED, 'charred'],
  [stems('minerali[sz]\\p{L}* mineralisiert\\p{L}* pseudomorph\\p{L}*'), 'mineralised'],
];
const FOUND_IN = stems(
  'clay ceramics? pottery daub sherds? vessel ton keramik lehm scherbe argile ceramique terre cuite argilla ceramica terracotta barro arcilla adobe ler lerkar skar keramikk found gefunden trouvee?s? rinvenut[oaie] hallad[oa]s? fundet finds? fund context kontext contexte cave very sehr tres molto muy meget hard hart dur[oae]? partiellement incendi[eo]? ild house fire soft hausbrand brand weich mou molle morbid[oa] bland[oa] blod hohle grotte grotta cueva hule zustand etat stato estado fragile brittle bruchig\\p{L}* sprod\\p{L}* friable cassante?s? fragil[ei]?s? skort? totalmente parcialmente parzialmente delvist geborgen recovered only nur seule?s? solo kun bare seulement soltanto fragment\\p{L}* frammen\\p{L}* textil\\p{L}* tekstil\\p{L}* completely partly fully vollstandig teilweise entierement completement completamente helt delvis slightly leicht legerement leggermente ligeramente let lett tesson\\p{L}* cocci[oi]? potsherd\\p{L}*',
);

function onlyOne(words: readonly string[]): string | null {
  const met = new Set(MODES.flatMap(([mode, term]) => (words.some((word) => mode.test(word)) ? [term] : [])));
  const known = (word: string) =>
    MODES.some(([mode]) => mode.test(word)) || FOUND_IN.test(word) || WATER.test(word) || isFilling(word);
  const [only] = met;
  return only !== undefined && met.size === 1 && words.every(known) ? only : null;
}
