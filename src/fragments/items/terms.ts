import type { Register, Vocabulary } from '../../attributes/definition.ts';
import { partsOf } from '../../attributes/mixtures.ts';
import { isWithin, lowestCommon } from '../../attributes/tree.ts';
import { termAt } from '../accessors.ts';
import type { TermColumn } from '../table.ts';

export interface AgreedTerm {
  readonly term: string | null;
  /** True when the fragments contradict each other, even where a broader term reconciles them. */
  readonly disagree: boolean;
  /** Index into CERTAINTIES of the least certain fragment that has a term. */
  readonly leastCertain: number;
}

/**
 * The one term that the fragments of an item allow.
 * - Yes/no: present when any fragment has it; fragments that lack it disagree.
 * - A term and a narrower one ("tree bast", "lime bast") agree on the narrower: the broader was seen less well.
 * - Otherwise the lowest common parent where the vocabulary has one, and none where it has not.
 * - Grades: the middle one, the lower of two middles.
 */
export function agreedTerm(column: TermColumn, rows: readonly number[], register: Register): AgreedTerm {
  const known = rows.filter((row) => termAt(column, row) !== null);
  const terms = [...new Set(known.map((row) => termAt(column, row) as string))];
  const leastCertain = known.reduce((worst, row) => Math.max(worst, column.certainty[row]), 0);
  const { scale, vocabulary } = column.attribute;
  if (scale === 'presence' || scale === 'binary') {
    const term = terms.includes('present')
      ? 'present'
      : terms.includes('absent') && hasCode(column, known)
        ? 'absent'
        : null;
    return { term, disagree: terms.length > 1, leastCertain };
  }
  if (terms.length <= 1) return { term: terms[0] ?? null, disagree: false, leastCertain };
  if (scale === 'ordinal') {
    return { term: middleGrade(column, known), disagree: true, leastCertain };
  }
  const tree = vocabulary === undefined ? undefined : register.vocabularies.get(vocabulary);
  return { ...reconcile(terms, tree), leastCertain };
}

/** A yes/no column may say "absent" by its state alone; then no code stands for it. */
function hasCode(column: TermColumn, rows: readonly number[]): boolean {
  return rows.some((row) => column.codes[row] >= 0);
}

function reconcile(terms: readonly string[], tree: Vocabulary | undefined): Omit<AgreedTerm, 'leastCertain'> {
  if (tree === undefined) return { term: null, disagree: true };
  const narrowest = terms.find((term) => terms.every((other) => isWithin(tree, term, other)));
  if (narrowest !== undefined) return { term: narrowest, disagree: false };
  // One piece may show less of a mixture than another.
  const whole = terms.find((term) => {
    const parts = new Set(partsOf(term, tree));
    return parts.size > 1 && terms.every((other) => partsOf(other, tree).every((part) => parts.has(part)));
  });
  if (whole !== undefined) return { term: whole, disagree: false };
  const common = terms.reduce<string | null>(
    (held, term) => (held === null ? null : lowestCommon(tree, held, term)),
    terms[0],
  );
  return { term: common, disagree: true };
}

function middleGrade(column: TermColumn, rows: readonly number[]): string | null {
  const order = column.attribute.levels ?? column.levels;
  const ranks = rows.map((row) => order.indexOf(termAt(column, row) as string)).sort((a, b) => a - b);
  return order[ranks[(ranks.length - 1) >> 1]] ?? null;
}
