import type { KindLanguage } from './languages.ts';

/** The words of a facet in one language. */
export interface FacetWords {
  /** What the facet is called. */
  readonly name: string;
  /**
   * Value -> its word: an adjective, with "|" before its form beside a noun of the other gender (French, Italian,
   * Spanish: feminine; Danish: neuter; German is inflected by rule), or a phrase that stands behind the noun.
   */
  readonly words: Readonly<Record<string, string>>;
}

type Named = Exclude<KindLanguage, 'en'>;

/** The facets of a structure as they are said in composed names; English stands with the attributes. Common practice, no source. */
// biome-ignore format: one facet a line
export const FACET_WORDS: Readonly<Record<Named, Readonly<Record<string, FacetWords>>>> = {
  de: {
    spacingClass: { name: 'Reihenabstand', words: { open: 'offen', 'semi-open': 'halboffen', close: 'dicht' } },
    rowSlant: { name: 'Neigung', words: { S: 'mit S-Neigung', Z: 'mit Z-Neigung', countered: 'gegenläufig' } },
    face: { name: 'Effekt', words: { balanced: 'ausgeglichen', faced: 'einseitig', weftFaced: 'schussbetont', warpFaced: 'kettbetont' } },
    elementGrouping: { name: 'Fadengruppierung', words: { paired: 'mit paarigen Fäden', pairedOne: 'mit paarigen Fäden in einem System', pairedBoth: 'mit paarigen Fäden in beiden Systemen' } },
    twillPattern: { name: 'Gratverlauf', words: { reversed: 'mit Gratwechsel', pointed: 'mit Spitzgrat', herringbone: 'mit Fischgrat', broken: 'gebrochen', lozenge: 'mit Rauten', pointLozenge: 'mit Spitzrauten', brokenLozenge: 'mit versetzten Rauten' } },
    strandsPerRow: { name: 'aktive Elemente', words: { '3': 'mit drei aktiven Elementen', '4': 'mit vier aktiven Elementen' } },
    wrapping: { name: 'Umwicklung', words: { wrappedCrossings: 'mit umwickelten Kreuzungen', soumak: 'mit Soumak' } },
    engagement: { name: 'Erfassung', words: { diagonal: 'diagonal' } },
    activeSystem: { name: 'aktives System', words: { weftActive: 'mit aktivem Schuss', warpActive: 'mit aktiver Kette' } },
    pile: { name: 'Flor', words: { present: 'mit Flor' } },
    pileFixing: { name: 'Florbefestigung', words: { insertedPile: '(eingelegt)', loopedPile: '(in Schlingen)', warpPile: '(Kettflor)', knottedPile: '(geknüpft)', symmetricalKnot: '(symmetrische Knoten)', asymmetricalKnot: '(asymmetrische Knoten)', singleWarpKnot: '(Einkettknoten)' } },
    supplementary: { name: 'Zusatzelemente', words: { supplementaryElement: 'mit Zusatzelementen', supplementaryWeftElement: 'mit Zierschuss', brocadingWeft: 'mit Broschierschuss', continuousPatternWeft: 'mit durchgehendem Zierschuss', supplementaryWarpElement: 'mit Zierkette' } },
  },
  fr: {
    spacingClass: { name: 'espacement', words: { open: 'espacé|espacée', 'semi-open': 'semi-espacé|semi-espacée', close: 'serré|serrée' } },
    rowSlant: { name: 'inclinaison', words: { S: 'incliné en S|inclinée en S', Z: 'incliné en Z|inclinée en Z', countered: 'à rangs alternés S et Z' } },
    face: { name: 'effet', words: { balanced: 'équilibré|équilibrée', faced: 'à effet d’un système', weftFaced: 'à effet de trame', warpFaced: 'à effet de chaîne' } },
    elementGrouping: { name: 'groupement', words: { paired: 'à fils jumelés', pairedOne: 'à fils jumelés dans un système', pairedBoth: 'à fils jumelés dans les deux systèmes' } },
    twillPattern: { name: 'dessin', words: { reversed: 'à chevrons', pointed: 'à chevrons pointés', herringbone: 'à arêtes de poisson', broken: 'brisé|brisée', lozenge: 'losangé|losangée', pointLozenge: 'à losanges pointés', brokenLozenge: 'à losanges brisés' } },
    strandsPerRow: { name: 'brins actifs', words: { '3': 'à trois brins', '4': 'à quatre brins' } },
    wrapping: { name: 'enroulement', words: { wrappedCrossings: 'à croisements enroulés', soumak: 'à enroulements soumak' } },
    engagement: { name: 'prise', words: { diagonal: 'en diagonale' } },
    activeSystem: { name: 'système actif', words: { weftActive: 'à trame active', warpActive: 'à chaîne active' } },
    pile: { name: 'poils', words: { present: 'à poils' } },
    pileFixing: { name: 'fixation des poils', words: { insertedPile: '(insérés)', loopedPile: '(en boucles)', warpPile: '(poil de chaîne)', knottedPile: '(noués)', symmetricalKnot: '(nœuds symétriques)', asymmetricalKnot: '(nœuds asymétriques)', singleWarpKnot: '(nœuds sur un fil de chaîne)' } },
    supplementary: { name: 'éléments supplémentaires', words: { supplementaryElement: 'avec éléments supplémentaires', supplementaryWeftElement: 'avec trame supplémentaire', brocadingWeft: 'avec trame brochée', continuousPatternWeft: 'avec trame lancée', supplementaryWarpElement: 'avec chaîne supplémentaire' } },
  },
  it: {
    spacingClass: { name: 'spaziatura', words: { open: 'aperto|aperta', 'semi-open': 'semiaperto|semiaperta', close: 'serrato|serrata' } },
    rowSlant: { name: 'inclinazione', words: { S: 'inclinato a S|inclinata a S', Z: 'inclinato a Z|inclinata a Z', countered: 'a file alternate S e Z' } },
    face: { name: 'effetto', words: { balanced: 'bilanciato|bilanciata', faced: 'a effetto di un sistema', weftFaced: 'a effetto di trama', warpFaced: 'a effetto di ordito' } },
    elementGrouping: { name: 'raggruppamento', words: { paired: 'a fili appaiati', pairedOne: 'a fili appaiati in un sistema', pairedBoth: 'a fili appaiati in entrambi i sistemi' } },
    twillPattern: { name: 'disegno', words: { reversed: 'a diagonali alternate', pointed: 'a zig-zag', herringbone: 'a spina di pesce', broken: 'spezzato|spezzata', lozenge: 'a losanghe', pointLozenge: 'a losanghe a punta', brokenLozenge: 'a losanghe spezzate' } },
    strandsPerRow: { name: 'elementi attivi', words: { '3': 'a tre capi', '4': 'a quattro capi' } },
    wrapping: { name: 'avvolgimento', words: { wrappedCrossings: 'a incroci avvolti', soumak: 'con avvolgimento soumak' } },
    engagement: { name: 'presa', words: { diagonal: 'in diagonale' } },
    activeSystem: { name: 'sistema attivo', words: { weftActive: 'a trama attiva', warpActive: 'a ordito attivo' } },
    pile: { name: 'pelo', words: { present: 'con pelo' } },
    pileFixing: { name: 'fissaggio del pelo', words: { insertedPile: '(inserito)', loopedPile: '(ad anelli)', warpPile: '(pelo di ordito)', knottedPile: '(annodato)', symmetricalKnot: '(nodi simmetrici)', asymmetricalKnot: '(nodi asimmetrici)', singleWarpKnot: '(nodi su un filo di ordito)' } },
    supplementary: { name: 'elementi supplementari', words: { supplementaryElement: 'con elementi supplementari', supplementaryWeftElement: 'con trama supplementare', brocadingWeft: 'con trama broccata', continuousPatternWeft: 'con trama lanciata', supplementaryWarpElement: 'con ordito supplementare' } },
  },
  es: {
    spacingClass: { name: 'espaciado', words: { open: 'abierto|abierta', 'semi-open': 'semiabierto|semiabierta', close: 'cerrado|cerrada' } },
    rowSlant: { name: 'inclinación', words: { S: 'inclinado en S|inclinada en S', Z: 'inclinado en Z|inclinada en Z', countered: 'con filas alternas S y Z' } },
    face: { name: 'efecto', words: { balanced: 'equilibrado|equilibrada', faced: 'de efecto de un sistema', weftFaced: 'de efecto de trama', warpFaced: 'de efecto de urdimbre' } },
    elementGrouping: { name: 'agrupación', words: { paired: 'de hilos pareados', pairedOne: 'de hilos pareados en un sistema', pairedBoth: 'de hilos pareados en ambos sistemas' } },
    twillPattern: { name: 'dibujo', words: { reversed: 'de diagonales alternas', pointed: 'en zigzag', herringbone: 'en espiga', broken: 'quebrado|quebrada', lozenge: 'de rombos', pointLozenge: 'de rombos en punta', brokenLozenge: 'de rombos quebrados' } },
    strandsPerRow: { name: 'elementos activos', words: { '3': 'de tres cabos', '4': 'de cuatro cabos' } },
    wrapping: { name: 'enrollamiento', words: { wrappedCrossings: 'con cruces enrollados', soumak: 'con enrollamiento soumak' } },
    engagement: { name: 'agarre', words: { diagonal: 'en diagonal' } },
    activeSystem: { name: 'sistema activo', words: { weftActive: 'de trama activa', warpActive: 'de urdimbre activa' } },
    pile: { name: 'pelo', words: { present: 'con pelo' } },
    pileFixing: { name: 'fijación del pelo', words: { insertedPile: '(insertado)', loopedPile: '(en bucles)', warpPile: '(pelo de urdimbre)', knottedPile: '(anudado)', symmetricalKnot: '(nudos simétricos)', asymmetricalKnot: '(nudos asimétricos)', singleWarpKnot: '(nudos sobre un hilo de urdimbre)' } },
    supplementary: { name: 'elementos suplementarios', words: { supplementaryElement: 'con elementos suplementarios', supplementaryWeftElement: 'con trama suplementaria', brocadingWeft: 'con trama brocada', continuousPatternWeft: 'con trama continua suplementaria', supplementaryWarpElement: 'con urdimbre suplementaria' } },
  },
  da: {
    spacingClass: { name: 'rækkeafstand', words: { open: 'åben|åbent', 'semi-open': 'halvåben|halvåbent', close: 'tæt' } },
    rowSlant: { name: 'hældning', words: { S: 'med S-hældning', Z: 'med Z-hældning', countered: 'med skiftende hældning' } },
    face: { name: 'effekt', words: { balanced: 'balanceret', faced: 'med ét synligt system', weftFaced: 'med skudeffekt', warpFaced: 'med trendeffekt' } },
    elementGrouping: { name: 'trådgruppering', words: { paired: 'med parrede tråde', pairedOne: 'med parrede tråde i ét system', pairedBoth: 'med parrede tråde i begge systemer' } },
    twillPattern: { name: 'mønster', words: { reversed: 'med vendende grat', pointed: 'med spidsgrat', herringbone: 'med sildeben', broken: 'brudt', lozenge: 'med ruder', pointLozenge: 'med spidse ruder', brokenLozenge: 'med forskudte ruder' } },
    strandsPerRow: { name: 'aktive elementer', words: { '3': 'med tre aktive elementer', '4': 'med fire aktive elementer' } },
    wrapping: { name: 'omvikling', words: { wrappedCrossings: 'med omviklede krydsninger', soumak: 'med soumak' } },
    engagement: { name: 'greb', words: { diagonal: 'diagonal|diagonalt' } },
    activeSystem: { name: 'aktivt system', words: { weftActive: 'med aktivt islæt', warpActive: 'med aktiv trend' } },
    pile: { name: 'luv', words: { present: 'med luv' } },
    pileFixing: { name: 'luvens fastgørelse', words: { insertedPile: '(indlagt)', loopedPile: '(i løkker)', warpPile: '(trendluv)', knottedPile: '(knyttet)', symmetricalKnot: '(symmetriske knuder)', asymmetricalKnot: '(asymmetriske knuder)', singleWarpKnot: '(knuder om én trend)' } },
    supplementary: { name: 'ekstra elementer', words: { supplementaryElement: 'med ekstra elementer', supplementaryWeftElement: 'med ekstra skud', brocadingWeft: 'med broché-skud', continuousPatternWeft: 'med gennemgående mønsterskud', supplementaryWarpElement: 'med ekstra trend' } },
  },
};
