import type { ConditionId } from '../../../fragments/conditions.ts';
import type { Turn, Unavailable } from '../../contract.ts';
import { inSentence, printList, printNumber, printP, printSmall, printSome } from '../../phrasing.ts';
import type { Guard, GuardVerdict, LookedAt } from './found.ts';

/** How a guard against conditions is said, the same in every analysis. */

/** "among finds …" that share the condition. */
const SHARING: Readonly<Record<ConditionId, string>> = {
  recorder: 'of one recorder',
  source: 'of one source',
  recovery: 'recovered alike',
  preservation: 'preserved alike',
  structure: 'of one structure',
  period: 'of one period',
};

/** "a difference …" that the labels may stand for. */
const DIFFERENCE: Readonly<Record<ConditionId, string>> = {
  recorder: 'between recorders',
  source: 'between sources',
  recovery: 'of recovery',
  preservation: 'of preservation',
  structure: 'of structure',
  period: 'of period',
};

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

function clausesOf({ id, verdict }: LookedAt, verb: 'is' | 'are' = 'is'): readonly [string, ...string[]] {
  const sharing = `among finds ${SHARING[id]}`;
  switch (verdict) {
    case 'reversed within it':
      return [`, but the other way round ${sharing}`];
    case 'vanishes within it':
      return [`, but not ${sharing}`];
    case 'appears within it':
      return [`, but ${verb} ${sharing}`];
    default:
      return [
        `, which cannot be told from a difference ${DIFFERENCE[id]}`,
        `, or is a difference ${DIFFERENCE[id]}`,
      ];
  }
}

/**
 * An answer that begins with what can be told, where those that a verdict names share nothing of the worst condition
 * but others do: "Of one source, A and B are told apart in row spacing; that others are cannot be told from …".
 *
 * @param what is compared, as "row spacing".
 */
export function guardLead({ changes }: Guard, what: string): readonly string[] {
  const [worst] = changes;
  if (worst?.verdict !== 'cannot be told apart' || worst.among === null) return [];
  const { labels, told } = worst.among;
  return [printList(labels), printSome(labels, 2), `${printSmall(labels.length)} groups`].map(
    (whose) =>
      `${SHARING[worst.id]}, ${whose} are ${told} in ${what}; that others are cannot be told from a difference ${DIFFERENCE[worst.id]}.`,
  );
}

/** "a difference between recorders", of the worst condition; null where none changes anything. */
export function mayBeDifference({ changes }: Guard): string | null {
  const [worst] = changes;
  return worst === undefined ? null : `a difference ${DIFFERENCE[worst.id]}`;
}

/** The conditions that change a verdict, as a verdict in short names them. */
export function guardVerdict({ changes }: Guard): readonly string[] {
  return changes.map(({ label }) => inSentence(label));
}

/**
 * What goes with the labels, what could not be looked at.
 *
 * @param habit what a habit of recording would have to be, where that can be said.
 */
export function guardTurns(guard: Guard, habit = ''): Turn[] {
  const by = inSentence(guard.by);
  const turns: Turn[] = guard.changes.map((one) => ({
    what: `among finds ${SHARING[one.id]}`,
    size: `${changed(one, by)}${recording(one) && one.verdict === 'cannot be told apart' && habit !== '' ? `; ${habit}` : ''}`,
    overturns: true,
  }));
  turns.push(
    ...guard.withstood.map((one) => ({
      what: `${inSentence(one.label)} goes with ${by}${pOf(one.p)}`,
      size: `the difference is there among finds ${SHARING[one.id]} too${sharedWords(one)}`,
      overturns: false,
    })),
  );
  turns.push(...tiedTurns(guard));
  const unseen = (verdict: GuardVerdict) => guard.unseen.filter((one) => one.verdict === verdict);
  return [...turns, ...unseenTurn(unseen('unknown'), unseen('scarce'))];
}

/** Conditions that cannot be told from each other: those that are one and the same in one line, the others pair by pair. */
function tiedTurns({ tied }: Guard): Turn[] {
  const size = 'each is judged by itself, and any may stand for the other';
  const same = tied
    .filter(({ mutual }) => mutual)
    .reduce<readonly (readonly string[])[]>((classes, { inner, outer }) => {
      const joined = classes.filter((one) => one.includes(inner) || one.includes(outer));
      const rest = classes.filter((one) => !joined.includes(one));
      return [...rest, [...new Set([...joined.flat(), inner, outer])]];
    }, []);
  return [
    ...same.map((labels) => `${printList(labels.map(inSentence))} divide those compared alike`),
    ...tied
      .filter(({ mutual }) => !mutual)
      .map(({ inner, outer }) => `each ${inSentence(inner)} is of one ${inSentence(outer)}`),
  ].map((what) => ({ what, size, overturns: false }));
}

/** Conditions that could not be looked at, in one line. */
export function unseenTurn(
  unknown: readonly { readonly label: string }[],
  scarce: readonly { readonly label: string }[],
): Turn[] {
  const said = [
    ...(unknown.length === 0
      ? []
      : [`${names(unknown)} ${unknown.length === 1 ? 'is' : 'are'} not recorded`]),
    ...(scarce.length === 0
      ? []
      : [`${names(scarce)} ${scarce.length === 1 ? 'is' : 'are'} known of less than half`]),
  ];
  if (said.length === 0) return [];
  const size = 'whether that makes a difference, or hides one, could not be looked at';
  return [{ what: printList(said), size, overturns: false }];
}

const names = (conditions: readonly { readonly label: string }[]) =>
  printList(conditions.map(({ label }) => inSentence(label)));
const recording = ({ id }: LookedAt) => id === 'recorder' || id === 'source';
const pOf = (p: number | Unavailable) => (typeof p === 'number' ? ` (${printP(p)})` : '');

function changed(one: LookedAt, by: string): string {
  switch (one.verdict) {
    case 'reversed within it':
      return `the difference is the other way round${sharedWords(one)}`;
    case 'vanishes within it':
      return `the difference is gone${sharedWords(one)}`;
    case 'appears within it':
      return `there is a difference${sharedWords(one)}`;
    default:
      return one.oneEach
        ? `there are none to compare: no two groups by ${by} share a ${inSentence(one.label)}`
        : one.bridged
          ? `too few can be compared${sharedWords(one)}`
          : `those named cannot be compared: they share no ${inSentence(one.label)}`;
  }
}

/** " (strength 0.1, with 0.5 for the same 40 together, p = 0.4)". */
function sharedWords({ shared }: LookedAt): string {
  if ('why' in shared) return '';
  return ` (strength ${printNumber(shared.within, 2)}, of the same ${shared.n} taken together ${printNumber(shared.plain, 2)}${typeof shared.p === 'number' ? `; ${printP(shared.p)}` : ''})`;
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
    `Among finds ${SHARING[said.id]}, n = ${shared.n} in ${printSmall(shared.strata)}: strength ${printNumber(shared.within, 2)} against ${printNumber(shared.plain, 2)} for the same taken together${p}${effect}.`,
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
    ...(unseen.length > 0 ? [`Columns of ${names(unseen)}, so that they can be looked at.`] : []),
  ];
}
