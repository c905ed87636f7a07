import { exp } from '../../numerics/foundation/elementary.ts';
import {
  printCount,
  printLevel,
  printList,
  printNumber,
  printP,
  printQuantity,
  printReading,
  printSome,
} from '../phrasing.ts';
import { guardEvidence } from '../shared/guard/words.ts';
import type {
  AttributeContrast,
  ContrastFound,
  ContrastGroup,
  Effect,
  JudgedPair,
  TestAnswer,
} from './found.ts';

/** At most so many lines on one attribute: test and effect, medians or pairs, what could be missed, the trend. */
export function evidence(found: ContrastFound, contrast: AttributeContrast, most: number): string[] {
  const { samples, place } = contrast;
  if ('why' in place) return [`${samples.attribute.label}: ${place.why}.`];
  const rest =
    samples.tested.length === 2 ? [groupLine(contrast), pairLine(found, contrast)] : [pairsLine(contrast)];
  const within = guardEvidence(contrast.guard, samples.attribute.unit ?? '');
  return [testLine(found, contrast, place), ...within, ...trendLine(found, contrast), ...rest]
    .filter((line) => line !== '')
    .slice(0, most);
}

function testLine(found: ContrastFound, contrast: AttributeContrast, place: TestAnswer): string {
  const { samples, epsilonSquared, pairs, pAdjusted } = contrast;
  const items = samples.tested.reduce((sum, group) => sum + group.points.count, 0);
  const fragments = samples.tested.reduce((sum, group) => sum + group.points.values.length, 0);
  const size = `n = ${printCount(items, 'item')}${fragments > items ? ` in ${fragments} fragments` : ''}`;
  const df = place.df === null ? '' : `, df ${place.df}`;
  const adjusted =
    found.attributes.length > 1 && typeof pAdjusted === 'number' ? `, adjusted ${printP(pAdjusted)}` : '';
  const effects =
    pairs.length === 1
      ? twoGroupEffects(found, contrast, pairs[0])
      : 'why' in epsilonSquared
        ? []
        : [effectWords('epsilon squared', epsilonSquared, found.options.confidence)];
  return `${samples.attribute.label}, ${size}: ${[`${place.name} ${place.symbol} ${printNumber(place.statistic, 4)}${df}, ${printP(place.p)} (${place.method})${adjusted}`, ...effects].join('; ')}.`;
}

function effectWords(said: string, { interval, estimate }: Effect, confidence: number): string {
  if ('why' in interval) return `${said} ${printNumber(estimate, 2)}`;
  return `${said} ${printNumber(estimate, 2)} (${printLevel(confidence)} limits ${printNumber(interval.low, 2)} to ${printNumber(interval.high, 2)})`;
}

function twoGroupEffects(
  { options }: ContrastFound,
  { samples }: AttributeContrast,
  { delta, shift, ratio }: JudgedPair,
): string[] {
  const unit = samples.attribute.unit ?? '';
  const effects: readonly (readonly [string, JudgedPair['delta']])[] = [
    ['Cliff’s delta', delta],
    [`shift${unit === '' ? '' : ` in ${unit}`}`, shift],
    ['ratio of medians', ratio],
  ];
  return effects.flatMap(([said, effect]) =>
    'why' in effect ? [] : [effectWords(said, effect, options.confidence)],
  );
}

/** Medians of groups with items enough to be quoted. */
function groupLine({ samples }: AttributeContrast): string {
  if (samples.graded) return '';
  const unit = samples.attribute.unit ?? '';
  const said = (group: ContrastGroup) =>
    `${printReading(group.quartiles[1], unit)} in ${group.label} (n = ${printCount(group.points.count, 'item')})`;
  const quoted = samples.tested.filter(({ quotable }) => quotable);
  return quoted.length === 0 ? '' : `Medians: ${printList(quoted.map(said))}.`;
}

/** What two groups that are not told apart leave open, and whether they are alike. */
function pairLine(found: ContrastFound, { samples, pairs, told }: AttributeContrast): string {
  const [pair] = pairs;
  if (pair === undefined) return '';
  const { equivalence } = pair;
  const alike =
    'why' in equivalence
      ? []
      : [
          `ratio of geometric means ${printNumber(exp(equivalence.difference), 2)} (${printLevel(2 * found.options.confidence - 1)} limits ${printNumber(exp(equivalence.low), 2)} to ${printNumber(exp(equivalence.high), 2)}): that they are alike within ${printLevel(found.options.within)} is ${pair.alike === 'told apart' ? 'shown' : 'not shown'} (${printP(equivalence.p)})`,
        ];
  const missed = told === 'told apart' ? [] : [missedWords(found, pair, samples)];
  const said = [...missed, ...alike].join('; ');
  return said === '' ? '' : `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

function missedWords(
  { options }: ContrastFound,
  { detectableDelta, detectable }: JudgedPair,
  { logarithmic, attribute }: AttributeContrast['samples'],
): string {
  if (typeof detectableDelta !== 'number') return detectableDelta.why;
  const shift =
    typeof detectable === 'number' && Number.isFinite(detectable)
      ? logarithmic
        ? `, about a factor of ${printNumber(detectable, 2)},`
        : `, about ${printQuantity(detectable, attribute.unit ?? '', 2)},`
      : '';
  return `a difference below delta ${printNumber(detectableDelta, 2)}${shift} would be found less often than ${printLevel(options.power)} of the time`;
}

/** The pairs told apart, widest first, of groups with items enough to be quoted. */
function pairsLine({ samples, pairs }: AttributeContrast): string {
  const size = ({ delta }: JudgedPair) => ('why' in delta ? 0 : Math.abs(delta.estimate));
  const apart = pairs
    .filter(({ told, quotable }) => told === 'told apart' && quotable)
    .sort((a, b) => size(b) - size(a));
  if (apart.length === 0) return '';
  const medians = (place: number) => {
    const { label, quartiles } = samples.tested[place];
    return samples.graded
      ? label
      : `${label} (median ${printReading(quartiles[1], samples.attribute.unit ?? '')})`;
  };
  const [first, ...rest] = apart;
  const delta = 'why' in first.delta ? '' : `, Cliff’s delta ${printNumber(first.delta.estimate, 2)}`;
  const others =
    rest.length === 0
      ? ''
      : `; also ${printSome(
          rest.map((pair) => `${samples.tested[pair.first].label} and ${samples.tested[pair.second].label}`),
          3,
        )}`;
  return `Furthest apart ${medians(first.first)} and ${medians(first.second)}${delta}${others}.`;
}

function trendLine({ options }: ContrastFound, { trend }: AttributeContrast): string[] {
  if (trend === null || 'why' in trend) return [];
  const [rho] = trend.tests;
  if ('why' in rho) return [];
  const range =
    'why' in rho.drawn
      ? ''
      : `, ${printLevel(options.confidence)} of draws within the spans ${printNumber(rho.drawn.low, 2)} to ${printNumber(rho.drawn.high, 2)}`;
  return [
    `With time: Spearman’s rho ${printNumber(rho.statistic, 2)}${range}, ${printP(rho.p)} (${rho.method}), n = ${trend.values.length} in ${printCount(trend.spans, 'span')} of years.`,
  ];
}

/** All attributes together, in one line; none where one was asked. */
export function togetherEvidence({ together }: ContrastFound): string[] {
  if (together === null) return [];
  if ('why' in together) return [`All together: ${together.why}.`];
  const { place, dispersion, similarity, items } = together;
  if ('why' in place) return [`All together: ${place.why}.`];
  const ratio =
    typeof place.statistic === 'number'
      ? `F ${printNumber(place.statistic)}`
      : `no F (${place.statistic.why})`;
  const parts = [
    `permutational analysis of variance ${ratio}, df ${place.dfBetween} and ${place.dfWithin}, R squared ${printNumber(place.rSquared, 2)}, ${printP(place.p)}`,
    ...('why' in dispersion
      ? []
      : [`unequal spread F ${printNumber(dispersion.statistic)}, ${printP(dispersion.p)}`]),
    ...('why' in similarity
      ? []
      : [`analysis of similarities R ${printNumber(similarity.statistic, 2)}, ${printP(similarity.p)}`]),
  ];
  return [`All together, n = ${printCount(items, 'item')}: ${parts.join('; ')}.`];
}
