import { exactly, overlap } from '../../../numerics/printed/range.ts';
import { type ShareInterval, shareIntervals } from '../conventions/share-intervals.ts';
import type { FigureCheck } from '../found.ts';
import { named, numberPrinted, rangeOfFigure, shown, wholeOf } from '../judging/check.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { selectionText } from '../reading/select-text.ts';
import { collect, type Evidence, only } from './evidence.ts';

const LEVELS = [0.95, 0.9, 0.99] as const;
const MOST_SHOWN = 3;

/** The confidence interval of a share against its count and number of records, in every ordinary way. */
export function checkShareIntervals({ sets }: Evidence): FigureCheck[] {
  return [...sets.values()].flatMap((set) => {
    const plain = set.filter(({ cell, versus }) => cell === null && versus.length === 0);
    return [
      ...collect(plain, ({ selectText, counted }) => `${selectText}|${selectionText(counted)}`).values(),
    ].flatMap((same) => intervalOf(same, set));
  });
}

function intervalOf(same: readonly PrintedFigure[], set: readonly PrintedFigure[]): FigureCheck[] {
  const one = (quantity: PrintedFigure['quantity']) =>
    only(same.filter((figure) => figure.quantity === quantity));
  const [low, high, share, count] = [one('low'), one('high'), one('share'), one('count')];
  if (low === undefined || high === undefined || (share === undefined && count === undefined)) return [];
  const base = one('n') ?? baseOf(low, set);
  const n = wholeOf(base);
  if (base === undefined || n === null || n < 1) return [];
  const over = wholeOf(count) ?? (share === undefined ? null : Math.round(numberPrinted(share) * n));
  if (over === null || over > n) return [];
  const levels = low.level === null ? LEVELS : [low.level];
  const ways = levels.flatMap((level) => shareIntervals(over, n, level));
  const fits = (way: ShareInterval) =>
    overlap(exactly(way.low), rangeOfFigure(low, 'any')) &&
    overlap(exactly(way.high), rangeOfFigure(high, 'any'));
  const fitting = ways.find(fits);
  const rests = [...(count === undefined ? [] : [count]), ...(share === undefined ? [] : [share]), base];
  const list = (fitting === undefined ? ways.slice(0, MOST_SHOWN) : [fitting])
    .map((way) => `${shown(way.low, low)} to ${shown(way.high, high)} (${way.said})`)
    .join('; ');
  return [
    {
      figure: low.id,
      name: 'interval of the share',
      from: 'print',
      outcome: fitting === undefined ? 'differs' : 'agrees',
      working: `${rests.map(named).join(', ')} gives ${list}; printed: ${low.values[0].text} to ${high.values[0].text}.`,
      ...(fitting === undefined
        ? { resolve: 'State the confidence of the interval, how it was made, and of which count and number.' }
        : {}),
      with: [high.id, ...rests.map(({ id }) => id)],
    },
  ];
}

/** The number of records of the same selection, where the set prints one. */
function baseOf(low: PrintedFigure, set: readonly PrintedFigure[]): PrintedFigure | undefined {
  return only(
    set.filter(
      ({ quantity, selectText, counted, versus }) =>
        quantity === 'n' && selectText === low.selectText && counted.length + versus.length === 0,
    ),
  );
}
