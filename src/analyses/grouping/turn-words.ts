import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { Turn } from '../contract.ts';
import { printCount, printNumber, printSmall, printSome } from '../phrasing.ts';
import { besideTurns } from '../shared/guard/turn-words.ts';
import type { GroupingFound } from './found.ts';
import { EUCLIDEAN_ONLY, METHODS_IN_WORDS } from './method-words.ts';

/** What would change the verdict on these groups, worst first. */
export function turnsOf(found: GroupingFound): Turn[] {
  const claimed = found.verdict === 'groups' || found.verdict === 'one attribute';
  const turns = [
    ...gapTurn(found, claimed),
    ...(claimed || found.verdict === 'cannot be told'
      ? [
          ...broadTurn(found, claimed),
          ...assemblageTurns(found, claimed),
          ...wayTurns(found),
          ...memberTurns(found),
        ]
      : []),
    ...recordTurns(found),
    ...(claimed ? besideTurns(found.beside, 'what parts them') : []),
  ];
  return turns.sort((a, b) => Number(b.overturns) - Number(a.overturns));
}

function gapTurn({ trust, k }: GroupingFound, claimed: boolean): Turn[] {
  const { groupsByGap } = trust;
  if (isUnavailable(groupsByGap) || groupsByGap === k) return [];
  const none = groupsByGap === 1;
  if (!claimed && none) return [];
  return [
    {
      what: 'were the number of groups chosen by the gap statistic',
      size: none ? 'there would be none' : `${printSmall(groupsByGap)} in place of ${printSmall(k)}`,
      overturns: none && claimed,
    },
  ];
}

/** What broad terms are taken to mean, where that was tried. */
function broadTurn({ broad, hangOnBroad, groups }: GroupingFound, claimed: boolean): Turn[] {
  if (broad === null) return [];
  const least = broad.ways
    .flatMap(({ groups: found }) => found)
    .reduce<number>((low, value) => Math.min(low, value ?? 1), 1);
  return [
    {
      what: `if broad terms (${printSome(broad.terms, 3)}) were read as near or as far as they allow`,
      size: `${
        hangOnBroad.length === 0
          ? 'no group would dissolve'
          : `gone would be ${printSome(
              hangOnBroad.map((group) => groups[group].name),
              3,
            )}`
      } (least Jaccard ${printNumber(least, 2)})`,
      overturns: claimed && hangOnBroad.length > 0,
    },
  ];
}

/** Groups that hang on one assemblage are told one by one up to this many. */
const MOST_NAMED = 3;

function assemblageTurns({ trust, groups }: GroupingFound, claimed: boolean): Turn[] {
  const { leftOut } = trust;
  if (isUnavailable(leftOut) || leftOut.length === 0) return [];
  const broken = leftOut
    .map(({ assemblage, gone }) => ({ assemblage, gone: gone.filter((group) => group < groups.length) }))
    .filter(({ gone }) => gone.length > 0);
  if (broken.length === 0) {
    const least = leftOut
      .flatMap(({ groups: found }) => found.slice(0, groups.length))
      .reduce<number>((low, value) => Math.min(low, value ?? 1), 1);
    return [
      {
        what: 'if any one assemblage had never been found',
        size: `no group would dissolve (least Jaccard ${printNumber(least, 2)})`,
        overturns: false,
      },
    ];
  }
  return broken.slice(0, MOST_NAMED).map(({ assemblage, gone }) => ({
    what: `if ${assemblage} had never been found`,
    size: `gone would be ${printSome(
      gone.map((group) => groups[group].name),
      3,
    )}`,
    overturns: claimed,
  }));
}

function wayTurns({ groups, trust }: GroupingFound): Turn[] {
  const { variants } = trust;
  if (isUnavailable(variants)) return [];
  const soft = groups.flatMap((group, at) => {
    const share = variants.groups[at]?.[at] ?? null;
    return group.firm === false && share !== null
      ? [`${group.name} (${printNumber(share * 100, 2)} % of its pairs)`]
      : [];
  });
  return [
    {
      what: `grouped in ${variants.variants.length} other ways (methods, weights, numbers of groups)`,
      size: soft.length === 0 ? 'every group stays together' : `less firm are ${printSome(soft, 3)}`,
      overturns: false,
    },
  ];
}

function memberTurns({ groups, unit }: GroupingFound): Turn[] {
  const border = groups.reduce((sum, group) => sum + group.borderline, 0);
  const small = groups.filter((group) => group.small).map(({ name, size }) => `${name} (${size})`);
  return [
    ...(border === 0
      ? []
      : [
          {
            what: `if a few readings of ${printCount(border, unit)} were otherwise`,
            size: `${border === 1 ? 'it sits' : 'they sit'} hardly better in the own group than in the next`,
            overturns: false,
          },
        ]),
    ...(small.length === 0
      ? []
      : [
          {
            what: `if more were known of ${printSome(small, 3)}`,
            size: 'nothing is typical of so few',
            overturns: false,
          },
        ]),
  ];
}

function recordTurns(found: GroupingFound): Turn[] {
  const { n, unit, trust, records, sampled, options, notes } = found;
  const aside = n.setAside.reduce((sum, entry) => sum + entry.fragments, 0);
  const turns: Turn[] = [];
  if (aside > 0)
    turns.push({
      what: `if more were recorded of ${printCount(aside, 'fragment')} set aside`,
      size: n.setAside.map((entry) => entry.reason).join('; '),
      overturns: false,
    });
  if (unit === 'fragment' && n.items < n.fragments)
    turns.push({
      what: `if items were counted in place of fragments`,
      size: `${n.fragments} fragments come from ${n.items} items, and fragments of one make a group look tighter`,
      overturns: false,
    });
  if (sampled || trust.records < records.length)
    turns.push({
      what: 'if all records were judged',
      size: `the tests rest on ${printCount(trust.records, unit)} drawn at random`,
      overturns: false,
    });
  const starts = found.tried.find(({ chosen }) => chosen)?.starts;
  if (starts !== undefined && !starts.metTwice)
    turns.push({
      what: 'if k-means were started more often',
      size: `the best of ${starts.starts} starts was met once only, and a better one may be left`,
      overturns: false,
    });
  if (EUCLIDEAN_ONLY.includes(options.method))
    turns.push({
      what: `if groups were made otherwise than ${METHODS_IN_WORDS[options.method]}`,
      size: 'that linkage is made for Euclidean distances, which these are not',
      overturns: false,
    });
  return [...turns, ...notes.map((note) => ({ what: note, size: '', overturns: false }))];
}
