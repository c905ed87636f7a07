import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { headerUnit, type Match, splitHeader } from '../../attributes/matching.ts';
import { defaultRegister } from '../../attributes/register.ts';
import { type WordingStrength, wordingStrength } from '../../attributes/weak-words.ts';
import { headerKey } from '../../attributes/wording-index.ts';
import type { Suggestion } from '../source-reading.ts';
import { type ColumnEvidence, holdsNoNumbers } from './column-evidence.ts';
import { columnSupport } from './column-support.ts';
import { joined, nearEnough, OF_CLOTH, wordsOf } from './near-enough.ts';
import type { Support } from './support.ts';
import type { Subject } from './table-subject.ts';

/** What becomes of a header's match once its cells and the table's subject are heard. */
export type Weighed =
  | {
      readonly kind: 'take';
      readonly id: string;
      readonly via: string;
      readonly own: boolean;
      readonly doubt?: string;
    }
  | { readonly kind: 'suggest'; readonly suggestion: Suggestion }
  | { readonly kind: 'leave'; readonly doubt?: string };

/** A likeness from here on means the same words, in another order or inflection. */
const SAME_WORDS = 0.9;

/**
 * An exact header is taken unless its cells speak against it; a weak one (short, or in general use) is only
 * suggested, where its cells speak for it or the table is about cloth; a near one is suggested where its words
 * differ in nothing that changes the meaning. Nothing is suggested against what the cells say. A column under an
 * attribute's own name is taken whatever its numbers, and the doubt stated.
 *
 * @param paired the header is one of two ends of an interval, both of which the table has.
 */
export function weighMatch(
  header: string,
  match: Match,
  evidence: ColumnEvidence,
  register: Register,
  subject: Subject,
  paired = false,
): Weighed {
  if (match.kind === 'none') return oneOfSeveral(header, match, evidence, register, subject);
  const attribute = register.attributes.get(match.id)!;
  const own = isStudysOwn(attribute);
  const named = match.kind === 'exact' && (own || isOwnName(header, attribute));
  const support = columnSupport(attribute, evidence, register, headerUnit(header, attribute), named);
  const strength = own || paired ? 'strong' : strengthOf(header, match);
  const weak = strength === 'weak';
  const ofCloth = OF_CLOTH.includes(attribute.block);
  // Under an attribute's own name impossible numbers are wrong numbers, not another measure.
  const against = support.speaksAgainst[0] ?? (named ? undefined : support.beyond);
  const heard = support.speaksFor.length > 0;
  const enough = strength === 'strong' || (strength === 'craft' && (heard || subject === 'textiles'));
  if (match.kind === 'exact' && enough && against === undefined && !(ofCloth && subject === 'other' && !own))
    return {
      kind: 'take',
      id: match.id,
      via: match.via,
      own: own || isPlainName(header, attribute),
      ...(support.beyond === undefined
        ? {}
        : { doubt: `read as "${attribute.label}" by its name, though ${support.beyond}` }),
    };
  if (against !== undefined)
    return {
      kind: 'leave',
      doubt: `${match.kind === 'exact' ? 'reads as' : 'is near'} "${attribute.label}", but ${against}`,
    };
  if (subject === 'other' && (weak || ofCloth)) return { kind: 'leave' };
  // Numbers that could be a thread count could be anything; terms of a vocabulary could not.
  const numeric = attribute.scale === 'ratio' || attribute.scale === 'interval';
  if (ofCloth && numeric && subject !== 'textiles' && !own && !namesItWhole(header, match))
    return { kind: 'leave' };
  if (match.kind === 'exact') {
    if (numeric && subject !== 'textiles' && !own && isShort(header)) return { kind: 'leave' };
    if (!heard && subject !== 'textiles')
      return { kind: 'leave', doubt: `may mean "${attribute.label}", and its cells do not tell` };
    const reason = `"${header.trim()}" may mean "${attribute.label}", and other things too`;
    return suggest(attribute, reason, heard ? 0.85 : 0.6, support, heard && subject === 'textiles');
  }
  // "2 to 4 units" is a class, and no attribute that is near.
  if (/^\d+[ +–-]+\p{L}/u.test(header.trim())) return { kind: 'leave' };
  // A word in general use is no slip or inflection of a rarer one.
  if (weak && subject !== 'textiles' && !own && !/ambiguous/.test(match.reason)) return { kind: 'leave' };
  if (!nearEnough(header, match, attribute, heard, subject)) return { kind: 'leave' };
  const sameWords = match.score >= SAME_WORDS || namesItWhole(header, match);
  // Terms of one vocabulary, in a table of cloth, are no chance.
  const told =
    subject === 'textiles' && attribute.vocabulary !== undefined && !/ambiguous/.test(match.reason);
  const sure = heard && (sameWords || told) && !weak && !/is as near/.test(match.reason);
  return suggest(attribute, match.reason, match.score, support, sure);
}

/** A header that may be short for several: what its cells leave alone is asked about, and never taken. */
function oneOfSeveral(
  header: string,
  { reason, mayBe = new Map() }: Match & { readonly kind: 'none' },
  evidence: ColumnEvidence,
  register: Register,
  subject: Subject,
): Weighed {
  const left = [...mayBe.keys()].flatMap((id) => {
    const attribute = register.attributes.get(id)!;
    const support = columnSupport(attribute, evidence, register, headerUnit(header, attribute), false);
    const out =
      support.speaksAgainst.length > 0 || support.beyond !== undefined || holdsNoNumbers(attribute, evidence);
    return out ? [] : [{ attribute, support }];
  });
  const [only] = left;
  if (only !== undefined && left.length === 1 && subject === 'textiles')
    return suggest(only.attribute, `${reason}; its cells go with one alone`, 0.7, only.support, false);
  return reason === undefined ? { kind: 'leave' } : { kind: 'leave', doubt: reason };
}

/** What is cut short says no more than the whole. */
function strengthOf(
  header: string,
  match: Match & { readonly kind: 'exact' | 'suggested' },
): WordingStrength {
  const said = wordingStrength(header);
  return match.kind === 'exact' && match.short === true && said === 'strong'
    ? wordingStrength(match.via)
    : said;
}

/** A long wording that differs in a letter or an ending only is meant, whatever else the table holds. */
function namesItWhole(header: string, match: Match): boolean {
  const spelt = match.kind === 'suggested' && /differs by|inflection|another order/.test(match.reason);
  return spelt && joined(wordsOf(header)).length >= 8;
}

/** The attribute's own name, or a wording of it beside a unit in which it is given. */
function isOwnName(header: string, attribute: AttributeDefinition): boolean {
  return splitHeader(header).unit !== undefined || isPlainName(header, attribute);
}

/** The attribute's label or id, with or without a unit. */
function isPlainName(header: string, attribute: AttributeDefinition): boolean {
  const key = headerKey(splitHeader(header).name);
  return key === headerKey(attribute.label) || key === headerKey(attribute.id);
}

/** An attribute that the study defines is meant by its own words, however short. */
function isStudysOwn(attribute: AttributeDefinition): boolean {
  return defaultRegister().attributes.get(attribute.id) !== attribute;
}

function suggest(
  attribute: AttributeDefinition,
  reason: string,
  score: number,
  support: Support,
  sure: boolean,
): Weighed {
  return { kind: 'suggest', suggestion: { attribute: attribute.id, reason, score, ...support, sure } };
}

const isShort = (header: string): boolean =>
  joined(wordsOf(header)).length < 4 && !/^(?:wt|gew)\.?$/i.test(header.trim());
