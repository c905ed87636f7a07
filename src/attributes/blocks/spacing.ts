import type { AttributeDefinition } from '../definition.ts';
import { SPACING_DERIVED } from './spacing-derived.ts';
import { SPACING_SPECIAL } from './spacing-special.ts';
import { forSystem, SYSTEM_1, SYSTEM_2 } from './system-words.ts';

/**
 * How close and how thick the elements are. Bounds: common practice, no source; they flag a reading
 * for a second look and never exclude it. All on a log scale, since 2 to 4 mm is as far as 20 to 40.
 */
// biome-ignore format: word lists stay one language a line
const DENSITY = {
  en: ['density', 'thread density', 'thread count', 'weave count', 'threads', 'threads per unit', 'count', 'elements', 'yarns', 'no. of threads', 'number of threads', 'thread number', 'no.', 'n'],
  de: ['Dichte', 'Fadendichte', 'Fadenzahl', 'Fadenanzahl', 'Fäden', 'Fd', 'FD', 'F', 'Anzahl Fäden', 'Einstellung', 'Gewebedichte', 'Elementdichte', 'Anz.', 'Anzahl'],
  fr: ['densité', 'réduction', 'fils', 'nombre de fils', 'nb fils', 'nb de fils', 'compte de fils', 'densité des fils', 'brins', 'nb', 'nombre'],
  it: ['densità', 'fili', 'numero di fili', 'n. fili', 'numero fili', 'riduzione', 'conteggio fili', 'densità fili', 'n.', 'numero'],
  es: ['densidad', 'hilos', 'número de hilos', 'n.º hilos', 'n.º de hilos', 'recuento de hilos', 'densidad de hilos', 'pasadas', 'n.º', 'número'],
  da: ['tæthed', 'trådtæthed', 'trådtal', 'tråde', 'antal tråde', 'trådantal', 'antal'],
  no: ['tetthet', 'trådtetthet', 'tråder', 'antall tråder'],
} as const;

// biome-ignore format: word lists stay one language a line
const DIAMETER = {
  en: ['diameter', 'thread diameter', 'yarn diameter', 'element diameter', 'diam.', 'dia.', 'dm', 'thickness', 'thread thickness', 'yarn thickness', 'width', 'element width', 'strand width', 'gauge'],
  de: ['Durchmesser', 'Dm', 'Dm.', 'Dmr.', 'Fadendurchmesser', 'Garndurchmesser', 'Fadendicke', 'Garndicke', 'Fadenstärke', 'Garnstärke', 'Dicke', 'Stärke', 'Elementbreite', 'Ø'],
  fr: ['diamètre', 'diam.', 'diamètre du fil', 'diamètre des fils', 'épaisseur du fil', 'épaisseur', 'grosseur', 'Ø fil'],
  it: ['diametro', 'diam.', 'diametro filo', 'diametro del filo', 'spessore filo', 'spessore'],
  es: ['diámetro', 'diám.', 'diámetro del hilo', 'diámetro hilo', 'grosor', 'grosor del hilo'],
  da: ['diameter', 'tråddiameter', 'trådtykkelse', 'tykkelse', 'garntykkelse'],
  no: ['tråddiameter', 'trådtykkelse', 'tykkelse'],
} as const;

// biome-ignore format: word lists stay one language a line
const DENSITY_AND_WIDTH: readonly AttributeDefinition[] = [
  {
    id: 'density1',
    label: 'Density of system 1',
    block: 'spacing',
    scale: 'ratio',
    unit: 'per cm',
    transform: 'log',
    plausible: { usual: [0.5, 30], limit: [0.1, 150] },
    appliesTo: ['woven', 'twined', 'looped', 'linked', 'sprang', 'plaited', 'stakeAndStrand', 'matting', 'felt'],
    definition: 'Elements of the passive system (warp, stakes) per cm, counted at right angles to them at 3 to 5 places.',
    source: 'ISO 7211-2 (counting); bounds: common practice, no source',
    synonyms: forSystem(SYSTEM_1, DENSITY, {
      en: ['warp/cm', 'warps/cm', 'warps', 'warp threads', 'warp ends', 'ends', 'ends per cm', 'ends per inch', 'epi', 'warp count', 'warp density', 'passive elements/cm', 'passives', 'stakes/cm', 'warp thread count', 'threads 1'],
      de: ['Kette/cm', 'Kettfäden', 'Kettfäden/cm', 'Kettfadendichte', 'Kettdichte', 'Fd Kette', 'Fd K', 'Fd 1', 'Kettfadenzahl', 'Fadendichte K', 'FD K', 'Grundelemente/cm'],
      fr: ['chaîne/cm', 'fils de chaîne', 'fils de chaîne/cm', 'fils chaîne', 'fil chaîne/cm', 'fils/cm chaîne', 'densité de chaîne', 'densité chaîne', 'montants/cm', 'densité en chaîne', 'réduction chaîne'],
      it: ['ordito/cm', 'fili ordito', 'fili di ordito', 'fili d’ordito', 'fili/cm ordito', 'densità ordito', 'densità di ordito', 'riduzione ordito'],
      es: ['urdimbre/cm', 'hilos de urdimbre', 'hilos urdimbre', 'hilos/cm urdimbre', 'densidad de urdimbre', 'densidad urdimbre'],
      da: ['trend/cm', 'trendtråde', 'trendtråde/cm', 'tråde/cm trend', 'trådtæthed i trend', 'tråde pr. cm trend', 'trendtæthed'],
      no: ['renning/cm', 'renningstråder', 'tråder/cm renning', 'renningstetthet'],
    }),
  },
  {
    id: 'density2',
    label: 'Density of system 2',
    block: 'spacing',
    scale: 'ratio',
    unit: 'per cm',
    transform: 'log',
    plausible: { usual: [0.2, 30], limit: [0.05, 150] },
    appliesTo: ['woven', 'twined', 'looped', 'linked', 'plaited', 'stakeAndStrand', 'matting', 'coiled'],
    definition: 'Weft threads, or rows (each twined pair is one row), per cm; for coiling the coils per cm.',
    source: 'ISO 7211-2 (counting); bounds: common practice, no source',
    synonyms: forSystem(SYSTEM_2, DENSITY, {
      en: ['weft/cm', 'wefts/cm', 'wefts', 'weft threads', 'picks', 'picks per cm', 'picks per inch', 'ppi', 'weft count', 'weft density', 'rows/cm', 'row density', 'rows', 'number of rows', 'twining rows', 'twined rows', 'active rows', 'active elements/cm', 'weft thread count', 'weft rows', 'coils/cm', 'threads 2'],
      de: ['Schuss/cm', 'Schuß/cm', 'Schussfäden', 'Schussfäden/cm', 'Schussfadendichte', 'Schussdichte', 'Fd Schuss', 'Fd S', 'Fd 2', 'Fadendichte S', 'Reihen', 'Reihen/cm', 'Reihen pro 5 cm', 'Reihendichte', 'Reihenzahl', 'Anzahl Reihen', 'Bindungsreihen', 'Zwirnreihen', 'Schussfadenzahl', 'Schussreihen', 'Zwirnbindungsreihen', 'Wülste/cm'],
      fr: ['trame/cm', 'fils de trame', 'fils de trame/cm', 'fils trame', 'fil trame/cm', 'fils/cm trame', 'densité de trame', 'densité trame', 'duites', 'duites/cm', 'coups', 'rangs', 'rangs/cm', 'nombre de rangs', 'nb rangs', 'densité des rangs', 'densité en trame', 'réduction trame', 'rangs de cordage'],
      it: ['trama/cm', 'fili trama', 'fili di trama', 'fili/cm trama', 'densità trama', 'densità di trama', 'file', 'file/cm', 'numero di file', 'n. file', 'giri/cm', 'battute', 'densità delle file'],
      es: ['trama/cm', 'hilos de trama', 'hilos trama', 'hilos/cm trama', 'densidad de trama', 'densidad trama', 'filas', 'filas/cm', 'número de filas', 'n.º de filas', 'pasadas/cm', 'pasadas', 'densidad de filas'],
      da: ['islæt/cm', 'islættråde', 'tråde/cm islæt', 'trådtæthed i islæt', 'tråde pr. cm islæt', 'rækker', 'rækker/cm', 'antal rækker', 'rækketæthed', 'skud/cm', 'islættæthed'],
      no: ['innslag/cm', 'innslagstråder', 'tråder/cm innslag', 'rader', 'rader/cm', 'antall rader', 'innslagstetthet'],
    }),
  },
  {
    id: 'rowSpacing',
    label: 'Row spacing',
    block: 'spacing',
    scale: 'ratio',
    unit: 'mm',
    transform: 'log',
    plausible: { usual: [1, 40], limit: [0.1, 300] },
    appliesTo: ['twined', 'coiled', 'looped', 'linked', 'matting', 'stakeAndStrand'],
    definition: 'Distance from the centre of one row to the centre of the next; 10 divided by the rows per cm.',
    source: 'common practice, no source',
    synonyms: {
      en: ['spacing', 'spacing of rows', 'spacing between rows', 'row interval', 'row distance', 'distance between rows', 'distance of rows', 'row pitch', 'twining interval', 'twining spacing', 'weft spacing', 'weft row spacing', 'twining row spacing', 'row to row', 'interval between rows', 'spacing of twining rows', 'row spacing centre to centre'],
      de: ['Reihenabstand', 'Reihenabstände', 'Abstand der Reihen', 'Abstand Reihen', 'Abstand', 'Bindungsabstand', 'Bindungsreihenabstand', 'Zwirnabstand', 'Zwirnreihenabstand', 'Zwirnbindungsabstand', 'Schussabstand', 'Abstand der Bindungsreihen', 'Abstand der Zwirnbindungsreihen', 'Abstand zwischen den Reihen', 'Abst. Reihen', 'Reihenabst.', 'RA'],
      fr: ['écart entre rangs', 'écart entre les rangs', 'espacement des rangs', 'espacement', 'espacement entre rangs', 'espacement entre les rangs', 'distance entre rangs', 'distance entre les rangs', 'intervalle entre rangs', 'intervalle entre les rangs', 'écartement', 'écartement des rangs', 'écart', 'écart rangs'],
      it: ['distanza tra le file', 'distanza tra file', 'distanza fra le file', 'interasse file', 'interasse delle file', 'spaziatura', 'spaziatura delle file', 'intervallo tra le file', 'passo file', 'distanza tra i giri'],
      es: ['distancia entre filas', 'separación entre filas', 'espaciado', 'espaciado entre filas', 'intervalo entre filas', 'separación de filas', 'distancia entre pasadas', 'separación entre pasadas'],
      da: ['rækkeafstand', 'afstand mellem rækker', 'afstand mellem rækkerne', 'afstand', 'rækkernes afstand'],
      no: ['radavstand', 'avstand mellom rader', 'avstand mellom radene', 'avstand'],
    },
  },
  {
    id: 'rowGap',
    label: 'Row gap',
    block: 'spacing',
    scale: 'ratio',
    derived: true,
    unit: 'mm',
    transform: 'log',
    plausible: { usual: [0, 35], limit: [0, 300] },
    appliesTo: ['twined', 'coiled'],
    definition: 'Clear distance between neighbouring rows: row spacing minus the width of a row. 0 where they touch.',
    source: 'common practice, no source',
    synonyms: {
      en: ['gap', 'gap between rows', 'clear gap', 'clear distance', 'clear distance between rows', 'space between rows', 'space between twining rows', 'clear space between rows', 'opening between rows', 'stitch gap'],
      de: ['lichter Abstand', 'lichte Weite', 'Lücke', 'Lücke zwischen den Reihen', 'Zwischenraum', 'Reihenzwischenraum', 'freier Abstand', 'Zwischenraum zwischen den Reihen', 'Raum zwischen den Reihen'],
      fr: ['vide entre rangs', 'vide entre les rangs', 'jour entre rangs', 'espace libre entre rangs', 'espace entre rangs', 'espace entre les rangs', 'intervalle libre'],
      it: ['vuoto tra le file', 'luce tra le file', 'spazio libero tra le file', 'spazio tra le file'],
      es: ['hueco entre filas', 'vacío entre filas', 'luz entre filas', 'espacio libre entre filas', 'espacio entre filas'],
      da: ['mellemrum', 'mellemrum mellem rækker', 'mellemrum mellem rækkerne', 'åbning mellem rækker', 'fri afstand'],
      no: ['mellomrom', 'mellomrom mellom rader', 'fri avstand'],
    },
  },
  {
    id: 'rowWidth',
    label: 'Row width',
    block: 'spacing',
    scale: 'ratio',
    unit: 'mm',
    transform: 'log',
    plausible: { usual: [0.5, 15], limit: [0.05, 150] },
    appliesTo: ['twined', 'coiled'],
    definition: 'Width of one row (a twined pair as it lies, a coil) across its run.',
    source: 'common practice, no source',
    synonyms: {
      en: ['width of row', 'width of rows', 'row thickness', 'twining row width', 'twining width', 'weft row width', 'width of twined row', 'height of row', 'row height'],
      de: ['Reihenbreite', 'Breite der Reihe', 'Breite der Reihen', 'Bindungsreihenbreite', 'Zwirnbreite', 'Zwirnreihenbreite', 'Reihenhöhe'],
      fr: ['largeur du rang', 'largeur des rangs', 'hauteur du rang', 'hauteur des rangs', 'largeur rang'],
      it: ['larghezza della fila', 'larghezza fila', 'larghezza file', 'altezza della fila'],
      es: ['ancho de fila', 'anchura de fila', 'ancho de la fila', 'altura de fila'],
      da: ['rækkebredde', 'rækkens bredde'],
      no: ['radbredde', 'radens bredde'],
    },
  },
  {
    id: 'diameter1',
    label: 'Element diameter, system 1',
    block: 'spacing',
    scale: 'ratio',
    unit: 'mm',
    transform: 'log',
    plausible: { usual: [0.1, 20], limit: [0.02, 150] },
    definition: 'Across an element of system 1, mean or range of several readings; for flat strips the width.',
    source: 'common practice, no source',
    synonyms: forSystem(SYSTEM_1, DIAMETER, {
      en: ['warp (mm)', 'warp thread diameter', 'warp diam.', 'warp Ø', 'passive diameter', 'diameter of warp', 'diameter of passives', 'cord diameter', 'string diameter', 'mesh cord diameter', 'foundation diameter', 'stake diameter', 'diam 1', 'd1 (mm)', 'system 1 (mm)'],
      de: ['Kette (mm)', 'Kettfadendurchmesser', 'Kettdurchmesser', 'Dm Kette', 'Dm K', 'Dm 1', 'Dm. K.', 'Schnurdurchmesser', 'Schnurstärke', 'Ø Kette', 'Durchmesser Schnur', 'Wulstdurchmesser'],
      fr: ['chaîne (mm)', 'diamètre de chaîne', 'diamètre chaîne', 'diamètre fils de chaîne', 'diamètre des montants', 'diamètre de la ficelle', 'Ø chaîne', 'diamètre du boudin'],
      it: ['ordito (mm)', 'diametro ordito', 'diametro di ordito', 'diametro corda', 'Ø ordito'],
      es: ['urdimbre (mm)', 'diámetro de urdimbre', 'diámetro urdimbre', 'diámetro de la cuerda', 'Ø urdimbre'],
      da: ['trend (mm)', 'trenddiameter', 'tråddiameter trend', 'snordiameter', 'Ø trend'],
      no: ['renning (mm)', 'renningsdiameter', 'Ø renning'],
    }),
  },
  {
    id: 'diameter2',
    label: 'Element diameter, system 2',
    block: 'spacing',
    scale: 'ratio',
    unit: 'mm',
    transform: 'log',
    plausible: { usual: [0.1, 20], limit: [0.02, 150] },
    definition: 'Across an element of system 2, mean or range of several readings; for flat strips the width.',
    source: 'common practice, no source',
    synonyms: forSystem(SYSTEM_2, DIAMETER, {
      en: ['weft (mm)', 'weft thread diameter', 'weft diam.', 'weft Ø', 'active diameter', 'diameter of weft', 'diameter of actives', 'stitch diameter', 'stitch width', 'diam 2', 'd2 (mm)', 'system 2 (mm)'],
      de: ['Schuss (mm)', 'Schussfadendurchmesser', 'Schussdurchmesser', 'Dm Schuss', 'Dm S', 'Dm 2', 'Dm. S.', 'Ø Schuss', 'Stichbreite'],
      fr: ['trame (mm)', 'diamètre de trame', 'diamètre trame', 'diamètre fils de trame', 'diamètre des brins', 'Ø trame'],
      it: ['trama (mm)', 'diametro trama', 'diametro di trama', 'Ø trama'],
      es: ['trama (mm)', 'diámetro de trama', 'diámetro trama', 'Ø trama'],
      da: ['islæt (mm)', 'islætdiameter', 'tråddiameter islæt', 'Ø islæt'],
      no: ['innslag (mm)', 'innslagsdiameter', 'Ø innslag'],
    }),
  },
];

export const SPACING: readonly AttributeDefinition[] = [
  ...DENSITY_AND_WIDTH,
  ...SPACING_SPECIAL,
  ...SPACING_DERIVED,
];
