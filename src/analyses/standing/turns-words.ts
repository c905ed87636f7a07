import type { Turn } from '../contract.ts';
import { coefficientName, isOther, sayLikeness } from '../likeness-rank.ts';
import { printCount, printList, printNumber, printSome } from '../phrasing.ts';
import { besideTurns, guardTurns } from '../shared/guard/turn-words.ts';
import { sayCloser, sayTooBroad } from '../shared/level/said.ts';
import { asideTurn, missingKindsTurn } from '../shared/missing/words.ts';
import { survivalTurns, thoughLost } from '../shared/survival/words.ts';
import type { StandingFound } from './found.ts';

/** What would change whom the site is like: what was tried and does so first. */
export function standingTurns(found: StandingFound): readonly Turn[] {
  const turns = [
    ...closerTurns(found),
    ...recordedTurns(found),
    ...withinTurns(found),
    ...coefficientTurns(found),
    ...rivalTurns(found),
    ...survivalTurns(found.losses),
    ...recordingTurns(found),
    ...sizeTurns(found),
    ...missingKindsTurn(found.missing, {
      kinds: found.kindsLabel.toLowerCase(),
      unit: 'item',
      turned: `${found.options.site} would be most like another`,
      stands: `${found.options.site} would be most like the same`,
    }),
    ...guardTurns(found.guard),
    ...besideAll(found),
  ];
  return [...turns.filter(({ overturns }) => overturns), ...turns.filter(({ overturns }) => !overturns)];
}

/** What goes with the site against all others and was not said of those that it is told apart from. */
function besideAll({ besideConditions, guard, options }: StandingFound): Turn[] {
  const said = new Set([...guard.changes, ...guard.withstood].map(({ id }) => id));
  const going = besideConditions.going.filter(({ id }) => !said.has(id));
  return besideTurns(
    { ...besideConditions, going, unknown: [], scarce: [] },
    `what ${options.site} has beside all others`,
  );
}

function withinTurns({ sameWithin, ranking, options }: StandingFound): Turn[] {
  if ('why' in ranking.most) return [];
  return sameWithin.map((same): Turn => {
    if ('why' in same)
      return {
        what: 'Were like compared with like',
        size: `this could not be tried, since ${same.why}; likeness may be one of conditions of preservation or recovery`,
        overturns: false,
      };
    const what = `Counted among items ${same.value} alone (${printCount(same.items, 'item')} of the site)`;
    const without = same.without.length > 0 ? `; without any: ${printSome(same.without, 3)}` : '';
    if (same.standsAlone)
      return {
        what,
        size: `nobody could be ranked, since ${'why' in same.most ? same.most.why : ''}: what sets it apart may be its ${same.attribute.toLowerCase()}`,
        overturns: false,
      };
    if ('why' in same.most) return { what, size: `${same.most.why}${without}`, overturns: false };
    const value = sayLikeness(same.most.value, options.coefficient);
    return {
      what,
      size: `${same.overturns ? '' : 'still '}most like ${printSome(same.most.labels, 3)} (${value})${without}`,
      overturns: same.overturns,
    };
  });
}

function coefficientTurns({ ranking }: StandingFound): Turn[] {
  return ranking.otherCoefficients
    .filter(({ overturns }) => overturns)
    .map(({ coefficient, labels }) => ({
      what: `By another coefficient, ${coefficientName(coefficient)}`,
      size: `most like ${printSome(labels, 3)}`,
      overturns: true,
    }));
}

function rivalTurns({ ranking }: StandingFound): Turn[] {
  const { most } = ranking;
  if ('why' in most || most.rivals.length === 0) return [];
  return [
    {
      what: 'Had other items been found',
      size: `first comes ${printList(most.rivals.slice(0, 3).map(({ label, share }) => `${label} in ${printNumber(share * 100, 2)} %`))} of draws of the items`,
      overturns: false,
    },
  ];
}

/** Who comes first where what a few broad records fold is told apart. */
function closerTurns(found: StandingFound): Turn[] {
  const { toldCloser } = found;
  return toldCloser === null ? [] : rankedOtherwise(found, sayCloser(toldCloser.said), toldCloser.ranking);
}

function recordedTurns(found: StandingFound): Turn[] {
  const { level, asRecorded } = found;
  const out = level.tooBroad.length === 0 ? '' : `; left out here: ${sayTooBroad(level, 'item')}`;
  return asRecorded === null
    ? []
    : rankedOtherwise(found, 'Counted by the words as recorded', asRecorded, out);
}

function rankedOtherwise(
  { ranking, losses, options }: StandingFound,
  what: string,
  other: NonNullable<StandingFound['asRecorded']>,
  more = '',
): Turn[] {
  if ('why' in ranking.most || 'why' in other.most) return [];
  const least = 'why' in ranking.least || 'why' in other.least ? null : [ranking.least, other.least];
  const overturns = isOther(ranking.most, other.most) || (least !== null && isOther(least[0], least[1]));
  const end =
    least === null
      ? ''
      : `, least like ${printSome(least[1].labels, 2)}${thoughLost(losses, [...least[1].labels, options.site])}`;
  return [
    {
      what,
      size: `${overturns ? '' : 'still '}most like ${printSome(other.most.labels, 2)}${end}${more}`,
      overturns,
    },
  ];
}

function recordingTurns({ table, axes, siteItems }: StandingFound): Turn[] {
  const nested: Turn[] =
    table.nested.length === 0
      ? []
      : [
          {
            what: 'Recorded more closely everywhere',
            size: `${printList(table.nested)} stand${table.nested.length === 1 ? 's' : ''} beside narrower kinds of the same, so that places recorded more closely look different for that alone`,
            overturns: false,
          },
        ];
  if ('why' in axes || axes.unplaced === 0) return nested;
  return [
    ...nested,
    {
      what: 'Were kinds that no other has found elsewhere too',
      size: `${axes.unplaced} of ${printCount(siteItems, 'item')} of the site ${axes.unplaced === 1 ? 'is' : 'are'} of such kinds, which keep it from every other and do not move it on the map`,
      overturns: false,
    },
  ];
}

function sizeTurns({ ranking, n }: StandingFound): Turn[] {
  const few: Turn[] =
    ranking.tooFew.length === 0
      ? []
      : [
          {
            what: 'With more items',
            size: `${printSome(
              ranking.tooFew.map(({ label, items }) => `${label} (${items})`),
              3,
            )} could be ranked, which are now left out`,
            overturns: false,
          },
        ];
  return [...few, ...asideTurn(n.setAside)];
}

/** What would settle whom the site is like. */
export function whatWouldSettle({ ranking, sameWithin, nearer, options, level }: StandingFound): string[] {
  const [fold] = level.folds;
  const { most } = ranking;
  const missing = sameWithin.flatMap((same) => ('why' in same ? [same.attribute.toLowerCase()] : []));
  const gaps = new Set(nearer.flatMap(({ answer }) => ('why' in answer ? [answer.why] : [])));
  return [
    ...(fold?.because[0] === undefined
      ? []
      : [
          `${fold.label} of ${fold.because[0].label} told apart as elsewhere: ${printSome(fold.narrower, 3)}.`,
        ]),
    ...('why' in most ? ['More items with a kind recorded.'] : []),
    ...(!('why' in most) && most.rivals.length > 0
      ? [
          `More items of ${printSome([options.site, ...most.labels, ...most.rivals.map(({ label }) => label)], 4)}.`,
        ]
      : []),
    ...(missing.length > 0
      ? [`A record of ${printList(missing)}, so that like can be compared with like.`]
      : []),
    ...(gaps.size > 0 ? ['Places and dates of the assemblages, to test whether likeness follows them.'] : []),
  ];
}
