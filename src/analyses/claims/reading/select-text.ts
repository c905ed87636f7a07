import { InputError } from '../../../errors.ts';
import type { Condition } from '../../../fragments/select-condition.ts';

/**
 * The compact text form of a study's selection, as it stands in a cell of a claims file:
 * `site in Quorrimel Cave | Ysketh Pans; rowSpacing >= 2; structure not in tabby; fibre known`.
 * Conditions are parted by ";", terms by "|". `within` is another word for `in`, and `=` for one term or
 * one number; `2 to 8` after a name is both limits at once.
 */
const FORMS: readonly (readonly [
  pattern: RegExp,
  read: (match: RegExpExecArray) => Omit<Condition, 'attribute'>,
])[] = [
  [/^(\S+)\s+(known|recorded)$/i, () => ({ known: true })],
  [/^(\S+)\s+(unknown|missing|not recorded)$/i, () => ({ known: false })],
  [/^(\S+)\s+not\s+(?:in|within)\s+(.+)$/i, (match) => ({ notIn: terms(match[2]) })],
  [/^(\S+)\s+(?:in|within)\s+(.+)$/i, (match) => ({ in: terms(match[2]) })],
  [/^([^\s<>=≥≤!]+)\s*(?:!=|≠)\s*(.+)$/, (match) => ({ notIn: terms(match[2]) })],
  [/^([^\s<>=≥≤!]+)\s*(?:>=|≥)\s*(-?[\d.,]+)$/, (match) => ({ atLeast: number(match[2]) })],
  [/^([^\s<>=≥≤!]+)\s*(?:<=|≤)\s*(-?[\d.,]+)$/, (match) => ({ atMost: number(match[2]) })],
  [
    /^([^\s<>=≥≤!]+)\s*=\s*(-?\d+(?:[.,]\d+)?)$/,
    (match) => ({ atLeast: number(match[2]), atMost: number(match[2]) }),
  ],
  [/^([^\s<>=≥≤!]+)\s*=\s*([^=].*)$/, (match) => ({ in: terms(match[2]) })],
  [
    /^(\S+)\s+(-?\d+(?:[.,]\d+)?)\s*(?:to|–|-)\s*(-?\d+(?:[.,]\d+)?)$/,
    (match) => ({ atLeast: number(match[2]), atMost: number(match[3]) }),
  ],
];

/** @throws InputError for a part that is no condition; `where` says which cell. */
export function readSelection(text: string, where: InputError['where']): readonly Condition[] {
  return text
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map((part) => readCondition(part, where));
}

function readCondition(part: string, where: InputError['where']): Condition {
  for (const [pattern, read] of FORMS) {
    const match = pattern.exec(part);
    if (match === null) continue;
    const condition = { attribute: match[1], ...read(match) };
    const empty = condition.in?.length === 0 || condition.notIn?.length === 0;
    if (!empty && !Number.isNaN(condition.atLeast ?? 0) && !Number.isNaN(condition.atMost ?? 0))
      return condition;
  }
  const strict = /[<>]/.test(part) && !/[<>]=/.test(part);
  throw new InputError(
    `"${part}" is no condition`,
    where,
    strict
      ? 'use >= or <=; limits belong to what is selected'
      : 'write it as "attribute in term | term", "attribute >= 2", "attribute 2 to 8" or "attribute known"',
  );
}

function terms(text: string): string[] {
  return text
    .split('|')
    .map((term) => term.trim())
    .filter((term) => term !== '');
}

function number(text: string): number {
  return Number(text.replace(',', '.'));
}

/** The same conditions as text again, in one spelling and order, so that equal selections compare equal. */
export function selectionText(conditions: readonly Condition[]): string {
  return conditions.map(conditionText).sort().join('; ');
}

function conditionText({ attribute, in: wanted, notIn, atLeast, atMost, known }: Condition): string {
  const parts = [
    wanted === undefined ? '' : `${attribute} in ${wanted.join(' | ')}`,
    notIn === undefined ? '' : `${attribute} not in ${notIn.join(' | ')}`,
    atLeast === undefined ? '' : `${attribute} >= ${atLeast}`,
    atMost === undefined ? '' : `${attribute} <= ${atMost}`,
    known === undefined ? '' : `${attribute} ${known ? 'known' : 'unknown'}`,
  ];
  return parts.filter((part) => part !== '').join('; ');
}
