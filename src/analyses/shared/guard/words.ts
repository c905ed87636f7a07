import type { Unavailable } from '../../contract.ts';
import { inSentence, printList, printNumber, printP, printSmall, printSome } from '../../phrasing.ts';
import type { Told } from '../../verdicts.ts';
import type { Guard, LookedAt } from './found.ts';
import { difference, labelsIn, recording, sharing } from './names.ts';

/** How a guard against conditions is said, the same in every analysis. */

/**
 * What the worst condition makes of a verdict, to stand after it; the fullest first, none where nothing changes.
 *
 * @param verb of the verdict's subject.
 */
export function guardClauses({ changes }: Guard, verb: 'is' | 'are' = 'is'): readonly string[] {
  const [worst] = changes;
  return worst === undefined ? [] : clausesOf(worst, verb);
}

/**
 * What one condition makes of all of several verdicts, the fullest clause; '' where none does. A milder change never
 * stands for the worst of a verdict, but of equally bad ones that which all share is said.
 */
export function sharedGuardClause(guards: readonly Guard[]): string {
  const worstOf = guards.map(({ changes }) =>
    changes.filter(({ verdict }) => verdict === changes[0].verdict),
  );
  const [first = [], ...others] = worstOf;
  const shared = first.find(({ id, verdict }) =>
    others.every((changes) => changes.some((one) => one.id === id && one.verdict === verdict)),
  );
  return shared === undefined ? '' : clausesOf(shared)[0];
}

function clausesOf(one: LookedAt, verb: 'is' | 'are' = 'is'): readonly [string, ...string[]] {
  const among = `among finds ${sharing(one)}`;
  switch (one.verdict) {
    case 'reversed within it':
      return [`, but the other way round ${among}`];
    case 'vanishes within it':
      return [`, but not ${among}`];
    case 'appears within it':
      return [`, but ${verb} ${among}`];
    default:
      return [
        `, which cannot be told from a difference ${difference(one)}`,
        `, or is a difference ${difference(one)}`,
      ];
  }
}

/**
 * An answer that says what can be told, where those that a verdict names share nothing of the worst condition but others
 * do: "Row spacing differs among finds of one source (A and B); otherwise a difference cannot be told from one …".
 *
 * @param what is compared, as "row spacing".
 */
export function guardLead({ changes }: Guard, what: string): readonly string[] {
  const [worst] = changes;
  if (worst?.verdict !== 'cannot be told apart' || worst.among === null) return [];
  const { labels, told } = worst.among;
  const rest = `; otherwise a difference cannot be told from one ${difference(worst)}.`;
  return [printList(labels), printSome(labels, 2), `${printSmall(labels.length)} groups`].map(
    (whose) => `${AMONG[told](what)} among finds ${sharing(worst)} (${whose})${rest}`,
  );
}

const AMONG: Readonly<Record<Told, (what: string) => string>> = {
  'told apart': (what) => `${what} differs`,
  'not told apart': (what) => `${what} could not be shown to differ`,
  'cannot be told': (what) => `whether ${what} differs cannot be told`,
};

/** "a difference between recorders", of the worst condition; null where none changes anything. */
export function mayBeDifference({ changes }: Guard): string | null {
  const [worst] = changes;
  return worst === undefined ? null : `a difference ${difference(worst)}`;
}

/** Whether a difference is shown to be gone or turned within the worst condition. */
export const goneWithin = ({ changes: [worst] }: Guard) =>
  worst?.verdict === 'vanishes within it' || worst?.verdict === 'reversed within it';

/** Whether there is a difference only within the worst condition. */
export const isHidden = ({ changes: [worst] }: Guard) => worst?.verdict === 'appears within it';

/** The conditions that change a verdict, as a verdict in short names them. */
export function guardVerdict({ changes }: Guard): readonly string[] {
  return changes.map(({ label }) => inSentence(label));
}

/** One line of evidence: the effect among finds that share the condition beside the plain one. */
export function guardEvidence(guard: Guard, unit: string): string[] {
  const said = [...guard.changes, ...guard.withstood].find(
    ({ shared, bridged }) => bridged && !('why' in shared),
  );
  if (said === undefined || 'why' in said.shared) return [];
  const { shared, adjusted } = said;
  const effect =
    adjusted === null || 'why' in adjusted
      ? ''
      : adjusted.scale !== 'difference'
        ? `; ${adjusted.scale} ${printNumber(adjusted.within.estimate, 2)}, plain ${printNumber(adjusted.plain.estimate, 2)}`
        : `; difference ${printNumber(adjusted.within.estimate, 2)}${unit === '' ? '' : ` ${unit}`} (standard error ${printNumber(adjusted.within.se, 2)}), plain ${printNumber(adjusted.plain.estimate, 2)}`;
  const p = typeof shared.p === 'number' ? `, ${printP(shared.p)} (${shared.method})` : '';
  return [
    `Among finds ${sharing(said)}, n = ${shared.n} in ${printSmall(shared.strata)}: strength ${printNumber(shared.within, 2)} against ${printNumber(shared.plain, 2)} for the same taken together${p}${effect}.`,
  ];
}

/** Two that a verdict names, and how many finds of each would tell them apart, where that can be had. */
export interface Remeasured {
  readonly names: readonly [string, string];
  readonly finds: number | Unavailable;
}

/** What would settle what the guard leaves open. */
export function guardNext({ changes, unseen, by }: Guard, done: string, pair?: Remeasured): string[] {
  const finds = typeof pair?.finds === 'number' ? pair.finds : 'some';
  const whose =
    pair === undefined
      ? `${finds} finds of each ${inSentence(by)}`
      : `${finds} finds each of ${printList(pair.names)}`;
  return [
    ...(changes.some((one) => recording(one) && one.verdict === 'cannot be told apart')
      ? [
          `Let one person ${done} ${whose} again, or bring a table in which one recorder describes finds of ${pair === undefined ? `more than one ${inSentence(by)}` : 'both'}.`,
        ]
      : []),
    ...unseenNext(unseen),
  ];
}

/** What would let the conditions be looked at that nobody recorded. */
export function unseenNext(unseen: readonly Pick<LookedAt, 'label'>[]): string[] {
  return unseen.length > 0 ? [`Columns of ${labelsIn(unseen)}, so that they can be looked at.`] : [];
}
