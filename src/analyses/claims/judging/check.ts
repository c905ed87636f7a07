import { numberOf, type Rounding } from '../../../numerics/printed/printed-number.ts';
import { overlap, type PrintHabit, printRange, type Range } from '../../../numerics/printed/range.ts';
import { printNumber, printYear } from '../../phrasing.ts';
import type { FigureCheck, Outcome } from '../found.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { PrintedValue } from '../reading/numbers.ts';

/** In words that follow "agrees only if rounded …". */
export const ROUNDING_WORDS: Readonly<Record<Rounding, string>> = {
  'half-up': 'half up',
  'half-even': 'half to even',
  truncated: 'by truncation',
};

export const TRUNCATED = ROUNDING_WORDS.truncated;

/** Share by which an approximate figure ("c. 12") may be off, as for approximate readings. */
const APPROXIMATE = 0.1;

/** Values that may stand behind the print. */
export function rangeOf(value: PrintedValue, habit: PrintHabit): Range {
  const number = numberOf(value.number);
  switch (value.relation) {
    case '=':
      return printRange(value.number, habit);
    case '<':
      // A bound at the precision of machines is itself rounded: "<2e-16" stands for 2.2e-16.
      return {
        low: -Infinity,
        high: value.number.decimals >= 16 ? number + Number(`0.5e-${value.number.decimals}`) : number,
      };
    case '>':
      return { low: number, high: Infinity };
    case '~': {
      const off = Math.max(APPROXIMATE * Math.abs(number), Number(`1e-${value.number.decimals}`));
      return { low: number - off, high: number + off };
    }
  }
}

/** Values that may stand behind a figure's first (mostly only) number. */
export function rangeOfFigure(figure: PrintedFigure, habit: PrintHabit): Range {
  return rangeOf(figure.values[0], habit);
}

export function numberPrinted(figure: PrintedFigure): number {
  return numberOf(figure.values[0].number);
}

/** A whole number printed exactly ("n = 34"); null for anything else. */
export function wholeOf(figure: PrintedFigure | undefined): number | null {
  if (figure === undefined) return null;
  const [{ relation, number }] = figure.values;
  const value = numberOf(number);
  return relation === '=' && Number.isInteger(value) ? value : null;
}

export type Fit = 'agrees' | 'agrees only if rounded' | 'no';

/**
 * Can the figure be what `compute` makes of the other printed figures? First with everything rounded to the
 * nearest, then with figures that were cut off.
 */
export function fitOf(figure: PrintedFigure, compute: (habit: PrintHabit) => Range): Fit {
  if (overlap(compute('rounded'), rangeOfFigure(figure, 'rounded'))) return 'agrees';
  return overlap(compute('any'), rangeOfFigure(figure, 'any')) ? 'agrees only if rounded' : 'no';
}

/** A check that turns on whether two ranges meet. */
export function checkByRange(
  figure: PrintedFigure,
  compute: (habit: PrintHabit) => Range,
  said: {
    readonly name: string;
    readonly working: (range: string) => string;
    readonly resolve: string;
    readonly with: readonly PrintedFigure[];
    /** What a misfit is called; `cannot be` unless said. */
    readonly misfit?: Outcome;
    readonly explained?: string;
  },
): FigureCheck {
  const fit = fitOf(figure, compute);
  const shown = compute(fit === 'agrees' ? 'rounded' : 'any');
  const outcome = fit === 'no' ? (said.misfit ?? 'cannot be') : fit;
  return {
    figure: figure.id,
    name: said.name,
    from: 'print',
    outcome,
    ...(fit === 'agrees only if rounded' ? { rounded: TRUNCATED } : {}),
    working: said.working(printRangeText(shown, figure)),
    ...(fit === 'no' ? { resolve: said.resolve } : {}),
    ...(fit === 'no' && said.explained !== undefined ? { explained: said.explained } : {}),
    with: said.with.map(({ id }) => id),
  };
}

/** A number with two digits more than the figure prints, so that a reader can follow the rounding. */
export function shown(value: number, figure: PrintedFigure): string {
  if (!Number.isFinite(value)) return printNumber(value);
  const [{ number, percent, year }] = figure.values;
  if (year === true && figure.quantity !== 'sd' && figure.quantity !== 'se')
    return printYear(Math.round(value));
  const decimals = Math.min(12, Math.max(0, number.decimals - (percent ? 2 : 0)) + 2);
  const scaled = percent ? 100 * value : value;
  if (number.decimals === 0 && Number.isInteger(value)) return printNumber(value, 15);
  const fixed = scaled.toFixed(decimals);
  const plain = Number(fixed) === 0 && scaled !== 0 ? printNumber(scaled) : fixed.replace('-', '−');
  return percent ? `${plain} %` : plain;
}

export function printRangeText({ low, high }: Range, figure: PrintedFigure, joined = 'to'): string {
  const [from, to] = [shown(low, figure), shown(high, figure)];
  return from === to ? from : `${from} ${joined} ${to}`;
}

/** How a figure is named in a sentence: "n = 34 (p. 12)", "n = 34 (table2: A / n)". */
export function named(figure: PrintedFigure): string {
  const said = figure.values.map(({ text }) => text.trim().replace(/^[^\d<>≤≥~]*=\s*/u, '')).join(', ');
  const bare = /^[-+−.\d]/u.test(said);
  const name = figure.quantity === 'share' ? '' : figure.quantity;
  const where = figure.place !== '' ? figure.place : figure.cell !== null ? figure.id : '';
  return `${bare && name !== '' ? `${name} = ${said}` : said}${where === '' ? '' : ` (${where})`}`;
}
