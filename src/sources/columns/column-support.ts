import type { AttributeDefinition, Register, Vocabulary } from '../../attributes/definition.ts';
import { isKnownTerm } from '../../attributes/matching.ts';
import { readNothing } from '../../cells/nothing.ts';
import { presenceInWords } from '../../cells/presence-words.ts';
import { readCell } from '../../cells/read-cell.ts';
import { convert } from '../../cells/units.ts';
import { classInWords, MEASURES } from '../reading/read-spacing-words.ts';
import type { ColumnEvidence } from './column-evidence.ts';

/** What the cells of a column say for and against an attribute, each in a few words. */
export interface Support {
  readonly speaksFor: readonly string[];
  readonly speaksAgainst: readonly string[];
  /** Its numbers lie beyond what is possible: a reason to doubt the cells, and of a lesser header its meaning. */
  readonly beyond?: string;
}

const NEUTRAL: Support = { speaksFor: [], speaksAgainst: [] };
const FEWEST = 3;
const speaks = (text: string): Support => ({ speaksFor: [text], speaksAgainst: [] });
const contradicts = (text: string): Support => ({ speaksFor: [], speaksAgainst: [text] });
const beyond = (text: string): Support => ({ ...NEUTRAL, beyond: text });

/**
 * Weighs a column's cells against an attribute that its header may name.
 * - Numbers: codes (a handful of small whole numbers, under a header that states no unit) are no measurement;
 *   the middle value should be possible in the unit.
 * - Kinds of a vocabulary: some of the wordings must be terms of it.
 * - Yes/no: cells must say so; and cells that say yes or no are no names, kinds or places.
 * Fewer than three filled cells say nothing against.
 */
export function columnSupport(
  attribute: AttributeDefinition,
  evidence: ColumnEvidence,
  register: Register,
  unit?: string,
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
      return ofWords(attribute, evidence, said, register);
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

function firstNumber(text: string): number | null {
  const found = /[-−–]?\d+(?:[.,]\d+)?|[½¼¾]/u.exec(text)?.[0];
  if (found === undefined || /^\p{L}{2,}/u.test(text)) return null;
  const value = Number(
    found
      .replace(',', '.')
      .replace(/[−–]/, '-')
      .replace('½', '0.5')
      .replace('¼', '0.25')
      .replace('¾', '0.75'),
  );
  return Number.isNaN(value) ? null : value;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1]!;
}

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
): Support {
  const vocabulary = register.vocabularies.get(attribute.vocabulary ?? '');
  const enough = evidence.filled >= FEWEST;
  if (enough && attribute.scale !== 'text' && evidence.identifiers > 0.8)
    return contradicts('its cells look like identifiers');
  if (vocabulary !== undefined && vocabulary.terms.length > 0) {
    const terms = said.filter((text) => namesTerm(text, attribute, vocabulary, register));
    if (terms.length >= LEAST_TERMS * said.length && terms.length > 0)
      return speaks(`${terms.length} of its ${said.length} wordings are terms of "${attribute.label}"`);
    if (enough && terms.length === 0)
      return contradicts(`none of its wordings is a term of "${attribute.label}"`);
    return NEUTRAL;
  }
  if (enough && saysYesNo(said)) return contradicts('its cells say yes or no');
  return ofNames(attribute, evidence, said);
}

/** Share of the wordings that must be terms for a column to be one of the vocabulary. */
const LEAST_TERMS = 0.3;

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

const AGE_CLASS =
  /^(?:adult|juvenile|subadult|sub-adult|infant|infans|child|old|young|mature|senile|neonate|elderly|male|female|adulto|adulte|juvénile|erwachsen|kind|jung|alt)\b/i;
const DECIMAL = /^[-−]?\d+[.,]\d+$/;

function ofNames(attribute: AttributeDefinition, evidence: ColumnEvidence, said: readonly string[]): Support {
  if (evidence.filled < FEWEST) return NEUTRAL;
  const decimals = said.filter((text) => DECIMAL.test(text)).length;
  const whole = said.filter((text) => /^[-−]?\d+$/.test(text)).length;
  switch (attribute.id) {
    case 'fragment':
    case 'catalogueNumber':
      if (decimals > 0.5 * said.length) return contradicts('its cells are measurements');
      if (evidence.allDifferent) return speaks('each of its cells differs');
      return NEUTRAL;
    case 'period':
      if (said.some((text) => AGE_CLASS.test(text)))
        return contradicts('its cells name ages of life, not periods');
      if (decimals > 0 || whole > 0.8 * said.length) return contradicts('its cells are numbers');
      return said.some((text) => PERIOD_WORD.test(text)) ? speaks('its cells name periods') : NEUTRAL;
    case 'citation':
      return whole + decimals > 0.8 * said.length
        ? contradicts('its cells are numbers')
        : said.some((text) => /\b(?:1[5-9]|20)\d{2}\b/.test(text))
          ? speaks('its cells hold years of publication')
          : NEUTRAL;
    case 'radiocarbon':
      return said.some((text) => /\d{3,5}\s*(?:±|\+\/?-)|^\p{L}{1,6}-\s?\d+/u.test(text))
        ? speaks('its cells look like radiocarbon dates')
        : whole + decimals > 0.8 * said.length && median(said.map((text) => firstNumber(text) ?? 0)) < 200
          ? contradicts('its numbers are too small for radiocarbon years')
          : NEUTRAL;
    default:
      if (attribute.scale === 'nominal' && decimals > 0.5 * said.length)
        return contradicts('its cells are measurements');
      if (attribute.scale === 'nominal' && whole + decimals === said.length && said.length > 12)
        return contradicts('its cells are numbers');
      return NEUTRAL;
  }
}

const PERIOD_WORD =
  /early|middle|late|bronze|iron|neolith|chalcolith|copper|mesolith|palaeolith|paleolith|roman|medieval|century|period|phase|dynast|früh|spät|mittel|zeit|ancien|récent|tardo|antico|antiguo|tardío|age\b|\bB[AB]\b|\bI{1,3}[ab]?\b|\bH[aA]\b/i;
