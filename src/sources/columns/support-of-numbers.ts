import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { readCell } from '../../cells/read-cell.ts';
import { convert } from '../../cells/units.ts';
import { classInWords, MEASURES } from '../reading/read-spacing-words.ts';
import { isCalendarDay } from './calendar-day.ts';
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
import { areNoughtAndOne } from './yes-no.ts';

interface SaidNumbers {
  readonly evidence: ColumnEvidence;
  /** Different cells that say something. */
  readonly said: readonly string[];
  readonly unit: string | undefined;
  readonly named: boolean;
}

/** What cells say of a measurement: are they numbers, possible ones, and not codes or classes? */
export function supportOfNumbers(
  attribute: AttributeDefinition,
  { evidence, said, unit, named }: SaidNumbers,
  register: Register,
): Support {
  const classes = givesClasses(attribute, said, register);
  if (classes !== null) return classes;
  const numbers = said.map(firstNumber).filter((value) => value !== null);
  if (attribute.unit === 'year') return ofYears(attribute, { evidence, said, unit, named }, register);
  if (areTwoClasses(evidence, said)) return contradicts(`its cells are two classes (${said.join(', ')})`);
  if (evidence.filled >= FEWEST && numbers.length < 0.5 * said.length)
    return contradicts('its cells are words rather than numbers');
  if (numbers.length === 0) return NEUTRAL;
  if (attribute.id === 'quantity') return ofCounts(evidence, said);
  if (attribute.unit !== undefined && !(named && unit !== undefined) && areNoughtAndOne(evidence, said))
    return contradicts('its cells are 0 and 1');
  if (attribute.id === 'area' && unit === undefined && numberParts(evidence, said))
    return contradicts('its cells number the areas of an excavation');
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

/** "<6m" and ">6m" alone: on which side of one bound, not how much. */
function areTwoClasses(evidence: ColumnEvidence, said: readonly string[]): boolean {
  const [one, other] = said.map((text) => text.replace(/\s/g, ''));
  if (evidence.filled < 4 || said.length !== 2 || one === undefined || other === undefined) return false;
  const bare = (text: string) => text.replace(/^[<>≤≥]=?/, '');
  return (
    /^[<≤]/.test(one) !== /^[<≤]/.test(other) &&
    bare(one) === bare(other) &&
    bare(one) !== one &&
    bare(other) !== other
  );
}

/**
 * Two to five different whole numbers from 0 to 9 in many cells: grades or codes, not sizes. Without a nought they
 * may be sizes to the centimetre, unless very many cells hold three of them or fewer.
 */
function areSmallCodes(evidence: ColumnEvidence, said: readonly string[]): boolean {
  if (evidence.filled < 6 || said.length < 2 || !said.every((text) => /^\d$/.test(text))) return false;
  return said.includes('0') ? said.length <= 5 : said.length <= 3 && evidence.filled >= MANY_CODED;
}
const MANY_CODED = 20;

/** Small whole numbers that come again: the parts of a site have them, and surfaces of finds do not. */
const numberParts = (evidence: ColumnEvidence, said: readonly string[]): boolean =>
  evidence.filled >= 4 &&
  said.length <= 0.7 * evidence.filled &&
  said.every((text) => /^\d{1,2}$/.test(text));

function ofCounts(evidence: ColumnEvidence, said: readonly string[]): Support {
  if (said.every((text) => /^\d+(?:[.,](?:0|5|00|50))?$/.test(text)))
    return evidence.filled >= 2 ? speaks('its cells are whole or half counts') : NEUTRAL;
  return contradicts('its cells are no counts');
}

function ofYears(
  attribute: AttributeDefinition,
  { evidence, said, named }: SaidNumbers,
  register: Register,
): Support {
  // "1469.25" is a price or a level; under "Date" itself it may be a year and its fraction.
  const fine = said.filter((text) => /^[-−–]?\d+[.,]\d{2,}$/.test(text));
  if (!named && evidence.filled >= FEWEST && fine.length > 0.5 * said.length)
    return contradicts('its cells are measurements rather than years');
  if (evidence.filled > 1 && said.filter(isCalendarDay).length > 0.5 * said.length)
    return contradicts('its cells are calendar days, as of a recording');
  if (evidence.filled < FEWEST) return NEUTRAL;
  const years = said.filter((text) =>
    /\d{3,}|\d\s*(?:b\.?\s?c|a\.?\s?d|b\.?\s?p|c\.?\s?e|v\.|n\.|cent|jh|s\.)|century|siècle|jahrh|secolo|siglo/i.test(
      text,
    ),
  );
  if (years.length >= 0.6 * said.length) return speaks('its cells look like years or centuries');
  if (years.length === 0 && !said.some((text) => isDate(text, attribute, register)))
    return contradicts('none of its cells is read as a year');
  const bare = said.filter((text) => /^\d{1,2}(?:[.,]\d+)?$/.test(text)).length;
  return bare > 0.6 * said.length ? contradicts('its numbers are too small for years') : NEUTRAL;
}

function isDate(text: string, attribute: AttributeDefinition, register: Register): boolean {
  const reading = readCell(text, attribute, { decimal: '.', register });
  return reading.kind === 'numeric' && Number.isFinite(reading.low) && Number.isFinite(reading.high);
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
