import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { Words } from '../before-answers.ts';
import { printCount, printList, printNumber, printP } from '../phrasing.ts';
import { BORDERLINE, type GroupingFound } from './compute.ts';
import { leaveOutWords } from './leave-out.ts';
import { METHODS } from './options.ts';
import type { Reference } from './reference-tables.ts';
import { groupName } from './tables.ts';
import { variantWords } from './variant-tables.ts';

/** Reading of a mean silhouette width: Kaufman & Rousseeuw 1990, ch. 2, table 4. */
export function silhouetteReading(width: number): string {
  if (width > 0.7) return 'a strong structure';
  if (width > 0.5) return 'a reasonable structure';
  if (width > 0.25) return 'a weak structure that could be artificial';
  return 'no substantial structure';
}

/** Reading of a mean Jaccard coefficient: Hennig 2007; the words at 0.85, 0.75 and 0.6 are his. */
export const STABLE = 0.75;
const DOUBTFUL = 0.6;

/** Level at which shuffled tables are said to do as well. */
const LEVEL = 0.05;

/** The verdict (are there groups, which hold, which dissolve), the medoids, and what to mind. */
export function groupingWords(found: GroupingFound): Words {
  const { k, unit, records, meanSilhouette, options } = found;
  if (meanSilhouette === null) {
    return {
      sentence: `No two groups stand out among ${printCount(records.length, unit)} (${options.method}).`,
      cautions: cautionsOf(found),
    };
  }
  const inNone = records.filter((record) => record.group < 0).length;
  const start =
    `${printCount(records.length - inNone, unit)} fall into ${k} groups ` +
    `(${options.method}; mean silhouette width ${printNumber(meanSilhouette)}, ${silhouetteReading(meanSilhouette)}` +
    ' by the table of Kaufman & Rousseeuw 1990)' +
    (inNone === 0 ? '' : `, ${printCount(inNone, unit)} into none`);
  const sentence = [
    start,
    referenceWords(found),
    stabilityWords(found),
    variantWords(found.trust.variants),
    leaveOutWords(found.trust.leftOut),
    medoidWords(found),
    agreementWords(found),
  ]
    .filter((part) => part !== '')
    .join('. ');
  return { sentence: `${sentence}.`, cautions: cautionsOf(found) };
}

/** Whether there are groups at all: both kinds of table without groups must seldom do as well. */
function referenceWords({ trust }: GroupingFound): string {
  const { shuffled, even, heap } = trust;
  const tested = (reference: Reference) =>
    `${printP(reference.p)}, ${reference.tables} tables, their median ${printNumber(reference.median)}`;
  if (!isUnavailable(shuffled) && shuffled.p > LEVEL) {
    return (
      'They are not distinguishable from what the same attributes give when each is shuffled on its own ' +
      `(${tested(shuffled)}): no evidence of groups`
    );
  }
  const clouds = [even, heap].flatMap((reference) => (isUnavailable(reference) ? [] : [reference]));
  const asGood = clouds.find((reference) => reference.p > LEVEL);
  if (asGood !== undefined) {
    return (
      `They are not distinguishable from a cut through one ${asGood === even ? 'even cloud' : 'single heap'} of the same ` +
      `spread (${tested(asGood)}): a gradient without groups cannot be excluded`
    );
  }
  const passed = (
    [
      ['shuffled attributes', shuffled],
      ['even clouds', even],
      ['single heaps', heap],
    ] as const
  ).flatMap(([name, reference]) => (isUnavailable(reference) ? [] : [`${name} (${printP(reference.p)})`]));
  if (passed.length === 0) return '';
  return `Groups as good are seldom found in tables without any: ${printList(passed)}`;
}

function stabilityWords({ groups }: GroupingFound): string {
  const measured = groups.flatMap((group, number) =>
    isUnavailable(group.stability) || group.stability.resamples === 0
      ? []
      : [{ name: groupName(number), mean: group.stability.mean }],
  );
  if (measured.length === 0) return '';
  const say = (list: readonly { name: string; mean: number }[], verb: [string, string]) =>
    list.length === 0
      ? []
      : [
          `${list.length === 1 ? 'group' : 'groups'} ${printList(list.map(({ name, mean }) => `${name} (${printNumber(mean, 2)})`))} ` +
            `${list.length === 1 ? verb[0] : verb[1]}`,
        ];
  const parts = [
    ...say(
      measured.filter(({ mean }) => mean >= STABLE),
      ['is found again', 'are found again'],
    ),
    ...say(
      measured.filter(({ mean }) => mean < STABLE && mean >= DOUBTFUL),
      ['shows a pattern whose members are doubtful', 'show patterns whose members are doubtful'],
    ),
    ...say(
      measured.filter(({ mean }) => !(mean >= DOUBTFUL)),
      ['dissolves', 'dissolve'],
    ),
  ];
  return `When items are drawn anew (mean Jaccard in brackets), ${printList(parts)}`;
}

function medoidWords({ groups, records }: GroupingFound): string {
  const named = groups.map((group, number) => `${groupName(number)} by ${records[group.medoid].id}`);
  return `Best represented: ${printList(named)}`;
}

function agreementWords({ agreement }: GroupingFound): string {
  if (agreement === null || isUnavailable(agreement.adjustedRand)) return '';
  return (
    `Against ${agreement.label} the adjusted Rand index is ${printNumber(agreement.adjustedRand)} ` +
    `(n = ${agreement.n}; 0 as chance, 1 equal)`
  );
}

function cautionsOf(found: GroupingFound): string[] {
  const { groups, trust, unit, n } = found;
  const cautions = [
    'A method of grouping always returns groups; whether they were ever a distinction to anybody is another question.',
  ];
  if (found.options.permutations > 0 && found.k > 1) {
    const untested = new Set(
      [trust.shuffled, trust.even, trust.heap].flatMap((reference) =>
        isUnavailable(reference) ? [reference.why] : [],
      ),
    );
    for (const why of untested)
      cautions.push(`Not everything was tested against tables without groups: ${why}.`);
  }
  if (!isUnavailable(trust.groupsByGap) && trust.groupsByGap !== found.k) {
    cautions.push(
      trust.groupsByGap === 1
        ? 'The gap statistic finds no groups.'
        : `The gap statistic would take ${trust.groupsByGap} groups instead of ${found.k}.`,
    );
  }
  if (found.sampled || trust.records < found.records.length) {
    cautions.push(
      `${found.sampled ? 'Medoids were found in samples of the table; stability' : 'Stability'} and the tables without groups rest on ${printCount(trust.records, unit)} drawn at random.`,
    );
  }
  const small = groups.flatMap((group, number) => (group.size < 5 ? [groupName(number)] : []));
  if (small.length > 0) {
    cautions.push(`Fewer than 5 records in group ${printList(small)}: nothing is typical of so few.`);
  }
  const border = groups.reduce((sum, group) => sum + group.borderline, 0);
  if (border > 0) {
    cautions.push(
      `${printCount(border, unit)} sit${border === 1 ? 's' : ''} hardly better in the own group than in the next ` +
        `(silhouette width ${BORDERLINE} or less); the membership table marks them.`,
    );
  }
  const aside = n.setAside.reduce((sum, entry) => sum + entry.fragments, 0);
  if (aside > 0) {
    cautions.push(
      `${printCount(aside, 'fragment')} set aside: ${n.setAside.map((entry) => entry.reason).join('; ')}.`,
    );
  }
  if (unit === 'fragment' && n.items < n.fragments) {
    cautions.push(
      `${n.fragments} fragments come from ${n.items} items: fragments of one item make a group look tighter than it is.`,
    );
  }
  if (['centroid', 'median', 'ward', 'ward-squared'].includes(found.options.method)) {
    cautions.push(
      `"${found.options.method}" (${METHODS[found.options.method]}) is made for Euclidean distances; on this dissimilarity its heights have no geometric meaning.`,
    );
  }
  return [...cautions, ...found.notes.map((note) => `${note}.`)];
}
