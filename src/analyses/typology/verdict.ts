import type { Apart, NotApart } from './apart-found.ts';
import type { TypesVerdict } from './found.ts';
import type { HeapSplit } from './split-found.ts';

/**
 * What the tests together say of a typology. Nothing but a division where the rules cut, a difference in what
 * did not define the types, and no condition that could pass for them, makes it supported.
 */
export function verdictOf(apart: Apart | NotApart, splits: readonly HeapSplit[]): TypesVerdict {
  if ('why' in apart) return apart.circular ? 'circular' : 'not testable';
  const divisions = splits.map(({ verdict }) => verdict);
  if (divisions.includes('one range')) return 'one range';
  if (divisions.includes('divided elsewhere')) return 'divided elsewhere';
  const { differ, predicted } = apart;
  if (differ === 'not told apart' && predicted !== 'told apart') return 'not distinguishable';
  const agree = differ === 'told apart' && predicted !== 'not told apart';
  if (!agree || divisions.includes('cannot be told')) return 'open';
  const doubts = ['may explain them', 'not told within it'];
  return apart.conditions.some(({ verdict }) => doubts.includes(verdict))
    ? 'may be a condition'
    : 'supported';
}
