import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { Answer, Unavailable } from '../contract.ts';
import {
  firstShort,
  inSentence,
  printCount,
  printList,
  printNumber,
  printP,
  printSmall,
  printSome,
} from '../phrasing.ts';
import type { FoundGroup, GroupingFound } from './found.ts';
import { METHODS_IN_WORDS } from './method-words.ts';
import type { Reference } from './trust-found.ts';
import { turnsOf } from './turn-words.ts';

/** Whether there are groups, what they are called by, and how far they are to be trusted. */
export function groupingWords(found: GroupingFound): Answer {
  const next = nextOf(found);
  return {
    answer: answerOf(found),
    because: [madeWords(found), referenceWords(found), againWords(found), agreementWords(found)].filter(
      (line) => line !== '',
    ),
    unless: turnsOf(found),
    ...(next.length === 0 ? {} : { next }),
  };
}

const called = ({ name, size }: FoundGroup) => `${name}, ${size}`;

function answerOf(found: GroupingFound): string {
  const { groups, records, unit, verdict, restated, k, hangOnBroad, beside } = found;
  const same = beside.going.find(({ nearlyOne }) => nearlyOne);
  const nearly = same === undefined ? '' : `, nearly those of ${inSentence(same.label)}`;
  const all = printCount(records.length, unit);
  switch (verdict) {
    case 'no two groups':
      return `No two groups stand out among ${all}.`;
    case 'no better than shuffled':
      return `No evidence of groups among ${all}: the same attributes, each shuffled on its own, give groups as good.`;
    case 'no better than one heap':
      return `No evidence of groups among ${all}: cutting one heap without groups would look as good, so a gradient cannot be excluded.`;
    case 'cannot be told':
      return `Cannot be told whether ${all} fall into groups: ${printSmall(k)} were made, not tested against enough tables without groups.`;
    case 'one attribute':
      return `The ${printSmall(k)} groups among ${all} restate ${inSentence(restated?.label ?? '')}: they are its own division over again${nearly === '' ? ', with nothing to add' : `${nearly} too`}.`;
    case 'groups': {
      const start = `${all} fall into ${printSmall(k)} groups`;
      const lists = groups.map((_, at) => groups.length - at).map((most) => printListed(groups, most));
      const hang = hangOnBroad.length === 0 ? '' : `, ${hangingWords(hangOnBroad.length, k)}`;
      return firstShort([
        ...lists.map((list) => `${start}${nearly}${hang}: ${list}.`),
        `${start}${nearly}${hang}.`,
        `${start}${nearly}.`,
      ]);
    }
  }
}

/** "two of which hang on broad terms". */
function hangingWords(hang: number, k: number): string {
  return `${hang === k ? 'all' : printSmall(hang)} of which ${hang === 1 ? 'hangs' : 'hang'} on broad terms`;
}

/** Names hold commas, so that semicolons part them. */
function printListed(groups: readonly FoundGroup[], most: number): string {
  const named = groups.slice(0, most).map(called);
  const rest = groups.length - named.length;
  return [...named, ...(rest === 0 ? [] : [`${rest} more`])].join('; ');
}

const READINGS: Readonly<Record<GroupingFound['structure'], string>> = {
  strong: 'a strong structure',
  reasonable: 'a reasonable structure',
  weak: 'a weak structure that could be artificial',
  none: 'no substantial structure',
};

function madeWords(found: GroupingFound): string {
  const { records, meanSilhouette, verdict, structure, options, groups, k, unit } = found;
  const inNone = records.filter((record) => record.group < 0).length;
  const none =
    inNone === 0
      ? ''
      : `, ${printCount(inNone, unit)} in none${options.method === 'density' ? '' : ' (alone, and so no group)'}`;
  const starts = found.tried.find(({ chosen }) => chosen)?.starts;
  const met = starts?.metTwice === true ? `, the best of ${starts.starts} starts met twice` : '';
  const how = METHODS_IN_WORDS[options.method];
  if (meanSilhouette === null) return `Looked for ${how}${none}.`;
  // A reading of the width would claim what the tables without groups do not allow.
  const claimed = verdict === 'groups' || verdict === 'one attribute';
  const reading = claimed ? `, ${READINGS[structure]} by Kaufman & Rousseeuw 1990` : '';
  const named = verdict === 'groups' ? '' : `: ${printListed(groups, 8)}`;
  return `${printSmall(k).replace(/^./, (letter) => letter.toUpperCase())} groups made ${how}${met}${none} (mean silhouette width ${printNumber(meanSilhouette)}${reading})${named}.`;
}

function referenceWords({ trust, meanSilhouette }: GroupingFound): string {
  if (meanSilhouette === null) return '';
  const lines: readonly (readonly [string, Reference | Unavailable])[] = [
    ['shuffled attributes', trust.shuffled],
    ['even clouds', trust.even],
    ['single heaps', trust.heap],
  ];
  const drawn = lines.flatMap(([name, one]) =>
    isUnavailable(one)
      ? []
      : [`${one.tables} of ${name} median ${printNumber(one.median)} (${printP(one.p)})`],
  );
  const missing = [...new Set(lines.flatMap(([, one]) => (isUnavailable(one) ? [one.why] : [])))];
  if (drawn.length === 0) return `Tables without groups: ${missing.join('; ')}.`;
  return `Best widths of tables without groups: ${printList(drawn)}${missing.length === 0 ? '' : `; ${missing.join('; ')}`}.`;
}

function againWords({ groups, trust, k }: GroupingFound): string {
  const of = (again: FoundGroup['again']) => groups.filter((group) => group.again === again);
  const mean = ({ stability }: FoundGroup) =>
    isUnavailable(stability) ? '' : ` (${printNumber(stability.mean, 2)})`;
  const say = (list: readonly FoundGroup[]) =>
    printSome(
      list.map((group) => `${group.name}${mean(group)}`),
      4,
    );
  const [holds, doubtful, gone] = [of('found again'), of('doubtful'), of('dissolves')];
  if (holds.length + doubtful.length + gone.length === 0) return '';
  const drawn = 'When items are drawn anew (mean Jaccard in brackets)';
  if (holds.length === k) {
    const least = groups.reduce(
      (low, { stability }) => Math.min(low, isUnavailable(stability) ? low : stability.mean),
      1,
    );
    return `When items are drawn anew every group is found again (least mean Jaccard ${printNumber(least, 2)}${
      isUnavailable(trust.stability) ? '' : `, ${printCount(trust.stability[0]?.resamples ?? 0, 'draw')}`
    }).`;
  }
  const parts = [
    ...(holds.length === 0 ? [] : [`found again: ${say(holds)}`]),
    ...(doubtful.length === 0 ? [] : [`doubtful: ${say(doubtful)}`]),
    ...(gone.length === 0 ? [] : [`dissolved: ${say(gone)}`]),
  ];
  return `${drawn}: ${parts.join('; ')}.`;
}

function agreementWords({ agreement, restated }: GroupingFound): string {
  const parts = [
    ...(restated === null
      ? []
      : [`with ${inSentence(restated.label)} ${printNumber(restated.adjustedRand, 2)} (n = ${restated.n})`]),
    ...(agreement === null || isUnavailable(agreement.adjustedRand)
      ? []
      : [
          `with ${inSentence(agreement.label)} ${printNumber(agreement.adjustedRand, 2)} (n = ${agreement.n})`,
        ]),
  ];
  return parts.length === 0
    ? ''
    : `Agreement (adjusted Rand index, 0 as chance, 1 equal) ${printList(parts)}.`;
}

function nextOf({ verdict, restated, trust, groups }: GroupingFound): string[] {
  const next: string[] = [];
  if (verdict === 'cannot be told') next.push('More tables without groups to test against.');
  if (verdict === 'one attribute')
    next.push(
      `Group within one kind of ${inSentence(restated?.label ?? '')}, or without it, to see whether anything else parts the records.`,
    );
  if (verdict === 'no better than one heap')
    next.push('An ordination, which shows a gradient as what it is.');
  if (verdict === 'groups') next.push('Records that had no part in making the groups, placed among them.');
  const small = groups.filter((group) => group.small);
  if (verdict === 'groups' && small.length > 0)
    next.push(
      `More records of ${printSome(
        small.map(({ name }) => name),
        3,
      )}.`,
    );
  if (verdict === 'groups' && isUnavailable(trust.leftOut) && trust.leftOut.why !== 'not asked for')
    next.push('Records of other assemblages.');
  return next;
}
