import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { foldText, splitWords } from '../../attributes/folding.ts';
import { headerUnit, type Match, splitHeader } from '../../attributes/matching.ts';
import { defaultRegister } from '../../attributes/register.ts';
import { wordingStrength } from '../../attributes/weak-words.ts';
import { headerKey } from '../../attributes/wording-index.ts';
import type { Suggestion } from '../source-reading.ts';
import type { ColumnEvidence } from './column-evidence.ts';
import { columnSupport } from './column-support.ts';
import type { Support } from './support.ts';
import type { Subject } from './table-subject.ts';

/** What becomes of a header's match once its cells and the table's subject are heard. */
export type Weighed =
  | { readonly kind: 'take'; readonly id: string; readonly via: string; readonly doubt?: string }
  | { readonly kind: 'suggest'; readonly suggestion: Suggestion }
  | { readonly kind: 'leave'; readonly doubt?: string };

const OF_CLOTH: readonly AttributeDefinition['block'][] = ['structure', 'spacing', 'fibre'];
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
  if (match.kind === 'none')
    return match.reason === undefined ? { kind: 'leave' } : { kind: 'leave', doubt: match.reason };
  const attribute = register.attributes.get(match.id)!;
  const own = isStudysOwn(attribute);
  const named = match.kind === 'exact' && (own || isOwnName(header, attribute));
  const support = columnSupport(attribute, evidence, register, headerUnit(header, attribute), named);
  const strength = own || paired ? 'strong' : wordingStrength(header);
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
  if (!nearEnough(header, match, attribute, heard, subject)) return { kind: 'leave' };
  const sameWords = match.score >= SAME_WORDS || namesItWhole(header, match);
  // Terms of one vocabulary, in a table of cloth, are no chance.
  const told =
    subject === 'textiles' && attribute.vocabulary !== undefined && !/ambiguous/.test(match.reason);
  const sure = heard && (sameWords || told) && !weak && !/is as near/.test(match.reason);
  return suggest(attribute, match.reason, match.score, support, sure);
}

/** A long wording that differs in a letter or an ending only is meant, whatever else the table holds. */
function namesItWhole(header: string, match: Match): boolean {
  const spelt = match.kind === 'suggested' && /differs by|inflection|another order/.test(match.reason);
  return spelt && joined(wordsOf(header)).length >= 8;
}

/** The attribute's own name, or a wording of it beside a unit in which it is given. */
function isOwnName(header: string, attribute: AttributeDefinition): boolean {
  const { name, unit } = splitHeader(header);
  const key = headerKey(name);
  return unit !== undefined || key === headerKey(attribute.label) || key === headerKey(attribute.id);
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

/** Words beside the known ones that leave the meaning as it is. */
const HARMLESS: ReadonlySet<string> = new Set(
  (
    'max min mean average avg median total overall main primary no nr number num nummer id code name text value measured recorded ' +
    'new old final original estimated approx about fragment textile fabric cloth site find finds the of in and a an per with ' +
    'textil stoff gewebe fund objekt max. mittel mittlere grosste kleinste gesamt tissu tessuto tejido tekstil nom nome nombre ' +
    'archaeological archaeol arch creation published short full mm cm m g kg years year'
  ).split(' '),
);

/** Words of a known wording that a header may leave out. */
const NUMBERING: ReadonlySet<string> = new Set('max maximum mean of the n'.split(' '));
const NAMING: ReadonlySet<string> = new Set('no nr number num id code'.split(' '));
/** The end of an interval is named as such. */
const BOUNDS: ReadonlySet<string> = new Set(['dateFrom', 'dateTo']);
/** Names of rows differ from row to row. */
const NAMES: ReadonlySet<string> = new Set(['fragment', 'item', 'catalogueNumber']);
/** Ambiguous words that have a meaning in tables of anything. */
const UNLIKE_CLOTH: ReadonlySet<string> = new Set(['quantity']);
const isShort = (header: string): boolean =>
  joined(wordsOf(header)).length < 4 && !/^(?:wt|gew)\.?$/i.test(header.trim());

/** Whether a near wording differs from the known one in nothing that matters. */
function nearEnough(
  header: string,
  match: Match & { readonly kind: 'suggested' },
  attribute: AttributeDefinition,
  heard: boolean,
  subject: Subject,
): boolean {
  const cloth = subject === 'textiles';
  if (/is ambiguous|may be the unit|may be an end|written with its unit|the unit here is/.test(match.reason))
    return cloth || (heard && UNLIKE_CLOTH.has(attribute.id));
  const words = wordsOf(header);
  const known = wordsOf(match.via);
  if (
    BOUNDS.has(attribute.id) &&
    !words.some((word) => /^(?:from|to|von|bis|start|end|min|max|de|a|da|til|fra)$/.test(word))
  )
    return false;
  if (NAMES.has(attribute.id) && !heard) return false;
  if (/differs by/.test(match.reason)) return slipEnough(words, known, heard);
  if (/inflection/.test(match.reason)) return joined(words).length >= (heard || cloth ? 5 : 8);
  if (/another order/.test(match.reason)) return heard || cloth || joined(words).length >= 8;
  const more = words.filter((word) => !alike(word, known));
  const fewer = known.filter((word) => !alike(word, words));
  const plain = (word: string) => /^\d+$/.test(word);
  const left = NAMES.has(attribute.id) ? NAMING : NUMBERING;
  const harmless =
    more.every((word) => HARMLESS.has(word) || plain(word)) &&
    fewer.every((word) => left.has(word) || plain(word));
  if (harmless) return heard || cloth || !OF_CLOTH.includes(attribute.block);
  return cloth && heard && OF_CLOTH.includes(attribute.block) && known.every((word) => alike(word, words));
}

const joined = (words: readonly string[]): string => words.join('');

/** A slip of the pen is believable in a long word that begins alike; in a short one it is another word. */
function slipEnough(words: readonly string[], known: readonly string[], heard: boolean): boolean {
  const [a, b] = [joined(words), joined(known)];
  if (a[0] !== b[0]) return false;
  return Math.min(a.length, b.length) >= (heard ? 5 : 8);
}

function wordsOf(text: string): string[] {
  return foldText(splitWords(splitHeader(text).name))
    .split(' ')
    .filter((word) => word !== '');
}

const alike = (word: string, others: readonly string[]): boolean =>
  others.some(
    (other) =>
      other === word || (word.length > 4 && other.length > 4 && other.slice(0, 5) === word.slice(0, 5)),
  );
