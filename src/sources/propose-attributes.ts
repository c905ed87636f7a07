import type { AttributeDefinition, Register } from '../attributes/definition.ts';
import { foldText } from '../attributes/folding.ts';
import { splitHeader } from '../attributes/matching.ts';
import { isBlank, isNumberLike } from './layout/cell-shapes.ts';
import type { ColumnRule } from './profile.ts';
import type { SourceReading } from './source-reading.ts';

export interface Proposal {
  /** For the study's "attributes". */
  readonly attribute: AttributeDefinition;
  /** For the profile's "columns". */
  readonly rule: ColumnRule;
  /** Why this scale, in a few words. */
  readonly why: string;
}

/**
 * Attributes of the reader's own for the columns that nothing claims, so that a table about anything can
 * be studied: numbers become ratio or interval scales with the header's unit, yes/no codes presences, few
 * wordings kinds. Running numbers, names and prose stay text and are not proposed. Nothing is taken until
 * the reader puts it into the study.
 */
export function proposeAttributes(reading: SourceReading, register: Register): Proposal[] {
  const taken = new Set(register.attributes.keys());
  const proposals: Proposal[] = [];
  for (const { header, index, status } of reading.columns) {
    if (status !== 'unknown' && status !== 'suggested') continue;
    const texts = reading.table.columns.get(`column: ${header}`)?.raw ?? [];
    const scale = scaleOf(texts);
    if (scale === null) continue;
    const { name, unit } = splitHeader(header);
    const id = freeId(name, index, taken);
    const numeric = scale.scale === 'ratio' || scale.scale === 'interval';
    proposals.push({
      attribute: {
        id,
        label: name,
        block: 'find',
        scale: scale.scale,
        ...(numeric && unit !== undefined ? { unit } : {}),
        source: `column "${header}" of ${reading.name}`,
      },
      rule: { header, attribute: id, ...(numeric && unit !== undefined ? { unit } : {}) },
      why: scale.why,
    });
  }
  return proposals;
}

const NOTHING = /^(?:|[-–—?.]+|n\/?a|nan|null|none)$/i;
const YES_NO = /^(?:0|1|x|\+|true|false|yes|no|y|n|ja|nein|oui|non|sì|si|sí|ja|nej|nei|present|absent)$/i;

function scaleOf(
  texts: readonly string[],
): { scale: 'ratio' | 'interval' | 'presence' | 'nominal'; why: string } | null {
  const said = texts.map((text) => text.trim()).filter((text) => !isBlank(text) && !NOTHING.test(text));
  if (said.length === 0) return null;
  const distinct = new Set(said);
  if (distinct.size <= 3 && said.every((text) => YES_NO.test(text))) {
    return { scale: 'presence', why: 'its cells say yes or no' };
  }
  const numbers = said.filter(isNumberLike).length;
  if (numbers >= 0.9 * said.length) {
    if (isRunningNumber(said)) return null;
    const negative = said.some((text) => /^[-−]\d/.test(text));
    return { scale: negative ? 'interval' : 'ratio', why: `${numbers} of ${said.length} cells are numbers` };
  }
  if (distinct.size <= Math.max(12, 0.3 * said.length) && distinct.size < said.length) {
    return { scale: 'nominal', why: `${distinct.size} wordings in ${said.length} cells` };
  }
  return null;
}

function isRunningNumber(said: readonly string[]): boolean {
  return said.length > 2 && said.every((text, i) => i === 0 || Number(text) === Number(said[i - 1]) + 1);
}

function freeId(name: string, index: number, taken: Set<string>): string {
  const words = foldText(name)
    .split(' ')
    .filter((word) => word !== '');
  const joined = words
    .map((word, i) => (i === 0 ? word : word.charAt(0).toUpperCase() + word.slice(1)))
    .join('');
  const base = /^\p{L}/u.test(joined) ? joined : `column${index + 1}${joined}`;
  let id = base;
  for (let i = 2; taken.has(id); i++) id = `${base}${i}`;
  taken.add(id);
  return id;
}
