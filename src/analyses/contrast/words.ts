import { exp } from '../../numerics/foundation/elementary.ts';
import { adjustKnown } from '../../numerics/tests/adjust.ts';
import type { Words } from '../before-answers.ts';
import { printCount, printList, printNumber, printP, printQuantity, printReading } from '../phrasing.ts';
import { contrastCautions } from './cautions.ts';
import { percent } from './cells.ts';
import { type AttributeContrast, type ContrastFound, quartilesOf } from './compute.ts';
import type { Effect } from './pairs.ts';
import type { TestAnswer } from './tests.ts';
import type { Trend } from './trend.ts';

/** One sentence an attribute, one for all together, and what to mind when reading them. */
export function contrastWords(found: ContrastFound): Words {
  const sentences = [
    ...found.attributes.flatMap((contrast) => attributeSentences(found, contrast)),
    ...togetherSentences(found),
  ];
  return {
    sentence: sentences.length > 0 ? `${sentences.join('. ')}.` : 'Nothing can be contrasted.',
    cautions: contrastCautions(found),
  };
}

function attributeSentences(found: ContrastFound, contrast: AttributeContrast): string[] {
  const { samples, place } = contrast;
  const { label } = samples.attribute;
  if ('why' in place) return [`${label} by ${found.by} cannot be tested: ${place.why}`];
  const main =
    samples.tested.length === 2 ? twoGroups(found, contrast, place) : severalGroups(found, contrast, place);
  const trend =
    contrast.trend === null || 'why' in contrast.trend ? [] : [trendSentence(label, contrast.trend)];
  return [main, ...trend];
}

/** Statistic, df, p and where it comes from, as it stands in brackets. */
function testWords(test: TestAnswer): string {
  const df =
    test.df === null
      ? ''
      : `, df = ${test.dfWithin === null ? test.df : `${test.df}, ${printNumber(test.dfWithin)}`}`;
  return `${test.name} ${test.symbol} = ${printNumber(test.statistic, 4)}${df}, ${printP(test.p)} (${test.method})`;
}

function effectWords(name: string, effect: Effect, confidence: number): string {
  const { interval, estimate } = effect;
  if ('why' in interval) return `${name} ${printNumber(estimate, 2)}`;
  return `${name} ${printNumber(estimate, 2)} (${percent(confidence)} ${printNumber(interval.low, 2)} to ${printNumber(interval.high, 2)})`;
}

function twoGroups(found: ContrastFound, { samples, pairs }: AttributeContrast, place: TestAnswer): string {
  const { attribute, tested, graded } = samples;
  const [first, second] = tested;
  const [pair] = pairs;
  const alpha = 1 - found.options.confidence;
  const unit = attribute.unit ?? '';
  const sized = (group: typeof first) => {
    const fragments = group.points.values.length;
    const n =
      printCount(group.points.count, 'item') +
      (fragments > group.points.count ? ` in ${fragments} fragments` : '');
    return graded
      ? `${group.label} (n = ${n})`
      : `${group.label} (median ${printReading(quartilesOf(group)[1], unit)}, n = ${n})`;
  };
  const effects = [
    ...('why' in pair.delta ? [] : [effectWords('Cliff’s delta', pair.delta, found.options.confidence)]),
    ...('why' in pair.shift
      ? []
      : [effectWords(`shift${unit === '' ? '' : ` in ${unit}`}`, pair.shift, found.options.confidence)]),
    ...('why' in pair.ratio ? [] : [effectWords('ratio of medians', pair.ratio, found.options.confidence)]),
  ];
  const tests = [testWords(place), ...effects].join('; ');
  const delta = 'why' in pair.delta ? 0 : pair.delta.estimate;
  const differs = place.p < alpha && delta !== 0;
  const start = differs
    ? `${attribute.label} tends to be ${delta > 0 ? 'larger' : 'smaller'} in ${sized(first)} than in ${sized(second)}`
    : `${attribute.label} is not distinguishable between ${sized(first)} and ${sized(second)}`;
  const alike = alikeWords(pair.equivalence, alpha, found.options.within);
  return `${start}: ${tests}${differs ? '' : missedWords(found, pair, samples.logarithmic, unit)}${alike}`;
}

function missedWords(
  found: ContrastFound,
  pair: AttributeContrast['pairs'][number],
  logarithmic: boolean,
  unit: string,
): string {
  const power = percent(found.options.power);
  if (typeof pair.detectableDelta !== 'number') return `; ${pair.detectableDelta.why}`;
  const shift =
    typeof pair.detectable === 'number' && Number.isFinite(pair.detectable)
      ? logarithmic
        ? `, about a factor of ${printNumber(pair.detectable, 2)}`
        : `, about ${printQuantity(pair.detectable, unit, 2)}`
      : '';
  return `; a difference below delta ${printNumber(pair.detectableDelta, 2)}${shift} would be found less often than ${power} of the time`;
}

function alikeWords(
  equivalence: AttributeContrast['pairs'][number]['equivalence'],
  alpha: number,
  within: number,
): string {
  if ('why' in equivalence) return '';
  const [low, high] = [exp(equivalence.low), exp(equivalence.high)].map((end) => printNumber(end, 2));
  const said = `ratio of geometric means ${printNumber(exp(equivalence.difference), 2)}, ${percent(1 - 2 * alpha)} ${low} to ${high}, ${printP(equivalence.p)}`;
  return equivalence.p < alpha
    ? `; the two are alike within ${percent(within)} (two one-sided tests: ${said})`
    : `; that they are alike within ${percent(within)} is not shown (${said})`;
}

function severalGroups(
  found: ContrastFound,
  { samples, pairs, epsilonSquared }: AttributeContrast,
  place: TestAnswer,
): string {
  const alpha = 1 - found.options.confidence;
  const n = samples.tested.reduce((sum, group) => sum + group.points.count, 0);
  const effect =
    'why' in epsilonSquared
      ? ''
      : `; ${effectWords('epsilon squared', epsilonSquared, found.options.confidence)}`;
  const size = `n = ${printCount(n, 'item')} in ${samples.tested.length} groups`;
  if (place.p >= alpha) {
    return `${samples.attribute.label} is not distinguishable between the groups of ${found.by}: ${testWords(place)}${effect}; ${size}`;
  }
  const p = adjustKnown(
    pairs.map((pair) => pair.p),
    found.options.adjust,
  );
  const apart = pairs.filter((_, index) => {
    const value = p[index];
    return typeof value === 'number' && value < alpha;
  });
  const named = apart.slice(0, 4).map(({ first, second, delta }) => {
    const [a, b] = [samples.tested[first].label, samples.tested[second].label];
    return 'why' in delta ? `${a} and ${b}` : `${a} and ${b} (delta ${printNumber(delta.estimate, 2)})`;
  });
  const rest = apart.length - named.length;
  const list = printList([...named, ...(rest > 0 ? [printCount(rest, 'more pair')] : [])]);
  const pairsSaid =
    apart.length === 0
      ? `no single pair stands apart after adjustment (${found.options.adjust})`
      : `apart after adjustment (${found.options.adjust}): ${list}`;
  return `${samples.attribute.label} differs between the groups of ${found.by}: ${testWords(place)}${effect}; ${size}; ${pairsSaid}`;
}

function trendSentence(label: string, trend: Trend): string {
  const [rho] = trend.tests;
  if ('why' in rho) return `Whether ${label} changes with time cannot be tested: ${rho.why}`;
  const range =
    'why' in rho.drawn
      ? ''
      : `, ${printNumber(rho.drawn.low, 2)} to ${printNumber(rho.drawn.high, 2)} when years are drawn within the spans`;
  const said = `Spearman rho = ${printNumber(rho.statistic, 2)}${range}, ${printP(rho.p)} (${rho.method}), n = ${trend.values.length} in ${trend.spans} spans`;
  return rho.p < 0.05
    ? `${label} ${rho.statistic > 0 ? 'rises' : 'falls'} with time: ${said}`
    : `A trend of ${label} with time is not distinguishable from none: ${said}`;
}

function togetherSentences(found: ContrastFound): string[] {
  const { together } = found;
  if (together === null) return [];
  if ('why' in together) return [`All attributes together cannot be tested: ${together.why}`];
  const { place, dispersion, similarity } = together;
  if ('why' in place) return [`All attributes together cannot be tested: ${place.why}`];
  const alpha = 1 - found.options.confidence;
  const spread =
    'why' in dispersion
      ? ''
      : dispersion.p < alpha
        ? `; the groups also spread unequally (F = ${printNumber(dispersion.statistic)}, ${printP(dispersion.p)}), which can look like a difference of place`
        : `; unequal spread is not seen (F = ${printNumber(dispersion.statistic)}, ${printP(dispersion.p)})`;
  const ranks =
    'why' in similarity
      ? ''
      : `; analysis of similarities R = ${printNumber(similarity.statistic, 2)}, ${printP(similarity.p)}`;
  const ratio =
    typeof place.statistic === 'number'
      ? `F = ${printNumber(place.statistic)}`
      : `without F (${place.statistic.why})`;
  const said =
    `permutational analysis of variance ${ratio}, df = ${place.dfBetween}, ${place.dfWithin}, ${printP(place.p)}, ` +
    `R² = ${printNumber(place.rSquared, 2)}, n = ${printCount(together.items, 'item')}`;
  return [
    place.p < alpha
      ? `In all attributes together the groups of ${found.by} differ: ${said}${spread}${ranks}`
      : `In all attributes together the groups of ${found.by} are not distinguishable: ${said}${spread}${ranks}`,
  ];
}
