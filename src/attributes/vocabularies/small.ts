import type { Term, Vocabulary } from '../definition.ts';
import { BASKETRY, COMMON, family } from './term.ts';

/** The shorter vocabularies: how elements turn, how things end, how they survived. */

const common = family(COMMON);

/** A term that says what several others say at once, in whatever words they are written. */
function joined(joins: readonly string[], ...named: Parameters<typeof common>): Term {
  return { ...common(...named), joins };
}
const coil = family(BASKETRY);

// biome-ignore format: one term a line
export const TWIST: Vocabulary = { id: 'twist', label: 'Twist direction', terms: [
  common('S', null, 'S', 'Fibres lean like the stroke of S when the thread is held upright (ISO 2).', { en: ['s-twist', 's-spun', 's spun'], de: ['S-Drehung', 's-gedreht', 'S-gesponnen'], fr: ['torsion S', 'retors S', 'filé S'], it: ['torsione S'], es: ['torsión S'], da: ['S-spundet'] }),
  common('Z', null, 'Z', 'Fibres lean like the stroke of Z when the thread is held upright (ISO 2).', { en: ['z-twist', 'z-spun', 'z spun'], de: ['Z-Drehung', 'z-gedreht', 'Z-gesponnen'], fr: ['torsion Z', 'retors Z', 'filé Z'], it: ['torsione Z'], es: ['torsión Z'], da: ['Z-spundet'] }),
  common('none', null, 'none', 'Looked at and not twisted; elements worked straight.', { en: ['I', 'untwisted', 'no twist', 'not twisted', 'straight', 'worked straight', 'unspun', 'without twist'], de: ['ungedreht', 'ohne Drehung', 'ungesponnen', 'gerade'], fr: ['sans torsion', 'non tordu'], it: ['senza torsione', 'non ritorto'], es: ['sin torsión'], da: ['uspundet', 'usnoet'] }),
  { ...common('sUnread', null, 'S, object or impression not stated', 'Written S of an impression, but nothing says whether it, a cast or the object was read.'), unsettled: true },
  { ...common('zUnread', null, 'Z, object or impression not stated', 'Written Z of an impression, but nothing says whether it, a cast or the object was read.'), unsettled: true },
  common('both', null, 'both S and Z', 'Both directions in one system: a spin pattern, or plies of both.', { en: ['S and Z', 'S+Z', 'S & Z', 'alternating', 'spin pattern', 'mixed'], de: ['S und Z', 'wechselnd', 'Spinnmuster'], fr: ['S et Z'], it: ['S e Z'], es: ['S y Z'], da: ['S og Z'] }),
] };

// biome-ignore format: one term a line
export const SLANT: Vocabulary = { id: 'slant', label: 'Slant of rows', terms: [
  common('S', null, 'S', 'The turns lean like the stroke of S.', { en: ['s-slant', 's twist', 'S-twined'], de: ['S-Neigung', 'S-Zwirnbindung'], fr: ['cordé en S'], it: ['ritorto a S'], es: ['cordado en S'] }),
  common('Z', null, 'Z', 'The turns lean like the stroke of Z.', { en: ['z-slant', 'z twist', 'Z-twined'], de: ['Z-Neigung', 'Z-Zwirnbindung'], fr: ['cordé en Z'], it: ['ritorto a Z'], es: ['cordado en Z'] }),
  { ...common('sUnread', null, 'S, reading not stated', 'Written S, but nothing says how the row was held, or whether an impression was read.'), unsettled: true },
  { ...common('zUnread', null, 'Z, reading not stated', 'Written Z, but nothing says how the row was held, or whether an impression was read.'), unsettled: true },
  common('countered', null, 'countered', 'Rows lean S and Z by turns.', { en: ['alternating', 'S and Z', 'countered twining', 'both'], de: ['wechselnd', 'S und Z'], fr: ['alterné'], it: ['alternato'], es: ['alterno'] }),
] };

// biome-ignore format: one term a line
export const SLANT_READING: Vocabulary = { id: 'slantReading', label: 'Slant read', terms: [
  common('upright', null, 'held upright', 'The row stood upright when read.', { en: ['read upright', 'vertical', 'standing', 'row upright', 'with row upright', 'row held upright'], de: ['senkrecht', 'hochkant', 'stehend', 'aufrecht', 'Reihe senkrecht'], fr: ['verticalement'], it: ['in verticale'], es: ['en vertical'], da: ['lodret'] }),
  common('across', null, 'row lying across', 'The row lay across when read: S and Z change places against "held upright".', { en: ['read with row horizontal', 'horizontal', 'lying across', 'lying', 'with row horizontal', 'row horizontal'], de: ['waagrecht', 'waagerecht', 'quer', 'liegend', 'Reihe waagrecht'], fr: ['horizontalement'], it: ['in orizzontale'], es: ['en horizontal'], da: ['vandret'] }),
] };

// biome-ignore format: one term a line
export const ENGAGEMENT: Vocabulary = { id: 'engagement', label: 'Engagement', terms: [
  common('simple', null, 'simple', 'The same passives in each row.', { en: ['plain'], de: ['einfach'], it: ['semplice'], da: ['enkel'] }),
  common('diagonal', null, 'diagonal', 'Pairs that alternate by one each row.', { en: ['alternate pairs', 'twilled'], de: ['versetzt'], fr: ['en quinconce'], it: ['diagonale'], es: ['alterna'] }),
] };

// biome-ignore format: one term a line
export const SPACING_CLASS: Vocabulary = { id: 'spacingClass', label: 'Spacing class', terms: [
  common('close', null, 'close', 'Rows touch.', { en: ['compact', 'tight', 'closed', 'rows touch', 'rows touching', 'touching', 'contiguous', 'contiguous rows', 'adjacent rows', 'no gap', 'without gap'], de: ['dicht', 'eng', 'geschlossen', 'dichte Reihen', 'Reihen berühren sich', 'ohne Abstand', 'aneinanderliegend', 'dicht an dicht'], fr: ['serré', 'rangs serrés', 'rangs jointifs', 'jointif', 'contigus', 'rangs contigus'], it: ['serrato', 'compatto', 'chiuso', 'file a contatto', 'file serrate'], es: ['cerrado', 'compacto', 'filas contiguas', 'filas juntas', 'sin separación'], da: ['tæt', 'rækkerne rører', 'rækker tæt', 'tætte rækker', 'tætstillede'], no: ['tett'] }),
  common('semi-open', null, 'semi-open', 'A small gap between rows.', { en: ['semiopen', 'half-open', 'slightly open'], de: ['halboffen'], fr: ['semi-ouvert'], it: ['semiaperto'], es: ['semiabierto'], da: ['halvåben'] }),
  common('open', null, 'open', 'A clear gap; the passives are visible.', { en: ['spaced', 'openwork', 'wide', 'widely spaced', 'rows apart', 'rows spaced'], de: ['offen', 'mit Abstand', 'weit', 'weite Reihen', 'weitständig', 'Reihen mit Abstand'], fr: ['espacé', 'ajouré', 'ouvert', 'rangs espacés', 'rangs écartés'], it: ['aperto', 'file distanziate', 'distanziato', 'spaziato'], es: ['abierto', 'espaciado', 'filas espaciadas', 'filas separadas'], da: ['åben', 'åbne rækker', 'med afstand'], no: ['åpen'] }),
] };

// biome-ignore format: one term a line
export const TIGHTNESS: Vocabulary = { id: 'tightness', label: 'Tightness of twist', terms: [
  common('loose', null, 'loose', 'Bound to its recorder; no angle is implied.', { en: ['soft', 'slack', 'weak'], de: ['lose', 'locker', 'schwach'], fr: ['lâche', 'faible'], it: ['lenta', 'debole'], es: ['floja', 'suelta'], da: ['løs', 'løst'] }),
  common('medium', null, 'medium', 'Bound to its recorder; no angle is implied.', { en: ['moderate'], de: ['mittel'], fr: ['moyenne', 'moyen'], it: ['media'], es: ['media', 'mediana'], da: ['middel'] }),
  common('tight', null, 'tight', 'Bound to its recorder; no angle is implied.', { en: ['hard', 'strong'], de: ['fest', 'stark'], fr: ['serrée', 'forte'], it: ['stretta', 'forte'], es: ['apretada', 'fuerte'], da: ['fast', 'hårdt'] }),
  common('very tight', null, 'very tight', 'Bound to its recorder; no angle is implied.', { en: ['very hard'], de: ['sehr fest', 'sehr stark'], fr: ['très serrée'], it: ['molto stretta'], es: ['muy apretada'], da: ['meget fast'] }),
] };

// biome-ignore format: one term a line
export const PRESERVATION: Vocabulary = { id: 'preservation', label: 'Preservation', terms: [
  common('waterlogged', null, 'waterlogged', 'Kept wet; keep it wet and dark. Plant fibre or animal fibre goes with the acidity; threads swell, and shrink when they dry.', { en: ['wet', 'water-logged', 'wet preserved', 'wet-preserved'], de: ['feucht', 'wassergesättigt', 'Feuchtbodenerhaltung', 'Feuchterhaltung', 'nass', 'Nasserhaltung'], fr: ['gorgé d’eau', 'imbibé', 'humide'], it: ['imbibito', 'umido', 'impregnato d’acqua'], es: ['saturado de agua', 'anegado', 'húmedo'], da: ['vanddrukken', 'vanddrukne', 'vandmættet'], no: ['vannmettet', 'vanntrukket'] }),
  common('bog', 'waterlogged', 'in a bog', 'Wet and acid: animal fibre and skin last, plant fibre goes; its absence says nothing.', { en: ['bog', 'peat bog', 'bog find'], de: ['Moor', 'Moorfund', 'Mooreerhaltung'], fr: ['tourbière'], it: ['torbiera'], es: ['turbera'], da: ['mose', 'mosefund'], no: ['myr', 'myrfunn'] }),
  common('alkaline', 'waterlogged', 'in alkaline water', 'Wet and alkaline, as in many lake muds: plant fibre lasts, wool and silk go; their absence says nothing.', { en: ['waterlogged, alkaline', 'alkaline waterlogged', 'alkaline lake mud', 'calcareous lake mud', 'lake marl'], de: ['Seekreide', 'in Seekreide', 'feucht, alkalisch', 'feucht, kalkhaltig'], fr: ['craie lacustre', 'humide alcalin'], it: ['creta lacustre', 'umido alcalino'], es: ['húmedo alcalino'], da: ['våd, basisk'] }),
  common('anoxic', 'waterlogged', 'without air', 'Sealed from air in clay, silt or dung: both sorts of fibre may last.', { en: ['anoxic', 'anaerobic', 'oxygen-free'], de: ['sauerstoffarm', 'sauerstofffrei', 'luftabgeschlossen', 'anaerob'], fr: ['anoxique', 'anaérobie'], it: ['anossico', 'anaerobico'], es: ['anóxico', 'anaerobio'], da: ['iltfri', 'iltfrit'], no: ['oksygenfri'] }),
  common('charred', null, 'charred', 'Turned to carbon; can fall to powder at a touch. Threads shrink by an amount that varies with fibre and heat: counts rise, diameters fall; twist and fibre are often hidden.', { en: ['charring', 'partly charred', 'partially charred', 'carbonised', 'carbonized', 'burnt', 'burned', 'charred textile'], de: ['verkohlt', 'karbonisiert', 'verbrannt'], fr: ['carbonisé', 'brûlé', 'calciné'], it: ['bruciato', 'combusto', 'carbonizzato', 'combusto'], es: ['carbonizado', 'quemado'], da: ['forkullet', 'forkullede', 'brændt'], no: ['forkullet', 'brent'] }),
  joined(['charred', 'waterlogged'], 'charredWaterlogged', 'charred', 'charred and waterlogged', 'Charred first, then kept wet: measured as charred, handled as wet.', { en: ['waterlogged and charred', 'charred, waterlogged', 'charred and wet', 'carbonised and waterlogged', 'charred + waterlogged', 'waterlogged, charred'], de: ['verkohlt und feucht', 'verkohlt, feucht', 'feucht und verkohlt', 'verkohlt, nass'], fr: ['carbonisé et gorgé d’eau', 'gorgé d’eau et carbonisé'], it: ['carbonizzato e imbibito'], es: ['carbonizado y saturado de agua'], da: ['forkullet og vanddrukken'], no: ['forkullet og vannmettet'] }),
  joined(['charred', 'mineralised'], 'charredMineralised', 'charred', 'charred and mineralised', 'Charred, and in part replaced by minerals.', { en: ['mineralised and charred', 'charred, mineralised'], de: ['verkohlt und mineralisiert'], fr: ['carbonisé et minéralisé'], it: ['carbonizzato e mineralizzato'], es: ['carbonizado y mineralizado'] }),
  common('mineralised', null, 'mineralised', 'Replaced by corrosion products or minerals: small pieces by the metal; surfaces and counts can be read, fibre seldom.', { en: ['mineralized', 'metal-replaced', 'pseudomorph', 'corroded', 'mineral-replaced'], de: ['mineralisiert', 'korrodiert', 'oxidiert'], fr: ['minéralisé'], it: ['mineralizzato'], es: ['mineralizado'], da: ['mineraliseret'], no: ['mineralisert'] }),
  common('mineralisedCopper', 'mineralised', 'mineralised on copper alloy', 'By copper corrosion, which also keeps fibre unreplaced beside the metal.', { en: ['copper-replaced', 'replaced by copper', 'mineralised, bronze', 'mineralised on bronze', 'mineralised on copper', 'copper-mineralised', 'mineralised (copper alloy)', 'mineralised, copper alloy', 'mineralised by copper', 'bronze corrosion'], de: ['an Bronze', 'auf Bronze', 'bronzekorrodiert', 'an Bronze korrodiert', 'an Bronze mineralisiert', 'an Kupfer mineralisiert', 'Bronzekorrosion'], fr: ['minéralisé sur bronze', 'minéralisé sur alliage cuivreux', 'minéralisé au contact du bronze'], it: ['mineralizzato su bronzo'], es: ['mineralizado sobre bronce'], da: ['mineraliseret på bronze', 'bronzekorrosion'], no: ['mineralisert på bronse'] }),
  common('mineralisedIron', 'mineralised', 'mineralised on iron', 'By iron corrosion, which replaces the fibre.', { en: ['iron-replaced', 'rust-replaced', 'replaced by iron', 'mineralised, iron', 'iron-mineralised', 'mineralised (iron)', 'mineralised by iron', 'iron corrosion'], de: ['an Eisen', 'eisenkorrodiert', 'auf Eisen', 'an Eisen korrodiert', 'an Eisen mineralisiert', 'Eisenkorrosion'], fr: ['minéralisé sur fer', 'minéralisé au contact du fer'], it: ['mineralizzato su ferro'], es: ['mineralizado sobre hierro'], da: ['mineraliseret på jern', 'jernkorrosion'], no: ['mineralisert på jern'] }),
  common('mineralisedSilver', 'mineralised', 'mineralised on silver', 'By silver corrosion.', { en: ['mineralised, silver', 'mineralised (silver)'], de: ['an Silber korrodiert', 'an Silber mineralisiert'], fr: ['minéralisé sur argent'], it: ['mineralizzato su argento'], es: ['mineralizado sobre plata'] }),
  common('desiccated', null, 'desiccated', 'Dried out; keep it dry. Threads are thinner and stiffer than they were.', { en: ['dry', 'dried', 'arid', 'desiccation'], de: ['trocken', 'getrocknet', 'ausgetrocknet', 'dehydriert', 'Trockenerhaltung'], fr: ['desséché', 'sec', 'séché'], it: ['essiccato', 'secco', 'disseccato'], es: ['desecado', 'seco'], da: ['udtørret', 'tør', 'tørret'], no: ['tørket', 'uttørket'] }),
  common('impression', null, 'impression', 'A mark in clay or another ground: S elements leave Z-looking marks; no fibre remains, and clay shrinks in drying and firing.', { en: ['imprint', 'negative'], de: ['Abdruck', 'Negativ'], fr: ['empreinte'], it: ['impronta'], es: ['impronta', 'impresión'], da: ['aftryk'], no: ['avtrykk'] }),
  common('frozen', null, 'frozen', 'In ice; keep it frozen until it can be treated.', { en: ['ice', 'permafrost', 'in ice'], de: ['gefroren', 'Eis', 'Permafrost', 'im Eis'], fr: ['gelé', 'congelé', 'glace', 'pergélisol'], it: ['congelato', 'ghiaccio'], es: ['congelado', 'hielo'], da: ['frossen', 'frosset', 'i is', 'is', 'permafrost'], no: ['isbre'] }),
  common('salt', null, 'in salt', 'In salt; keep it as dry as it lay.', { da: ['i salt', 'salt'], en: ['salt preserved', 'salt-preserved'], de: ['Salzbergwerk', 'im Salzbergwerk', 'Salz', 'im Salz'], fr: ['dans le sel', 'sel'], it: ['nel sale', 'in sale', 'sale'], es: ['en sal', 'sal'] }),
] };

// biome-ignore format: one term a line
export const EDGE: Vocabulary = { id: 'edge', label: 'Edges', terms: [
  common('plainEdge', null, 'plain', 'The active system simply turns back.', { en: ['simple', 'plain selvedge', 'simple selvedge'], de: ['einfach', 'einfache Webkante', 'einfache Kante'], fr: ['lisière simple'], it: ['cimosa semplice'], es: ['orillo simple'], da: ['simpel ægkant', 'enkel ægkant', 'simpel kant'] }),
  common('reinforcedEdge', null, 'reinforced', 'Thickened or paired outer elements.', { en: ['reinforced selvedge'], de: ['verstärkt', 'verstärkte Kante', 'verstärkte Webkante'], fr: ['lisière renforcée', 'bord renforcé'], it: ['cimosa rinforzata', 'bordo rinforzato'], es: ['orillo reforzado', 'borde reforzado'], da: ['forstærket ægkant', 'forstærket kant'] }),
  common('tubularEdge', null, 'tubular', 'A hollow edge.', { en: ['tubular selvedge', 'hollow'], de: ['Schlauchkante', 'Hohlkante', 'Hohlwebkante', 'schlauchförmige Webkante', 'schlauchförmige Kante'], fr: ['lisière tubulaire'], it: ['cimosa tubolare'], es: ['orillo tubular'], da: ['rundvævet kant', 'rørkant', 'rørformet kant', 'rørformet ægkant'] }),
  common('tabletEdge', null, 'tablet-woven', 'Woven with tablets.', { en: ['tablet edge', 'tablet border', 'tablet-woven border', 'tablet-woven edge', 'tablet-woven selvedge', 'tablet selvedge'], de: ['Brettchenkante', 'Brettchenborte', 'brettchengewebte Kante'], fr: ['lisière aux tablettes', 'lisière tissée aux tablettes', 'lisière aux plaquettes', 'bordure aux tablettes'], it: ['cimosa a tavolette', 'bordo a tavolette'], es: ['orillo de placas', 'orillo de tablillas', 'borde de tablillas'], da: ['brikkant', 'brikvævet kant', 'brikvævet ægkant'] }),
  common('startingBorder', null, 'starting border', 'Where the work began.', { en: ['starting edge', 'heading band', 'beginning edge'], de: ['Anfangskante', 'Anfangsbordüre'], fr: ['bordure de départ'], it: ['bordo iniziale', 'bordo d’inizio', 'bordo di avvio', 'bordo d’avvio'], es: ['borde inicial'], da: ['begyndelseskant'] }),
  common('finishingEdge', null, 'finishing edge', 'Where the work ended.', { en: ['end border', 'finishing border'], de: ['Abschlusskante'], fr: ['bordure finale'], it: ['bordo finale'], es: ['borde final'], da: ['afslutningskant'] }),
  common('hem', null, 'hem', 'Folded and sewn.', { en: ['hemmed', 'hemmed edge', 'sewn hem'], de: ['Saum', 'gesäumt', 'gesäumte Kante', 'Saumkante'], fr: ['ourlet', 'ourlé', 'ourlée', 'bord ourlé'], it: ['orlato', 'bordo orlato', 'orlo cucito'], es: ['dobladillo', 'borde dobladillado'], da: ['sømmet', 'rullesøm', 'sømmet kant', 'oplagt kant'] }),
  common('cutEdge', null, 'cut', 'Cut, not made.', { en: ['cut edge'], de: ['Schnittkante', 'geschnitten', 'geschnittene Kante'], fr: ['bord coupé'], it: ['bordo tagliato'], es: ['borde cortado'], da: ['afskåret kant', 'skåret kant', 'klippet kant', 'afklippet kant'] }),
] };

// biome-ignore format: one term a line
export const KNOT: Vocabulary = { id: 'knot', label: 'Knots', terms: [
  common('sheetBend', null, 'sheet bend', 'The common mesh knot.', { en: ["weaver's knot", 'mesh knot', 'weavers knot', 'netting knot'], de: ['Netzknoten', 'Weberknoten', 'Schotstek'], fr: ['nœud d’écoute', 'nœud de tisserand', 'nœud de filet'], it: ['nodo di scotta', 'nodo a rete', 'nodo di rete', 'nodo da rete', 'nodo del tessitore', 'nodo di tessitore'], es: ['vuelta de escota', 'nudo de escota', 'nudo de red', 'nudo de tejedor'], da: ['skødestik', 'væverknude', 'vævknude'] }),
  common('doubleSheetBend', 'sheetBend', 'double sheet bend', 'A sheet bend with a second turn.', { de: ['doppelter Schotstek'] }),
  common('reefKnot', null, 'reef knot', 'Square knot.', { en: ['square knot', 'reef'], de: ['Kreuzknoten'], fr: ['nœud plat'], it: ['nodo piano'], es: ['nudo llano'], da: ['råbåndsknob'] }),
  common('overhandKnot', null, 'overhand knot', 'A single turn.', { en: ['overhand'], de: ['Überhandknoten', 'einfacher Knoten'], fr: ['demi-nœud', 'nœud simple'], it: ['nodo semplice'], es: ['nudo simple'] }),
  common('cowHitch', null, 'cow hitch', 'Two half hitches turned towards each other.', { en: ["lark's head", 'larks head'], de: ['Ankerstich'], fr: ['tête d’alouette'], it: ['bocca di lupo'] }),
] };

// biome-ignore format: one term a line
export const STITCH: Vocabulary = { id: 'stitch', label: 'Stitches', terms: [
  coil('simpleStitch', null, 'simple', 'Each stitch passes the previous coil freely.', { en: ['non-interlocking', 'non-interlocking stitch', 'simple stitch'], de: ['einfacher Stich'], fr: ['point simple'], it: ['punto semplice'], es: ['puntada simple'] }),
  coil('interlockingStitch', null, 'interlocking', 'Each stitch hooks into the one below.', { en: ['interlocking stitch', 'interlocking stitching'], de: ['verhängter Stich', 'ineinandergreifender Stich', 'ineinandergreifende Stiche'], fr: ['point entrelacé'], it: ['punto allacciato'], es: ['puntada entrelazada'] }),
  coil('splitStitch', null, 'split', 'Each stitch pierces the one below.', { en: ['split stitch'], de: ['gespaltener Stich', 'Spaltstich'], fr: ['point fendu'], it: ['punto spaccato'], es: ['puntada hendida'] }),
] };

// biome-ignore format: one term a line
export const FOUNDATION: Vocabulary = { id: 'foundation', label: 'Foundation of a coil', terms: [
  coil('bundleFoundation', null, 'bundle', 'A bundle of fibres or stems.', { en: ['grass bundle', 'fibre bundle', 'bundle of grass', 'bundle core', 'bundle of straw', 'straw bundle', 'bundle of stems'], de: ['Bündel', 'Faserbündel', 'Grasbündel', 'Bündelkern'], fr: ['faisceau'], it: ['fascio'], es: ['haz'], da: ['bundt'] }),
  coil('rodFoundation', null, 'rod', 'One or more rods.', { en: ['single rod', 'one-rod', 'one rod', 'one-rod foundation', 'single rod foundation', 'two-rod', 'three-rod', 'rods'], de: ['Rute', 'eine Rute', 'Einzelrute', 'Rutenkern'], fr: ['baguette'], it: ['verga'], es: ['varilla'] }),
  coil('rodAndBundle', null, 'rod and bundle', 'Rods with a bundle.', { en: ['rod-and-bundle', 'bundle and rod'], de: ['Rute und Bündel'] }),
  coil('splintFoundation', null, 'splints', 'Splints of wood.', { en: ['splint'], de: ['Späne'] }),
] };

// biome-ignore format: one term a line
export const WORK_DIRECTION: Vocabulary = { id: 'workDirection', label: 'Direction of work', terms: [
  coil('leftToRight', null, 'left to right', 'Seen from the work surface.', { en: ['rightward', 'to the right', 'L to R', 'L-R'], de: ['von links nach rechts', 'links nach rechts', 'nach rechts'], da: ['fra venstre mod højre', 'venstre mod højre', 'mod højre'], no: ['fra venstre mot høyre', 'fra venstre til høyre'], fr: ['de gauche à droite'], it: ['da sinistra a destra'], es: ['de izquierda a derecha'] }),
  coil('rightToLeft', null, 'right to left', 'Seen from the work surface.', { en: ['leftward', 'to the left', 'R to L', 'R-L'], de: ['von rechts nach links', 'rechts nach links', 'nach links'], da: ['fra højre mod venstre', 'højre mod venstre', 'mod venstre'], no: ['fra høyre mot venstre', 'fra høyre til venstre'], fr: ['de droite à gauche'], it: ['da destra a sinistra'], es: ['de derecha a izquierda'] }),
] };

// biome-ignore format: one term a line
export const PROCESSING: Vocabulary = { id: 'processing', label: 'Processing', terms: [
  common('spliced', null, 'spliced', 'Strips joined end to end or added along.', { en: ['splice'], de: ['gespleißt', 'gespleisst'], fr: ['épissé'], it: ['giuntato'], es: ['empalmado'], da: ['splejset'] }),
  common('draftSpun', null, 'draft-spun', 'Spun from a mass of fibres.', { en: ['draft spun'] }),
  common('splitStrip', null, 'split or peeled strip', 'Used as strips.', { en: ['split strip', 'peeled strip', 'strip', 'strips', 'split strips'], de: ['Streifen', 'gespalten', 'gespaltener Streifen', 'gespaltene Streifen', 'gespaltene Baststreifen'], fr: ['lanière', 'lanière fendue'], it: ['striscia'], es: ['tira'], da: ['strimmel'] }),
  common('retted', null, 'retted', 'Freed by rotting in water.', { de: ['geröstet', 'Röste'], fr: ['roui'], it: ['macerato'], es: ['enriado'], da: ['rødnet'] }),
  common('boiled', null, 'boiled', 'Freed by boiling.', { de: ['gekocht'], fr: ['bouilli'], it: ['bollito'], es: ['hervido'], da: ['kogt'] }),
] };

// biome-ignore format: one term a line
export const OBSERVED_ON: Vocabulary = { id: 'observedOn', label: 'Observed on', terms: [
  common('object', null, 'the object', 'The find itself.', { en: ['object', 'original', 'the object itself', 'the original', 'the find itself'], de: ['Objekt', 'Original', 'am Original'], fr: ['objet', 'sur l’objet', 'l’objet même'], it: ['oggetto', 'originale', 'sull’originale'], es: ['objeto', 'el objeto mismo'], da: ['genstand', 'genstanden selv'] }),
  common('impression', null, 'an impression', 'A mirror image: S elements look like Z.', { en: ['impression', 'imprint', 'negative impression', 'negative'], de: ['Abdruck', 'Negativ', 'Negativabdruck'], fr: ['empreinte', 'empreinte négative', 'en négatif'], it: ['impronta', 'impronta negativa', 'negativo'], es: ['impronta', 'impronta negativa', 'negativo'], da: ['aftryk', 'negativt aftryk'] }),
  common('cast', null, 'a cast', 'A cast of an impression, which turns the mirror image back.', { en: ['cast'], de: ['Abguss'], fr: ['moulage'], it: ['calco'], es: ['vaciado'], da: ['afstøbning'] }),
] };

// biome-ignore format: one term a line
export const ORIENTATION: Vocabulary = { id: 'orientation', label: 'Systems told apart', terms: [
  common('warpWeft', null, 'warp and weft known', 'A border, a selvedge or the loom shows which is which.', { en: ['warp and weft', 'warp/weft known', 'known', 'yes', 'told apart', 'warp known', 'warp identified', 'warp and weft identified'], de: ['bekannt', 'Kette und Schuss', 'bestimmt', 'Kette bestimmt', 'Kette bekannt', 'Kette erkannt', 'ja'], fr: ['connu', 'chaîne et trame', 'oui'], it: ['noto', 'ordito e trama'], es: ['conocido', 'urdimbre y trama', 'sí'], da: ['kendt', 'trend og islæt'] }),
  common('passiveActive', null, 'passive and active known', 'Which elements move is seen; whether they are warp or weft is not.', { en: ['passive and active', 'passive/active known', 'passive/active'], de: ['passiv und aktiv', 'passiv/aktiv'], fr: ['passif et actif'], it: ['passivo e attivo'], es: ['pasivo y activo'] }),
  common('untold', null, 'not told apart', 'Nothing shows which system is which.', { en: ['unknown', 'not known', 'no', 'undetermined', 'not identified', 'systems not told apart'], de: ['unbekannt', 'nicht bestimmbar', 'nein'], fr: ['inconnu', 'non'], it: ['ignoto', 'sconosciuto'], es: ['desconocido'], da: ['ukendt', 'nej'] }),
] };

// biome-ignore format: one term a line
export const RESTRICTION: Vocabulary = { id: 'restriction', label: 'Restriction', terms: [
  common('open', null, 'open', 'May be shown with name and place.', { en: ['public', 'unrestricted', 'no restriction', 'none', 'no', 'free'], de: ['offen', 'öffentlich', 'frei', 'keine', 'keine Einschränkung'], fr: ['ouvert', 'libre', 'aucune', 'aucune restriction', 'public'], it: ['aperto', 'libero', 'nessuna', 'pubblico'], es: ['abierto', 'libre', 'ninguna', 'público'], da: ['åben', 'fri', 'ingen', 'offentlig'], no: ['åpen', 'ingen'] }),
  common('unguarded', null, 'unguarded', 'A place at risk: named, with its coordinates only coarsened.', { en: ['unguarded place', 'place unguarded', 'at risk of looting', 'place at risk', 'unprotected', 'unprotected place'], de: ['unbewacht', 'Ort unbewacht', 'raubgrabungsgefährdet', 'ungeschützt'], fr: ['non gardé', 'lieu non gardé', 'menacé de pillage', 'non protégé'], it: ['non custodito', 'a rischio di saccheggio', 'non protetto'], es: ['sin vigilancia', 'en riesgo de expolio', 'sin protección'], da: ['ubevogtet', 'ubeskyttet sted'], no: ['ubevoktet', 'ubeskyttet'] }),
  common('placeWithheld', null, 'place withheld', 'Neither name nor place is shown; coordinates only coarsened.', { en: ['place withheld', 'location withheld', 'coarsened', 'coarsen', 'location restricted', 'findspot withheld', 'no location', 'place restricted'], de: ['ohne Ortsangabe', 'Fundort gesperrt', 'Ort gesperrt', 'vergröbert', 'Koordinaten vergröbert', 'Fundort vertraulich'], fr: ['lieu non communiqué', 'localisation masquée', 'localisation restreinte', 'coordonnées arrondies'], it: ['luogo riservato', 'localizzazione riservata', 'coordinate arrotondate'], es: ['lugar reservado', 'localización reservada', 'coordenadas redondeadas'], da: ['findested fortroligt', 'sted fortroligt', 'sted tilbageholdt'], no: ['funnsted fortrolig', 'sted tilbakeholdt'] }),
  common('withheld', null, 'withheld', 'Shown nowhere; only counted.', { en: ['restricted', 'confidential', 'not to be shown', 'not to be published', 'do not publish', 'closed', 'embargoed', 'yes', 'community restricted', 'private'], de: ['gesperrt', 'vertraulich', 'nicht öffentlich', 'nicht zur Veröffentlichung', 'ja', 'unter Verschluss'], fr: ['restreint', 'confidentiel', 'non communicable', 'ne pas publier', 'oui'], it: ['riservato', 'confidenziale', 'non pubblicabile', 'sì'], es: ['reservado', 'restringido', 'confidencial', 'no publicar', 'sí'], da: ['fortroligt', 'fortrolig', 'klausuleret', 'må ikke vises', 'ja'], no: ['konfidensiell', 'må ikke publiseres', 'klausulert'] }),
] };
