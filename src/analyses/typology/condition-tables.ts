import type { ResultTable } from '../contract.ts';
import type { RivalCondition } from './apart-found.ts';
import type { TypologyFound } from './found.ts';
import { column, orWhy } from './table-parts.ts';

export function withinTable({ apart }: TypologyFound): ResultTable {
  return {
    title: 'Like with like',
    columns: [
      column('kind', 'Among'),
      column('n', 'n'),
      column('statistic', 'pseudo-F'),
      column('p', 'p'),
      column('pAdjusted', 'p, adjusted'),
      column('share', 'share of variation'),
    ],
    rows: ('why' in apart ? [] : apart.within).map(({ kind, n, difference, pAdjusted }) => [
      kind,
      n,
      orWhy(difference, ({ statistic }) => statistic),
      orWhy(difference, ({ p }) => p),
      pAdjusted,
      orWhy(difference, ({ rSquared }) => rSquared),
    ]),
    note: 'The types compared among records of one condition alone; types with fewer than three records there are left out. Adjusted by Holm over the comparisons made.',
  };
}

const CONDITION_WORDS: Readonly<Record<RivalCondition['verdict'], string>> = {
  'does not go with them': 'the types do not go with it',
  'holds within it': 'told apart within one kind of it alone',
  'not told within it': 'not told apart within any kind of it alone',
  unknown: 'not recorded, could not be looked at',
  scarce: 'known of less than half, could not be looked at',
  'may explain them': 'no kind of it holds enough of two types to be compared alone',
};

/** What could pass for the types, and whether they hold within it. */
export function conditionsTable(conditions: readonly RivalCondition[]): ResultTable {
  return {
    title: 'What could pass for the types',
    columns: [
      column('condition', 'Condition'),
      column('p', 'p that the types do not go with it, adjusted'),
      column('verdict', 'Verdict'),
      column('holds', 'told apart within'),
      column('fails', 'not told apart within'),
      column('untested', 'too few within'),
    ],
    rows: conditions.map(({ label, p, verdict, holds, fails, untested }) => [
      label,
      p,
      CONDITION_WORDS[verdict],
      holds.join(', '),
      fails.join(', '),
      untested.join(', '),
    ]),
    note: 'Where types and condition go together (Fisher or chi-squared, adjusted by Holm), a difference of condition can look like one of kind; it cannot within a single kind of it.',
  };
}
