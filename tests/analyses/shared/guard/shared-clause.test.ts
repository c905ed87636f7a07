import { expect, it } from 'vitest';
import type { Guard, GuardVerdict, LookedAt } from '../../../../src/analyses/shared/guard/found.ts';
import { sharedGuardClause } from '../../../../src/analyses/shared/guard/words.ts';

const guard = (...changes: readonly (readonly [id: LookedAt['id'], verdict: GuardVerdict])[]): Guard => ({
  by: 'Site',
  n: 12,
  conditions: [],
  changes: changes.map(([id, verdict]) => ({
    id,
    label: id,
    known: 12,
    kinds: 2,
    verdict,
    p: 0.01,
    v: 1,
    shared: { why: 'none' },
    adjusted: null,
    oneEach: true,
    weaker: false,
    ofLabels: false,
    bridged: false,
    among: null,
  })),
  ofLabels: [],
  hinted: [],
  unseen: [],
  withstood: [],
  tied: [],
});

it('says of several verdicts the condition that none of them can be told from, whichever stands first', () => {
  const both = guard(['structure', 'cannot be told apart'], ['period', 'cannot be told apart']);
  const period = guard(['period', 'cannot be told apart']);
  const clause = ', which cannot be told from a difference of period';
  expect(sharedGuardClause([both, period])).toBe(clause);
  expect(sharedGuardClause([period, both])).toBe(clause);
});

it('says no milder change than the worst of each, and nothing of what one of them withstands', () => {
  const period = guard(['period', 'cannot be told apart']);
  const worse = guard(['recorder', 'reversed within it'], ['period', 'cannot be told apart']);
  expect(sharedGuardClause([period, worse])).toBe('');
  expect(sharedGuardClause([period, guard()])).toBe('');
  expect(sharedGuardClause([period, guard(['period', 'vanishes within it'])])).toBe('');
  expect(sharedGuardClause([])).toBe('');
});
