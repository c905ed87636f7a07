import type { AttributeDefinition, Register, Vocabulary } from '../../attributes/definition.ts';
import { isKnownTerm } from '../../attributes/matching.ts';
import { readCell } from '../../cells/read-cell.ts';
import type { ColumnEvidence } from './column-evidence.ts';
import { contradicts, FEWEST, NEUTRAL, type Support, speaks } from './support.ts';
import { supportOfNames } from './support-of-names.ts';
import { areNoughtAndOne, saysYesNo } from './yes-no.ts';

interface SaidWords {
  readonly evidence: ColumnEvidence;
  /** Different cells that say something. */
  readonly said: readonly string[];
  readonly named: boolean;
}

/** What cells say of an attribute of names or of terms of a vocabulary. */
export function supportOfWords(
  attribute: AttributeDefinition,
  { evidence, said, named }: SaidWords,
  register: Register,
): Support {
  const vocabulary = register.vocabularies.get(attribute.vocabulary ?? '');
  const enough = evidence.filled >= FEWEST;
  if (enough && attribute.scale !== 'text' && evidence.identifiers > 0.8)
    return contradicts('its cells look like identifiers');
  if (vocabulary !== undefined && vocabulary.terms.length > 0) {
    const terms = said.filter((text) => namesTerm(text, attribute, vocabulary, register));
    // One of several wordings may be a word of two meanings: under "Species", "oak" is a fibre or a timber.
    const some = named || terms.length === said.length ? 1 : FEWEST_TERMS;
    if (terms.length >= Math.max(some, LEAST_TERMS * said.length))
      return speaks(`${terms.length} of its ${said.length} wordings are terms of "${attribute.label}"`);
    if (enough && terms.length === 0)
      return contradicts(`none of its wordings is a term of "${attribute.label}"`);
    return NEUTRAL;
  }
  if (enough && saysYesNo(said)) return contradicts('its cells say yes or no');
  if (areNoughtAndOne(evidence, said)) return contradicts('its cells are 0 and 1');
  return supportOfNames(attribute, evidence, said);
}

/** Share of the wordings that must be terms for a column to be one of the vocabulary. */
const LEAST_TERMS = 0.3;
const FEWEST_TERMS = 2;

/** A wording that the vocabulary holds, or that the reader of cells makes a term of: "wool, silk", "tabby?". */
function namesTerm(
  text: string,
  attribute: AttributeDefinition,
  vocabulary: Vocabulary,
  register: Register,
): boolean {
  if (isKnownTerm(text, vocabulary)) return true;
  if (/^\d*$/.test(text)) return false;
  const reading = readCell(text, attribute, { decimal: '.', vocabulary, register });
  return reading.kind === 'term' && reading.term !== null;
}
