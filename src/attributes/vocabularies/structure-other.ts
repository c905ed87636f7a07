import type { Term } from '../definition.ts';
import { BASKETRY, CLASSIFICATION, COMMON, family } from './term.ts';

const looped = family(CLASSIFICATION);
const basketry = family(BASKETRY);
const plain = family(COMMON);

// biome-ignore format: one language a line
export const LOOPED_AND_NETTED: readonly Term[] = [
  looped('looped', null, 'looped', 'One element forms loops that engage with earlier loops.', { en: ['looping'], de: ['Maschenstoff', 'Verschlingen', 'Schlingenstoff'], fr: ['bouclé'], it: ['maglia ad asola'], es: ['anillado'], da: ['slyngning'] }, { noun: 'looping' }),
  looped('simpleLooping', 'looped', 'simple looping', 'The element hooks into the previous loop without a knot.', {
    en: ['half-hitch looping', 'buttonhole looping', 'simple looped'], de: ['einfaches Verschlingen'], fr: ['bouclé simple', 'point de boutonnière'], it: ['maglia ad asola semplice'], es: ['anillado simple'], da: ['simpel slyngning'],
  }),
  looped('loopAndTwist', 'looped', 'loop-and-twist', 'A loop with an extra turn.', { en: ['loop and twist'], de: ['verdrehtes Verschlingen'], fr: ['boucle torse'], it: ['asola ritorta'], es: ['anillado torcido'], da: ['snoet slyngning'] }),
  looped('crossKnit', 'looped', 'cross-knit looping', 'The loop passes round the crossing of the loop above.', { en: ['encircled looping', 'cross-knit'], de: ['umfassendes Verschlingen'], fr: ['point croisé'], it: ['punto incrociato'], es: ['anillado cruzado'], da: ['krydsmaske'] }),
  looped('needleBound', 'looped', 'needle-bound', 'The needle passes several loops.', { en: ['compound looping', 'nalbinding', 'nålebinding'], de: ['Nadelbindung', 'nadelgebunden'], fr: ['point d’aiguille'], it: ['nalbinding'], da: ['nålebinding', 'nålebundet', 'nålbinding'] }),
  looped('knitted', 'looped', 'knitted', 'Loops drawn through loops of the row below on needles.', { en: ['knitting', 'knit', 'true knitting', 'stockinette'], de: ['gestrickt', 'Strickware', 'Gestrick', 'Strickerei'], fr: ['tricot', 'tricoté'], it: ['lavorato a maglia', 'lavoro a maglia'], es: ['tejido de punto', 'punto de media'], da: ['strik', 'strikket'], no: ['strikket'] }),
  looped('crocheted', 'looped', 'crocheted', 'Loops drawn through loops with a hook, each row closed.', { en: ['crochet'], de: ['gehäkelt', 'Häkelei'], fr: ['crochet', 'crocheté'], it: ['uncinetto'], es: ['ganchillo'], da: ['hækling', 'hæklet'] }),
  looped('linked', null, 'linked', 'Each row hooks over the previous row, without a twist to lock it.', { en: ['interlinked', 'linking', 'simple linking'], de: ['Einhängen', 'eingehängt'], fr: ['enlacement'], it: ['allacciato'], es: ['enlazado'], da: ['kædning'] }, { noun: 'linking' }),
  looped('netting', null, 'netting', 'Open meshes of one element.', { en: ['net', 'netted'], de: ['Netz', 'Netzwerk'], fr: ['filet', 'réseau de mailles'], it: ['rete'], es: ['redes', 'fragmento de red', 'red de malla', 'red de mallas'], da: ['netværk'], no: ['nett'] }),
  looped('knottedNetting', 'netting', 'knotted netting', 'Meshes fixed by knots.', { en: ['knotted net', 'fishnet', 'net, knotted', 'knotted mesh'], de: ['geknotetes Netz', 'Netz geknotet', 'Knotennetz', 'geknüpftes Netz', 'Netz mit Knoten'], fr: ['filet noué', 'filet à nœuds', 'réseau noué', 'filet avec nœuds'], it: ['rete annodata', 'rete a nodi', 'rete con nodi'], es: ['red anudada', 'red con nudos', 'red de nudos'], da: ['knyttet net', 'net med knuder'], no: ['knyttet nett'] }),
  looped('knotlessNetting', 'netting', 'knotless netting', 'Meshes fixed by twist or looping.', { en: ['knotless net', 'unknotted net', 'unknotted netting', 'net without knots'], de: ['knotenloses Netz', 'Netz ohne Knoten'], fr: ['filet sans nœud', 'filet sans nœuds'], it: ['rete senza nodi'], es: ['red sin nudos'], da: ['knudeløst net', 'net uden knuder'], no: ['knuteløst nett'] }),
  looped('sprang', null, 'sprang', 'Stretched parallel elements interlinked, intertwined or interlaced, growing from both ends to a meeting line.', { en: ['plaiting on stretched threads', 'sprang work'], de: ['Sprangtechnik', 'Stäbchenflechterei'] }),
  looped('interlinkedSprang', 'sprang', 'interlinked sprang', 'Neighbouring elements hook about each other.', { en: ['linked sprang', 'sprang interlinked'], de: ['Sprang verhängt'] }),
  looped('interlacedSprang', 'sprang', 'interlaced sprang', 'Elements pass over and under.', { en: ['sprang interlaced'] }),
  looped('intertwinedSprang', 'sprang', 'intertwined sprang', 'Pairs twist about each other.', { en: ['sprang intertwined', 'twined sprang'] }),
];

// biome-ignore format: one language a line
export const BASKETRY_TERMS: readonly Term[] = [
  basketry('basketry', null, 'basketry', 'Structures of coarse or stiff elements; name the technique where it can be seen.', { en: ['basket work', 'basketwork'], de: ['Korbgeflecht'], fr: ['vannerie'], it: ['cesteria'], es: ['cestería'], da: ['kurvefletning', 'fletværk'] }, { vague: true }),
  basketry('coiled', 'basketry', 'coiled', 'A foundation coil sewn to the previous coil.', {
    en: ['coiling', 'coiled basketry', 'sewn coil', 'spiral coiled', 'coiled and sewn', 'coiled work', 'coiled basket', 'coiled baskets'], de: ['Spiralwulst', 'Spiralwulstgeflecht', 'Wulsthalbflechterei', 'Wulsttechnik', 'Spiralwulsttechnik', 'Wulstgeflecht'], fr: ['vannerie spiralée', 'vannerie spiralée cousue', 'spiralé'],
    it: ['intreccio a spirale', 'a spirale'], es: ['espiral cosida', 'cestería en espiral', 'cosida en espiral'], da: ['spiralsyet', 'syet kurv', 'spiralsyet kurv'],
  }, { noun: 'coiling' }),
  basketry('plaited', 'basketry', 'plaited', 'All elements are active.', { en: ['plaiting', 'plaitwork'], de: ['geflochten', 'Flechterei'], fr: ['vannerie tressée'], it: ['intrecciato'], es: ['trenzado'], da: ['flettet'] }, { noun: 'plaiting' }),
  basketry('obliqueInterlacing', 'plaited', 'oblique interlacing', 'One set of elements interlaces with itself at an angle to the edges.', { en: ['obliquely interlaced', 'oblique interlaced', 'oblique plaiting'], de: ['Diagonalgeflecht', 'Schräggeflecht', 'diagonales Geflecht'], fr: ['entrelacs oblique'], it: ['intreccio obliquo'], es: ['entrelazado oblicuo'], da: ['skråfletning'] }),
  basketry('checkerPlaiting', 'plaited', 'checker plaiting', 'Plaited over one, under one.', { en: ['checkerwork', 'checker plait', 'checker-plaited', 'simple plaiting', '1/1 plaiting', 'plaiting 1/1', 'checker weave plaiting'], de: ['leinwandbindiges Geflecht', 'leinwandbindiges Flechtwerk', 'schachbrettartiges Geflecht', 'schachbrettartiges Flechtwerk', 'Schachbrettgeflecht'], fr: ['vannerie tissée toilée', 'vannerie toilée', 'natte toilée'], it: ['intreccio a scacchi'], es: ['trenzado en damero'] }),
  basketry('twillPlaiting', 'plaited', 'twill plaiting', 'Plaited with floats that shift by one.', { en: ['twill plait', 'twilled plaiting', 'twill-plaited', 'plaited twill'], de: ['Köpergeflecht', 'köperbindiges Geflecht'], fr: ['vannerie tissée sergée', 'vannerie sergée', 'natte sergée'], it: ['intreccio a saia'], es: ['cruzada diagonal'] }),
  basketry('twillPlaiting22', 'twillPlaiting', '2/2 twill plaiting', 'Plaited over two, under two.', { en: ['twill plaiting 2/2', 'twill-plaited 2/2', '2/2 plaiting', '2/2 twill plait'], de: ['Köpergeflecht 2/2'] }),
  basketry('twillPlaiting33', 'twillPlaiting', '3/3 twill plaiting', 'Plaited over three, under three.', { en: ['twill plaiting 3/3', '3/3 plaiting'], de: ['Köpergeflecht 3/3'] }),
  basketry('hexagonalPlaiting', 'plaited', 'hexagonal plaiting', 'Three systems of strips crossing at 60 degrees.', { en: ['hexagonal openwork', 'hexagonal plait'], de: ['Sechseckgeflecht', 'hexagonales Geflecht'] }),
  basketry('sewnBraid', 'plaited', 'sewn braid', 'Braided strips sewn edge to edge.', { en: ['sewn-plait', 'sewn plait'], de: ['Zopfgeflecht'], fr: ['tresse cousue'], it: ['treccia cucita'], es: ['pleita', 'pleita cosida'] }),
  basketry('stakeAndStrand', 'basketry', 'stake-and-strand', 'Rigid passives, flexible actives over and under.', { en: ['stake and strand', 'wickerwork'], de: ['Weidengeflecht', 'Stakengeflecht'], it: ['a graticcio'], da: ['pileflet'] }),
  basketry('matting', null, 'matting', 'A large flat plaited, twined or sewn cover whose structure was not recorded.', { en: ['mats'], de: ['Mattengeflecht'], fr: ['nattage'], it: ['stuoie'], es: ['esteras'], da: ['måtter'] }, { vague: true }),
  basketry('sewnPlate', null, 'sewn plate', 'Flat pieces of bark, board or leather joined by stitches.', { en: ['stitched bark', 'sewn bark'], de: ['genähte Rinde', 'genähte Platten'], fr: ['plaques cousues', 'boîte cousue'], it: ['piastre cucite'], es: ['placas cosidas'], da: ['syede plader'] }),
];

// biome-ignore format: one language a line
export const SINGLE_ELEMENTS: readonly Term[] = [
  plain('cordage', null, 'cordage', 'A single elongated element, twisted or braided.', { en: ['cord', 'string', 'twine', 'cordage fragment'], de: ['Schnur', 'Schnüre', 'Zwirn'], fr: ['ficelle', 'cordelette', 'cordage'], it: ['corda', 'spago', 'cordame', 'cordicella', 'cordino'], es: ['cordelería', 'cordel'], da: ['snor'], no: ['snøre'] }, { inner: 'variants' }),
  plain('rope', 'cordage', 'rope', 'Cordage of 10 mm or more.', { de: ['Seil', 'Tau'], it: ['fune'], es: ['soga'], da: ['reb', 'tov'], no: ['tau'] }),
  plain('yarn', 'cordage', 'yarn', 'A thread such as fabrics are made of, found by itself.', { en: ['thread'], de: ['Garn', 'Faden'], fr: ['fil'], it: ['filo', 'filato'], es: ['hilo'], da: ['garn', 'tråd'] }, { vague: true, ingredient: true }),
  plain('braid', 'cordage', 'braid', 'Three or more elements interlaced into a flat or round strand.', { en: ['braided cord', 'plaited cord', 'braided band', 'plaited band', 'flat braid', 'round braid'], de: ['Zopf', 'geflochtene Schnur', 'Flechtband', 'geflochtenes Band', 'Flechtschnur'], it: ['treccia', 'treccia piatta'], es: ['trenza'], da: ['fletning'] }),
  plain('bundle', null, 'unspun bundle', 'Prepared fibre not yet made up.', { en: ['hank', 'fibre bundle', 'bundle of fibres'], de: ['Faserbündel'], fr: ['faisceau'], it: ['fascio'], es: ['haz'], da: ['bundt'] }, { inner: 'variants' }),
  plain('strips', 'bundle', 'loose strips', 'Strips of bast, bark or leaf without structure.', { en: ['strip', 'bast strip'], de: ['Baststreifen', 'Streifen'], fr: ['lanière', 'lanières'], it: ['striscia'], es: ['tira'], da: ['strimmel'] }),
  plain('felt', null, 'felt', 'Fibres matted together without elements.', { en: ['felted'], de: ['Filz'], fr: ['feutre'], it: ['feltro'], es: ['fieltro'], da: ['filt'] }),
  plain('barkcloth', null, 'barkcloth', 'Beaten inner bark.', { en: ['bark cloth'], de: ['Rindenbaststoff'], fr: ['étoffe d’écorce'], it: ['tessuto di corteccia'], es: ['tela de corteza'], da: ['barktøj'] }),
  plain('weftWrapping', null, 'weft-wrapping', 'A weft wraps warps one after the other; in many fabrics it goes with a ground weave.', { en: ['wrapped weft', 'weft wrapping'], de: ['Umschlingungsbindung'], fr: ['enroulement de trame'] }),
];
