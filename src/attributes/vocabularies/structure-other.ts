import type { Term } from '../definition.ts';
import { BASKETRY, CLASSIFICATION, COMMON, family } from './term.ts';

const looped = family(CLASSIFICATION);
const basketry = family(BASKETRY);
const plain = family(COMMON);

// biome-ignore format: one language a line
export const LOOPED_AND_NETTED: readonly Term[] = [
  looped('looped', null, 'looped', 'One element forms loops that engage with earlier loops.', { en: ['looping'], de: ['Verschlingen', 'Schlingenstoff'], fr: ['bouclé'], it: ['maglia ad asola'], es: ['anillado'], da: ['slyngning'] }),
  looped('simpleLooping', 'looped', 'simple looping', 'The element hooks into the previous loop without a knot.', {
    en: ['half-hitch looping', 'buttonhole looping', 'simple looped'], de: ['einfaches Verschlingen', 'Maschenstoff'], fr: ['bouclé simple', 'point de boutonnière'], it: ['maglia ad asola semplice'], es: ['anillado simple'], da: ['simpel slyngning'],
  }),
  looped('loopAndTwist', 'looped', 'loop-and-twist', 'A loop with an extra turn.', { en: ['loop and twist'], de: ['verdrehtes Verschlingen'], fr: ['boucle torse'], it: ['asola ritorta'], es: ['anillado torcido'], da: ['snoet slyngning'] }),
  looped('crossKnit', 'looped', 'cross-knit looping', 'The loop passes round the crossing of the loop above.', { en: ['encircled looping', 'cross-knit'], de: ['umfassendes Verschlingen'], fr: ['point croisé'], it: ['punto incrociato'], es: ['anillado cruzado'], da: ['krydsmaske'] }),
  looped('needleBound', 'looped', 'needle-bound', 'The needle passes several loops.', { en: ['compound looping', 'nalbinding', 'nålebinding'], de: ['Nadelbindung'], fr: ['point d’aiguille'], it: ['nalbinding'], es: ['punto de aguja'], da: ['nålebinding'] }),
  looped('linked', null, 'linked', 'Each row hooks over the previous row, without a twist to lock it.', { en: ['interlinked', 'linking', 'simple linking'], de: ['Einhängen', 'eingehängt'], fr: ['enlacement'], it: ['allacciato'], es: ['enlazado'], da: ['kædning'] }),
  looped('netting', null, 'netting', 'Open meshes of one element.', { en: ['net', 'netted'], de: ['Netz', 'Netzwerk'], fr: ['filet', 'réseau de mailles'], it: ['rete'], es: ['red'], da: ['netværk'], no: ['nett'] }),
  looped('knottedNetting', 'netting', 'knotted netting', 'Meshes fixed by knots.', { en: ['knotted net', 'fishnet'], de: ['geknotetes Netz', 'Netz geknotet', 'Knotennetz'], fr: ['filet noué'], it: ['rete annodata'], es: ['red anudada'], da: ['knyttet net'], no: ['knyttet nett'] }),
  looped('knotlessNetting', 'netting', 'knotless netting', 'Meshes fixed by twist or looping.', { en: ['knotless net'], de: ['knotenloses Netz'], fr: ['filet sans nœud'], it: ['rete senza nodi'], es: ['red sin nudos'], da: ['knudeløst net'] }),
  looped('sprang', null, 'sprang', 'Stretched parallel elements interlinked, intertwined or interlaced, growing from both ends to a meeting line.', { en: ['plaiting on stretched threads'], de: ['Sprangtechnik', 'Stäbchenflechterei'] }),
];

// biome-ignore format: one language a line
export const BASKETRY_TERMS: readonly Term[] = [
  basketry('basketry', null, 'basketry', 'Structures of coarse or stiff elements; name the technique where it can be seen.', { en: ['basket work', 'basketwork'], de: ['Korbgeflecht', 'Flechtwerk', 'Geflecht'], fr: ['vannerie'], it: ['cesteria', 'intreccio'], es: ['cestería'], da: ['kurvefletning', 'fletværk'] }),
  basketry('coiled', 'basketry', 'coiled', 'A foundation coil sewn to the previous coil.', {
    en: ['coiling', 'coiled basketry', 'sewn coil', 'spiral coiled'], de: ['Spiralwulst', 'Spiralwulstgeflecht', 'Wulsthalbflechterei', 'Wulsttechnik'], fr: ['vannerie spiralée', 'vannerie spiralée cousue', 'spiralé'],
    it: ['intreccio a spirale', 'a spirale'], es: ['espiral cosida', 'cestería en espiral', 'cosida en espiral'], da: ['spiralsyet', 'syet kurv'],
  }),
  basketry('plaited', 'basketry', 'plaited', 'All elements are active.', { en: ['plaiting', 'plaitwork'], de: ['geflochten', 'Flechterei'], fr: ['vannerie tressée'], it: ['intrecciato'], es: ['trenzado'], da: ['flettet'] }),
  basketry('checkerPlaiting', 'plaited', 'checker plaiting', 'Plaited over one, under one.', { en: ['checkerwork', 'checker plait', 'simple plaiting'], de: ['leinwandbindiges Geflecht'], fr: ['vannerie tissée toilée'], it: ['intreccio a scacchi'], es: ['trenzado en damero'] }),
  basketry('twillPlaiting', 'plaited', 'twill plaiting', 'Plaited with floats that shift by one.', { en: ['twill plait', 'twilled plaiting'], de: ['Köpergeflecht'], fr: ['vannerie tissée sergée'], it: ['intreccio a saia'], es: ['cruzada diagonal'] }),
  basketry('hexagonalPlaiting', 'plaited', 'hexagonal plaiting', 'Three systems of strips crossing at 60 degrees.', { en: ['hexagonal openwork'] }),
  basketry('sewnBraid', 'plaited', 'sewn braid', 'Braided strips sewn edge to edge.', { en: ['sewn-plait', 'sewn plait'], de: ['Zopfgeflecht'], fr: ['tresse cousue'], it: ['treccia cucita'], es: ['pleita', 'pleita cosida'] }),
  basketry('stakeAndStrand', 'basketry', 'stake-and-strand', 'Rigid passives, flexible actives over and under.', { en: ['stake and strand', 'wickerwork'], de: ['Weidengeflecht', 'Stakengeflecht'], it: ['a graticcio', 'vimini'], es: ['mimbre', 'entretejido'], da: ['pileflet'] }),
  basketry('matting', null, 'matting', 'A large flat plaited, twined or sewn cover whose structure was not recorded.', { en: ['mats'], de: ['Mattengeflecht'], fr: ['nattage'], it: ['stuoie'], es: ['esteras'], da: ['måtter'] }),
  basketry('sewnPlate', null, 'sewn plate', 'Flat pieces of bark, board or leather joined by stitches.', { en: ['stitched bark', 'sewn bark'], de: ['genähte Rinde', 'genähte Platten'], fr: ['plaques cousues', 'boîte cousue'], it: ['piastre cucite'], es: ['placas cosidas'], da: ['syede plader'] }),
];

// biome-ignore format: one language a line
export const SINGLE_ELEMENTS: readonly Term[] = [
  plain('cordage', null, 'cordage', 'A single elongated element, twisted or braided.', { en: ['cord', 'string', 'twine', 'cordage fragment'], de: ['Schnur', 'Schnüre', 'Zwirn'], fr: ['ficelle', 'cordelette', 'cordage'], it: ['corda', 'spago', 'cordame'], es: ['cordelería', 'cordel'], da: ['snor'], no: ['snøre'] }),
  plain('rope', 'cordage', 'rope', 'Cordage of 10 mm or more.', { de: ['Seil', 'Tau'], it: ['fune'], es: ['soga'], da: ['reb', 'tov'], no: ['tau'] }),
  plain('yarn', 'cordage', 'yarn', 'A thread such as fabrics are made of, found by itself.', { en: ['thread'], de: ['Garn', 'Faden'], fr: ['fil'], it: ['filo', 'filato'], es: ['hilo'], da: ['garn', 'tråd'] }),
  plain('braid', 'cordage', 'braid', 'Three or more elements interlaced into a flat or round strand.', { en: ['braided cord', 'plaited cord'], de: ['Zopf', 'geflochtene Schnur'], it: ['treccia'], es: ['trenza'], da: ['fletning'] }),
  plain('bundle', null, 'unspun bundle', 'Prepared fibre not yet made up.', { en: ['hank', 'fibre bundle', 'bundle of fibres'], de: ['Faserbündel'], fr: ['faisceau'], it: ['fascio'], es: ['haz'], da: ['bundt'] }),
  plain('strips', 'bundle', 'loose strips', 'Strips of bast, bark or leaf without structure.', { en: ['strip', 'bast strip'], de: ['Baststreifen', 'Streifen'], fr: ['lanière', 'lanières'], it: ['striscia'], es: ['tira'], da: ['strimmel'] }),
  plain('felt', null, 'felt', 'Fibres matted together without elements.', { en: ['felted'], de: ['Filz'], fr: ['feutre'], it: ['feltro'], es: ['fieltro'], da: ['filt'] }),
  plain('barkcloth', null, 'barkcloth', 'Beaten inner bark.', { en: ['bark cloth'], de: ['Rindenbaststoff'], fr: ['étoffe d’écorce'], it: ['tessuto di corteccia'], es: ['tela de corteza'], da: ['barktøj'] }),
];
