import type { AttributeDefinition, Register, Vocabulary } from '../../attributes/definition.ts';
import { isKnownTerm } from '../../attributes/matching.ts';
import { readNothing } from '../../cells/nothing.ts';
import { readCell } from '../../cells/read-cell.ts';
import { convert } from '../../cells/units.ts';
import { presenceInWords } from '../../cells/wording/presence-words.ts';
import { classInWords, MEASURES } from '../reading/read-spacing-words.ts';
import type { ColumnEvidence } from './column-evidence.ts';
import {
  beyond,
  contradicts,
  FEWEST,
  firstNumber,
  median,
  NEUTRAL,
  type Support,
  speaks,
} from './support.ts';
import { supportOfNames } from './support-of-names.ts';

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
      return givesClasses(attribute, said, register) ?? ofNumbers(attribute, evidence, said, unit);
    case 'binary':
    case 'presence':
      return ofYesNo(attribute, evidence, said);
    default:
      return ofWords(attribute, evidence, said, register, named);
  }
}

export const YES_NO =
  /^(?:x|\+|y|n|t|f|true|false|yes|no|ja|nein|oui|non|sì|si|sí|nej|nei|present|absent|vrai|faux|vorhanden|nicht vorhanden|présent|absente?)$/i;

const saysYesNo = (said: readonly string[]): boolean =>
  said.length <= 3 && said.every((text) => YES_NO.test(text));

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

/** "Rows touch" in a column of spacings gives the class instead of the measure. */
function givesClasses(
  attribute: AttributeDefinition,
  said: readonly string[],
  register: Register,
): Support | null {
  if (!MEASURES.has(attribute.id)) return null;
  const words = said.filter((text) => firstNumber(text) === null);
  if (words.length < 0.5 * said.length || words.some((text) => classInWords(text, register) === null))
    return null;
  return speaks('its cells say how far the rows are apart in words');
}

function ofNumbers(
  attribute: AttributeDefinition,
  evidence: ColumnEvidence,
  said: readonly string[],
  unit: string | undefined,
): Support {
  const numbers = said.map(firstNumber).filter((value) => value !== null);
  if (attribute.unit === 'year') return ofYears(evidence, said);
  if (evidence.filled >= FEWEST && numbers.length < 0.5 * said.length)
    return contradicts('its cells are words rather than numbers');
  if (numbers.length === 0) return NEUTRAL;
  if (attribute.id === 'quantity') return ofCounts(evidence, said);
  if (attribute.unit !== undefined && unit === undefined && areSmallCodes(evidence, said))
    return contradicts(
      `its cells are codes (${[...said].sort().slice(0, 4).join(', ')}) rather than measurements`,
    );
  const negative = said.filter((text) => /^[-−–]\s?\d/.test(text));
  if (
    attribute.transform === 'log' &&
    evidence.filled >= FEWEST &&
    negative.some((text) => !/^[-−–]9+$/.test(text))
  )
    return beyond('some of its numbers are below nought');
  const middle = inUnit(median(numbers), unit, attribute.unit);
  const { limit, usual } = attribute.plausible ?? {};
  if (middle !== null && limit !== undefined && (middle < limit[0] || middle > limit[1]))
    return beyond(`its middle value of ${shown(middle)} is hardly possible${unitText(attribute)}`);
  if (usual !== undefined && middle !== null && middle >= usual[0] && middle <= usual[1])
    return speaks(`its middle value of ${shown(middle)} is usual${unitText(attribute)}`);
  if (usual === undefined && limit !== undefined) return speaks('its numbers are in range');
  return NEUTRAL;
}

const unitText = ({ unit }: AttributeDefinition): string => (unit === undefined ? '' : ` in ${unit}`);
const shown = (value: number): string => String(Number(value.toPrecision(3)));

/** The value in the attribute's unit; as it is where no unit is stated; null where it cannot be turned. */
function inUnit(value: number, from: string | undefined, to: string | undefined): number | null {
  if (from === undefined || to === undefined) return value;
  try {
    return convert([value, value], from, to)[0];
  } catch {
    return null;
  }
}

/** Two to five different whole numbers from 0 to 9 in many cells: grades or codes, not sizes. */
function areSmallCodes(evidence: ColumnEvidence, said: readonly string[]): boolean {
  return (
    evidence.filled >= 6 &&
    said.length >= 2 &&
    said.length <= 5 &&
    said.includes('0') &&
    said.every((text) => /^\d$/.test(text))
  );
}

function ofCounts(evidence: ColumnEvidence, said: readonly string[]): Support {
  if (said.every((text) => /^\d+(?:[.,](?:0|5|00|50))?$/.test(text)))
    return evidence.filled >= 2 ? speaks('its cells are whole or half counts') : NEUTRAL;
  return contradicts('its cells are no counts');
}

const CALENDAR_DAY =
  /^\d{4}-\d{2}-\d{2}|^\d{1,2}[./]\d{1,2}[./](?:19|20)?\d{2}$|\b(?:19|20)\d{2}-\d{2}\b|\d{1,2}:\d{2}/;

function ofYears(evidence: ColumnEvidence, said: readonly string[]): Support {
  if (evidence.filled < FEWEST) return NEUTRAL;
  if (said.filter((text) => CALENDAR_DAY.test(text)).length > 0.5 * said.length)
    return contradicts('its cells are calendar days, as of a recording');
  const years = said.filter((text) =>
    /\d{3,}|\d\s*(?:b\.?\s?c|a\.?\s?d|b\.?\s?p|c\.?\s?e|v\.|n\.|cent|jh|s\.)|century|siècle|jahrh|secolo|siglo/i.test(
      text,
    ),
  );
  if (years.length >= 0.6 * said.length) return speaks('its cells look like years or centuries');
  const bare = said.filter((text) => /^\d{1,2}(?:[.,]\d+)?$/.test(text)).length;
  return bare > 0.6 * said.length ? contradicts('its numbers are too small for years') : NEUTRAL;
}

function ofWords(
  attribute: AttributeDefinition,
  evidence: ColumnEvidence,
  said: readonly string[],
  register: Register,
  named: boolean,
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
