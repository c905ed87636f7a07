import type { Term, Vocabulary } from '../definition.ts';
import { COMMON, family } from './term.ts';

const fibre = family(COMMON);

/**
 * Taxon and part, from coarse to fine. An identification may stop at any level: "tree bast,
 * indeterminate" is the inner term itself.
 */
// biome-ignore format: one term a line
const PLANT: readonly Term[] = [
  fibre('plantFibre', null, 'plant fibre', 'Plant, no further.', { en: ['plant', 'vegetable fibre', 'indet. plant', 'plant fiber', 'plant indet.'], de: ['Pflanzenfaser', 'pflanzlich'], fr: ['fibre végétale', 'végétal'], it: ['fibra vegetale', 'vegetale'], es: ['fibra vegetal', 'vegetal'], da: ['plantefiber', 'plantefibre', 'plantefibrer', 'plantefiber'] }),
  fibre('bastFibre', 'plantFibre', 'bast, kind not said', 'Phloem fibre of a tree or a herb.', { en: ['indet. bast', 'bast indet.', 'bast fiber', 'plant bast fibre', 'plant bast'], de: ['Bastfaser'], fr: ['fibre libérienne', 'liber', 'liber indét.', 'liber indéterminé'], it: ['fibra liberiana'], es: ['fibra liberiana'], da: ['bastfiber'] }),
  fibre('treeBast', 'bastFibre', 'tree bast', 'Inner bark of a tree.', { en: ['indet. tree bast', 'tree bast indet.', 'tree bast, indet.'], de: ['Gehölzbast', 'Baumbast', 'Baumbast indet.'], fr: ['liber d’arbre'], it: ['libro d’albero'], es: ['líber de árbol'], da: ['træbast'], no: ['trebast'] }),
  fibre('limeBast', 'treeBast', 'lime bast', 'Inner bark of lime (the tree, not the citrus).', { la: ['Tilia cordata', 'Tilia platyphyllos', 'Tilia', 'Tilia sp.', 'Tilia spp.'], en: ['linden', 'linden bast', 'basswood', 'lime tree'], de: ['Linde', 'Lindenbast'], fr: ['tilleul', 'liber de tilleul'], it: ['tiglio'], es: ['tilo'], da: ['lindebast'] }),
  fibre('oakBast', 'treeBast', 'oak bast', 'Inner bark of oak.', { la: ['Quercus', 'Quercus sp.'], en: ['oak'], de: ['Eiche', 'Eichenbast'], fr: ['chêne', 'liber de chêne'], it: ['quercia'], es: ['roble', 'encina'], da: ['eg', 'egebast'], no: ['eik'] }),
  fibre('willowBast', 'treeBast', 'willow bast', 'Inner bark of willow.', { de: ['Weidenbast'], fr: ['liber de saule'], da: ['pilebast'] }),
  fibre('poplarBast', 'treeBast', 'poplar bast', 'Inner bark of poplar or aspen.', { la: ['Populus', 'Populus sp.'], en: ['poplar', 'aspen'], de: ['Pappel', 'Espe', 'Pappelbast'], fr: ['peuplier'], it: ['pioppo'], es: ['chopo', 'álamo'], da: ['poppel'], no: ['osp'] }),
  fibre('elmBast', 'treeBast', 'elm bast', 'Inner bark of elm.', { la: ['Ulmus', 'Ulmus sp.'], en: ['elm'], de: ['Ulme', 'Ulmenbast'], fr: ['orme'], it: ['olmo'], es: ['olmo'], da: ['elm', 'elmebast'] }),
  fibre('juniperBark', 'treeBast', 'juniper bark', 'Bark of juniper.', { la: ['Juniperus'], en: ['juniper'], de: ['Wacholder'], fr: ['genévrier'], it: ['ginepro'], es: ['enebro'], da: ['ene'], no: ['einer'] }),
  fibre('mulberryBast', 'treeBast', 'mulberry bast', 'Inner bark of mulberry or paper mulberry.', { la: ['Morus', 'Broussonetia'], en: ['mulberry'], de: ['Maulbeerbast'], fr: ['mûrier'], it: ['gelso'], es: ['morera'] }),
  fibre('wisteriaBast', 'treeBast', 'wisteria bast', 'Inner bark of wisteria.', { la: ['Wisteria'], en: ['wisteria'] }),
  fibre('cedarBark', 'treeBast', 'red cedar bark', 'Inner bark of red cedar.', { la: ['Thuja'] }),
  fibre('herbBast', 'bastFibre', 'herb bast', 'Phloem fibre of a herb.', { en: ['stem bast', 'herbaceous bast'], de: ['Stängelbast', 'Krautbast'], fr: ['liber de plante herbacée'] }),
  fibre('flax', 'herbBast', 'flax', 'Linum usitatissimum; linen is its product. Look-alikes: nettle, hemp (Haugan & Holst 2014).', { la: ['Linum', 'Linum usitatissimum'], en: ['linen'], de: ['Flachs', 'Lein', 'Leinen'], fr: ['lin'], it: ['lino'], es: ['lino'], da: ['hør'] }),
  fibre('nettle', 'herbBast', 'nettle', 'Urtica dioica.', { la: ['Urtica', 'Urtica dioica'], de: ['Nessel', 'Brennnessel', 'Brennessel'], fr: ['ortie'], it: ['ortica'], es: ['ortiga'], da: ['nælde', 'brændenælde'], no: ['nesle'] }),
  fibre('hemp', 'herbBast', 'hemp', 'Cannabis sativa; entries by eye are unreliable.', { la: ['Cannabis', 'Cannabis sativa'], de: ['Hanf'], fr: ['chanvre'], it: ['canapa'], es: ['cáñamo'], da: ['hamp'] }),
  fibre('ramie', 'herbBast', 'ramie', 'Boehmeria nivea.', { la: ['Boehmeria', 'Boehmeria nivea'] }),
  fibre('jute', 'herbBast', 'jute', 'Corchorus.', { la: ['Corchorus'] }),
  fibre('hop', 'herbBast', 'hop', 'Humulus lupulus.', { la: ['Humulus', 'Humulus lupulus'], de: ['Hopfen'], fr: ['houblon'], it: ['luppolo'], es: ['lúpulo'], da: ['humle'] }),
  fibre('dogbane', 'herbBast', 'dogbane', 'Apocynum.', { la: ['Apocynum'] }),
  fibre('hibiscus', 'herbBast', 'hibiscus', 'Hibiscus, kenaf and others.', { la: ['Hibiscus', 'Hibiscus cannabinus'], en: ['kenaf'], de: ['Hibiskus', 'Kenaf'], fr: ['kénaf'], it: ['ibisco'], es: ['hibisco'] }),
  fibre('broom', 'herbBast', 'broom', 'Spartium, Genista, Cytisus.', { la: ['Spartium', 'Spartium junceum', 'Genista', 'Cytisus scoparius'], en: ['spanish broom'], de: ['Ginster', 'Besenginster'], fr: ['genêt'], it: ['ginestra'], es: ['retama'], da: ['gyvel'] }),
  fibre('milkweed', 'herbBast', 'milkweed', 'Asclepias.', { la: ['Asclepias'] }),
  fibre('seedFibre', 'plantFibre', 'seed fibre', 'Hair of seeds.', { en: ['seed hair'], de: ['Samenfaser'] }),
  fibre('cotton', 'seedFibre', 'cotton', 'Gossypium.', { la: ['Gossypium'], de: ['Baumwolle'], fr: ['coton'], it: ['cotone'], es: ['algodón'], da: ['bomuld'], no: ['bomull'] }),
  fibre('monocot', 'plantFibre', 'leaf or stem of a monocot', 'Grass, sedge, rush, palm and the like.', { en: ['monocotyledon', 'monocot'], de: ['Monokotyledone'], fr: ['monocotylédone'] }),
  fibre('esparto', 'grass', 'esparto', 'Macrochloa (Stipa) tenacissima.', { la: ['Stipa tenacissima', 'Macrochloa tenacissima'], en: ['esparto grass'], de: ['Espartogras'], fr: ['sparte'], it: ['sparto'], da: ['espartogræs'] }),
  fibre('grass', 'monocot', 'grass', 'Poaceae.', { la: ['Poaceae', 'Gramineae'], de: ['Gras', 'Gräser'], fr: ['graminée'], it: ['graminacea'], es: ['gramínea'], da: ['græs'] }),
  fibre('straw', 'grass', 'straw', 'Stems of cereals; entries by eye are unreliable.', { de: ['Stroh'], fr: ['paille'], it: ['paglia'], es: ['paja'], da: ['halm', 'strå'] }),
  fibre('reed', 'grass', 'reed', 'Phragmites.', { la: ['Phragmites', 'Phragmites australis'], de: ['Schilf', 'Schilfrohr'], fr: ['roseau'], es: ['carrizo'], da: ['tagrør'] }),
  fibre('halfa', 'grass', 'halfa', 'Desmostachya, Imperata: grasses of the Nile; not esparto.', { la: ['Desmostachya', 'Desmostachya bipinnata', 'Imperata cylindrica'], en: ['halfa grass', 'halfa'], de: ['Halfagras'] }),
  fibre('sedgeFamily', 'monocot', 'sedge family', 'Cyperaceae, no further: sedges, bulrushes, papyrus.', { la: ['Cyperaceae'], en: ['sedges', 'cyperaceous'], de: ['Riedgräser', 'Sauergräser', 'Sauergras'], fr: ['cypéracée', 'cypéracées'], it: ['ciperacea', 'ciperacee'], es: ['ciperácea', 'ciperáceas'], da: ['halvgræs'] }),
  fibre('sedge', 'sedgeFamily', 'sedge', 'Carex.', { la: ['Carex', 'Carex sp.'], de: ['Segge'], fr: ['laîche', 'carex'], it: ['carice'], es: ['cárice'], da: ['star', 'stargræsser'] }),
  fibre('rush', 'monocot', 'rush', 'Rushes: Juncus; the plain word is used of clubrush too.', { la: ['Juncus', 'Juncus sp.'], de: ['Binse', 'Binsen'], fr: ['jonc'], it: ['giunco'], es: ['junco'], da: ['siv'] }),
  fibre('clubrush', 'sedgeFamily', 'clubrush', 'Schoenoplectus; “bulrush” in one of its two senses.', { la: ['Schoenoplectus', 'Scirpus'], en: ['club-rush', 'clubrushes'], de: ['Teichsimse', 'Teichbinse'], fr: ['scirpe'] }),
  fibre('reedmace', 'monocot', 'reedmace', 'Typha.', { la: ['Typha'], en: ['cattail'], de: ['Rohrkolben'], fr: ['massette'], it: ['tifa'], es: ['anea', 'enea'], da: ['dunhammer'] }),
  fibre('papyrus', 'sedgeFamily', 'papyrus', 'Cyperus papyrus.', { la: ['Cyperus papyrus'], it: ['papiro'], es: ['papiro'] }),
  fibre('palmLeaf', 'monocot', 'palm leaf', 'Phoenix, Chamaerops, Hyphaene.', { la: ['Phoenix', 'Chamaerops', 'Hyphaene'], en: ['palm'], de: ['Palme', 'Palmblatt'], fr: ['palmier', 'feuille de palmier'], it: ['palma'], es: ['palma', 'palmito', 'hoja de palma'], da: ['palmeblad'] }),
  fibre('raphia', 'monocot', 'raphia', 'Raphia; entries by eye are unreliable.', { la: ['Raphia'], en: ['raffia'], de: ['Raffia'], fr: ['raphia'], it: ['rafia'], es: ['rafia'] }),
  fibre('agave', 'monocot', 'agave', 'Agave.', { la: ['Agave'], en: ['maguey', 'sisal'] }),
  fibre('yucca', 'monocot', 'yucca', 'Yucca.', { la: ['Yucca'] }),
  fibre('coir', 'plantFibre', 'coir', 'Husk of the coconut, Cocos nucifera.', { la: ['Cocos nucifera'], en: ['coconut fibre', 'coconut', 'coconut husk'], de: ['Kokosfaser', 'Kokos'], fr: ['fibre de coco', 'coco'], it: ['fibra di cocco', 'cocco'], es: ['fibra de coco', 'bonote'], da: ['kokosfiber', 'kokos'] }),
  fibre('newZealandFlax', 'monocot', 'New Zealand flax', 'Phormium tenax: a leaf fibre, no flax.', { la: ['Phormium', 'Phormium tenax'], en: ['harakeke'], de: ['Neuseelandflachs'], fr: ['lin de Nouvelle-Zélande'], it: ['lino della Nuova Zelanda'], es: ['lino de Nueva Zelanda'] }),
  fibre('seagrass', 'monocot', 'seagrass', 'Zostera, Posidonia.', { la: ['Zostera', 'Posidonia', 'Zostera marina'], en: ['eelgrass'], de: ['Seegras'], fr: ['zostère', 'posidonie'], it: ['posidonia'], es: ['posidonia'], da: ['ålegræs', 'bændeltang'] }),
  fibre('moss', 'plantFibre', 'moss', 'Polytrichum and others.', { la: ['Polytrichum'], de: ['Moos'], fr: ['mousse'], it: ['muschio'], es: ['musgo'], da: ['mos'] }),
  fibre('root', 'plantFibre', 'root', 'Picea, Pinus and others.', { de: ['Wurzel', 'Wurzeln'], fr: ['racine'], it: ['radice'], es: ['raíz'], da: ['trærod'] }),
  fibre('woodSplint', 'plantFibre', 'wood splint', 'Split wood or whole rods, Corylus and others.', { la: ['Corylus'], en: ['splint', 'wood'], de: ['Holzspan', 'Span', 'Rute'], fr: ['éclisse'], it: ['legno', 'stecca'], es: ['madera', 'varilla'], da: ['spån'] }),
  fibre('barkSheet', 'plantFibre', 'bark sheet', 'Outer bark in sheets.', { en: ['outer bark', 'sheet of bark'], de: ['Rindenstück', 'Rindenbahn'], fr: ['plaque d’écorce'] }),
  fibre('birchBark', 'barkSheet', 'birch bark', 'Betula.', { la: ['Betula'], en: ['birch'], de: ['Birke', 'Birkenrinde'], fr: ['bouleau'], it: ['betulla'], es: ['abedul'], da: ['birk', 'birkebark'], no: ['bjørk'] }),
];

// biome-ignore format: one term a line
const ANIMAL: readonly Term[] = [
  fibre('animalFibre', null, 'animal fibre', 'Animal, no further.', { en: ['animal', 'protein fibre'], de: ['Tierfaser', 'tierisch', 'tierische Faser', 'tierische Fasern'], fr: ['fibre animale', 'animal'], it: ['fibra animale'], es: ['fibra animal'], da: ['dyrefiber'] }),
  fibre('hair', 'animalFibre', 'hair, kind not said', 'Hair of any mammal.', { en: ['animal hair', 'indet. animal hair', 'hair'], de: ['Haar', 'Haare', 'Tierhaar'], fr: ['poil d’animal', 'poils d’animal', 'poils d’animaux', 'poils', 'poil', 'poil animal'], it: ['pelo animale', 'peli animali', 'pelo'], es: ['pelo animal', 'pelos de animal', 'pelo'], da: ['dyrehår', 'hår'] }),
  fibre('wool', 'hair', 'sheep wool', 'Ovis aries; in the Andes “wool” and “lana” are often camelid hair: say so in the profile.', { la: ['Ovis', 'Ovis aries'], en: ['sheep’s wool', 'wool', 'woollen', 'woolen', 'sheep'], de: ['Wollfaser', 'Wollfasern', 'Wolle', 'Schafwolle', 'Schafswolle', 'Schaf'], fr: ['laine de mouton', 'laine', 'mouton'], it: ['lana di pecora', 'lana', 'lana ovina', 'pecora'], es: ['lana de oveja', 'lana', 'oveja'], da: ['fåreuld', 'uld', 'får'], no: ['saueull', 'ull'] }),
  fibre('goatHair', 'hair', 'goat hair', 'Capra.', { la: ['Capra', 'Capra hircus'], en: ['goat'], de: ['Ziegenhaar', 'Ziege'], fr: ['poil de chèvre'], it: ['pelo di capra'], es: ['pelo de cabra'], da: ['gedehår'] }),
  fibre('camelidHair', 'hair', 'camelid hair', 'Lama, Vicugna.', { la: ['Lama', 'Vicugna'], en: ['camelid', 'alpaca', 'llama', 'vicuña'], es: ['camélido'] }),
  fibre('cattleHair', 'hair', 'cattle hair', 'Bos.', { la: ['Bos'], de: ['Rinderhaar'] }),
  fibre('horseHair', 'hair', 'horse hair', 'Equus.', { la: ['Equus'], en: ['horsehair'], de: ['Rosshaar', 'Pferdehaar'], fr: ['crin'], it: ['crine'], es: ['crin'], da: ['hestehår'] }),
  fibre('camelHair', 'hair', 'camel hair', 'Camelus.', { la: ['Camelus'] }),
  fibre('humanHair', 'hair', 'human hair', 'Homo sapiens; ask the community concerned before any sampling.', { de: ['Menschenhaar'] }),
  fibre('silk', 'animalFibre', 'silk', 'Bombyx mori or a wild silk.', { la: ['Bombyx mori', 'Bombyx mori silk', 'Antheraea'], de: ['Seide'], fr: ['soie'], it: ['seta'], es: ['seda'], da: ['silke'] }),
  fibre('sinew', 'animalFibre', 'sinew', 'Tendon.', { de: ['Sehne'], fr: ['tendon'], it: ['tendine'], es: ['tendón'], da: ['sene'] }),
  fibre('feather', 'animalFibre', 'feather', 'Feather or down.', { de: ['Feder'], fr: ['plume'], it: ['piuma'], es: ['pluma'], da: ['fjer'] }),
  fibre('hideStrip', 'animalFibre', 'hide strip', 'Strips of skin or leather.', { en: ['leather', 'hide', 'skin'], de: ['Leder', 'Haut', 'Lederstreifen'], fr: ['cuir', 'peau'], it: ['cuoio', 'pelle'], es: ['cuero', 'piel'], da: ['læder', 'skind'] }),
];

const METAL: readonly Term[] = [
  fibre('metalThread', null, 'metal thread', 'Metal strip or wire, wound on a core or alone.', {
    en: [
      'metal wrapped thread',
      'metal',
      'gilt thread',
      'silver thread',
      'gold thread',
      'silver-gilt thread',
      'metallic thread',
    ],
    de: ['Metallfaden', 'Goldfaden'],
    fr: ['fil métallique', 'filé métallique'],
    it: ['filo metallico'],
    es: ['hilo metálico'],
  }),
];

export const FIBRE: Vocabulary = {
  id: 'fibre',
  label: 'Fibre',
  mixes: true,
  terms: [...PLANT, ...ANIMAL, ...METAL],
};
