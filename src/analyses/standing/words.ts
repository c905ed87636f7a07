import type { Words } from '../before-answers.ts';
import { LIMITS_OF_LIKENESS, NAMED } from '../coefficient-option.ts';
import { printCount, printList, printNumber, printP } from '../phrasing.ts';
import type { Apart, Likeness, NearerIn, StandingFound } from './found.ts';

/** Whom the site is like, what sets it apart, which items are at home elsewhere; and what to mind. */
export function standingWords(found: StandingFound): Words {
  const parts = [likenessWords(found), apartWords(found), elsewhereWords(found), nearerWords(found)];
  return { sentence: `${parts.join('. ')}.`, cautions: cautionsOf(found) };
}

const percent = (share: number) => `${printNumber(share * 100)} %`;
const siteItems = ({ table, row }: StandingFound) =>
  table.entries.filter((entry) => entry.row === row).length;

function likenessWords(found: StandingFound): string {
  const { options, likeness, kindsLabel, region } = found;
  const said = ({ label, items, value, interval }: Likeness) => {
    const limits =
      'why' in interval
        ? ''
        : `, ${percent(options.confidence)} ${printNumber(interval.low)} to ${printNumber(interval.high)}`;
    return `${label} (n = ${items}, ${NAMED[options.coefficient]} ${printNumber(value)}${limits})`;
  };
  const [first] = likeness;
  const last = likeness[likeness.length - 1];
  const where =
    region.length === 0
      ? ''
      : `Within ${printList(region.map(({ attribute, value }) => `${attribute.toLowerCase()} ${value}`))}, `;
  const start = `${where}${where === '' ? 'In' : 'in'} ${kindsLabel.toLowerCase()} ${options.site} (${printCount(siteItems(found), 'item')}) is most like ${said(first)}`;
  const least = likeness.length > 1 ? ` and least like ${said(last)}` : '';
  const alpha = 1 - options.confidence;
  const alike = likeness.filter(({ pAdjusted }) => pAdjusted >= alpha).map(({ label }) => label);
  const sources =
    alike.length === 0
      ? '; from each of the others it is distinguishable (Holm)'
      : `; that it is a draw from the same source as ${alike.length > 1 ? 'each of ' : ''}${printList(alike)} cannot be excluded (Holm)`;
  return `${start}${least}${sources}`;
}

const isApart = ({ pAdjusted, effect }: Apart, alpha: number) =>
  typeof pAdjusted === 'number' && pAdjusted < alpha && typeof effect === 'number' && effect !== 0;

/** Attributes that the sentence names. */
const MOST_NAMED = 4;

function apartWords({ apart, options }: StandingFound): string {
  const sure = apart.filter((one) => isApart(one, 1 - options.confidence));
  if (sure.length === 0)
    return `No attribute sets it apart from all others together after adjustment (${printCount(apart.length, 'attribute')}, Holm)`;
  const named = sure.slice(0, MOST_NAMED).map((one) => {
    const effect = typeof one.effect === 'number' ? printNumber(one.effect, 2) : '';
    const p = typeof one.pAdjusted === 'number' ? printP(one.pAdjusted) : '';
    return `${one.attribute} (${one.says}; ${one.measure === 'Cliff’s delta' ? one.measure : 'V'} ${effect}, ${p})`;
  });
  const rest = sure.length - named.length;
  return `What sets it apart from all others together: ${printList([...named, ...(rest > 0 ? [`${rest} more`] : [])])}`;
}

function elsewhereWords({ atHome, options }: StandingFound): string {
  if ('why' in atHome) return `Which of its items are at home elsewhere cannot be said: ${atHome.why}`;
  return `Of ${printCount(atHome.judged, 'item')} ${atHome.elsewhere.length} ${atHome.elsewhere.length === 1 ? 'has' : 'have'} most of ${options.nearest} nearest items at other places (on average ${percent(atHome.share)} of the nearest; ${percent(atHome.expected)} if places meant nothing)`;
}

function nearerWords({ nearer, options }: StandingFound): string {
  const [space, time] = nearer;
  const gaps = [...new Set([space, time].flatMap(({ answer }) => ('why' in answer ? [answer.why] : [])))];
  if (gaps.length > 0) return `Whether it is nearer in space or in time cannot be said: ${printList(gaps)}`;
  const alpha = 1 - options.confidence;
  const said = ({ against, apartFrom, answer }: NearerIn) =>
    'why' in answer
      ? ''
      : `in ${against} apart from ${apartFrom} (r = ${printNumber(answer.statistic, 2)}, ${printP(answer.p)})`;
  const falls = nearer.filter(({ answer }) => !('why' in answer) && answer.p < alpha);
  const not = nearer.filter((one) => !falls.includes(one));
  const n = 'why' in space.answer ? 0 : space.answer.n;
  const test = `(partial rank Mantel, n = ${n} assemblages)`;
  const parts = [
    ...(falls.length === 0 ? [] : [`likeness falls with distance ${printList(falls.map(said))}`]),
    ...(not.length === 0
      ? []
      : [`that likeness falls is not shown with distance ${not.map(said).join(' or ')}`]),
  ];
  return `Among all of them ${printList(parts)} ${test}`;
}

/** Below this an assemblage is too small to be typical of anything. */
const SMALL = 10;
const RARE = 5;

function cautionsOf(found: StandingFound): string[] {
  const { table, likeness, axes, atHome, unlike, sameWithin, options, apart, nearer } = found;
  const own = siteItems(found);
  const cautions: string[] = [];
  const small = [{ label: options.site, items: own }, ...likeness].filter(({ items }) => items < SMALL);
  if (small.length > 0) {
    const named = small.map(({ label, items }) => `${label} (${items})`);
    cautions.push(
      `Fewer than ${SMALL} items in ${printList(named)}: likeness to or of so few is mostly chance; read the intervals.`,
    );
  }
  cautions.push(LIMITS_OF_LIKENESS);
  const rare = table.columns.filter(
    (_, column) => table.counts.reduce((sum, line) => sum + line[column], 0) < RARE,
  );
  if (rare.length > 0)
    cautions.push(
      `Fewer than ${RARE} items of ${printList(rare)}: rare kinds can dominate a map of correspondences and the chi-square distance.`,
    );
  if ('why' in axes) cautions.push(`No map: ${axes.why}.`);
  else if (axes.unplaced > 0) {
    cautions.push(
      `${axes.unplaced} of ${printCount(own, 'item')} of the site ${axes.unplaced === 1 ? 'is' : 'are'} of kinds that no other has; they say nothing about its place on the map, which shows it too near the others.`,
    );
  }
  if (table.nested.length > 0)
    cautions.push(
      `${printList(table.nested)} stand${table.nested.length === 1 ? 's' : ''} beside narrower kinds of the same: assemblages recorded more closely look different for that alone.`,
    );
  cautions.push(...sameWithin.map((same) => sameWords(found, same)));
  const between = unlike.filter(({ between }) => typeof between !== 'number').map(({ label }) => label);
  if (between.length > 0) cautions.push(`Items cannot be compared with those of ${printList(between)}.`);
  if (!('why' in atHome) && atHome.elsewhere.length > 0) {
    cautions.push(
      'Near items elsewhere are alike in what was recorded; they are no evidence that an item was brought from there. Large assemblages have more near items by size alone.',
    );
  }
  if (apart.length > 1)
    cautions.push(
      `${apart.length} attributes were looked at; "all others together" is led by the largest assemblages.`,
    );
  if (nearer.some(({ answer }) => !('why' in answer) && answer.n < 8))
    cautions.push('Few assemblages enter the tests against distance: only strong relations could be seen.');
  cautions.push(
    'What was found depends on what was preserved, excavated, kept and recorded; a kind not found is not shown to have been absent.',
    ...found.notes.map((note) => (note.endsWith('.') ? note : `${note}.`)),
  );
  return cautions;
}

function sameWords({ likeness, options }: StandingFound, same: StandingFound['sameWithin'][number]): string {
  if ('why' in same)
    return `Like could not be compared with like: ${same.why}; likeness may be one of conditions of preservation or recovery.`;
  const head = `Within the same ${same.attribute.toLowerCase()} (${same.value}, ${printCount(same.items, 'item')} of the site)`;
  if (same.likeness.length === 0)
    return `${head} there is nothing to compare with: no other has any; what sets it apart may be its preservation.`;
  const [first] = same.likeness;
  const value = `${NAMED[options.coefficient]} ${printNumber(first.value)}, n = ${first.items}`;
  const without = same.without.length > 0 ? `; without any: ${printList(same.without)}` : '';
  return first.label === likeness[0].label
    ? `${head} it is still most like ${first.label} (${value})${without}.`
    : `${head} it is most like ${first.label} (${value}) and no longer ${likeness[0].label}: the answer depends on it${without}.`;
}
