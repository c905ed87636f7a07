import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { readNothing } from '../../cells/nothing.ts';
import { presenceInWords } from '../../cells/wording/presence-words.ts';
import type { ColumnEvidence } from './column-evidence.ts';
import { contradicts, FEWEST, NEUTRAL, type Support, speaks } from './support.ts';
import { supportOfNumbers } from './support-of-numbers.ts';
import { supportOfWords } from './support-of-words.ts';
import { YES_NO } from './yes-no.ts';

/**
 * Weighs a column's cells against an attribute that its header may name.
 * - Numbers: codes (a handful of small whole numbers, under a header that states no unit) are no measurement;
 *   the middle value should be possible in the unit.
 * - Kinds of a vocabulary: some of the wordings must be terms of it.
 * - Yes/no: cells must say so; and cells that say yes or no are no names, kinds or places.
 * Fewer than three filled cells say nothing against.
 *
 * @param named the header is the attribute's own name, which leaves no second meaning to a term.
 */
export function columnSupport(
  attribute: AttributeDefinition,
  evidence: ColumnEvidence,
  register: Register,
  unit?: string,
  named = false,
): Support {
  const said = evidence.distinct.filter((text) => readNothing(text) === null || YES_NO.test(text));
  if (evidence.filled === 0 || said.length === 0) return NEUTRAL;
  switch (attribute.scale) {
    case 'ratio':
    case 'interval':
      return supportOfNumbers(attribute, { evidence, said, unit, named }, register);
    case 'binary':
    case 'presence':
      return ofYesNo(attribute, evidence, said);
    default:
      return supportOfWords(attribute, { evidence, said, named }, register);
  }
}

function ofYesNo(attribute: AttributeDefinition, evidence: ColumnEvidence, said: readonly string[]): Support {
  if (said.length <= 4 && said.every((text) => YES_NO.test(text) || /^[01]$/.test(text)))
    return speaks('its cells say yes or no');
  if (evidence.filled < FEWEST) return NEUTRAL;
  const yes = said.filter(
    (text) =>
      YES_NO.test(text) || /^(?:[01]|[x+]{1,3}|\?)$/.test(text) || presenceInWords(text, attribute) !== null,
  ).length;
  return yes < 0.5 * said.length ? contradicts('its cells do not say yes or no') : NEUTRAL;
}
