import type { Answer } from '../contract.ts';
import {
  firstShort,
  inSentence,
  printCount,
  printLevel,
  printList,
  printNumber,
  printP,
  printSmall,
  printSome,
} from '../phrasing.ts';
import { mayBeDifference } from '../shared/guard/words.ts';
import { NAMED_NEAREST, type Neighbour, type PlacementFound } from './found.ts';
import type { JudgedLabel, LabelSet, Novelty } from './sets-found.ts';
import { rightSaid } from './sets-tables.ts';
import { doubts, fragile, guardedTurns, sentenceOf } from './turn-words.ts';

/** Which labels may hold the find, at which level, and from how much; never what the find is. */
export function placementWords(found: PlacementFound): Answer {
  if (found.unplaced !== null) return unplaced(found, found.unplaced);
  const conditions = guardedTurns(found);
  return {
    answer: answerOf(found),
    because: because(found),
    unless: [
      ...fragile(found),
      ...conditions.filter(({ overturns }) => overturns),
      ...doubts(found),
      ...conditions.filter(({ overturns }) => !overturns),
    ],
    next: next(found),
  };
}

function unplaced({ notes, lacking }: PlacementFound, why: string): Answer {
  return {
    answer: firstShort([
      `where the find belongs cannot be told: ${why}.`,
      'where the find belongs cannot be told.',
    ]),
    because: notes.slice(0, 4).map(sentenceOf),
    unless: [],
    next: [
      lacking.length > 0
        ? `Give at least one of what the comparanda record: ${printSome(lacking, 8)}.`
        : 'Bring comparanda that record what is known of the find.',
    ],
  };
}

const askedSets = ({ sets }: PlacementFound) => sets.filter(({ asked }) => asked);

function answerOf(found: PlacementFound): string {
  const [first, ...others] = askedSets(found);
  if (first === undefined)
    return firstShort(['where the find belongs cannot be told: the comparanda carry no labels to judge.']);
  const [other] = found.guarded.flatMap(({ guard }) => mayBeDifference(guard) ?? []);
  const words = found.moves.some((move) => move.fragile && move.change === 'broad terms');
  const moved = words
    ? `; which stay hangs on broad terms (${printSome(found.broad?.terms ?? [], 1)})`
    : found.moves.some((move) => move.fragile && move.verdict === 'excluded')
      ? ', as finds are weighed and recorded here'
      : '';
  const hangs = other === undefined ? moved : `; what excludes the others may be ${other}`;
  // What cannot be excluded is said with the first; of others in full where the first says something else.
  const isSaid = first.kept.length > 0 && first.excluded.length > 0;
  const rest = others.map((set) => inShort(found, set, isSaid));
  const said = (most: number, more: readonly string[]) =>
    `${[leading(found, first, most), ...more].join('; ')}${hangs}.`;
  return firstShort([
    ...[rest, rest.slice(0, 2), rest.slice(0, 1), []].map((more) => said(4, more)),
    ...[rest, rest.slice(0, 2), []].map((more) => said(0, more)),
  ]);
}

/** "by site three of six cannot be excluded at 90 % (A, B and C)"; without names where there are more than `most`. */
function leading(found: PlacementFound, set: LabelSet, most: number): string {
  const by = `by ${inSentence(set.attribute)}`;
  const at = `at ${printLevel(set.level)}`;
  const left = [...set.kept, ...set.tooFew];
  const all = left.length + set.excluded.length;
  if (set.kept.length === 0 && set.excluded.length === 0)
    return `${by} nothing can be told: all ${printSmall(all)} have too few ${set.by} to judge ${at}`;
  if (set.kept.length === 0) return `${by} ${nothingKept(set, noveltyOf(found, set), most)}`;
  if (set.excluded.length === 0) return `${by} none of ${printSmall(all)} can be excluded ${at}`;
  const names = left.length <= most ? ` (${printList(left)})` : '';
  return `${by} ${printSmall(left.length)} of ${printSmall(all)} cannot be excluded ${at}${names}`;
}

/** "by region two of three", for the attributes after the first; in full where `isSaid` is not. */
function inShort(found: PlacementFound, set: LabelSet, isSaid: boolean): string {
  const by = `by ${inSentence(set.attribute)}`;
  const left = set.kept.length + set.tooFew.length;
  const all = left + set.excluded.length;
  if (set.kept.length === 0 && set.excluded.length > 0)
    return `${by} ${nothingKept(set, noveltyOf(found, set), 0)}`;
  if (set.kept.length === 0) return `${by} all ${printSmall(all)} have too few ${set.by}`;
  if (set.excluded.length === 0) return `${by} none of ${printSmall(all)} can be excluded`;
  return `${by} ${printSmall(left)} of ${printSmall(all)}${isSaid ? '' : ' cannot be excluded'}`;
}

const noveltyOf = ({ novelty }: PlacementFound, { attribute }: LabelSet) =>
  novelty.find((one) => one.attribute === attribute);

function nothingKept(set: LabelSet, novelty: Novelty | undefined, most: number): string {
  if (set.tooFew.length > 0)
    return set.tooFew.length <= most
      ? `only ${printList(set.tooFew)} ${set.tooFew.length === 1 ? 'is' : 'are'} left, of too few ${set.by} to exclude`
      : `only ${printSmall(set.tooFew.length)} of too few ${set.by} to exclude are left`;
  return novelty?.verdict === 'none of these'
    ? `it is unlike all ${printSmall(set.excluded.length)} known here`
    : `all ${printSmall(set.excluded.length)} are unlikely, though not all excluded at the stricter level`;
}

/** Attributes of labels whose evidence is given. */
const MOST_ATTRIBUTES = 3;
/** Labels that a line of evidence names. */
const MOST_NAMED = 5;

function because(found: PlacementFound): string[] {
  const { neighbours, comparedOn, n, unit, options } = found;
  const near = neighbours
    .slice(0, NAMED_NEAREST)
    .map(
      (one, place) =>
        `${one.id} (${one.assemblage === '' ? '' : `${one.assemblage}, `}distance ${printNumber(one.distance, 2)}${spanOf(one, place === 0)}${one.shared < one.of ? `, on ${one.shared} of ${one.of}` : ''})`,
    );
  const among = printCount(unit === 'item' ? n.items : n.fragments, unit);
  const standing = found.standsFor === 'one fragment an item' ? ', each by one of its fragments' : '';
  return [
    `Nearest of ${among}${standing}, compared on ${printCount(comparedOn.length, 'attribute')}: ${printList(near)}.`,
    ...askedSets(found)
      .slice(0, MOST_ATTRIBUTES)
      .map(
        (set) =>
          `${set.attribute} at ${printLevel(options.level)}${orderOf(found, set)}: ${printParts(found, set).join('; ')}.`,
      ),
  ];
}

/** ", 0.05 to 0.31 as broad terms are read"; the reason is given with the first. */
function spanOf({ least, greatest }: Neighbour, first: boolean): string {
  const [near, far] = [printNumber(least, 2), printNumber(greatest, 2)];
  return near === far ? '' : `, ${near} to ${far}${first ? ' as broad terms are read' : ''}`;
}

/** ", likeliest first (right for 83 of 120 left out …)" */
function orderOf({ rankings }: PlacementFound, { attribute }: LabelSet): string {
  const ranking = rankings.find((one) => one.attribute === attribute);
  return ranking === undefined ? '' : `, likeliest first (${rightSaid(ranking)})`;
}

function printParts(found: PlacementFound, set: LabelSet): string[] {
  const pOf = (label: string) => {
    const judged = found.judged.find((one) => one.attribute === set.attribute && one.label === label);
    return judged === undefined ? label : withP(judged);
  };
  return [
    ...(set.kept.length === 0 ? [] : [`not excluded ${printSome(set.kept.map(pOf), MOST_NAMED)}`]),
    ...(set.tooFew.length === 0
      ? []
      : [
          `too few ${set.by} to exclude ${printSome(
            set.tooFew.map((label) => withCount(found, set, label)),
            MOST_NAMED,
          )}`,
        ]),
    ...(set.excluded.length === 0 ? [] : [`excluded ${printSome(set.excluded.map(pOf), MOST_NAMED)}`]),
  ];
}

function withCount(found: PlacementFound, set: LabelSet, label: string): string {
  const judged = found.judged.find((one) => one.attribute === set.attribute && one.label === label);
  return judged === undefined ? label : `${label} (${judged.judgedBy})`;
}

const withP = ({ label, outcome }: JudgedLabel): string =>
  'why' in outcome ? label : `${label} (${printP(outcome.p)}, n = ${outcome.n})`;

/** The measurement that is expected to leave fewest labels. */
function next({ next: measurements }: PlacementFound): string[] {
  const [best] = [...measurements].sort((a, b) => b.now - b.expected - (a.now - a.expected));
  if (best === undefined || printNumber(best.expected, 2) === printNumber(best.now, 2)) return [];
  return [
    `Measure ${inSentence(best.label)}: of ${inSentence(best.of)} about ${printNumber(best.expected, 2)} would be left instead of ${printNumber(best.now, 2)}.`,
  ];
}
