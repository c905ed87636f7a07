import type { Term } from '../definition.ts';
import { EMERY, family } from './term.ts';

const twined = family(EMERY);

/** Twining is one way to engage; how open, how diagonal, how slanting it is are facets (structure-words-twined.ts). */
// biome-ignore format: one language a line
export const TWINED: readonly Term[] = [
  twined('twined', null, 'twined', 'Two or more active elements twist about each other, enclosing passives.', {
    en: ['twining', 'twined weave', 'twined fabric', 'twined basketry', 'twined textile', 'twined work', 'twinings'],
    de: ['Zwirnbindung', 'Zwirngeflecht', 'zwirnbindig', 'gezwirnt gebunden', 'Zwirnbindungsgeflecht', 'zwirngebunden', 'Zwirnbinden'],
    fr: ['étoffe cordée', 'tissu cordé', 'vannerie cordée', 'cordage des montants', 'technique cordée', 'structure cordée'], it: ['intreccio ritorto', 'a struttura ritorta', 'cordato', 'struttura ritorta', 'intreccio cordato'],
    es: ['cordado', 'cestería atada', 'cestería cordada', 'torzal', 'tejido cordado', 'encordado', 'tejido encordado'], da: ['tvinding', 'tvundet', 'snoet fletning', 'tvindet'], no: ['tvinnet fletning', 'tvinnebinding'],
  }, { noun: 'twining' }),
];
