import type { Answer } from '../contract.ts';
import { coefficientName, type Rank, sayLikeness } from '../likeness-rank.ts';
import { oneSentence } from '../one-sentence.ts';
import {
  inSentence,
  printCount,
  printLevel,
  printList,
  printNumber,
  printP,
  printSmall,
  printSome,
} from '../phrasing.ts';
import { goneWithin, guardClauses, isHidden, mayBeDifference } from '../shared/guard/words.ts';
import { sayFolds } from '../shared/level/said.ts';
import { saysMixtures } from '../shared/options/mixtures.ts';
import { thoughLost, thoughLostInPairs } from '../shared/survival/words.ts';
import type { DistanceTest, SimilarityFound } from './found.ts';
import { whatWouldSettle } from './settle-words.ts';
import { similarityTurns } from './turns-words.ts';

/** Which assemblages are the most and the least alike; on what that rests, and what would change it. */
export function similarityWords(found: SimilarityFound): Answer {
  return {
    answer: answerOf(found),
    because: [likenessLine(found), sourceLine(found), ...newcomerLines(found), orderLine(found)].slice(0, 4),
    unless: similarityTurns(found),
    next: whatWouldSettle(found),
  };
}

/** What holds wherever assemblages are compared by counts. */
export const ALWAYS: readonly string[] = [
  'Samples are less alike than what they were drawn from, the more so the fewer their items; whether two may come from one source is told by its p, not by how alike they are.',
  'Counts of kinds are what was found, kept and recorded: preservation alone can make places alike or unlike, and a kind not found is not shown to have been absent.',
  'An axis has no direction of its own, and an order along it is an order in time only where nothing else orders the kinds.',
];

function answerOf(found: SimilarityFound): string {
  const { ranking, kindsLabel, table, sameSource, level } = found;
  const { other, how } = countedOtherwise(found);
  const kinds = inSentence(kindsLabel);
  const newcomer = found.newcomers.flatMap(({ label, likeness, most }) =>
    likeness.length === 0 || 'why' in most
      ? []
      : [`${label} is ${most.labels.length > 1 ? 'equally' : 'most'} like ${printSome(most.labels, 3)}`],
  );
  const { most, least } = ranking;
  if ('why' in most)
    return oneSentence([...newcomer.slice(0, 1), `which are alike in ${kinds} cannot be told: ${most.why}`]);
  const lostIn = (pairs: readonly string[]) => thoughLostInPairs(found.losses, pairs);
  const recordedMost = isTurned(most, other?.most ?? most);
  const recordedLeast = 'why' in least ? null : isTurned(least, other?.least ?? least);
  if (table.rows.length === 2) {
    const told = sameSource[0].told === 'told apart' ? 'are told apart' : 'are not told apart';
    return oneSentence(
      [
        ...newcomer.slice(0, 1).map((one) => `in ${kinds} ${one}`),
        `in ${kinds} ${both(most.labels[0])} ${told}`,
      ],
      guardClauses(found.guard, 'are'),
      level.folds.length > 0 ? [', counted at the level that both record'] : [],
    );
  }
  const start = newcomer.length > 0 ? `in ${kinds} ${newcomer[0]}; of the others` : `in ${kinds}`;
  const plain =
    most.labels.length > 1 || most.rivals.length > 0
      ? `${both(most.labels[0])}, but not for sure`
      : both(most.labels[0]);
  const { gone, maybe } = mayBe(found);
  return oneSentence(
    [...(gone === null ? [`${start} ${sayPairs(most, 'most')}`] : []), `${start} most alike are ${plain}`],
    gone === null ? [] : [`; what tells others apart may be ${gone}`],
    recordedMost === null ? [] : [`; ${how} it would be ${recordedMost}`],
    'why' in least
      ? []
      : recordedLeast === null
        ? [
            `; ${sayPairs(least, 'least')}${lostIn(least.labels)}`,
            `; least ${both(least.labels[0])}${lostIn(least.labels.slice(0, 1))}`,
            ...(lostIn(least.labels) === '' ? [] : ['; which are least alike hangs on what could survive']),
          ]
        : [
            `; least ${both(least.labels[0])}, but ${how} ${recordedLeast}${lostIn(least.labels)}`,
            '; which are least alike hangs on the recording',
          ],
    maybe === null ? [] : [`; what tells them apart may be ${maybe}`],
  );
}

/** What tells assemblages apart: shown to go with a condition, which leads, or only not to be told from one. */
function mayBe({ guard }: SimilarityFound) {
  const may = mayBeDifference(guard);
  const shown = goneWithin(guard);
  return { gone: shown ? may : null, maybe: shown || isHidden(guard) ? null : may };
}

/**
 * What the answer sets beside the level: what the rest tells apart where a few broad records fold it for all, since that
 * says more than words that stand for several kinds at once; otherwise the words as recorded.
 */
function countedOtherwise({ toldCloser, asRecorded, ranking }: SimilarityFound) {
  const turns = ({ most, least }: SimilarityFound['ranking']) =>
    (!('why' in ranking.most) && isTurned(ranking.most, most) !== null) ||
    (!('why' in ranking.least) && isTurned(ranking.least, least) !== null);
  return toldCloser !== null && turns(toldCloser.ranking)
    ? { other: toldCloser.ranking, how: 'in narrower kinds' }
    : { other: asRecorded, how: 'as recorded' };
}

/** The leader counted otherwise, where it is none at the level. */
function isTurned(rank: Rank, other: Rank | { readonly why: string }): string | null {
  if ('why' in other) return null;
  return other.labels.some((label) => rank.labels.includes(label)) ? null : both(other.labels[0]);
}

/** A pair by itself reads "A and B"; among others "A with B" keeps the pairs apart. */
const both = (pair: string) => pair.replace(' with ', ' and ');

function sayPairs({ labels, rivals }: Rank, how: 'most' | 'least'): string {
  const near =
    rivals.length === 0
      ? ''
      : `, though ${rivals[0].label}${rivals.length > 1 ? ` and ${rivals.length - 1} more` : ''} cannot be ruled out`;
  if (labels.length === 1) return `${how} alike are ${both(labels[0])}${near}`;
  return `equally ${how === 'most' ? 'alike' : 'unlike'} are ${printList(labels)}, a tie of ${printSmall(labels.length)} pairs${near}`;
}

function likenessLine(found: SimilarityFound): string {
  const { ranking, options, n, table, unit } = found;
  const { coefficient, confidence } = options;
  const size = `${printCount(unit === 'item' ? n.items : n.fragments, unit)} in ${table.rows.length} assemblages`;
  const said = (rank: Rank | { readonly why: string }, how: string) => {
    if ('why' in rank) return '';
    const interval = intervalOf(found, rank.labels[0]);
    const limits =
      interval === undefined || 'why' in interval
        ? ''
        : `, ${printNumber(interval.low)} to ${printNumber(interval.high)} in ${printLevel(confidence)} of draws`;
    return `; ${how} ${both(rank.labels[0])} ${sayLikeness(rank.value, coefficient)}${limits} (${how} in ${printNumber(rank.share * 100, 2)} % of draws)${how === 'least alike' ? thoughLostInPairs(found.losses, rank.labels) : ''}`;
  };
  const level = found.level.folds.length > 0 ? `; counted as ${sayFolds(found.level)}` : '';
  return `${coefficientName(coefficient)}, ${size}${saysMixtures(found.mixtures)}${said(ranking.most, 'most alike')}${said(ranking.least, 'least alike')}${level}.`;
}

function intervalOf({ table, intervals }: SimilarityFound, name: string) {
  const pairs = table.rows.flatMap((first, i) =>
    table.rows.slice(i + 1).map((second) => `${first} with ${second}`),
  );
  return intervals[pairs.indexOf(name)];
}

function sourceLine({ sameSource, notToldApart }: SimilarityFound): string {
  if (sameSource.length === 1)
    return `Draws of one source are ${sameSource[0].told === 'told apart' ? 'excluded' : 'not excluded'}: ${printP(sameSource[0].p)} (items dealt between the two).`;
  const apart = sameSource.filter(({ told }) => told === 'told apart').length;
  const not = notToldApart.length === 0 ? '' : `; not ${printSome(notToldApart, 3)}`;
  const open = sameSource.length - apart - notToldApart.length;
  const untold = open === 0 ? '' : `; of ${open} it cannot be told by so few ways to deal`;
  return `Shown to differ: ${apart} of ${printCount(sameSource.length, 'pair')}${not}${untold} (items dealt between the two, p adjusted after Holm).`;
}

function newcomerLines({ newcomers, options, losses }: SimilarityFound): string[] {
  const typed = newcomers.filter(({ likeness }) => likeness.length > 0);
  if (typed.length === 0) return [];
  const lines = typed.map(({ label, n, likeness, most }) => {
    const [first] = likeness;
    const last = likeness[likeness.length - 1];
    const say = ({ label: other, value, interval }: typeof first) =>
      `${other} ${sayLikeness(value, options.coefficient)}${'why' in interval ? '' : `, ${printNumber(interval.low)} to ${printNumber(interval.high)} in ${printLevel(options.confidence)} of draws`}`;
    const why = 'why' in most ? `, not ranked, since ${most.why}` : '';
    return `${label} (n = ${n}): nearest ${say(first)}; farthest ${say(last)}${thoughLost(losses, [last.label])}${why}`;
  });
  return [`${lines.join('. ')}.`];
}

function orderLine(found: SimilarityFound): string {
  return `${printList([datesOf(found), ...distancesOf(found)])}.`;
}

function datesOf({ axes }: SimilarityFound): string {
  if ('why' in axes) return `No axes: ${axes.why}`;
  const { againstDates } = axes;
  if ('why' in againstDates)
    return `The order along the first axis was not set against dates (${againstDates.why})`;
  const { rho, low, high, p, n, told } = againstDates;
  const said = `Spearman rho ${printNumber(rho, 2)}, ${printNumber(low, 2)} to ${printNumber(high, 2)} within the spans, ${printP(p)}, n = ${n}`;
  return told === 'told apart'
    ? `The order along the first axis goes with the dates (${said})`
    : `The order along the first axis is not told apart from one that has nothing to do with the dates (${said})`;
}

/** Space and time, and one apart from the other where only that shows a relation. */
function distancesOf({ distances }: SimilarityFound): string[] {
  const tested = distances.filter(({ answer }) => !('why' in answer));
  const falls = tested.filter(({ told }) => told === 'told apart');
  if (tested.length === 0) return [];
  if (falls.length > 0) return [`likeness falls with distance in ${printList(falls.map(sayDistance))}`];
  const plain = tested.filter(({ apartFrom }) => apartFrom === null);
  return [`that likeness falls with distance is not shown (${plain.map(sayDistance).join('; ')})`];
}

function sayDistance({ against, apartFrom, answer }: DistanceTest): string {
  if ('why' in answer) return against;
  const besides = apartFrom === null ? '' : ` apart from ${apartFrom}`;
  return `${against}${besides}: rank Mantel r = ${printNumber(answer.statistic, 2)}, ${printP(answer.p)}, n = ${answer.n}`;
}
