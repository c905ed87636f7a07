import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { foldText } from '../../attributes/folding.ts';
import type { Match } from '../../attributes/matching.ts';
import { headerUnit, isKnownTerm } from '../../attributes/matching.ts';
import { wordingStrength } from '../../attributes/weak-words.ts';
import { meaningOf } from '../../cells/descriptions/meaning.ts';
import type { ColumnEvidence } from './column-evidence.ts';
import { columnSupport } from './column-support.ts';

/** What a table is about, as far as that decides how much a short or common header may say. */
export type Subject = 'textiles' | 'other' | 'unsaid';

const TEXTILE_WORDS =
  /textil|fabric|cloth|cordage|basket|weav|twin|yarn|thread|gewebe|geflecht|stoff|tissu|vannerie|tessut|tejid|cester|tekstil|vav/;
const OF_CLOTH: readonly AttributeDefinition['block'][] = ['structure', 'spacing', 'fibre'];

/**
 * The subject that the study says, else what the headers show: one header that only cloth has, with cells that
 * bear it out, is enough.
 */
export function tableSubject(
  said: string | undefined,
  headers: readonly string[],
  matches: ReadonlyMap<number, Match>,
  evidence: readonly ColumnEvidence[],
  register: Register,
): Subject {
  if (said !== undefined) return TEXTILE_WORDS.test(foldText(said)) ? 'textiles' : 'other';
  for (const [index, match] of matches) {
    if (match.kind !== 'exact' || wordingStrength(headers[index]!) !== 'strong') continue;
    const attribute = register.attributes.get(match.id)!;
    if (!OF_CLOTH.includes(attribute.block) || GENERAL.has(attribute.id)) continue;
    const { speaksAgainst } = columnSupport(
      attribute,
      evidence[index]!,
      register,
      headerUnit(headers[index]!, attribute),
    );
    if (speaksAgainst.length === 0) return 'textiles';
  }
  return headers.some((header, index) => namesCloth(header, evidence[index]!, register))
    ? 'textiles'
    : 'unsaid';
}

/** Blocks of cloth hold them, and tables of anything do too. */
const GENERAL: ReadonlySet<string> = new Set(['colour', 'dye', 'processing', 'spacingClass']);

/** A common header ("Technique", "Material") over cells that are terms of cloth. */
function namesCloth(header: string, evidence: ColumnEvidence, register: Register): boolean {
  if (
    /\b(?:warp|weft|kette|schuss|cha[iî]ne|trame|ordito|trama|urdimbre|islæt|innslag|renning)\b/i.test(header)
  )
    return true;
  const structure = register.vocabularies.get('structure');
  const attribute = register.attributes.get('structure');
  if (structure === undefined || attribute === undefined || evidence.distinct.length === 0) return false;
  // A weight of 2.1 g is no twill.
  const terms = evidence.distinct.filter(
    (text) =>
      !/^[\d.,\s]+$/.test(text) &&
      (isKnownTerm(text, structure) || meaningOf(text, attribute, register) !== null),
  ).length;
  return terms >= Math.min(2, evidence.distinct.length) && terms >= 0.4 * evidence.distinct.length;
}
