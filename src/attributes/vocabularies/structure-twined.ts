import type { Term } from '../definition.ts';
import { EMERY, family } from './term.ts';

const twined = family(EMERY);

// biome-ignore format: one language a line
export const TWINED: readonly Term[] = [
  twined('twined', null, 'twined', 'Two or more active elements twist about each other, enclosing passives.', {
    en: ['twining', 'twined weave', 'twined fabric', 'pairing', 'weft-twined fabric'], de: ['Zwirnbindung', 'Zwirngeflecht', 'zwirnbindig', 'gezwirnt gebunden'],
    fr: ['étoffe cordée', 'tissu cordé', 'vannerie cordée'], it: ['intreccio ritorto', 'a struttura ritorta', 'cordato'],
    es: ['cordado', 'cestería atada', 'cestería cordada', 'torzal'], da: ['tvinding', 'tvundet', 'snoet fletning'],
  }),
  twined('openTwining', 'twined', 'open twining', 'Rows stand apart with the passives clearly visible between them.', {
    en: ['open twined', 'spaced twining', 'open simple twining', 'openwork twining', 'open-twined'],
    de: ['Zwirnbindung mit Abstand', 'offene Zwirnbindung', 'Zwirngeflecht mit Abstand', 'weite Zwirnbindung'],
    fr: ['cordé espacé', 'cordé ajouré', 'cordé ouvert'], it: ['intreccio ritorto aperto', 'ritorto aperto'],
    es: ['cordado abierto', 'cordado espaciado'], da: ['åben tvinding'],
  }),
  twined('semiOpenTwining', 'twined', 'semi-open twining', 'A small gap between the rows.', {
    en: ['semi-open twined', 'half-open twining'], de: ['halboffene Zwirnbindung'], fr: ['cordé semi-ouvert'], it: ['intreccio ritorto semiaperto'], es: ['cordado semiabierto'], da: ['halvåben tvinding'],
  }),
  twined('closeTwining', 'twined', 'close twining', 'Rows touch.', {
    en: ['compact twining', 'tight twining', 'close twined', 'close-twined', 'close simple twining'],
    de: ['dichte Zwirnbindung', 'enge Zwirnbindung', 'dichtes Zwirngeflecht'], fr: ['cordé serré'], it: ['intreccio ritorto serrato', 'ritorto serrato'],
    es: ['cordado cerrado', 'cordado compacto'], da: ['tæt tvinding'],
  }),
  twined('weftTwining', 'twined', 'weft-twining', 'The active pair runs across the item.', { en: ['weft twined', 'weft twining'], de: ['Schusszwirnbindung'], fr: ['cordé de trame'], it: ['ritorto di trama'], es: ['cordado de trama'], da: ['skudtvinding'] }),
  twined('warpTwining', 'twined', 'warp-twining', 'The active pair runs along the item.', { en: ['warp twined', 'warp twining'], de: ['Kettzwirnbindung'], fr: ['cordé de chaîne'], it: ['ritorto di ordito'], es: ['cordado de urdimbre'], da: ['trendtvinding'] }),
  twined('diagonalTwining', 'twined', 'diagonal twining', 'Pairs of passives alternate by one each row.', {
    en: ['alternate-pair twining', 'twilled twining', 'twill twining'], de: ['versetzte Zwirnbindung', 'diagonale Zwirnbindung'], fr: ['cordé en quinconce', 'cordé à montants alternés'],
    it: ['intreccio ritorto diagonale'], es: ['cordado diagonal', 'cordado alterno'], da: ['diagonal tvinding'],
  }),
  twined('counteredTwining', 'twined', 'countered twining', 'Alternate rows lean S and Z.', { en: ['counter-twined', 'countered twined'] }),
  twined('wrappedTwining', 'twined', 'wrapped twining', 'One rigid passive system crosses; one active element wraps the crossings.', {
    en: ['bird-cage twining', 'wrapped'], de: ['Wickelbindung', 'Umwicklung'], fr: ['lié', 'à croisées'], it: ['avvolto'], es: ['enrollado'], da: ['omviklet'],
  }),
  twined('tuftedTwining', 'twined', 'twining with pile', 'Bundles inserted in the rows hang on one face.', {
    en: ['twined with pile', 'tufted twining', 'twining with tufts', 'fleece-like twining', 'pile twining'], de: ['Vliesgeflecht', 'Florgeflecht'], fr: ['cordé à poils', 'cordé à mèches'],
    it: ['intreccio con ciuffi', 'ritorto a vello'], es: ['cordado con pelo', 'cordado con mechones'], da: ['tvinding med luv', 'med flos'],
  }),
];
