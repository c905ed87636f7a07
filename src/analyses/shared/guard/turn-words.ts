import type { Turn, Unavailable } from '../../contract.ts';
import { inSentence, printList, printNumber, printP } from '../../phrasing.ts';
import type { Beside } from './beside.ts';
import type { Guard, GuardVerdict, LookedAt } from './found.ts';
import { difference, labelsIn, recording, sharing } from './names.ts';

/** What conditions would make of an answer, as its turns say it. */

/**
 * What goes with the labels, what could not be looked at.
 *
 * @param habit what a habit of recording would have to be, where that can be said.
 */
export function guardTurns(guard: Guard, habit = ''): Turn[] {
  const unseen = (verdict: GuardVerdict) => guard.unseen.filter((one) => one.verdict === verdict);
  return [...conditionTurns(guard, habit), ...unseenTurn(unseen('unknown'), unseen('scarce'))];
}

/** The same without what could not be looked at. */
export function conditionTurns(guard: Guard, habit = ''): Turn[] {
  const by = inSentence(guard.by);
  const once = (one: LookedAt, _: number, all: readonly LookedAt[]) => !saidBefore(guard, one, all);
  const turns: Turn[] = guard.changes.filter(once).map((one) => ({
    what: `among finds ${sharing(one)}`,
    size: `${changed(one, by)}${recording(one) && one.verdict === 'cannot be told apart' && habit !== '' ? `; ${habit}` : ''}`,
    overturns: true,
  }));
  turns.push(
    ...guard.withstood.filter(once).map((one) => ({
      what: `${inSentence(one.label)} goes with ${by}${pOf(one.p)}`,
      size: `the difference is there among finds ${sharing(one)} too${one.weaker ? ', but less than half as strong' : ''}${sharedWords(one)}`,
      overturns: false,
    })),
    ...guard.hinted.map((one) => ({
      what: `${inSentence(one.label)} may go with ${by}, though that is not shown${pOf(one.p)}`,
      size: `among finds ${sharing(one)} ${changed(one, by)}`,
      overturns: false,
    })),
  );
  turns.push(
    ...guard.ofLabels.map((one) => ({
      what: `each ${by} is of one ${inSentence(one.label)}`,
      size: 'a difference between the first may be one of the second',
      overturns: false,
    })),
    ...tiedTurns(guard),
  );
  return turns;
}

/** Whether a condition divides the finds as an earlier one of the same verdict does, so that the same would be said again. */
function saidBefore({ tied }: Guard, one: LookedAt, all: readonly LookedAt[]): boolean {
  const isSame = (earlier: LookedAt) =>
    earlier.verdict === one.verdict &&
    tied.some(
      ({ inner, outer, mutual }) =>
        mutual && [inner, outer].includes(one.label) && [inner, outer].includes(earlier.label),
    );
  return all.slice(0, all.indexOf(one)).some(isSame);
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
      : [`${labelsIn(unknown)} ${unknown.length === 1 ? 'is' : 'are'} not recorded`]),
    ...(scarce.length === 0
      ? []
      : [`${labelsIn(scarce)} ${scarce.length === 1 ? 'is' : 'are'} known of less than half`]),
  ];
  if (said.length === 0) return [];
  const size = 'whether that makes a difference, or hides one, could not be looked at';
  return [{ what: printList(said), size, overturns: false }];
}

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

/**
 * Of an answer that describes: what goes with its groups, and what could not be looked at.
 *
 * @param what may be a difference of the condition: "what differs between sites".
 */
export function besideTurns({ by, going, unknown, scarce }: Beside, what: string): Turn[] {
  const [first, ...others] = going;
  const unseen = unseenTurn(unknown, scarce);
  if (first === undefined) return unseen;
  const hardly = going.filter(({ nearlyOne }) => nearlyOne);
  const any = others.length === 0 ? `a difference ${difference(first)}` : 'a difference of any of these';
  return [
    {
      what: `${labelsIn(going)} ${others.length === 0 ? 'goes' : 'go'} with ${inSentence(by)}${others.length === 0 ? pOf(first.p) : ''}`,
      size: `${what} may be ${any}${hardly.length === 0 ? '' : `, and can hardly be told from ${others.length === 0 ? 'it' : labelsIn(hardly)}`}`,
      overturns: false,
    },
    ...unseen,
  ];
}
