import { exactly, over, overlap, type PrintHabit, type Range } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { named, printRangeText, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Quantity } from '../../reading/terms.ts';
import { type Evidence, only } from '../evidence.ts';

/** Spacing in mm and count per cm are one measurement: d = 10 / p. */
const SPACING = 'rowSpacing';
const DENSITY = 'density2';

/** Which figure of the one goes with which of the other. */
const PARTNERS: readonly (readonly [of: Quantity, other: Quantity])[] = [
  ['reading', 'reading'],
  ['min', 'max'],
  ['max', 'min'],
  ['median', 'median'],
  ['mean', 'mean'],
];

/**
 * Spacing of rows against their count per cm, within a set. Single readings, ends and medians of an odd
 * number convert exactly; the mean count is never below 10 over the mean spacing (Jensen 1906), so that
 * means bound each other on one side only.
 */
export function checkSpacing({ sets }: Evidence): FigureCheck[] {
  return [...sets.values()].flatMap((set) =>
    PARTNERS.flatMap(([quantity, other]) => {
      const of = (attribute: string, wanted: Quantity) =>
        set.filter(
          (figure) =>
            figure.quantity === wanted &&
            figure.attributes.length === 1 &&
            figure.attributes[0] === attribute,
        );
      return of(DENSITY, quantity).flatMap((density) => {
        const spacing = only(
          of(SPACING, other).filter(({ selectText }) => selectText === density.selectText),
        );
        const alone = only(
          of(DENSITY, quantity).filter(({ selectText }) => selectText === density.selectText),
        );
        return spacing === undefined || alone === undefined
          ? []
          : [converted(density, spacing, quantity, set)];
      });
    }),
  );
}

function converted(
  density: PrintedFigure,
  spacing: PrintedFigure,
  quantity: Quantity,
  set: readonly PrintedFigure[],
): FigureCheck {
  const found = (habit: PrintHabit): Range => over(exactly(10), rangeOfFigure(spacing, habit));
  const printed = rangeOfFigure(density, 'any');
  const fits =
    quantity === 'mean' ? printed.high >= found('any').low * (1 - 1e-12) : overlap(found('any'), printed);
  const n = wholeOf(
    only(set.filter((figure) => figure.quantity === 'n' && figure.selectText === density.selectText)),
  );
  const binding = quantity !== 'median' || (n !== null && n % 2 === 1);
  const slip = [2.54, 1 / 2.54, 10, 0.1].filter((factor) =>
    overlap({ low: found('any').low * factor, high: found('any').high * factor }, printed),
  );
  return {
    figure: density.id,
    name: 'count per cm from the spacing',
    from: 'print',
    outcome: fits
      ? quantity === 'mean' || !binding
        ? 'passes'
        : 'agrees'
      : binding
        ? 'cannot be'
        : 'differs',
    working:
      `10 mm over ${named(spacing)} is ${printRangeText(found('any'), density)} per cm` +
      `${quantity === 'mean' ? ', and the mean count cannot be less' : ''}; printed: ${density.printed}.`,
    ...(fits
      ? {}
      : {
          ...(slip.length === 1
            ? {
                explained: `a unit slip: ${slip[0] > 1 ? '×' : '÷'} ${Math.max(slip[0], 1 / slip[0]).toFixed(slip[0] === 10 || slip[0] === 0.1 ? 0 : 2)}`,
              }
            : {}),
          resolve: 'State the unit of each and whether both were measured on the same fragments.',
        }),
    with: [spacing.id],
  };
}
