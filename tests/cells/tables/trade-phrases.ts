/**
 * Cells as catalogues in six languages write them, made up for these tests after common practice (no source):
 * no phrase is taken from a publication. Phrases of one meaning stand together, parted by "|".
 *
 * The meaning is written: a term or state ("S", "none", "absent", "not-observed"), "?" behind it for one step of
 * doubt and "??" for two; a number or its ends ("12", "12-14", "0-12" for at most, "12-" for at least), "~" before
 * what is about; two readings of one cell with " & " between; "ask" where a person must say.
 */
export interface Phrases {
  readonly group: string;
  readonly attribute: string;
  readonly means: string;
  readonly texts: string;
}

const of = (group: string, attribute: string, means: string, texts: string): Phrases => ({
  group,
  attribute,
  means,
  texts,
});

export const TRADE_PHRASES: readonly Phrases[] = [
  // Spin and ply: a lower-case letter written twice before its ply is the spin of two strands.
  of('ply', 'ply1', 'S2z', 'S2z|zzS|2zS|z2S|S(2z)|zz/S|2z,S|z-spun, S-plied 2|zz-S|S/zz|z/z/S|2 z S'),
  of('ply', 'ply1', 'Z2s', 'Z2s|ssZ|2sZ|s2Z|Z(2s)|ss-Z|Z/ss'),
  of('ply', 'ply1', 'S3z', 'S3z|zzzS|3zS|S(3z)'),
  of('ply', 'ply1', 'Z3s', 'Z3s|sssZ|3sZ'),
  of(
    'ply',
    'ply1',
    'Sz',
    'zS|Sz|z-spun, S-plied|z gesponnen, S gezwirnt|z-gesponnen, S-gezwirnt|filé z, retors S',
  ),
  of('ply', 'ply1', 'Zs', 'sZ|Zs|s-spun, Z-plied'),
  of('ply', 'ply1', 'S2z', 'retors S de 2 z|2 cabos z torsión S'),
  of('ply', 'ply1', 'ask', 'ZS|SZ|S/Z|Z/S|plied?'),
  of('spin unknown', 'twist1', 'not-observed', 'unplied|ungezwirnt|non retors|non retordu|sin retorcer'),
  of(
    'no twist',
    'twist1',
    'none',
    'I|untwisted|no twist|without twist|not twisted|ungedreht|ohne Drehung|keine Drehung|sans torsion|senza torsione|sin torsión|uden snoning|uten tvinning|straight|0|o',
  ),
  of('no twist', 'twist1', 'none', 'assente|keine|aucune|ninguna|nessuna|ingen|none|absent|absente|ausente'),
  of(
    'twist',
    'twist1',
    'S',
    'S|s|S-twist|S-spun|s-spun|S-gedreht|S-Drehung|S gesponnen|torsion S|torsione S|torsión S|S-spundet|S-spunnet|S-snoet',
  ),
  of(
    'twist',
    'twist1',
    'Z',
    'Z|z|Z-twist|Z-spun|z gesponnen|Z-Drehung|torsion en Z|torsione a Z|torsión Z|torsión en Z|Z-spundet|Z-tvunnet',
  ),
  of(
    'twist, qualified',
    'twist1',
    'Z',
    'Z, schwach|Z, weak|Z, faible|Z, debole|Z, débil|Z, svag|Z, fest|Z, tight|Z loose|Z stark|Z, serré|Z, forte|Z, fuerte|Z, hård|Z (weak)|Z (schwach)|Z, medium|Z mittel',
  ),
  of(
    'twist, qualified',
    'twist1',
    'S',
    'S, schwach|S, strong|S (lose)|S, très serré|S, very tight|S, slight|S leicht',
  ),
  of(
    'twist, doubted',
    'twist1',
    'S?',
    'S?|S (?)|(S)|prob. S|wohl S|vermutl. S|S, vermutlich|probablement S|vistnok S|S, probably|S wahrsch.|most likely S|S most likely',
  ),
  of(
    'twist, doubted',
    'twist1',
    'Z?',
    'Z?|Z ?|probably Z|vermutlich Z|vraisemblablement Z|probabilmente Z|probablemente Z|sandsynligvis Z|trolig Z',
  ),
  of(
    'twist, doubted',
    'twist1',
    'Z??',
    'possibly Z|Z ??|evtl. Z|peut-être Z|forse Z|quizás Z|måske Z|kanskje Z',
  ),
  of('twist, both', 'twist1', 'both', 'S and Z|S+Z|S & Z|S und Z|S et Z|S e Z|S y Z|S og Z'),
  of('two systems', 'twist1', 'ask', 'S/Z|Z/S|z/s'),
  of('drawn slant', 'rowSlant', 'ask', '/|\\|//|\\\\'),
  of('slant', 'rowSlant', 'S', 'S|S-slant|S twist|cordé en S|S-Zwirnbindung'),
  of('slant', 'rowSlant', 'countered', 'countered|alternating|S and Z|wechselnd|alterné|alternato|alterno'),
  of('slant', 'rowSlant', 'ask', 'up to the right|to the left|nach rechts|links|rechts|à droite|clockwise'),

  // Looked for where it could be seen, and not there; or nothing known.
  of(
    'dye absent',
    'dye',
    'absent',
    'not detected|nicht nachgewiesen|none detected|non détecté|non rilevato|no detectado|ikke påvist|undyed|ungefärbt|non teint|non tinto|sin teñir|ufarvet|ufarget|negative|negativ|négatif|negativo|none|keine|aucun|nessuno|ninguno|ingen',
  ),
  of(
    'dye present',
    'dye',
    'present',
    'detected|nachgewiesen|détecté|rilevato|detectado|påvist|dyed|gefärbt|teint|tinto|teñido|farvet|farget|yes|positive|positiv|positif|positivo',
  ),
  of(
    'dye unknown',
    'dye',
    'not-observed',
    'not analysed|not tested|nicht analysiert|nicht untersucht|non analysé|non analizzato|no analizado|ikke undersøgt|ikke analyseret|ikke analysert|n/d',
  ),
  of(
    'presence in words',
    'pile',
    'absent',
    'no pile|without pile|ohne Flor|kein Flor|sans poil|senza pelo|sin pelo|uden luv|uten lo|no tufts|untufted|none visible|pile absent|kein Vlies',
  ),
  of(
    'presence in words',
    'pile',
    'present',
    'with pile|pile present|mit Flor|Flor vorhanden|à poils|avec poils|con pelo|med luv|tufted|present|vorhanden|présent|présente|presente|til stede|yes, pile|traces of pile|Florreste',
  ),
  of(
    'presence in words',
    'wear',
    'absent',
    'no traces|no wear|keine Spuren|ingen spor|aucune trace|nessuna traccia|sin huellas|not worn|no trace|keine Abnutzung',
  ),
  of(
    'presence in words',
    'wear',
    'present',
    'worn|traces|Spuren|spor|traces visibles|tracce|huellas|slight wear|abgenutzt|slidt|stark abgenutzt|usé|usée|usato|desgastado|slitt|heavily worn|worn at edge',
  ),
  of(
    'presence in words',
    'seam',
    'present',
    'Saum, 1 Seite|hem, one side|Naht|genäht|sewn|cousu|cousue|couture|cucito|cucita|cosido|cosida|syet|sydd|seam along one edge|Saum|ourlet|orlo|dobladillo|søm|one seam|2 seams',
  ),
  of(
    'presence in words',
    'seam',
    'absent',
    'no seam|keine Naht|ohne Naht|sans couture|senza cuciture|sin costura|ingen søm|unsewn|not sewn',
  ),
  of(
    'presence in words',
    'repair',
    'present',
    'darned|mended|patched|geflickt|gestopft|reprisé|rammendato|zurcido|stoppet|lappet|repaired|one patch|ancient repair',
  ),
  of(
    'presence in words',
    'repair',
    'absent',
    'not repaired|no repairs|keine Reparatur|sans réparation|nessuna riparazione|sin reparación|ingen reparation',
  ),
  of(
    'presence doubted',
    'pile',
    'present?',
    'present?|prob. present|Flor vorhanden?|vermutl. vorhanden|probably present|with pile?',
  ),

  // Nothing known.
  of(
    'nothing',
    'density1',
    'not-observed',
    'n.r.|i.m.|n.b.|nicht zählbar|keine erhalten|not countable|non comptable|non contabile|no contable|kan ikke tælles|ikke målt|not preserved|nicht erhalten|uncountable|?|indet.|illegible|k.A.|s.d.|n.d.|keine Angabe|not recorded|non conservé|non conservato|no conservado|ikke bevaret|zerstört|destroyed|lost|too damaged|zu schlecht erhalten|not measurable',
  ),
  of(
    'nothing',
    'fibre',
    'not-observed',
    'n.r.|indet.|unbestimmt|non déterminé|non determinato|no determinado|ubestemt|not identified|nicht bestimmt|keine Bestimmung|not examined|nicht untersucht',
  ),
  of(
    'no name',
    'site',
    'not-observed',
    'unprov.|unprovenanced|unknown|FO unbek.|o. FO|ohne FO|Fundort unbekannt|unbek.|prov. unknown|provenance unknown|provenance inconnue|prov. inconnue|provenienza sconosciuta|procedencia desconocida|sin procedencia|ukendt fundsted|ukendt|uden proveniens|without provenance|herkunft unbekannt|sans provenance|s. prov.',
  ),
  of(
    'no name',
    'phase',
    'not-observed',
    'unstrat.|unstratified|unstrat|nicht stratifiziert|unstratifiziert|hors stratigraphie|fuori strato|sin estratigrafía|ustratificeret|u/s',
  ),
  of('name', 'site', 'Otter Ness', 'Otter Ness'),
  of('name', 'phase', 'II', 'II'),
  of('name', 'phase', 'Phase IIa', 'Phase IIa'),

  // Numbers.
  of(
    'bounds',
    'density1',
    '0-12',
    'max. 12|max 12|at most 12|höchstens 12|maximal 12|au plus 12|al massimo 12|como máximo 12|højst 12|< 12|up to 12|bis 12|≤ 12',
  ),
  of(
    'bounds',
    'density1',
    '12-',
    'min. 12|mind. 12|at least 12|mindestens 12|au moins 12|almeno 12|al menos 12|mindst 12|minst 12|> 12|≥ 12|12+',
  ),
  of(
    'about',
    'density1',
    '~12',
    'c. 12|ca. 12|circa 12|ungefähr 12|etwa 12|env. 12|environ 12|~12|approx. 12|12 (est.)|12 est.|12 (geschätzt)|12 (estimé)|12 (stimato)|12 (estimado)|12 (anslået)|omkring 12|alrededor de 12|12 ca.|about 12',
  ),
  of(
    'about',
    'rowSpacing',
    '~30',
    'knapp 3 cm|gut 3 cm|knap 3 cm|just under 3 cm|just over 3 cm|à peine 3 cm|appena 3 cm|casi 3 cm|nesten 3 cm|nearly 3 cm|fast 3 cm|presque 3 cm|quasi 3 cm|c. 3 cm|almost 3 cm',
  ),
  of(
    'range',
    'density1',
    '12-14',
    '12-14|12–14|12 to 14|12 bis 14|12 à 14|de 12 à 14|da 12 a 14|de 12 a 14|12 til 14|between 12 and 14|zwischen 12 und 14|entre 12 et 14|tra 12 e 14|entre 12 y 14|mellem 12 og 14|12-14/cm|12-14 per cm|12-14 pro cm|12-14 Fäden/cm',
  ),
  of('range, with its twist', 'density1', '12-14', '12-14 Z/cm|12-14 Z|12-14/cm Z|12–14 S/cm'),
  of(
    'number and unit',
    'density1',
    '12',
    '12|12/cm|12 per cm|12 pro cm|12 par cm|12 al cm|12 por cm|12 pr. cm|12 Fäden/cm|12 fils/cm|12 fili/cm|12 hilos/cm|12 tråde/cm|12 threads/cm|12 F/cm|12 Z/cm|Kette 12/cm|warp 12',
  ),
  of('number doubted', 'density1', '12', '12?|12 (?)|(12)'),
  of(
    'number',
    'diameter1',
    '0.8',
    '0.8|0.8 mm|0,8|0,8 mm|Ø 0,8 mm|Ø 0.8|Dm. 0,8 mm|diam. 0.8 mm|d 0.8 mm|D. 0,8',
  ),

  // A second set, written after the rules were mended on the first.
  of('second set', 'ply1', 'S2z', 'z/z-S|zz S'),
  of('second set', 'twist1', 'Z', 'Z, locker|Z, media|Z moyen|Z (tight)|z, leicht'),
  of('second set', 'twist1', 'S?', 'S, presumably|S (prob.)|vermutlich S|formentlig S'),
  of('second set', 'twist1', 'none', 'nessuna torsione|kein Drall|aucune torsion|ningún|ingen tvinning'),
  of('second set', 'density1', '12-14', 'Kette 12-14|12-14 Fd/cm|12-14 K/cm|12 – 14 / cm'),
  of('second set', 'density1', '~12', '12 (ca.)|rund 12|unos 12|cirka 12/cm'),
  of(
    'second set',
    'density1',
    'not-observed',
    'nicht auszählbar|not countable any more|unleserlich|ulæselig|illisible|n. zählbar',
  ),
  of('second set', 'pile', 'absent', 'no trace of pile|pas de poil|keine Noppen|nessun ciuffo|ikke luv'),
  of(
    'second set',
    'pile',
    'present',
    'tufts on one side|Flor auf einer Seite|luv på den ene side|pelo su un lato',
  ),
  of(
    'second set',
    'seam',
    'present',
    'sewn edge|Saum am Rand|couture sur un côté|søm langs kanten|orlo su un lato',
  ),
  of(
    'second set',
    'dye',
    'absent',
    'no dye detected|kein Farbstoff nachgewiesen|aucun colorant détecté|ingen farvestof påvist|nessun colorante rilevato',
  ),
  of(
    'second set',
    'dye',
    'not-observed',
    'not investigated|noch nicht untersucht|analysis pending|in Arbeit',
  ),
  of(
    'second set',
    'site',
    'not-observed',
    'ohne Fundortangabe|site unknown|FO?|lieu inconnu|luogo ignoto|lugar desconocido',
  ),
  of(
    'second set',
    'threads',
    '12 & 10',
    'K: 12, S: 10|12 (warp), 10 (weft)|Kette: 12 / Schuss: 10|trame 10, chaîne 12|12 ends x 10 picks|12 and 10',
  ),
  of(
    'second set',
    'sizes',
    '12 & 8',
    '12 cm (L) x 8 cm (B)|larg. 8; long. 12|H 12 / B 8|8 breit, 12 lang|12 lang, 8 breit|L=12, B=8',
  ),
  of(
    'second set',
    'fibre',
    'flax?',
    'presumably flax|Flachs (wohl)|lin ?|hør?|verosimilmente lino|sannsynligvis lin',
  ),
  of(
    'second set',
    'preservation',
    'charred',
    'verkohltes|carbonizzate|carbonizadas|fully charred|teilweise verkohlt',
  ),
  of(
    'second set',
    'preservation',
    'mineralisedIron',
    'an Eisen mineralisiert|mineralised by iron|Eisenkorrosion',
  ),

  // One cell, two readings.
  of(
    'pair',
    'threads',
    '12-14 & 10',
    '12-14 K, 10 S|Kette 12-14, Schuss 10|12-14 × 10|12-14 x 10|12-14/10|warp 12-14, weft 10|K 12-14, S 10|12-14 K / 10 S|ordito 12-14, trama 10|urdimbre 12-14, trama 10|chaîne 12-14, trame 10|trend 12-14, islæt 10|renning 12-14, innslag 10',
  ),
  of(
    'pair',
    'threads',
    '12 & 10',
    'Kette 12/cm, Schuß 10/cm|Kette 12/cm, Schuss 10/cm|12/cm x 10/cm|12 x 10/cm|12 x 10 per cm|12/10|12 × 10|12:10|12 K x 10 S|12 warp, 10 weft|12 warps x 10 wefts|chaîne 12/cm, trame 10/cm|ordito 12, trama 10|Schuss 10, Kette 12|weft 10, warp 12|trend 12/cm, islæt 10/cm|12 in warp, 10 in weft|12 Kettfäden, 10 Schussfäden|12 (K) x 10 (S)|warp: 12; weft: 10',
  ),
  of(
    'pair, one unknown',
    'threads',
    '10 & not-observed',
    '10 × ?|10 x ?|10/?|10 x -|10 x n.b.|10 / indet.|10 K, S ?|Kette 10, Schuss ?',
  ),
  of('pair, one unknown', 'threads', 'not-observed & 10', '? × 10|? x 10|?/10|- x 10'),
  of('pair of twists', 'twists', 'Z & not-observed', 'Z/?|z/?|Z x ?|Z/-|Z / indet.'),
  of('pair of twists', 'twists', 'not-observed & Z', '?/Z|-/Z'),
  of(
    'pair of twists',
    'twists',
    'Z & S',
    'Z/S|z/s|Z x S|Z : S|K Z, S S|Kette Z, Schuss S|warp Z, weft S|chaîne Z, trame S|ordito Z, trama S|urdimbre Z, trama S',
  ),
  of('pair of twists', 'twists', 'Z & S?', 'Z/S?|Z/S (?)'),
  of(
    'sizes',
    'sizes',
    '12 & 8',
    '12 x 8|12 × 8 cm|12 x 8 cm|L 12 / B 8|L. 12, B. 8|L 12, B 8|L. 12 cm, B. 8 cm|lungh. 12, largh. 8|l. 12, la. 8|long. 12, larg. 8|L. 12 cm; l. 8 cm|L 12 × W 8|length 12, width 8|Länge 12, Breite 8|longueur 12, largeur 8|largo 12, ancho 8|lungh. 12 cm, largh. 8 cm|længde 12, bredde 8|lengde 12, bredde 8|L: 12; W: 8|B 8, L 12|W 8 x L 12|12 (L) x 8 (B)|12 by 8|12 mal 8|12 cm x 8 cm',
  ),

  // Fibres.
  of('fibre', 'fibre', 'flax', 'flax|linen|Flachs|Lein|lin|lino|hør|Linum usitatissimum|Linum|Leinen'),
  of('fibre', 'fibre', 'wool', 'wool|sheep wool|Wolle|Schafwolle|laine|lana|uld|ull|Ovis aries'),
  of('fibre', 'fibre', 'treeBast', 'tree bast|Gehölzbast|Baumbast|indet. tree bast'),
  of(
    'fibre',
    'fibre',
    'bastFibre',
    'liber indét.|liber|liber indéterminé|bast indet.|bast fibre|Bastfaser|bastfiber',
  ),
  of(
    'fibre, doubted',
    'fibre',
    'flax?',
    'flax?|prob. flax|probably flax|wohl Flachs|vermutl. Flachs|Flachs, vermutl.|vermutlich Flachs|probablement lin|most likely flax|vistnok hør|cf. flax|cf. Linum|likely flax|Flachs (?)|trolig hør|prob. lin|sandsynligvis hør|probabilmente lino|seguramente lino|wahrscheinlich Lein',
  ),
  of(
    'fibre, doubted',
    'fibre',
    'flax??',
    'possibly flax|evtl. Flachs|peut-être lin|forse lino|quizás lino|måske hør|flax ??|möglicherweise Flachs',
  ),
  of(
    'not this fibre',
    'fibre',
    'ask',
    'not flax|kein Flachs|pas de lin|non lino|no lino|ikke hør|not wool|keine Wolle|nicht Wolle',
  ),
  of(
    'broad or asked',
    'fibre',
    'sedgeFamily',
    'sedge family|Cyperaceae|Riedgräser|Sauergräser|cypéracée|ciperacea',
  ),
  of('broad or asked', 'fibre', 'ask', 'Indian hemp|caña|bark|osier|canna|Rinde|écorce|lime|Bast|rod'),
  of(
    'either',
    'fibre',
    'herbBast',
    'flax or hemp|flax/hemp|Flachs oder Hanf|lin ou chanvre|lino o canapa|lino o cáñamo|hør eller hamp|flax or nettle',
  ),
  of(
    'fibre, further',
    'fibre',
    'coir',
    'coir|coconut fibre|Kokosfaser|fibre de coco|fibra di cocco|fibra de coco|kokosfiber',
  ),
  of('fibre, further', 'fibre', 'broom', 'broom|Ginster|genêt|ginestra|retama'),
  of('fibre, further', 'fibre', 'esparto', 'esparto|Espartogras'),

  // Preservation, in every gender and number; several at once.
  of(
    'preservation',
    'preservation',
    'charred',
    'charred|carbonised|carbonized|verkohlt|verkohlte|verkohlter|carbonisé|carbonisée|carbonisés|carbonisées|carbonizzato|carbonizzata|carbonizzati|carbonizado|carbonizada|carbonizados|forkullet|forkullede',
  ),
  of(
    'preservation',
    'preservation',
    'waterlogged',
    'waterlogged|wet-preserved|Feuchterhaltung|feucht|gorgé d’eau|gorgée d’eau|imbibita|imbibito|saturada de agua|vanddrukken|vanddrukne|vannmettet',
  ),
  of(
    'preservation',
    'preservation',
    'desiccated',
    'desiccated|dry|trocken|getrocknet|desséchée|desséché|essiccata|essiccato|desecada|desecado|udtørret|tørket|tørret',
  ),
  of(
    'preservation',
    'preservation',
    'mineralised',
    'mineralised|mineralized|mineralisiert|minéralisée|minéralisé|minéralisés|mineralizzata|mineralizada|mineraliseret|mineralisert',
  ),
  of(
    'preservation',
    'preservation',
    'mineralisedCopper',
    'mineralised on copper alloy|mineralised, bronze|an Bronze korrodiert|minéralisé sur bronze',
  ),
  of(
    'preservation',
    'preservation',
    'charredWaterlogged',
    'charred and waterlogged|charred, waterlogged|waterlogged and charred|verkohlt und feucht|carbonisé et gorgé d’eau|charred + waterlogged|verkohlt, feucht',
  ),
  of('preservation', 'preservation', 'bog', 'bog|peat bog|Moor|Moorfund|tourbière|torbiera|turbera|mose|myr'),
  of(
    'preservation',
    'preservation',
    'frozen',
    'frozen|gefroren|gelé|gelée|congelato|congelada|frossen|permafrost',
  ),
  of('certainty of kinds', 'tightness1', 'loose', 'loose|lose|lâche|flojo|løs'),
  of('certainty of kinds', 'tightness1', 'tight', 'tight|fest|serré|stretto|apretado|hård'),
  of('read from', 'observedOn', 'ask', 'molde|mould|Form|moule'),
  of('read from', 'observedOn', 'cast', 'cast|Abguss|moulage|calco|vaciado|afstøbning'),
  of('read from', 'observedOn', 'impression', 'impression|imprint|Abdruck|empreinte|impronta|aftryk'),
];
