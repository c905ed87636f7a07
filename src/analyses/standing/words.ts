import type { Answer } from '../contract.ts';
import { coefficientName, isOther, sayLikeness, sayRank } from '../likeness-rank.ts';
import { oneSentence } from '../one-sentence.ts';
import { printCount, printList, printNumber, printP, printSome } from '../phrasing.ts';
import { mayBeDifference } from '../shared/guard/words.ts';
import { sayFolds } from '../shared/level/said.ts';
import { thoughLost } from '../shared/survival/words.ts';
import type { Apart, Likeness, NearerIn, StandingFound } from './found.ts';
import { standingTurns, whatWouldSettle } from './turns-words.ts';

/** Whom the site is like, after what could overturn it has been looked at; and on what that rests. */
export function standingWords(found: StandingFound): Answer {
  return {
    answer: answerOf(found),
    because: [likenessLine(found), sourceLine(found), apartLine(found), nearerLine(found)],
    unless: standingTurns(found),
    next: whatWouldSettle(found),
  };
}

/** What holds wherever a site is set among others. */
export const ALWAYS: readonly string[] = [
  'Samples are less alike than what they were drawn from, the more so the fewer their items; whether two may come from one source is told by its p, not by how alike they are.',
  'What was found depends on what was preserved, excavated, kept and recorded; a kind not found is not shown to have been absent.',
  'Near items elsewhere are alike in what was recorded; they are no evidence that an item was brought from there.',
];

const percent = (share: number) => `${printNumber(share * 100)} %`;

function answerOf(found: StandingFound): string {
  const { options, kindsLabel, region, ranking, sameWithin } = found;
  const { site } = options;
  const kinds = kindsLabel.toLowerCase();
  const { most, toldApart, notToldApart, otherCoefficients } = ranking;
  const alone = sameWithin.some((same) => !('why' in same) && same.standsAlone);
  const other = toldApart.length === 0 || alone ? null : mayBeDifference(found.guard);
  const where =
    region.length === 0
      ? ''
      : `Within ${printList(region.map(({ attribute, value }) => `${attribute.toLowerCase()} ${value}`))}, `;
  if ('why' in most)
    return oneSentence([`${where}whom ${site} is like in ${kinds} cannot be told: ${most.why}`]);
  const start = `${where}in ${kinds} ${site} is`;
  const bare = `most like ${most.labels[0]}`;
  const hedged = most.labels.length > 1 || most.rivals.length > 0 ? `${bare}, but not for sure` : bare;
  return oneSentence(
    [`${start} ${sayRank(most, 'most')}`, `${start} ${hedged}`],
    recordedTurn(found),
    sameWithin.flatMap((same) =>
      !('why' in same) && same.standsAlone
        ? [
            `; only ${site} is ${same.value}, so ${same.attribute.toLowerCase()} may be why`,
            `; only ${site} is ${same.value}`,
          ]
        : [],
    ),
    sameWithin.flatMap((same) =>
      !('why' in same) && same.overturns && !('why' in same.most)
        ? [`, but among items ${same.value} alone most like ${printSome(same.most.labels, 2)}`]
        : [],
    ),
    otherCoefficients
      .filter(({ overturns }) => overturns)
      .map(
        ({ coefficient, labels }) =>
          `, and by ${coefficientName(coefficient)} most like ${printSome(labels, 2)}`,
      ),
    other === null ? [] : [`; what tells it apart may be ${other}`],
    [
      notToldApart.length > 0
        ? `; it is not told apart from ${printSome(notToldApart, 2)}`
        : toldApart.length > 1
          ? '; it is told apart from every other'
          : '; the two are told apart',
    ],
  );
}

/**
 * Who it would be, where that is somebody else, with what a few broad records fold told apart, or else by the words as
 * recorded; fullest first.
 */
function recordedTurn({ ranking: { most }, toldCloser, asRecorded }: StandingFound): string[] {
  const ways = [
    { how: 'in narrower kinds', by: toldCloser?.ranking.most },
    { how: 'as recorded', by: asRecorded?.most },
  ];
  for (const { how, by } of ways)
    if (by !== undefined && !('why' in by) && !('why' in most) && isOther(most, by))
      return [`; ${how} ${printSome(by.labels, 2)}`, `; ${how}, ${by.labels[0]}`];
  return [];
}

function likenessLine(found: StandingFound): string {
  const { likeness, ranking, options, siteItems, losses } = found;
  const { coefficient, confidence } = options;
  const said = ({ label, items, value, interval }: Likeness) => {
    const limits =
      'why' in interval
        ? ''
        : `, ${printNumber(interval.low)} to ${printNumber(interval.high)} in ${percent(confidence)} of draws`;
    return `${label} ${sayLikeness(value, coefficient)}${limits} (${printCount(items, 'item')}${thoughLost(losses, [label])})`;
  };
  const { most } = ranking;
  const first =
    'why' in most
      ? likeness
      : likeness.filter(({ label }) => !ranking.tooFew.some((few) => few.label === label));
  const named = first.length <= 3 ? first : [...first.slice(0, 2), first[first.length - 1]];
  const draws =
    'why' in most
      ? ''
      : `; ${printSome(most.labels, 3)} first in ${printNumber(most.share * 100, 2)} % of draws of the items`;
  const level = found.level.folds.length > 0 ? `; counted as ${sayFolds(found.level)}` : '';
  return `${coefficientName(coefficient)} of ${options.site} (${printCount(siteItems, 'item')}): ${named.map(said).join('; ')}${draws}${level}.`;
}

function sourceLine({ likeness, ranking }: StandingFound): string {
  const { toldApart } = ranking;
  const tested = printCount(likeness.length, 'other');
  const line = (told: Likeness['told'], worst: (a: number, b: number) => boolean) =>
    likeness
      .filter((one) => one.told === told)
      .reduce<Likeness | null>(
        (best, one) => (best === null || worst(one.pAdjusted, best.pAdjusted) ? one : best),
        null,
      );
  const nearest = line('not told apart', (a, b) => a > b) ?? line('told apart', (a, b) => a > b);
  const p =
    nearest === null
      ? ''
      : `; largest p, of ${nearest.label}, ${printP(nearest.pAdjusted).replace('p = ', '').replace('p < ', 'below ')}`;
  const differs =
    toldApart.length > 0
      ? `It was shown to differ from ${toldApart.length} of ${tested}`
      : `It could not be shown to differ from ${likeness.length === 1 ? 'the one other' : `any of the ${tested}`}`;
  return `${differs} (items dealt between the two, p adjusted after Holm${p}).`;
}

/** Attributes that the line names. */
const MOST_NAMED = 3;

function apartLine({ apart, atHome, options }: StandingFound): string {
  const sure = apart.filter(({ told }) => told === 'told apart');
  const named = sure.slice(0, MOST_NAMED).map(sayApart);
  const rest = sure.length - named.length;
  const tested = apart.filter(({ told }) => told !== 'cannot be told').length;
  const attributes =
    sure.length === 0
      ? `None of ${printCount(tested, 'attribute')} sets it apart from all others together (Holm)`
      : `Apart from all others together in ${sure.length} of ${printCount(tested, 'attribute')} (Holm): ${printList([...named, ...(rest > 0 ? [`${rest} more`] : [])])}`;
  if ('why' in atHome) return `${attributes}.`;
  const { elsewhere, judged, share, expected } = atHome;
  return `${attributes}; ${elsewhere.length} of ${printCount(judged, 'item')} ${elsewhere.length === 1 ? 'has' : 'have'} most of ${elsewhere.length === 1 ? 'its' : 'their'} ${options.nearest} nearest items elsewhere (${percent(share)} of the nearest; ${percent(expected)} if places meant nothing).`;
}

function sayApart({ attribute, says, measure, effect, pAdjusted }: Apart): string {
  const size = typeof effect === 'number' ? printNumber(effect, 2) : '';
  const p = typeof pAdjusted === 'number' ? printP(pAdjusted) : '';
  return `${attribute} (${says}; ${measure === 'Cliff’s delta' ? measure : 'V'} ${size}, ${p})`;
}

function nearerLine({ nearer }: StandingFound): string {
  const gaps = [...new Set(nearer.flatMap(({ answer }) => ('why' in answer ? [answer.why] : [])))];
  const tested = nearer.filter(({ who, answer }) => who === 'all assemblages' && !('why' in answer));
  if (tested.length === 0)
    return `Whether likeness falls with distance in space or time cannot be told: ${printList(gaps)}.`;
  const falls = tested.filter(({ told }) => told === 'told apart');
  const plain = tested.filter(({ apartFrom }) => apartFrom === null);
  const test = `rank Mantel over ${assemblagesOf(tested)} assemblages`;
  if (falls.length > 0)
    return `Likeness falls with distance in ${printList(falls.map(sayNearer))} (${test}).`;
  return `That likeness falls with distance is not shown: ${plain.map(sayNearer).join('; ')} (${test}).`;
}

function assemblagesOf(tested: readonly NearerIn[]): string {
  const counts = tested.flatMap(({ answer }) => ('why' in answer ? [] : [answer.n]));
  return printNumber(counts.reduce((least, n) => Math.min(least, n)));
}

function sayNearer({ against, apartFrom, answer }: NearerIn): string {
  if ('why' in answer) return '';
  const besides = apartFrom === null ? '' : ` apart from ${apartFrom}`;
  return `${against}${besides} (r = ${printNumber(answer.statistic, 2)}, ${printP(answer.p)})`;
}
