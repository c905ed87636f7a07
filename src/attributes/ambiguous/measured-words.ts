/** Words for what is measured or counted that leave open of what, by language. */

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
export function threadDiameters(): readonly string[] {
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
export const MESH_SIZES = [
  'mesh', 'mesh size', 'mesh width', 'size of mesh', 'mesh dimension', 'meshes',
  'Maschenweite', 'Maschengröße', 'Masche', 'Maschen',
  'maille', 'taille des mailles', 'taille de maille', 'dimension des mailles', 'maillage',
  'maglia', 'dimensione maglie', 'dimensione della maglia', 'maglie',
  'malla', 'tamaño de malla', 'mallas',
  'maskestørrelse', 'maskevidde', 'maske',
];

/** Threads counted, without a word of which system. */
// biome-ignore format: one language a line
export const THREAD_COUNTS = [
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
export const BETWEEN_ROWS = [
  'distance between rows', 'interval between rows', 'row to row distance',
  'Abstand', 'Abstand zwischen den Reihen', 'Abstand zwischen Reihen',
  'écart', 'écart rangs', 'écart entre rangs', 'écart entre les rangs', 'écartement', 'écartement des rangs', 'distance entre rangs', 'distance entre les rangs', 'intervalle entre rangs', 'intervalle entre les rangs',
  'distanza tra le file', 'distanza tra file', 'distanza fra le file', 'intervallo tra le file', 'distanza tra i giri',
  'distancia entre filas', 'separación entre filas', 'intervalo entre filas', 'distancia entre pasadas', 'separación entre pasadas',
  'afstand', 'avstand', 'afstand mellem rækker', 'afstand mellem rækkerne', 'avstand mellom rader', 'avstand mellom radene',
];

/** Strands counted, without a word of what they make up. */
// biome-ignore format: one language a line
export const STRAND_COUNTS = [
  'number of strands', 'no. of strands', 'strands',
  'Anzahl Stränge', 'Stränge', 'Strangzahl', 'Anzahl der Stränge',
  'nb brins', 'nb de brins', 'nombre de brins', 'brins', 'nbre de brins',
  'n. capi', 'numero capi', 'numero di capi', 'capi',
  'n.º de cabos', 'número de cabos', 'cabos', 'n.º de ramales', 'ramales',
  'antal strenge', 'antall strenge',
];

/** A pattern, of the threads or on them. */
// biome-ignore format: one language a line
export const PATTERNS = ['pattern', 'motif', 'Muster', 'Motiv', 'motivo', 'patrón', 'mønster', 'dessin', 'disegno', 'dibujo'];
