import { printList } from '../../phrasing.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { Quantity } from '../reading/terms.ts';

type Need = Quantity | 'step';

/** What, in the same set, would let a figure be held against others. */
const NEEDS: Partial<Record<Quantity, readonly Need[]>> = {
  mean: ['n', 'step'],
  sd: ['mean', 'n', 'step'],
  se: ['sd', 'n'],
  cv: ['mean', 'sd'],
  share: ['count', 'n'],
  range: ['min', 'max'],
  low: ['mean', 'sd', 'n'],
  high: ['mean', 'sd', 'n'],
  p: ['statistic', 'df'],
  correlation: ['n', 'p'],
  estimate: ['se', 'statistic'],
};

/** The interval beside a test, a correlation or a coefficient rests on what that has. */
const INTERVAL_BESIDE: readonly (readonly [beside: Quantity, needs: readonly Need[]])[] = [
  ['estimate', ['se']],
  ['correlation', ['n']],
  ['statistic', ['df']],
  ['difference', ['statistic', 'df']],
];

/** The interval of a share rests on a count and the number that it is of. */
const OF_SHARE: readonly Need[] = ['count', 'n'];

const NEED_WORDS: Partial<Record<Need, string>> = {
  step: 'the step of the readings',
  sd: 'the standard deviation',
  se: 'its standard error',
  df: 'the degrees of freedom',
  statistic: 'the statistic with the name of its test',
  min: 'the smallest reading',
  max: 'the largest reading',
  mean: 'the mean',
  count: 'the count',
};

const OTHER_NEEDS: Partial<Record<Quantity, string>> = {
  count: 'the total, with the other counts',
  total: 'the parts that it sums',
  difference: 'the two means',
  ratio: 'the two means',
  statistic: 'p with the degrees of freedom, or the printed table',
  df: 'the numbers of records',
  similarity: 'the counts or percentages of both assemblages',
  diversity: 'the counts or percentages of the assemblage',
};

/** What its set lacks of that. */
function lacking(figure: PrintedFigure, set: readonly PrintedFigure[]): string {
  const printed = new Set(set.map(({ quantity }) => quantity));
  const inPerCent = /%/.test(figure.printed.replaceAll(/9\d(?:[.,]\d)?[-\s]*%/g, ''));
  const ofShare = inPerCent || figure.counted.length > 0 || printed.has('share') || printed.has('count');
  const interval = figure.quantity === 'low' || figure.quantity === 'high';
  const beside = INTERVAL_BESIDE.find(([quantity]) => printed.has(quantity))?.[1];
  const needs =
    !interval || (beside === undefined && !ofShare)
      ? (NEEDS[figure.quantity] ?? [])
      : ofShare
        ? OF_SHARE
        : (beside ?? []);
  const absent = needs.filter((need) => (need === 'step' ? figure.perUnit === null : !printed.has(need)));
  if (absent.length > 0) return printList(absent.map((need) => NEED_WORDS[need] ?? need));
  return OTHER_NEEDS[figure.quantity] ?? 'the single readings';
}

/** What is missing, in a sentence. */
export function missingFor(figure: PrintedFigure, set: readonly PrintedFigure[], withData: boolean): string {
  return `Missing: ${lacking(figure, set)}${withData ? '' : '; or the data'}.`;
}

/** What would let it be checked, in a sentence. */
export function needFor(figure: PrintedFigure, set: readonly PrintedFigure[], withData: boolean): string {
  return `Print ${lacking(figure, set)} beside it${withData ? '' : ', or give the table of readings'}.`;
}
