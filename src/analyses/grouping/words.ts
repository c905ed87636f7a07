import { isUnavailable } from '../../numerics/unavailable.ts';
import type { Words } from '../contract.ts';
import { printCount, printList, printNumber, printP } from '../phrasing.ts';
import { BORDERLINE, type GroupingFound } from './compute.ts';
import { METHODS } from './options.ts';
import { groupName } from './tables.ts';

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
  const { k, unit, records, meanSilhouette } = found;
  const start =
    `${printCount(records.length, unit)} fall into ${k} groups ` +
    `(${found.options.method}; mean silhouette width ${printNumber(meanSilhouette)}, ${silhouetteReading(meanSilhouette)}` +
    ' by the table of Kaufman & Rousseeuw 1990)';
  const sentence = [
    start,
    referenceWords(found),
    stabilityWords(found),
    medoidWords(found),
    agreementWords(found),
  ]
    .filter((part) => part !== '')
    .join('. ');
  return { sentence: `${sentence}.`, cautions: cautionsOf(found) };
}

function referenceWords({ reference }: GroupingFound): string {
  if (isUnavailable(reference)) return '';
  const { p, tables, median } = reference;
  if (p > LEVEL) {
    return (
      'The groups are not distinguishable from what shuffled attributes give ' +
      `(${printP(p)}, ${tables} shuffled tables, their median ${printNumber(median)}): no evidence of groups`
    );
  }
  return (
    'Shuffled attributes seldom give groups as good ' +
    `(${printP(p)}, ${tables} shuffled tables, their median ${printNumber(median)})`
  );
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
  const { groups, reference, unit, n } = found;
  const cautions = [
    'A method of grouping always returns groups; whether they were ever a distinction to anybody is another question.',
  ];
  if (isUnavailable(reference) && found.options.permutations > 0) {
    cautions.push(`Whether noise would give groups as good was not tested: ${reference.why}.`);
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
