import { possibleMean } from '../../../../numerics/printed/possible-mean.ts';
import { possibleSd } from '../../../../numerics/printed/possible-sd.ts';
import { printRange } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { named, ROUNDING_WORDS, rangeOfFigure, shown, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Evidence, Sample } from '../evidence.ts';

/** Above this share of possible prints a mean that can be says next to nothing. */
const TELLING = 0.5;
/** From here on every spread can be, and listing the sums of squares only takes time. */
const LARGEST_N = 2000;

/**
 * Means and standard deviations that n readings on a grid cannot have (GRIM, Brown & Heathers 2017;
 * GRIMMER, Anaya 2016), for readings in whole numbers or in halves, tenths and the like.
 */
export function checkGrid({ samples }: Evidence): FigureCheck[] {
  return samples.flatMap((sample) => [...meanCheck(sample), ...medianCheck(sample), ...sdCheck(sample)]);
}

function meanCheck(sample: Sample): FigureCheck[] {
  const mean = sample.one('mean');
  const n = wholeOf(sample.n);
  if (mean === undefined || sample.n === undefined || n === null || n < 1) return [];
  const { perUnit } = mean;
  if (perUnit === null || mean.values[0].relation !== '=' || n > LARGEST_N) return [];
  const { possible, roundings, below, above } = possibleMean(mean.values[0].number, n, perUnit);
  const steps = stepWords(perUnit);
  const nearest = `the nearest means of ${n} readings in ${steps} are ${fraction(below, n, perUnit, mean)} and ${fraction(above, n, perUnit, mean)}`;
  const base = { figure: mean.id, name: 'mean on a grid', from: 'print', with: [sample.n.id] } as const;
  if (!possible)
    return [
      {
        ...base,
        outcome: 'cannot be',
        working: `With ${named(sample.n)}, ${nearest}; neither prints as ${mean.printed}, rounded or cut off.`,
        resolve: `State how many readings entered the mean, and whether they were all in ${steps}.`,
      },
    ];
  const share = Math.min(1, (n * perUnit) / Number(`1e${mean.values[0].number.decimals}`));
  if (!roundings.includes('half-up'))
    return [
      {
        ...base,
        outcome: 'agrees only if rounded',
        rounded: ROUNDING_WORDS[roundings[0]],
        working: `With ${named(sample.n)}, ${nearest}; only ${ROUNDING_WORDS[roundings[0]]} does one print as ${mean.printed}.`,
      },
    ];
  return [
    {
      ...base,
      outcome: share <= TELLING ? 'agrees' : 'passes',
      working:
        `${n} readings in ${steps} can have this mean` +
        (share < 1
          ? `; of means printed to this digit, about ${Math.max(1, Math.round(100 * share))} % can be.`
          : ', as any other printed to this digit.'),
    },
  ];
}

/** The median of an odd number of readings is one of them, of an even number the middle of two (arithmetic). */
function medianCheck(sample: Sample): FigureCheck[] {
  const median = sample.one('median');
  const n = wholeOf(sample.n);
  if (median === undefined || sample.n === undefined || n === null || n < 1) return [];
  const { perUnit } = median;
  if (perUnit === null || median.values[0].relation !== '=') return [];
  const parts = n % 2 === 1 ? perUnit : 2 * perUnit;
  const { low, high } = rangeOfFigure(median, 'any');
  const slack = 1e-9 * Math.max(1, Math.abs(high));
  const possible = Math.floor((high + slack) * parts) >= Math.ceil((low - slack) * parts);
  const base = { figure: median.id, name: 'median on a grid', from: 'print', with: [sample.n.id] } as const;
  const steps = stepWords(perUnit);
  if (possible)
    return [
      { ...base, outcome: 'passes', working: `With ${named(sample.n)} in ${steps} this median can be.` },
    ];
  return [
    {
      ...base,
      outcome: 'cannot be',
      working: `With ${named(sample.n)} in ${steps}, a median is ${n % 2 === 1 ? 'one of the readings' : 'a reading or the middle of two'}; ${median.printed} is neither.`,
      resolve: `State how many readings entered the median, and whether they were all in ${steps}.`,
    },
  ];
}

function fraction(
  { sum, mean }: { readonly sum: bigint; readonly mean: number },
  n: number,
  perUnit: number,
  figure: PrintedFigure,
): string {
  return `${perUnit === 1 ? sum : Number(sum) / perUnit}/${n} = ${shown(mean, figure)}`;
}

function stepWords(perUnit: number): string {
  const words: Readonly<Record<number, string>> = {
    1: 'whole numbers',
    2: 'halves',
    4: 'quarters',
    10: 'tenths',
  };
  return words[perUnit] ?? `steps of ${1 / perUnit}`;
}

function sdCheck(sample: Sample): FigureCheck[] {
  const [mean, sd] = [sample.one('mean'), sample.one('sd')];
  const n = wholeOf(sample.n);
  if (mean === undefined || sd === undefined || sample.n === undefined) return [];
  if (n === null || n < 2 || n > LARGEST_N || mean.perUnit === null) return [];
  if (mean.values[0].relation !== '=' || sd.values[0].relation !== '=') return [];
  const { perUnit } = mean;
  const numbers = [mean.values[0].number, sd.values[0].number] as const;
  if (numbers[1].digits < 0n || candidates(sd, n, perUnit) > MANY) return [];
  // An impossible mean is reported as such; it says nothing of the deviation.
  if (!possibleMean(numbers[0], n, perUnit).possible) return [];
  const sample1 = possibleSd(...numbers, n, { perUnit });
  const fits = sample1.possible || possibleSd(...numbers, n, { perUnit, divisor: 'n' }).possible;
  const steps = stepWords(perUnit);
  const base = {
    figure: sd.id,
    name: 'standard deviation on a grid',
    from: 'print',
    with: [mean.id, sample.n.id],
  } as const;
  if (fits)
    return [
      {
        ...base,
        outcome: candidates(sd, n, perUnit) <= FEW ? 'agrees' : 'passes',
        working: `${n} readings in ${steps} with ${named(mean)} can have this standard deviation, taken over ${sample1.possible ? 'n − 1' : 'n'}.`,
      },
    ];
  const { low, high } = rangeOfFigure(sd, 'any');
  const free = n - 1;
  const unit = perUnit * perUnit;
  const squares = (spread: number) => shown(free * spread * spread * unit, sd);
  return [
    {
      ...base,
      outcome: 'cannot be',
      working:
        `The squared deviations of ${n} readings from ${named(mean)} would add up to between ` +
        `${squares(Math.max(0, low))} and ${squares(high)} (in ${unit === 1 ? 'squared units' : `squared ${steps}`}); ` +
        'no sum of squares of whole numbers with the parity of their sum gives that, over n − 1 or over n.',
      resolve: `State how many readings entered, whether all were in ${steps}, and the divisor (n or n − 1).`,
    },
  ];
}

/** Few candidates make a fit telling; with many, some always fits. */
const FEW = 2;
const MANY = 5000;

function candidates(sd: PrintedFigure, n: number, perUnit: number): number {
  const { low, high } = printRange(sd.values[0].number, 'any');
  const from = Math.max(0, low);
  return ((high * high - from * from) * (n - 1) * perUnit * perUnit) / 2;
}
