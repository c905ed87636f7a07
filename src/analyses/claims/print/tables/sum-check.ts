import { exactly, type PrintHabit, total as sumOf } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { checkByRange, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';

/** One sum against its parts: counts exactly, rounded figures within what their print allows. */
export function sumCheck(
  figure: PrintedFigure,
  parts: readonly PrintedFigure[],
  misfit: 'cannot be' | 'differs' = 'cannot be',
): FigureCheck {
  const name = 'total of its parts';
  const resolve = 'Look up the parts and their sum; state what is counted twice or left out.';
  const exact = wholes(parts);
  const printed = figure.values[0].percent ? null : wholeOf(figure);
  if (exact !== undefined && printed !== null)
    return {
      figure: figure.id,
      name,
      from: 'print',
      outcome: exact === printed ? 'agrees' : misfit,
      working: `${additionText(parts)} is ${exact}${exact === printed ? '' : `; printed: ${figure.printed}`}.`,
      ...(exact === printed ? {} : { resolve }),
      with: parts.map(({ id }) => id),
    };
  const sum = (habit: PrintHabit) => sumOf(parts.map((part) => rangeOfFigure(part, habit)));
  return checkByRange(figure, exact === undefined ? sum : () => exactly(exact), {
    name,
    working: (range) => `${additionText(parts)} is ${range}.`,
    resolve,
    with: parts,
    misfit,
  });
}

/** Counts add up exactly, and their sum is not rounded. */
function wholes(parts: readonly PrintedFigure[]): number | undefined {
  const values = parts.map(wholeOf);
  if (values.some((value) => value === null) || parts.some(({ values: [value] }) => value.percent))
    return undefined;
  return values.reduce((all: number, value) => all + (value ?? 0), 0);
}

/** "12 + 7 + 5"; long sums keep their two ends. */
export function additionText(parts: readonly PrintedFigure[]): string {
  const texts = parts.map(({ values: [value] }) => value.text.trim());
  return texts.length <= 8
    ? texts.join(' + ')
    : `${texts.slice(0, 4).join(' + ')} + … + ${texts[texts.length - 1]} (${texts.length} parts)`;
}
