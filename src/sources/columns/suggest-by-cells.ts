import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { isKnownTerm, matchAttribute, splitHeader } from '../../attributes/matching.ts';
import { meaningOf } from '../../cells/descriptions/meaning.ts';
import { readNothing } from '../../cells/nothing.ts';
import { unitDimension } from '../../cells/units.ts';
import { type ColumnEvidence, holdsNoNumbers } from './column-evidence.ts';
import type { ColumnPlan } from './column-plan.ts';

/** What the cells of a column say of it where its header says little. */

const FEWEST = 2;
const ENOUGH = 0.6;
/** Threads are seldom thicker than this in mm, and counts seldom lower per cm. */
const LEAST_COUNT = 3;
/** A header that says more than this is believed before the cells. */
const SURE = 0.9;
const TWIST = /^[SZ](?:\d?[SZ])?\??$|^[SZ]\s?[/x]\s?[SZ]$/iu;

/** Attributes whose cells can be told from their wordings, each with the one that takes a second column. */
const BY_TERMS: readonly (readonly [id: string, second: string | null])[] = [
  ['structure', null],
  ['fibre', 'fibre2'],
  ['preservation', null],
];

/**
 * A column without an attribute, or with a weak suggestion, is suggested for the attribute whose terms fill
 * its cells; a suggestion of a measurement is withdrawn where the cells hold no numbers.
 * @param held whether an attribute has its column already.
 */
export function suggestByCells(
  plan: ColumnPlan,
  evidence: ColumnEvidence,
  register: Register,
  held: (id: string) => boolean,
): ColumnPlan {
  if (plan.via !== undefined || (plan.status !== 'suggested' && plan.status !== 'unknown')) return plan;
  const names = byNames(plan, evidence, register, held);
  if (names !== null) return names;
  const withdrawn = countsOrDiameters(withoutNumbers(plan, evidence, register), evidence, register);
  if ((withdrawn.suggestion?.score ?? 0) >= SURE) return withdrawn;
  const wordings = evidence.distinct.filter((text) => readNothing(text) === null && /\p{L}/u.test(text));
  const twist = byTwist(plan.header, wordings, register, held);
  const found = (wordings.length < FEWEST ? null : byTerms(wordings, register, held)) ?? twist;
  if (found === null || found.attribute === withdrawn.suggestion?.attribute) return withdrawn;
  const { doubt: _doubt, ...rest } = withdrawn;
  return { ...rest, status: 'suggested', suggestion: found };
}

const NUMBERED =
  /(?:^|[ _.])(?:no|nr|num|number|id|nummer|numero|numéro|número|cat|kat|inv|code|label|etikett|sample)\.?$/iu;

/** A column headed like a number, in which each cell differs, names the rows where nothing else does. */
function byNames(
  plan: ColumnPlan,
  evidence: ColumnEvidence,
  register: Register,
  held: (id: string) => boolean,
): ColumnPlan | null {
  const attribute = register.attributes.get('fragment');
  if (attribute === undefined || held('fragment') || (plan.suggestion?.score ?? 0) >= SURE) return null;
  if (!evidence.allDifferent || evidence.filled < 3 || !NUMBERED.test(plan.header.trim())) return null;
  if (evidence.distinct.some((text) => /^\d*[.,]\d+$/.test(text))) return null;
  if (!areRunning(evidence.distinct)) return null;
  const { doubt: _doubt, ...rest } = plan;
  const found = suggestion(
    attribute,
    'each of its cells differs, and it is headed like a number of the finds',
  );
  return { ...rest, status: 'suggested', suggestion: found };
}

/** Numbers of finds hold figures, and plain ones go up the table: "14, 5, 31" counts something. */
function areRunning(cells: readonly string[]): boolean {
  if (!cells.some((text) => /\d/.test(text))) return false;
  if (!cells.every((text) => /^\d+$/.test(text))) return true;
  return cells.every((text, i) => i === 0 || Number(text) > Number(cells[i - 1]));
}

type Found = NonNullable<ColumnPlan['suggestion']>;

function byTerms(
  wordings: readonly string[],
  register: Register,
  held: (id: string) => boolean,
): Found | null {
  for (const [first, second] of BY_TERMS) {
    const id = held(first) ? second : first;
    const attribute = id === null || held(id) ? undefined : register.attributes.get(id);
    const vocabulary = register.vocabularies.get(attribute?.vocabulary ?? '');
    if (attribute === undefined || vocabulary === undefined) continue;
    const known = wordings.filter((text) => {
      const bare = text.replace(/\s*\(?\?\)?$/u, '');
      return isKnownTerm(bare, vocabulary) || meaningOf(bare, attribute, register) !== null;
    });
    if (known.length < Math.max(FEWEST, ENOUGH * wordings.length)) continue;
    const reason = `${known.length} of its ${wordings.length} wordings are terms of "${attribute.label}"`;
    return suggestion(attribute, reason);
  }
  return null;
}

/** A header that speaks of turning is believed with one letter in all its cells; any other needs both. */
function byTwist(
  header: string,
  wordings: readonly string[],
  register: Register,
  held: (id: string) => boolean,
): Found | null {
  const named = TURNING.test(header);
  if (wordings.length < (named ? 1 : FEWEST) || !wordings.every((text) => TWIST.test(text.trim())))
    return null;
  const system = SECOND.test(header) ? '2' : FIRST.test(header) ? '1' : held('twist1') ? '2' : '1';
  const attribute = register.attributes.get(`twist${system}`);
  if (attribute === undefined || held(attribute.id)) return null;
  return suggestion(attribute, 'its cells are the letters S and Z');
}

const TURNING = /twist|spin|spun|dreh|drall|torsi|torcit|torced|retors|tordu|snon|tvinn|\bply\b/i;
const FIRST = /\b1\b|\bI\b|warp|passive|kette|cha[iî]ne|ordito|urdimbre|k[æ]de|renning|varp/i;
const SECOND = /\b2\b|\bII\b|weft|active|schuss|trame|trama|skud|isl[æ]t|innslag|v[æe]ft/i;

function suggestion(attribute: AttributeDefinition, reason: string): Found {
  return { attribute: attribute.id, reason, score: 0.7, speaksFor: [reason], speaksAgainst: [], sure: false };
}

function withoutNumbers(plan: ColumnPlan, evidence: ColumnEvidence, register: Register): ColumnPlan {
  const attribute = register.attributes.get(plan.suggestion?.attribute ?? '');
  if (attribute === undefined || !holdsNoNumbers(attribute, evidence)) return plan;
  const { suggestion: _suggestion, ...rest } = plan;
  const doubt = `its header is near "${attribute.label}", but its cells hold no numbers`;
  return { ...rest, status: 'unknown', doubt };
}

/** "Warp" alone names a count or a diameter: whole numbers above what threads measure in mm are counts. */
function countsOrDiameters(plan: ColumnPlan, evidence: ColumnEvidence, register: Register): ColumnPlan {
  const system = /^diameter([12])$/.exec(plan.suggestion?.attribute ?? '')?.[1];
  const { unit } = splitHeader(plan.header);
  if (system === undefined || unit !== undefined) return thicknessInstead(plan, unit, register);
  if (!/\(mm\)|\/cm/.test(plan.suggestion?.reason ?? '')) return plan;
  const numbers = evidence.distinct
    .map((text) => Number(/\d+(?:[.,]\d+)?/.exec(text)?.[0].replace(',', '.') ?? Number.NaN))
    .filter((value) => !Number.isNaN(value))
    .sort((a, b) => a - b);
  const middle = numbers[numbers.length >> 1];
  const density = register.attributes.get(`density${system}`);
  if (middle === undefined || middle < LEAST_COUNT || density === undefined) return plan;
  const reason = `the header names the system only, and its numbers are rather counts per cm than diameters in mm`;
  return {
    ...plan,
    suggestion: {
      attribute: density.id,
      reason,
      score: 0.75,
      speaksFor: [`its middle value is ${middle}`],
      speaksAgainst: [],
      sure: false,
    },
  };
}

/** "Montants (mm)": a system beside a unit of length is how thick its threads are, not how many there are. */
function thicknessInstead(plan: ColumnPlan, unit: string | undefined, register: Register): ColumnPlan {
  const system = /^density([12])$/.exec(plan.suggestion?.attribute ?? '')?.[1];
  if (system === undefined || unit === undefined || unitDimension(unit) !== 'length') return plan;
  const diameter = register.attributes.get(`diameter${system}`);
  if (diameter === undefined) return plan;
  // "Warp spacing (mm)" is known with its unit: it is a count turned over.
  const match = matchAttribute(plan.header, register);
  if (match.kind !== 'none' && unitDimension(splitHeader(match.via).unit ?? '') === 'length') return plan;
  const found = suggestion(diameter, `the header names the system, and ${unit} measures its threads`);
  return { ...plan, suggestion: found };
}
