import type { DescriptionWord } from '../definition.ts';
import { named, word } from './term.ts';

/**
 * How descriptions speak of rows: spacing, engagement, slant, active elements. Common practice, no source, from
 * the usage of catalogues in six languages; the named ones were kinds of their own in earlier versions.
 */

const open = { structure: 'twined', spacingClass: 'open' };
const semiOpen = { structure: 'twined', spacingClass: 'semi-open' };
const close = { structure: 'twined', spacingClass: 'close' };

// biome-ignore format: one language a line
const KINDS_OF_TWINING: readonly DescriptionWord[] = [
  named('openTwining', 'open twining', open, {
    en: ['open twined', 'spaced twining', 'openwork twining', 'open-twined', 'spaced-twined'],
    de: ['Zwirnbindung mit Abstand', 'offene Zwirnbindung', 'Zwirngeflecht mit Abstand', 'weite Zwirnbindung', 'Zwirnbindung mit Reihenabstand'],
    fr: ['cordé espacé', 'cordé ajouré', 'cordé ouvert'], it: ['intreccio ritorto aperto', 'ritorto aperto', 'ritorto spaziato'],
    es: ['cordado abierto', 'cordado espaciado'], da: ['åben tvinding'], no: ['åpen tvinding'],
  }),
  named('semiOpenTwining', 'semi-open twining', semiOpen, {
    en: ['semi-open twined', 'half-open twining'], de: ['halboffene Zwirnbindung'], fr: ['cordé semi-ouvert'], it: ['intreccio ritorto semiaperto', 'ritorto semiaperto'], es: ['cordado semiabierto'], da: ['halvåben tvinding'],
  }),
  named('closeTwining', 'close twining', close, {
    en: ['compact twining', 'tight twining', 'close twined', 'close-twined'],
    de: ['dichte Zwirnbindung', 'enge Zwirnbindung', 'dichtes Zwirngeflecht', 'Zwirnbindung ohne Abstand'], fr: ['cordé serré'], it: ['intreccio ritorto serrato', 'ritorto serrato'],
    es: ['cordado cerrado', 'cordado compacto'], da: ['tæt tvinding'], no: ['tett tvinding'],
  }),
  named('weftTwining', 'weft-twining', { structure: 'twined', activeSystem: 'weftActive' }, { en: ['weft twined', 'weft twining', 'weft-twined fabric'], de: ['Schusszwirnbindung', 'Schußzwirnbindung', 'schusszwirnbindig'], fr: ['cordé de trame', 'cordé trame'], it: ['ritorto di trama', 'intreccio ritorto di trama'], es: ['cordado de trama'], da: ['skudtvinding', 'islættvinding'] }),
  named('warpTwining', 'warp-twining', { structure: 'twined', activeSystem: 'warpActive' }, { en: ['warp twined', 'warp twining'], de: ['Kettzwirnbindung', 'kettzwirnbindig'], fr: ['cordé de chaîne', 'cordé chaîne'], it: ['ritorto di ordito', 'intreccio ritorto di ordito'], es: ['cordado de urdimbre'], da: ['trendtvinding'] }),
  named('diagonalTwining', 'diagonal twining', { structure: 'twined', engagement: 'diagonal' }, {
    en: ['alternate-pair twining', 'twilled twining', 'twill twining', 'diagonal twined', 'diagonally twined', 'twill twined', 'zigzag twining', 'alternate pair twining', 'split-pair twining'], de: ['versetzte Zwirnbindung', 'diagonale Zwirnbindung', 'Diagonalzwirnbindung'], fr: ['cordé en quinconce', 'cordé à montants alternés', 'cordé diagonal'],
    it: ['intreccio ritorto diagonale', 'ritorto diagonale'], es: ['cordado diagonal', 'cordado alterno'], da: ['diagonal tvinding', 'forskudt tvinding'],
  }),
  named('counteredTwining', 'countered twining', { structure: 'twined', rowSlant: 'countered' }, { en: ['counter-twined', 'countered twined', 'counter twining'], de: ['Zwirnbindung mit wechselnder Neigung', 'wechselnde Zwirnbindung'], fr: ['cordé alterné S et Z'], es: ['cordado en S y Z'] }),
  named('wrappedTwining', 'wrapped twining', { structure: 'twined', wrapping: 'wrappedCrossings' }, {
    en: ['bird-cage twining', 'birdcage twining', 'wrapped twined', 'twined, wrapped', 'wrap-twined'], de: ['Zwirnbindung mit Umwicklung', 'umwickelte Zwirnbindung'], fr: ['cordé à croisées', 'cordé lié'], it: ['ritorto avvolto'], da: ['omviklet tvinding'],
  }),
  named('tuftedTwining', 'twining with pile', { structure: 'twined', pile: 'present' }, {
    en: ['twined with pile', 'tufted twining', 'twining with tufts', 'fleece-like twining', 'pile twining'], de: ['Vliesgeflecht', 'Florgeflecht'], fr: ['cordé à poils', 'cordé à mèches', 'cordé à franges de poils'],
    it: ['intreccio con ciuffi', 'ritorto a vello'], es: ['cordado con pelo', 'cordado con mechones'], da: ['tvinding med luv', 'tvinding med flos'],
  }),
];

const ROWS = ['twined', 'coiled'];
const SPACED = [...ROWS, 'woven', 'plaited', 'looped', 'sprang', 'linked'];

// biome-ignore format: one language a line
const SPACING: readonly DescriptionWord[] = [
  word({ spacingClass: 'open' }, {
    en: ['rows not touching', 'not touching', 'open', 'openwork', 'rows apart', 'rows spaced', 'widely spaced', 'open spaced', 'rows stand apart'], de: ['offen', 'mit Abstand', 'weit', 'Reihen mit Abstand', 'mit Reihenabstand', 'weitständig'],
    fr: ['ouvert', 'ajouré', 'rangs espacés', 'espacé', 'à rangs espacés'], it: ['aperto', 'file distanziate', 'spaziato', 'a giorno', 'rado'], es: ['abierto', 'calado', 'filas separadas', 'espaciado'], da: ['åben', 'med afstand', 'åbent', 'åbne', 'spredte rækker'], no: ['åpen', 'med avstand', 'åpent'],
  }, { when: SPACED }),
  word({ spacingClass: 'open' }, { en: ['spaced', 'wide'] }, { when: ROWS }),
  word({ spacingClass: 'semi-open' }, {
    en: ['semi-open', 'half-open', 'semi open', 'semiopen', 'slightly open'], de: ['halboffen', 'halb offen'], fr: ['semi-ouvert', 'demi-ouvert'], it: ['semiaperto', 'semi aperto'], es: ['semiabierto', 'semi abierto'], da: ['halvåben', 'halvåbent', 'halvåbne'], no: ['halvåpen'],
  }, { when: SPACED }),
  word({ spacingClass: 'close' }, {
    en: ['close', 'closed', 'compact', 'dense', 'densely woven', 'closely woven', 'tightly woven', 'tightly set', 'rows touch', 'rows touching', 'touching rows', 'closely packed', 'tightly packed', 'without gaps', 'no gaps', 'close-set', 'closely spaced', 'close rows'], de: ['dicht', 'eng', 'ohne Abstand', 'geschlossen', 'Reihen berühren sich', 'dichtstehend', 'dicht gewebt', 'eng gewebt'],
    fr: ['serré', 'jointif', 'rangs jointifs', 'rangs serrés', 'compact', 'dense'], it: ['serrato', 'compatto', 'fitto', 'denso', 'file accostate'], es: ['cerrado', 'compacto', 'apretado', 'tupido', 'denso', 'filas juntas'], da: ['tæt', 'tætte rækker', 'tætstillede'], no: ['tett'],
  }, { when: SPACED }),
  word({ spacingClass: 'close' }, { en: ['tight'] }, { when: ROWS }),
];

// biome-ignore format: one language a line
const ENGAGING: readonly DescriptionWord[] = [
  word({ engagement: 'simple' }, { en: ['simple', 'plain', 'over single warps', 'regular'], de: ['einfach', 'unversetzt'], fr: ['simple'], it: ['semplice'], es: ['simple', 'sencillo'], da: ['enkel', 'enkelt', 'simpel', 'enkle'], no: ['enkel'] }, { when: ['twined'] }),
  word({ engagement: 'diagonal' }, { en: ['diagonal', 'diag.', 'alternate pairs', 'twilled', 'alternate-pair', 'split pairs', 'alternate warp pairs'], de: ['diagonal', 'versetzt', 'alternierende Paare'], fr: ['diagonal', 'en quinconce', 'à montants alternés', 'quinconce'], it: ['diagonale', 'a coppie alternate'], es: ['diagonal', 'alterno', 'pares alternos'], da: ['diagonal', 'forskudt', 'forskudte par'], no: ['diagonal', 'forskjøvet'] }, { when: ['twined'] }),
];

// biome-ignore format: one language a line
const SLANTING: readonly DescriptionWord[] = [
  word({ structure: 'twined', rowSlant: 'S' }, { en: ['S-twined', 'S-twining', 'S twining', 'S-slant twining', 'S-twist twining'], de: ['S-Zwirnbindung'], fr: ['cordé en S', 'cordé S'], it: ['ritorto a S', 'ritorto S'], es: ['cordado en S', 'cordado S'], da: ['S-tvinding'] }),
  word({ structure: 'twined', rowSlant: 'Z' }, { en: ['Z-twined', 'Z-twining', 'Z twining', 'Z-slant twining', 'Z-twist twining'], de: ['Z-Zwirnbindung'], fr: ['cordé en Z', 'cordé Z'], it: ['ritorto a Z', 'ritorto Z'], es: ['cordado en Z', 'cordado Z'], da: ['Z-tvinding'] }),
  word({ rowSlant: 'S' }, { en: ['rows leaning S', 'leaning S', 'S slant', 'S-slanting', 'slant S', 'S rows', 'rows S', 'S'], de: ['S-Neigung', 'Neigung S', 'S-geneigt', 'Reihen S'], fr: ['en S', 'inclinaison S', 'rangs en S'], it: ['a S', 'inclinazione S', 'inclinazione a S'], es: ['en S', 'inclinación S', 'inclinación en S'], da: ['S-hældning', 'hældning S'] }, { when: ['twined'] }),
  word({ rowSlant: 'Z' }, { en: ['rows leaning Z', 'leaning Z', 'Z slant', 'Z-slanting', 'slant Z', 'Z rows', 'rows Z', 'Z'], de: ['Z-Neigung', 'Neigung Z', 'Z-geneigt', 'Reihen Z'], fr: ['en Z', 'inclinaison Z', 'rangs en Z'], it: ['a Z', 'inclinazione Z', 'inclinazione a Z'], es: ['en Z', 'inclinación Z', 'inclinación en Z'], da: ['Z-hældning', 'hældning Z'] }, { when: ['twined'] }),
  word({ rowSlant: 'countered' }, { en: ['countered', 'S and Z rows', 'S and Z', 'Z and S', 'alternating S and Z', 'rows S and Z', 'counter-slanted', 'rows of alternating slant', 'alternating slant', 'alternate rows S and Z', 'alternating rows S and Z', 'alternate S and Z rows', 'alternating S and Z rows'], de: ['wechselnd geneigt', 'S- und Z-Reihen', 'abwechselnd S und Z', 'gegenläufig', 'wechselnde Neigung'], fr: ['alternativement S et Z', 'S et Z alternés', 'inclinaison alternée'], it: ['alternativamente S e Z', 'S e Z alternate', 'controbilanciato'], es: ['alternando S y Z', 'S y Z alternas'], da: ['skiftevis S og Z', 'S- og Z-rækker'] }, { when: ['twined'] }),
];

// biome-ignore format: one language a line
const STRANDS: readonly DescriptionWord[] = [
  word({ strandsPerRow: '2' }, { en: ['two-strand', '2-strand', 'two strand', 'paired strands', 'two-element'], de: ['zweisträngig', 'zweifädig', 'mit zwei Elementen'], fr: ['à deux brins', 'à 2 brins'], it: ['a due capi', 'a due elementi', 'a 2 capi'], es: ['de dos cabos', 'de dos elementos'], da: ['tostrenget', 'totrådet'] }, { when: ['twined'] }),
  word({ strandsPerRow: '3' }, { en: ['three-strand', '3-strand', 'three strand', 'three-element', 'braid twining', 'braided twining'], de: ['dreisträngig', 'dreifädig', 'mit drei Elementen'], fr: ['à trois brins', 'à 3 brins'], it: ['a tre capi', 'a tre elementi', 'a 3 capi'], es: ['de tres cabos', 'de tres elementos'], da: ['trestrenget', 'tretrådet'] }, { when: ['twined'] }),
  word({ strandsPerRow: '4' }, { en: ['four-strand', '4-strand', 'four strand'], de: ['viersträngig', 'vierfädig'], fr: ['à quatre brins'], it: ['a quattro capi'], es: ['de cuatro cabos'], da: ['firstrenget'] }, { when: ['twined'] }),
  word({ structure: 'twined', strandsPerRow: '3' }, { en: ['three-strand twining', '3-strand twining', 'three-strand twined'], de: ['dreisträngige Zwirnbindung'], fr: ['cordé à trois brins'], it: ['ritorto a tre capi'], es: ['cordado de tres cabos'] }),
];

export const TWINED_WORDS: readonly DescriptionWord[] = [
  ...KINDS_OF_TWINING,
  ...SPACING,
  ...ENGAGING,
  ...SLANTING,
  ...STRANDS,
  // Accent and place tell these from rope and from twisted thread.
  word({ structure: 'twined' }, { fr: ['cordé', 'cordée', 'cordés', 'cordées'] }, { accented: true }),
  word({ structure: 'twined' }, { it: ['ritorto'] }, { weak: true }),
];
