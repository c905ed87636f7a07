import { numberOf, type Rounding, unitOf } from '../../../numerics/printed/printed-number.ts';
import { exactly, overlap } from '../../../numerics/printed/range.ts';
import { roundingsOf } from '../../../numerics/printed/rounding-of.ts';
import type { FigureCheck } from '../found.ts';
import { ROUNDING_WORDS, rangeOfFigure, shown } from '../judging/check.ts';
import type { PrintedFigure } from '../reading/claim.ts';

/** One way to compute a figure, and what it gives. */
export interface Way {
  readonly said: string;
  readonly value: number;
}

/**
 * A statistic is a difference of large sums, of which few digits may be left: two programs that both print all of
 * them need agree to no more decimals than this.
 */
const CANCELLED = 1e-9;

/** Half up is the ordinary way; any other is named. */
export function fitOfRoundings(
  roundings: readonly Rounding[],
):
  | { readonly outcome: 'agrees' }
  | { readonly outcome: 'agrees only if rounded'; readonly rounded: string }
  | undefined {
  if (roundings.length === 0) return undefined;
  if (roundings.includes('half-up')) return { outcome: 'agrees' };
  return {
    outcome: 'agrees only if rounded',
    rounded: roundings.map((rounding) => ROUNDING_WORDS[rounding]).join(' or '),
  };
}

/** The figure against each way in which it may have been computed. */
export function checkByWays(
  figure: PrintedFigure,
  ways: readonly Way[],
  from: string,
  resolve = 'State which way the figure was computed, and from which table.',
): FigureCheck {
  const fit = fitOfWays(figure, ways);
  const list = ways.map(({ said, value }) => `${shown(value, figure)} (${said})`).join(', ');
  return {
    figure: figure.id,
    name: `${figure.quantity} of the printed table`,
    from: 'print',
    ...(fit === null ? { outcome: 'cannot be' as const, resolve } : fit.fit),
    working: `From "${from}": ${list}; printed: ${figure.printed}${fit === null ? '' : ` (${fit.said})`}.`,
    with: [],
  };
}

/** The first way that gives the print, and how it was rounded. */
export function fitOfWays(figure: PrintedFigure, ways: readonly Way[]) {
  const fits = ways.flatMap(({ said, value }) => {
    const fit = fitOfValue(figure, value);
    return fit === undefined ? [] : [{ said, fit }];
  });
  return fits.find(({ fit }) => fit.outcome === 'agrees') ?? fits[0] ?? null;
}

/** How a computed number agrees with a print; undefined where it does not. */
function fitOfValue(figure: PrintedFigure, value: number) {
  const [{ relation, number }] = figure.values;
  if (relation !== '=')
    return overlap(exactly(value), rangeOfFigure(figure, 'any'))
      ? ({ outcome: 'agrees' } as const)
      : undefined;
  const noise = figure.quantity === 'statistic' ? CANCELLED : 0;
  if (unitOf(number) < noise && Math.abs(value - numberOf(number)) <= noise)
    return { outcome: 'agrees' } as const;
  return fitOfRoundings(roundingsOf(value, number) as readonly Rounding[]);
}
