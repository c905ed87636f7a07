import { isDistance } from '../../numerics/assemblages/similarity.ts';
import type { Words } from '../before-answers.ts';
import { LIMITS_OF_LIKENESS, NAMED } from '../coefficient-option.ts';
import { printCount, printList, printNumber, printP } from '../phrasing.ts';
import type { SimilarityFound } from './compute.ts';

/** Below this many records an assemblage says little about the kinds it held. */
const SMALL_ASSEMBLAGE = 10;

/** The most and the least alike, the order against dates, distances; and what to mind. */
export function similarityWords(found: SimilarityFound): Words {
  const sentences = [
    extremes(found),
    ...newcomerWords(found),
    orderWords(found),
    ...distanceWords(found),
  ].filter((part) => part !== '');
  return { sentence: `${sentences.join('. ')}.`, cautions: cautionsOf(found) };
}

function extremes({
  table,
  likeness,
  intervals,
  sameSource,
  options,
  kindsLabel,
  n,
}: SimilarityFound): string {
  const pairs = table.rows.flatMap((first, i) =>
    table.rows.slice(i + 1).map((second) => `${first} and ${second}`),
  );
  const order = pairs
    .map((name, place) => ({ name, place, value: likeness.values[place] }))
    .sort((a, b) => b.value - a.value || a.place - b.place);
  if (isDistance(options.coefficient)) order.reverse();
  const limits = (place: number, lead: string) => {
    const interval = intervals[place];
    return 'why' in interval
      ? ''
      : `${lead}${printNumber(options.confidence * 100)} % ${printNumber(interval.low)} to ${printNumber(interval.high)}`;
  };
  const say = ({ name, place, value }: (typeof order)[number]) =>
    `${name} (${printNumber(value)}${limits(place, '; ')})`;
  const size = `n = ${printCount(n.items, 'item')} in ${table.rows.length} assemblages`;
  const apart = sameSource.filter(({ pAdjusted }) => pAdjusted < 1 - options.confidence).length;
  const source = `; ${apart} of ${printCount(sameSource.length, 'pair')} ${apart === 1 ? 'is' : 'are'} distinguishable from two draws from one source (Holm)`;
  if (order.length === 1)
    return `In ${kindsLabel} the ${NAMED[options.coefficient]} coefficient of ${order[0].name} is ${printNumber(order[0].value)}${limits(0, ', ')}; ${size}; ${printP(sameSource[0].p)} that both are draws from one source`;
  return `In ${kindsLabel} most alike are ${say(order[0])}, least ${say(order[order.length - 1])}, by the ${NAMED[options.coefficient]} coefficient; ${size}${source}`;
}

function newcomerWords({ newcomers, options }: SimilarityFound): string[] {
  return newcomers.flatMap(({ label, n, likeness }) => {
    const [first] = likeness;
    const last = likeness.at(-1);
    if (first === undefined || last === undefined) return [];
    const say = ({ label: other, value, interval }: typeof first) =>
      `${other} (${printNumber(value)}${'why' in interval ? '' : `; ${printNumber(options.confidence * 100)} % ${printNumber(interval.low)} to ${printNumber(interval.high)}`})`;
    return [`${label} (n = ${n}) is most like ${say(first)} and least like ${say(last)}`];
  });
}

function orderWords({ axes, options }: SimilarityFound): string {
  if ('why' in axes) return `Axes could not be found: ${axes.why}`;
  const { againstDates } = axes;
  if ('why' in againstDates)
    return `Order along the first axis was not set against dates (${againstDates.why})`;
  const said =
    `Spearman rho ${printNumber(againstDates.rho, 2)}, ${printNumber(againstDates.low, 2)} to ${printNumber(againstDates.high, 2)} within the spans, ` +
    `${printP(againstDates.p)}, n = ${againstDates.n}`;
  return againstDates.p < 1 - options.confidence
    ? `The order along the first axis goes with the dates (${said})`
    : `The order along the first axis is not distinguishable from one that has nothing to do with the dates (${said})`;
}

/** What goes with distance, each with its numbers; what is not shown to, in one breath: its table has the rest. */
function distanceWords({ distances, options }: SimilarityFound): string[] {
  const tested = distances.flatMap(({ answer, ...rest }) => ('why' in answer ? [] : [{ ...rest, answer }]));
  const alpha = 1 - options.confidence;
  const name = ({ against, apartFrom }: (typeof tested)[number]) =>
    apartFrom === null ? against : `${against} apart from ${apartFrom}`;
  const shown = tested
    .filter(({ answer }) => answer.p < alpha)
    .map(
      (one) =>
        `The further apart in ${name(one)} the less alike (rank Mantel r = ${printNumber(one.answer.statistic, 2)}, ${printP(one.answer.p)}, n = ${one.answer.n} assemblages)`,
    );
  const not = tested.filter(({ answer }) => answer.p >= alpha);
  if (not.length === 0) return shown;
  const least = Math.min(...not.map(({ answer }) => answer.p));
  const said = not.length === 1 ? printP(least) : `least ${printP(least)}`;
  return [
    ...shown,
    `That assemblages further apart in ${printList(not.map(name))} are less alike is not shown (rank Mantel, ${said}, n = ${not[0].answer.n})`,
  ];
}

function cautionsOf(found: SimilarityFound): string[] {
  const { table, options, axes, unit, n, distances, kindsLabel } = found;
  const cautions: string[] = [];
  const sizes = table.counts.map((line) => line.reduce((sum, count) => sum + count, 0));
  cautions.push(LIMITS_OF_LIKENESS);
  const small = table.rows.flatMap((label, row) =>
    sizes[row] < SMALL_ASSEMBLAGE ? [`${label} (${sizes[row]})`] : [],
  );
  if (small.length > 0) {
    cautions.push(
      `Fewer than ${SMALL_ASSEMBLAGE} ${unit}s in ${printList(small)}: their likeness to others is mostly chance; read the intervals.`,
    );
  }
  const rare = table.columns.filter(
    (_, column) => table.counts.reduce((sum, line) => sum + line[column], 0) < 5,
  );
  if (rare.length > 0 && !('why' in axes)) {
    cautions.push(
      `Fewer than 5 ${unit}s of ${printList(rare)}: rare kinds and small assemblages can dominate a correspondence analysis; the table of contributions shows it.`,
    );
  }
  if (table.nested.length > 0) {
    cautions.push(
      `${printList(table.nested)} stand${table.nested.length === 1 ? 's' : ''} beside narrower kinds of the same: assemblages recorded more closely look different for that alone.`,
    );
  }
  for (const { label, n, unplaced } of found.newcomers) {
    if (unplaced > 0)
      cautions.push(
        `${unplaced} of ${n} of ${label} are of kinds that none on the axes has; they say nothing about its place on the map, which shows it too near the others.`,
      );
    if (n < SMALL_ASSEMBLAGE)
      cautions.push(
        `${label} has ${printCount(n, unit)}: its place is mostly chance; see how far its cloud reaches.`,
      );
  }
  if (options.coefficient === 'jaccard') {
    cautions.push(
      'Presence lists grow with the number of finds: small assemblages look poor and unlike; two that both lack a kind are not thereby alike.',
    );
  }
  if (options.coefficient === 'bray-curtis') {
    cautions.push('Bray-Curtis works on counts: assemblages of unlike size cannot be fully alike.');
  }
  if (distances.some(({ answer }) => !('why' in answer) && answer.n < 8)) {
    cautions.push(
      'Few assemblages enter the tests against distance: only strong relations could be seen, and pairs share their assemblages.',
    );
  }
  cautions.push(
    `Counts in ${kindsLabel} are what was found, kept and recorded; preservation can make assemblages alike or unlike, and a kind not found is not shown to have been absent.`,
  );
  if (unit === 'fragment' && n.items < n.fragments) {
    cautions.push(
      `${n.fragments} fragments come from ${n.items} items; items were drawn whole, but counts and coefficients still count fragments.`,
    );
  }
  const aside = n.setAside.reduce((sum, entry) => sum + entry.fragments, 0);
  if (aside > 0)
    cautions.push(
      `${printCount(aside, 'fragment')} set aside: ${n.setAside.map(({ reason }) => reason).join('; ')}.`,
    );
  return cautions;
}
