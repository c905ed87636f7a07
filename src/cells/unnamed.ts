import type { AttributeDefinition } from '../attributes/definition.ts';
import type { CellContext } from './context.ts';
import { emptyTerm, quote, readAs } from './notes.ts';
import type { TermReading } from './reading.ts';
import { translated } from './terms.ts';
import { foldCell } from './text.ts';
import { nothingInWords } from './wording/nothing-in-words.ts';

const PLACE =
  '(?:fo|fundangaben?|origin|origine|origen|oprindelse|fundort|fundstelle|fundplatz|prov|provenance|provenience|provenienz|proveniens|provenienza|procedencia|herkunft|findspot|find spot|site|lieu|luogo|lugar|fundsted|funnsted)';
const UNKNOWN =
  '(?:uviss?t?|unbek|unbekannt|unknown|not known|inconnue?|ign|ignot[ao]|sconosciut[ao]|desconocid[ao]|ukendt|ukjent|n/?k)';
const PHASED =
  '(?:phased?|periods?|periode|period[eo]|fase|zugeordnet|zugewiesen|zuordenbar|attribu\\p{L}*|assegnat\\p{L}*|asignad\\p{L}*|henfort|dated|datiert|date|datat[ao]|datad[ao])';
const DOUBTED =
  '(?:uviss?t?|unsicher|fraglich|uncertain|doubtful|incertaine?|incert[ao]|inciert[ao]|usikke[rt])';
const WITHOUT = '(?:o|ohne|without|no|sans|s|senza|sin|uden|uten)';
const LAYER = '(?:strat\\p{L}*|schicht\\p{L}*|estratigr\\p{L}*|strato|couche|kontekst|context)';

/** "unprov.", "FO unbek.", "o. FO", "unstrat.", "hors stratigraphie": no place and no layer is named. */
const UNNAMED = new RegExp(
  `^(?:unprov\\p{L}*|unstrat\\p{L}*|ustratific\\p{L}*|ustratifis\\p{L}*|u/s|${PLACE}\\.? ${UNKNOWN}|${UNKNOWN}(?:er|es|e)?(?:\\.? ${PLACE})?|` +
    `${WITHOUT}\\.? ?(?:${PLACE}|ort|o)(?:angabe)?|${PLACE}\\?|(?:phase|period|fase|periode|periodo|epoca|epoque|zeitstellung|datierung) (?:${UNKNOWN}|${DOUBTED})|${PLACE} ${DOUBTED} ?\\??|s\\. ?l|(?:surface,? )?unlocated|unphased|(?:${WITHOUT}|not|nicht|non|ikke)\\.? ${PHASED}|(?:nicht|non|no|not|ikke) ${LAYER}|(?:hors|fuori|fuera de|sin|ohne|uden|uten) (?:de )?${LAYER}|stray(?: find)?|streufund|losfund|lesefund|erratico|sporadico)\\.?$`,
  'u',
);

/** A cell that says that no name is known, where a name should stand; null where it may be a name. */
export function readUnnamed(
  text: string,
  attribute: AttributeDefinition,
  context: CellContext,
): TermReading | null {
  if (text.length > 60 || translated(text, context) !== undefined) return null;
  const folded = foldCell(text)
    .replace(/[.,;]+$/u, '')
    .trim();
  // "Altfund, o. Fundort": how it came to be there, and that nobody knows where.
  const behind =
    /^(?:altfund|altbestand|old find|ancienne collection|vecchia collezione|coleccion antigua|gammelt fund|streufund|lesefund|surface find), ?(.+)$/u.exec(
      folded,
    )?.[1];
  if (
    !UNNAMED.test(folded) &&
    !(behind !== undefined && UNNAMED.test(behind)) &&
    nothingInWords(text, attribute) === null
  )
    return null;
  return emptyTerm('not-observed', [readAs('unnamed', `${quote(text)} says that no name is known`)]);
}
