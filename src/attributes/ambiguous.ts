import type { UnitKind } from './header.ts';

/**
 * Wordings that mean more than one thing. They are never taken: the first candidate is suggested,
 * with the reason, and a person decides. With no candidate nothing is suggested, only explained.
 */
export interface AmbiguousWords {
  readonly words: readonly string[];
  /** Ids that the words may stand for, the safest first. */
  readonly candidates: readonly string[];
  /** Completes "… is ambiguous:". */
  readonly why: string;
  /** Spellings whose accent settles the matter: wording in lower case -> id. */
  readonly accented?: Readonly<Record<string, string>>;
  /** What a unit beside the words settles: what it measures -> id. */
  readonly byUnit?: Readonly<Partial<Record<UnitKind, string>>>;
}

/** What was measured across, and what was measured, by language; the words that may stand between them. */
// biome-ignore format: one language a line
const THREAD_DIAMETERS: readonly (readonly [measures: readonly string[], between: readonly string[], threads: readonly string[]])[] = [
  [['Ø', 'diam', 'dia', 'dm', 'diameter', 'diameters', 'thickness'], ['of', 'of the'], ['yarn', 'yarns', 'thread', 'threads', 'strand', 'strands', 'element', 'elements', 'cord']],
  [['Ø', 'Dm', 'Dmr', 'Durchm', 'Durchmesser', 'Dicke', 'Stärke', 'Stärken'], ['der', 'des'], ['Faden', 'Fäden', 'Garn', 'Garne', 'Zwirn', 'Schnur']],
  [['Ø', 'diam', 'diamètre', 'épaisseur'], ['du', 'des'], ['fil', 'fils', 'brin', 'brins']],
  [['Ø', 'diam', 'diametro', 'spessore'], ['del', 'dei'], ['filo', 'fili', 'filato']],
  [['Ø', 'diám', 'diámetro', 'grosor'], ['del', 'de los'], ['hilo', 'hilos']],
  [['Ø', 'diameter', 'tykkelse'], ['af', 'av'], ['tråd', 'garn']],
];

/** "yarn Ø", "Ø yarn", "Ø of yarn"; compounds ("Fadendurchmesser") fold to the same key as two words. */
function threadDiameters(): readonly string[] {
  const joined = THREAD_DIAMETERS.flatMap(([measures, between, threads]) =>
    measures.flatMap((what) =>
      threads.flatMap((thread) => [
        `${thread} ${what}`,
        `${what} ${thread}`,
        ...between.map((word) => `${what} ${word} ${thread}`),
      ]),
    ),
  );
  return ['Ø', ...joined];
}

/** A mesh measured, without a word of which way. */
// biome-ignore format: one language a line
const MESH_SIZES = [
  'mesh', 'mesh size', 'mesh width', 'size of mesh', 'mesh dimension', 'meshes',
  'Maschenweite', 'Maschengröße', 'Masche', 'Maschen',
  'maille', 'taille des mailles', 'taille de maille', 'dimension des mailles', 'maillage',
  'maglia', 'dimensione maglie', 'dimensione della maglia', 'maglie',
  'malla', 'tamaño de malla', 'mallas',
  'maskestørrelse', 'maskevidde', 'maske',
];

/** Threads counted, without a word of which system. */
// biome-ignore format: one language a line
const THREAD_COUNTS = [
  'thread count', 'thread counts', 'weave count', 'threads', 'threads per cm', 'number of threads', 'no. of threads', 'count per cm', 'sett', 'thread density', 'density', 'warp and weft', 'warp x weft', 'warp/weft',
  'Fadenzahl', 'Fadenzahlen', 'Fadenanzahl', 'Fadendichte', 'Fadendichten', 'Gewebedichte', 'Gewebeeinstellung', 'Einstellung', 'Dichte', 'Fäden', 'Fäden pro cm', 'Fadenzahl K/S', 'Kette und Schuss', 'Kette x Schuss', 'Kette/Schuss', 'Zahl der Fäden', 'Anzahl der Fäden',
  'compte de fils', 'nombre de fils', 'nb de fils', 'réduction', 'densité', 'densité du tissu', 'densité des fils', 'fils', 'fils par cm', 'chaîne et trame', 'chaîne x trame', 'chaîne/trame', 'compte en fils',
  'numero di fili', 'numero fili', 'conteggio fili', 'conteggio dei fili', 'riduzione', 'densità', 'densità dei fili', 'densità del tessuto', 'fili', 'fili al cm', 'ordito e trama', 'ordito x trama', 'ordito/trama',
  'número de hilos', 'n.º de hilos', 'recuento de hilos', 'densidad', 'densidad de hilos', 'densidad del tejido', 'hilos', 'hilos por cm', 'urdimbre y trama', 'urdimbre x trama', 'urdimbre/trama', 'reducción',
  'trådtal', 'trådtæthed', 'tråde', 'antal tråde', 'tråde pr. cm', 'trend og islæt', 'trend x islæt', 'trend/islæt', 'tæthed',
  'trådtetthet', 'tråder', 'antall tråder', 'tråder pr. cm', 'tråder per cm', 'renning og innslag', 'renning x innslag', 'renning/innslag', 'tetthet',
];

/** How far rows stand apart, without a word of from where to where. */
// biome-ignore format: one language a line
const BETWEEN_ROWS = [
  'distance between rows', 'interval between rows', 'row to row distance',
  'Abstand', 'Abstand zwischen den Reihen', 'Abstand zwischen Reihen',
  'écart', 'écart rangs', 'écart entre rangs', 'écart entre les rangs', 'écartement', 'écartement des rangs', 'distance entre rangs', 'distance entre les rangs', 'intervalle entre rangs', 'intervalle entre les rangs',
  'distanza tra le file', 'distanza tra file', 'distanza fra le file', 'intervallo tra le file', 'distanza tra i giri',
  'distancia entre filas', 'separación entre filas', 'intervalo entre filas', 'distancia entre pasadas', 'separación entre pasadas',
  'afstand', 'avstand', 'afstand mellem rækker', 'afstand mellem rækkerne', 'avstand mellom rader', 'avstand mellom radene',
];

/** Strands counted, without a word of what they make up. */
// biome-ignore format: one language a line
const STRAND_COUNTS = [
  'number of strands', 'no. of strands', 'strands',
  'Anzahl Stränge', 'Stränge', 'Strangzahl', 'Anzahl der Stränge',
  'nb brins', 'nb de brins', 'nombre de brins', 'brins', 'nbre de brins',
  'n. capi', 'numero capi', 'numero di capi', 'capi',
  'n.º de cabos', 'número de cabos', 'cabos', 'n.º de ramales', 'ramales',
  'antal strenge', 'antall strenge',
];

/** A pattern, of the threads or on them. */
// biome-ignore format: one language a line
const PATTERNS = ['pattern', 'motif', 'Muster', 'Motiv', 'motivo', 'patrón', 'mønster', 'dessin', 'disegno', 'dibujo'];

export const AMBIGUOUS_HEADERS: readonly AmbiguousWords[] = [
  {
    words: BETWEEN_ROWS,
    candidates: ['rowSpacing', 'rowGap'],
    why: 'between the rows may be from centre to centre, or the clear gap alone',
  },
  {
    words: STRAND_COUNTS,
    candidates: ['plyCount1', 'strandsPerRow', 'strands'],
    why: 'it may be the plies of a yarn, the active strands of a row of twining, or those of a braid',
  },
  {
    words: PATTERNS,
    candidates: ['decoration', 'twillPattern'],
    why: 'it may be what is drawn on the fabric, or how the diagonals of a twill run',
  },
  {
    words: ['Masse', 'Maße', 'Maß', 'Abmessungen'],
    candidates: ['length', 'weight'],
    byUnit: { mass: 'weight' },
    why: 'it may be the measurements or, without the ß, the mass',
  },
  {
    words: [
      'layer',
      'stratum',
      'level',
      'Schicht',
      'Stratum',
      'Fundschicht',
      'Kulturschicht',
      'couche',
      'niveau',
      'strato',
      'livello',
      'estrato',
      'nivel',
      'lag',
      'sjikt',
    ],
    candidates: ['context', 'phase'],
    why: 'a layer is where the find lay; it may or may not stand for a phase',
  },
  {
    words: THREAD_COUNTS,
    candidates: ['density1', 'density2'],
    why: 'it is a count of threads, of either system or of both',
  },
  {
    words: MESH_SIZES,
    candidates: ['meshGauge', 'meshStretched', 'meshOpening'],
    why: 'it may be the bar from knot to knot, the clear opening, or the mesh drawn out, about two bars',
  },
  {
    words: ['treatment', 'traitement', 'trattamento', 'tratamiento'],
    candidates: ['conservationTreatment', 'processing'],
    why: 'it may be the work of conservators or how the raw material was made ready',
  },
  {
    words: ['object', 'Objekt', 'objet', 'oggetto', 'objeto', 'genstand', 'gjenstand'],
    candidates: ['item', 'recordedUse'],
    why: 'it may number the original object or say what the object was',
  },
  {
    words: ['dm', 'dm.', 'diam'],
    candidates: ['diameter1'],
    why: 'it may be the diameter of either system, of the thread, or a decimetre',
  },
  {
    words: threadDiameters(),
    candidates: ['diameter1'],
    why: 'it may be the diameter of either system, or hold both',
  },
  {
    words: ['commune', 'Gemeinde', 'comune', 'municipio', 'kommune', 'municipality', 'parish'],
    candidates: ['site', 'region'],
    why: 'it names the municipality, in which several sites may lie',
  },
  {
    words: ['height', 'Höhe', 'hauteur', 'altezza', 'altura', 'højde', 'høyde'],
    candidates: ['length'],
    why: 'of a flat piece the longer side is meant as a rule, of a basket its height',
  },
  {
    words: [
      'fragments (nb)',
      'fragments (n)',
      'nb fragments',
      'nb de fragments',
      'nombre de fragments',
      'n fragments',
      'no of fragments',
      'number of fragments',
      'fragment count',
      'number',
      'quantity',
      'pieces',
      'Anzahl',
      'Anz.',
      'Anzahl Fragmente',
      'Fragmentanzahl',
      'Stückzahl',
      'Stück',
      'nombre',
      'NMI',
      'n frammenti',
      'numero frammenti',
      'quantità',
      'n.º fragmentos',
      'nº fragmentos',
      'número de fragmentos',
      'cantidad',
      'antal',
      'antal fragmenter',
      'antall',
      'antall fragmenter',
      'freq',
      'freq.',
      'frequency',
      'Häufigkeit',
      'fréquence',
      'effectif',
      'frequenza',
      'frecuencia',
      'count',
      'counts',
      'n pieces',
      'n finds',
      'MNI',
      'NISP',
      'MNV',
      'quantité',
    ],
    candidates: ['quantity'],
    why: 'it may say how many objects the row stands for, or of how many pieces the one find is made up',
  },
];

/** Those of structure stand with the words of its descriptions (vocabularies/structure-words-asked.ts). */
export const AMBIGUOUS_TERMS: readonly (AmbiguousWords & { readonly vocabulary: string })[] = [
  {
    vocabulary: 'slant',
    words: ['up to the right', 'rising to the right', 'up right'],
    candidates: ['Z'],
    why: 'it is a Z where the row stood upright and an S where it lay across',
  },
  {
    vocabulary: 'slant',
    words: ['down to the right', 'falling to the right', 'up to the left', 'down right'],
    candidates: ['S'],
    why: 'it is an S where the row stood upright and a Z where it lay across',
  },
  {
    vocabulary: 'fibre',
    words: ['Indian hemp'],
    candidates: ['dogbane', 'hemp'],
    why: 'it is dogbane in North America, and elsewhere hemp or jute',
  },
  {
    vocabulary: 'fibre',
    words: ['caña', 'canna', 'cane', 'Rohr', 'canne'],
    candidates: ['grass', 'reed'],
    why: 'it is reed, giant reed, bamboo or any stiff stem',
  },
  {
    vocabulary: 'fibre',
    words: ['bark', 'Rinde', 'écorce', 'corteccia', 'corteza', 'bark fibre'],
    candidates: ['barkSheet', 'treeBast'],
    why: 'it may be outer bark in sheets or the bast beneath it',
  },
  {
    vocabulary: 'fibre',
    words: ['osier', 'withy', 'vimini', 'mimbre', 'Weidenrute', 'vidje'],
    candidates: ['woodSplint', 'willowBast'],
    why: 'it may be whole rods of willow, split ones, or the plant',
  },
  {
    vocabulary: 'fibre',
    words: ['alfa', 'halfah', 'alpha grass'],
    candidates: ['grass', 'esparto', 'halfa'],
    why: 'it is esparto in the West and halfa on the Nile',
  },
  {
    vocabulary: 'fibre',
    words: ['willow', 'Weide', 'saule', 'salice', 'sauce', 'pil', 'selje', 'Salix', 'Salix sp.'],
    candidates: ['willowBast', 'woodSplint'],
    why: 'of willow the bast was used, and whole or split rods',
  },
  {
    vocabulary: 'fibre',
    words: ['bulrush', 'bulrushes'],
    candidates: ['clubrush', 'reedmace'],
    why: 'it is clubrush to some and reedmace to others',
  },
  {
    vocabulary: 'fibre',
    words: ['palm fibre', 'palm fiber', 'Palmfaser', 'fibre de palmier', 'fibra di palma', 'fibra de palma'],
    candidates: ['palmLeaf'],
    why: 'it may be of the leaf or of its sheath',
  },
  {
    vocabulary: 'fibre',
    words: ['herbe', 'erba', 'hierba'],
    candidates: ['grass'],
    why: 'it is grass or any herb',
  },
  {
    vocabulary: 'fibre',
    words: ['cedar', 'Zeder', 'cèdre', 'cedro', 'cedertræ'],
    candidates: ['cedarBark'],
    why: 'it is the bark of red or yellow cedar, or a true cedar',
  },
  {
    vocabulary: 'preservation',
    words: ['peat', 'Torf', 'tourbe', 'torba', 'turba', 'tørv', 'torv'],
    candidates: ['bog', 'waterlogged'],
    why: 'peat grows in acid bogs and in fens, which keep other fibres',
  },
  {
    vocabulary: 'preservation',
    words: ['lacustrine', 'lake', 'See', 'lacustre'],
    candidates: ['waterlogged'],
    why: 'it names the setting, not how the piece survived',
  },
  {
    vocabulary: 'edge',
    words: ['orlo', 'søm'],
    candidates: ['hem'],
    why: 'it is a hem, a seam or any edge',
  },
  {
    vocabulary: 'processing',
    words: ['spun', 'gesponnen', 'filé', 'filato', 'hilado', 'spundet', 'spunnet'],
    candidates: ['draftSpun'],
    why: 'spliced yarn is twisted too, and was often called spun',
  },
  {
    vocabulary: 'observedOn',
    words: ['molde', 'mould', 'mold', 'moule', 'Form', 'matrice', 'stampo'],
    candidates: ['impression', 'cast'],
    why: 'it may be the hollow impression or what was cast from it',
  },
  {
    vocabulary: 'fibre',
    words: ['rod'],
    candidates: ['woodSplint', 'root'],
    why: 'in English it is a rod of wood, in Danish a root',
  },
  {
    vocabulary: 'fibre',
    words: ['lime'],
    candidates: ['limeBast'],
    why: 'the tree is meant as a rule, but the word is also the citrus and burnt stone',
  },
  {
    vocabulary: 'fibre',
    words: ['Bast'],
    candidates: ['bastFibre'],
    why: 'in some reports it is tree bast, in others any phloem fibre',
  },
  {
    vocabulary: 'fibre',
    words: ['lind'],
    candidates: ['limeBast'],
    why: 'in Danish it is the lime tree; beside Norwegian "lin", flax, it is easily mistaken',
  },
  {
    vocabulary: 'fibre',
    words: ['alm'],
    candidates: ['elmBast'],
    why: 'in Danish and Norwegian it is the elm; a slip is likely in other languages',
  },
];
