import type { Reach, ReachFound } from '../../attributes/method-reach.ts';
import { CERTAINTIES, type Certainty } from '../../cells/reading.ts';
import type { RowCheck } from './checked-row.ts';

export const fibreOnImpression =
  (id: string): RowCheck =>
  ({ term, recorded, within }) => {
    const fibre = term(id);
    if (fibre === null || recorded(id) !== 'certain') return null;
    const impression =
      term('observedOn') === 'impression' || within('preservation', term('preservation'), 'impression');
    if (!impression) return null;
    const of = term('observedOn') === 'impression' ? 'observedOn' : 'preservation';
    return {
      rule: 'fibre-on-impression',
      of: [id, of],
      why: 'An impression holds no fibre: the identification cannot be certain.',
    };
  };

/** What the method cannot tell, beside a fibre that is given as surer than that (attributes/method-reach.ts). */
export const fibreByMethod =
  (id: string): RowCheck =>
  ({ term, recorded, reach }) => {
    const [fibre, method] = [term(id), term('fibreMethod')];
    const found = fibre === null || method === null ? null : reach(fibre, method);
    if (found === null || !surerThan(recorded(id), found.reach)) return null;
    return { rule: 'fibre-by-method', of: [id, 'fibreMethod'], why: reachInWords(found) };
  };

/** Certainty that a method leaves at best: what it cannot tell at all is no better than indeterminate. */
export function atBest(reach: Reach): Certainty {
  return reach === 'cannot' ? 'indeterminate' : reach;
}

export function surerThan(recorded: Certainty, reach: Reach): boolean {
  return CERTAINTIES.indexOf(recorded) < CERTAINTIES.indexOf(atBest(reach));
}

/** "By this method at best possible: the naked eye …". */
export function reachInWords({ reach, by }: ReachFound): string {
  const rest = by.source.startsWith('common practice') ? 'common practice' : by.source;
  return reach === 'cannot'
    ? `This method cannot tell such a fibre, so that it counts as indeterminate: ${by.why} (${rest}).`
    : `By this method such a fibre is ${reach} at best, and counts as that: ${by.why} (${rest}).`;
}
