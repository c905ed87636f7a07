import type { Phrases } from '../cells/tables/trade-phrases.ts';

/**
 * A bed of cells made up after the readings of the first (tests/cells/tables/trade-phrases.ts) stood, each with the
 * meaning that a specialist would give it, decided before any was tried. Common practice, no source; no phrase is
 * taken from a publication. Meanings are written as there.
 */
const of = (group: string, attribute: string, means: string, texts: string): Phrases => ({
  group,
  attribute,
  means,
  texts,
});

export const MORE_PHRASES: readonly Phrases[] = [
  of(
    'spin before ply',
    'ply1',
    'S2z',
    'zz→S|2 z / S|S-ply, 2 z|2-ply S (z)|S-Zwirn aus 2 z-Fäden|zwei z-Garne, S gezwirnt|2 fils z, retors S|2 capi z, torsione S|2 cabos z, retorcido S|2 z-spundne, S-tvundet',
  ),
  of('spin before ply', 'ply1', 'Z2s', '2-ply Z (s)|Z-Zwirn aus 2 s-Fäden|Z-ply, 2 s|2 cabos s, retorcido Z'),
  of(
    'spin before ply',
    'ply1',
    'S3z',
    '3-ply S (z)|S-Zwirn aus 3 z-Fäden|3 fils z, retors S|3 cabos z, retorcido S',
  ),
  of(
    'ply not said',
    'twist1',
    'not-observed',
    'einfach|single|singles|unplied yarn|ungezwirntes Garn|fil simple|filo singolo|hilo simple|enkelt|einfaches Garn',
  ),
  of(
    'no twist',
    'twist1',
    'none',
    'no visible twist|ohne erkennbare Drehung|parallel fibres|sans torsion apparente|senza torsione apparente|sin torsión aparente|uden synlig snoning|ungesponnen|unspun',
  ),
  of(
    'twist qualified',
    'twist1',
    'Z',
    'Z, very loose|Z (lightly spun)|Z, mittelstark|Z, fort|Z, poco serrato|Z, muy floja|Z, løs|Z – fest|Z, hart gedreht|Z, lâche',
  ),
  of(
    'twist qualified',
    'twist1',
    'S',
    'S, hard spun|S (lose gedreht)|S, peu serré|S, molto serrata|S, muy apretada|S, stramt',
  ),
  of(
    'twist doubted',
    'twist1',
    'Z?',
    'Z, wohl|Z (wahrscheinlich)|Z, sans doute|Z, prob.|Z (probable)|antagelig Z|Z, apparently|Z (vermutlich)|Z, seemingly|sandsynligvis z',
  ),
  of(
    'twist doubted',
    'twist1',
    'S??',
    'S, possibly|S (möglicherweise)|S, peut-être|S, forse|S, quizá|muligvis S|S, perhaps',
  ),
  of('drawn slant', 'rowSlant', 'ask', '/ /|\\ \\|/?|∕'),
  of('slant', 'rowSlant', 'Z', 'Z|Z-slant|Z-geneigt|en Z|a Z|Z-Neigung|inclinación Z|inclinaison Z'),
  of(
    'slant',
    'rowSlant',
    'countered',
    'alternierend S und Z|S and Z alternating|gegenläufig|S/Z alternating|counter-twined',
  ),

  of(
    'looked for in vain',
    'dye',
    'absent',
    'no dyestuff found|no dye present|keine Farbstoffe nachweisbar|kein Nachweis|pas de colorant|nessun colorante|no se detectó|ingen farvestoffer påvist|below detection|undetected',
  ),
  of(
    'dye there',
    'dye',
    'present',
    'madder|woad|indigotin detected|Krapp|Färbung nachgewiesen|garance|robbia|rubia|traces of dye|dye present',
  ),
  of(
    'not looked for',
    'dye',
    'not-observed',
    'not sampled|nicht beprobt|pas analysé|non campionato|no muestreado|ikke prøvet|awaiting analysis|Analyse steht aus|untested',
  ),
  of(
    'presence in words',
    'pile',
    'absent',
    'pile: none|without tufts|ohne Noppen|sans mèches|senza ciuffi|sin mechones|uden noppe|pile lacking|no evidence of pile',
  ),
  of(
    'presence in words',
    'pile',
    'present',
    'pile on one face|einseitiger Flor|Noppen|mèches conservées|ciuffi|mechones|luv bevaret|remains of pile|some tufts|short pile',
  ),
  of(
    'presence in words',
    'seam',
    'absent',
    'no seams|keine Nähte|aucune couture|nessuna cucitura|sin costuras|ingen sømme|no stitching|no sewing',
  ),
  of(
    'presence in words',
    'seam',
    'present',
    'Nähte erhalten|seams preserved|stitching along edge|couture conservée|cucitura|costura|sømme|seam, two sides|Naht, 2 Seiten|stitch holes',
  ),
  of(
    'presence in words',
    'repair',
    'absent',
    'no mending|keine Flickung|pas de réparation|nessun rammendo|sin remiendos|ingen lapper|unrepaired|no darns',
  ),
  of(
    'presence in words',
    'repair',
    'present',
    'darn|darns|Flickstelle|Stopfstelle|reprise|rammendo|remiendo|lap påsyet|mended in antiquity|repair stitches',
  ),
  of(
    'presence in words',
    'wear',
    'absent',
    'unworn|no visible wear|ohne Gebrauchsspuren|sans usure|senza usura|sin desgaste|intet slid|ingen slitasje',
  ),
  of(
    'presence in words',
    'wear',
    'present',
    'Gebrauchsspuren|wear at one edge|usure visible|usura|desgaste|slid|slitasje|abraded|abgescheuert|worn through',
  ),

  of(
    'nothing known',
    'density1',
    'not-observed',
    'not determinable|n. bestimmbar|unbestimmbar|nicht feststellbar|nicht messbar|nicht ermittelbar|indéterminable|non mesurable|non misurabile|no medible|kan ikke måles|ikke målbar|ikke bestemmelig|not visible|nicht sichtbar|non visible|non visibile|no visible|ikke synlig|unclear|unklar|obscured|verdeckt|caché|nascosto|skjult',
  ),
  of(
    'nothing known',
    'twist1',
    'not-observed',
    'not visible|nicht erkennbar|non visible|no visible|ikke synlig|unclear|not determinable|unbestimmbar|nicht bestimmbar|indéterminable',
  ),
  of(
    'nothing known',
    'fibre',
    'not-observed',
    'not determined|unidentified|unidentifiable|nicht bestimmbar|unbestimmbar|indéterminable|non identificabile|no identificable|ikke identificeret|not analysed|keine Analyse|pas d’analyse|no analizada|unknown|unbekannt|inconnu',
  ),
  of(
    'no place',
    'site',
    'not-observed',
    'origine inconnue|ohne Fundangabe|origin unknown|provenance not known|no provenance|unprovenienced|Fundort unsicher?|Herkunft unbek.|FO unbekannt|o. Fundort|ohne Herkunft|sans lieu|s. l.|senza provenienza|provenienza ignota|procedencia ignota|sin lugar|uden fundsted|fundsted ukendt|funnsted ukjent|surface, unlocated',
  ),
  of(
    'no place',
    'phase',
    'not-observed',
    'phase unknown|Phase unbekannt|fase sconosciuta|unphased|not phased|no phase|nicht zugeordnet|ohne Phase|non attribué|non attribuita|sin fase|uden fase|undated',
  ),

  of(
    'bounds',
    'density1',
    '0-8',
    'max 8/cm|no more than 8|nicht mehr als 8|pas plus de 8|non più di 8|no más de 8|højst 8/cm|maks. 8|8 at most|8 max.|höchstens 8/cm|unter 8|below 8|moins de 8|meno di 8|menos de 8|under 8',
  ),
  of(
    'bounds',
    'density1',
    '8-',
    'no fewer than 8|mindestens 8/cm|au minimum 8|minimo 8|mínimo 8|mindst 8/cm|8 or more|8 und mehr|8 et plus|über 8|over 8|plus de 8|più di 8|más de 8|mere end 8|8 at least',
  ),
  of(
    'about',
    'density1',
    '~8',
    '8 approx.|8 (approx.)|8 env.|8 (ca)|cca 8|ung. 8|8 circa|aprox. 8|8 aprox.|8 or so|um 8|um die 8|roughly 8|grob 8|approximativement 8|más o menos 8|cirka 8|ca 8',
  ),
  of(
    'about',
    'rowSpacing',
    '~20',
    'knapp 2 cm|gut 2 cm|barely 2 cm|scarcely 2 cm|environ 2 cm|ca. 2 cm|circa 2 cm|unos 2 cm|godt 2 cm|snaut 2 cm|knappe 2 cm',
  ),
  of(
    'range',
    'density1',
    '8-9',
    '8/9|8 or 9|8 oder 9|8 ou 9|8 o 9|8 eller 9|8 - 9 /cm|8 bis 9 Fäden|8 à 9 fils|8-9 threads|8-9 Fäden je cm|8-9 hilos por cm|8-9 fili per cm|8–9 tråde pr. cm|8..9',
  ),
  of(
    'number and unit',
    'density1',
    '8',
    '8 Fäden pro cm|8 Fd./cm|8 Fd|8 fils|8 fili|8 hilos|8 tråde|8 threads|8 ends/cm|8 Fäden|8 cm⁻¹|8/1 cm|8 je cm|K 8/cm',
  ),
  of(
    'number and unit',
    'density1',
    '7',
    '35 per 5 cm|35/5 cm|35 auf 5 cm|35 pro 5 cm|35 sur 5 cm|35 su 5 cm|35 en 5 cm|35 på 5 cm',
  ),
  of(
    'number and unit',
    'diameter1',
    '0.5',
    '0.5mm|0,5 mm Ø|Ø: 0.5 mm|Dm 0,5|diám. 0,5 mm|diam. 0,5 mm|.5 mm|0.05 cm|500 µm|½ mm',
  ),

  of(
    'pair named',
    'threads',
    '9 & 7',
    '9 K / 7 S|9K, 7S|K9/S7|Kette: 9, Schuss: 7|Kette 9 Fd/cm, Schuss 7 Fd/cm|9 Kette x 7 Schuss|9 fils (chaîne), 7 fils (trame)|chaîne: 9; trame: 7|ch. 9, tr. 7|ordito: 9; trama: 7|ordito 9/cm; trama 7/cm|urd. 9, tr. 7|urdimbre: 9; trama: 7|trend: 9, islæt: 7|9 (trend) x 7 (islæt)|renning: 9, innslag: 7|9 warp x 7 weft|warp 9/cm, weft 7/cm|9/cm warp; 7/cm weft|weft: 7, warp: 9|S 7, K 9|9 x 7 Fäden/cm|9 x 7 F/cm|9 × 7 per cm|9x7|9 by 7',
  ),
  of(
    'pair half known',
    'threads',
    '9 & not-observed',
    '9 x indet.|9 x n.d.|9 / ?|9 × nicht zählbar|9 x not visible|warp 9, weft ?|Kette 9, Schuss unbek.|chaîne 9, trame ?|9 x n/d',
  ),
  of(
    'pair half known',
    'threads',
    'not-observed & 7',
    '?/7|indet. x 7|- / 7|Kette ?, Schuss 7|warp ?, weft 7',
  ),
  of(
    'pair of twists',
    'twists',
    'Z & S',
    'Z / S|Z x S|z × s|K: Z, S: S|Kette: Z, Schuss: S|warp: Z; weft: S|chaîne Z / trame S|ordito: Z; trama: S|urdimbre: Z; trama: S|trend Z, islæt S|Z (warp), S (weft)|Z (Kette), S (Schuss)',
  ),
  of(
    'pair of twists',
    'twists',
    'Z & not-observed',
    'Z x indet.|Z / n.b.|Z (Kette), ? (Schuss)|warp Z, weft ?',
  ),
  of(
    'sizes by letter',
    'sizes',
    '9 & 4',
    'L 9, W 4|L: 9 / B: 4|L=9; B=4|Lg. 9, Br. 4|Lge. 9 cm, Br. 4 cm|L. 9 cm, l. 4 cm|long. 9 cm ; larg. 4 cm|Lungh. 9; largh. 4|lung. 9, larg. 4|Largo 9; ancho 4|long. 9, anch. 4|L 9 x B 4|l 9 cm, b 4 cm|længde 9 cm, bredde 4 cm|9 x 4 cm|9 cm × 4 cm|9 × 4|4 breit, 9 lang|9 lang x 4 breit|9 long, 4 wide|9 cm long x 4 cm wide',
  ),

  of(
    'fibre mixture',
    'fibre',
    'silk+wool',
    'wool, silk|Wolle und Seide|Wolle + Seide|laine avec soie|lana e seta|seda y lana|uld med silke|wool with silk|silk, wool',
  ),
  of(
    'fibre mixture',
    'fibre',
    'flax+wool',
    'linen and wool|Leinen und Wolle|lin et laine|lino e lana|lino y lana|hør og uld|Wolle/Leinen gemischt',
  ),
  of(
    'fibre',
    'fibre',
    'flax',
    'flax fibre|flax fibres|Flachsfaser|Flachsfasern|fibre de lin|fibres de lin|fil de lin|fibra di lino|fibra de lino|hørfibre|Leinfaser|linen fibre|flax (Linum usitatissimum)|Linum usitatissimum L.',
  ),
  of(
    'fibre',
    'fibre',
    'wool',
    "sheep's wool|Wollfaser|Schafwolle|laine de mouton|lana di pecora|lana de oveja|fåreuld|saueull|wool fibre|wool (Ovis aries)",
  ),
  of(
    'fibre',
    'fibre',
    'limeBast',
    'lime bast|Lindenbast|Tilia sp.|liber de tilleul|tilleul|lindebast|Tilia cordata',
  ),
  of(
    'fibre',
    'fibre',
    'hair',
    'animal hair|Tierhaar|Tierhaare|poils d’animal|pelo animale|pelo animal|dyrehår',
  ),
  of(
    'fibre',
    'fibre',
    'plantFibre',
    'vegetable fibre|plant fibre|Pflanzenfaser|Pflanzenfasern|fibre végétale|fibres végétales|fibra vegetale|fibra vegetal|plantefiber|plantefibre|vegetal',
  ),
  of(
    'fibre doubted',
    'fibre',
    'flax?',
    'flax, probably|prob. Flachs|Flachs, wohl|lin, probablement|lino, probabilmente|lino (prob.)|trolig lin|formentlig hør|flax, likely|apparently flax|cf. Flachs',
  ),
  of(
    'fibre doubted',
    'fibre',
    'flax??',
    'flax, possibly|Flachs, evtl.|lin, peut-être|quizás lino|flax, perhaps|måske hør',
  ),
  of(
    'not this fibre',
    'fibre',
    'ask',
    'not linen|kein Leinen|pas de laine|non lana|ingen uld|no lana|not cotton',
  ),
  of(
    'one of two',
    'fibre',
    'herbBast',
    'flax or nettle|Flachs oder Nessel|lin ou ortie|lino o ortica|flax/nettle|hør eller nælde',
  ),
  of('asked', 'fibre', 'ask', 'cane|mimbre|withy|vimini|corteccia|corteza|alfa|canne'),

  of(
    'structure',
    'structure',
    'tabby',
    'LW|LB 1/1|LW 1/1|Leinwand|Leinw.|tabby 1/1|plain weave 1:1|L 1/1|toile 1/1|tela 1/1|tafetán 1/1|lærred|toskaft|Tuchbindung|leinwandbindig|en toile',
  ),
  of(
    'structure',
    'structure',
    'twill22',
    'K 2/2|Köper 2/2|KB 2/2|twill 2/2|2/2 twill|sergé 2/2|saia 2/2|sarga 2/2|kiper 2/2|Gleichgratköper|diamond twill 2/2',
  ),
  of(
    'structure',
    'structure',
    'twill',
    'Köper|köperbindig|Fischgratköper|broken twill|en sergé|firskaft|vierbindiger Köper|saia da 4',
  ),
  of('structure', 'structure', 'twill44', '4/4 twill|Köper 4/4|sergé 4/4'),
  of('structure', 'structure', 'twill41', 'twill 1/4|twill 4/1|Köper 1/4'),
  of('structure', 'structure', 'twill21', 'lozenge twill 2/1|Köper 2/1|dreibindiger Köper|sergé 2/1'),
  // A word of several meanings stays at what they share, or is asked.
  of('structure', 'structure', 'woven', 'tela'),
  of('structure', 'structure', 'looped', 'Coptic stitch'),
  of('structure', 'structure', 'tabby', 'extended tabby'),
  of(
    'structure',
    'structure',
    'twined',
    'twining|twined|Zwirnbindung|zwirnbindig|Zwirngeflecht|cordé|étoffe cordée|cordado|intreccio ritorto|tvinding|weft-twined|Schusszwirnbindung',
  ),
  of(
    'structure',
    'structure',
    'coiled',
    'coiled|coiling|Spiralwulst|vannerie spiralée|intreccio a spirale|spiralsyet',
  ),
  of('structure', 'structure', 'ask', 'enrollado|wrapped|osier'),
  of(
    'structure',
    'structure',
    'sprang',
    'sprang|Sprang|Sprangtechnik|sprang?|en sprang'.replace('sprang?|', ''),
  ),
  of('structure', 'structure', 'knitted', 'knitted|knitting|gestrickt|tricot|tricoté|strikket'),

  of(
    'preservation',
    'preservation',
    'charredWaterlogged',
    'charred & waterlogged|waterlogged, carbonised|verkohlt, wassergesättigt|carbonizzato e imbibito|carbonizado y saturado de agua|forkullet og vanddrukken|carbonisé, gorgé d’eau|carbonised and wet',
  ),
  of(
    'preservation',
    'preservation',
    'charred',
    'charring|partly charred|karbonisiert|brûlé|bruciato|quemado|forkullet|brændt|burnt',
  ),
  of(
    'preservation',
    'preservation',
    'mineralisedIron',
    'mineralised on iron|an Eisen|eisenkorrodiert|minéralisé sur fer|mineralizzato su ferro|mineralizado sobre hierro|iron-replaced|rust-replaced',
  ),
  of(
    'preservation',
    'preservation',
    'anoxic',
    'anoxic|anaerobic|anaerob|anaérobie|anaerobio|oxygen-free|sauerstoffarm',
  ),
  of(
    'preservation',
    'preservation',
    'salt',
    'salt|in salt|im Salz|Salzbergwerk|dans le sel|nel sale|en sal|i salt',
  ),
  of('spacing in words', 'rowSpacing', 'ask', 'rows touch|dicht|serré|cerrado|contiguous|aneinander|tæt'),
  of(
    'spacing class',
    'spacingClass',
    'close',
    'rows touch|rows touching|dicht|dichte Reihen|serré|serrés|cerrado|compact|tight|chiuso|tæt|compatto|contiguous rows',
  ),
  of(
    'spacing class',
    'spacingClass',
    'open',
    'open|widely spaced|offen|mit Abstand|espacé|espacés|ajouré|abierto|espaciado|aperto|åben|spaced',
  ),
  of('method', 'fibreMethod', 'sem', 'S.E.M.|SEM analysis|REM-Analyse|by SEM|par MEB'),
  of('method', 'fibreMethod', 'byEye', 'by eye only|eye only|nur mit bloßem Auge|visual ID|nach Augenschein'),
];
