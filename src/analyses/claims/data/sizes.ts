import type { FigureCheck } from '../found.ts';
import { numberPrinted, wholeOf } from '../judging/check.ts';
import { briefPrint } from '../place-words.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { attempt } from './attempt.ts';
import type { View } from './values.ts';

/**
 * Two numbers of records in one text of two groups are those of both groups, in the order of "select" and "versus",
 * or in the other where no sign beside them tells; each by itself would agree with either group.
 */
export function checkSizes(line: readonly PrintedFigure[], view: View): ReadonlyMap<string, FigureCheck> {
  const sizes = line.filter(
    ({ quantity, versus, counted }) => quantity === 'n' && versus.length > 0 && counted.length === 0,
  );
  if (sizes.length !== 2) return new Map();
  const found = attempt(sizes[0], view);
  const printed = sizes.map(wholeOf);
  if ('why' in found || found.ways.length < 2 || printed.includes(null)) return new Map();
  const groups = found.ways.slice(0, 2).map(({ value }) => value);
  const inOrder = printed.filter((n, i) => n === groups[i]).length;
  const turned = printed.filter((n, i) => n === groups[1 - i]).length;
  const order = turned > inOrder && !signAsGiven(line, view) ? [groups[1], groups[0]] : groups;
  const exchanged = printed.every((n, i) => n === groups[1 - i]);
  return new Map(
    sizes.map((figure, i): [string, FigureCheck] => {
      const fits = printed[i] === order[i];
      return [
        figure.id,
        {
          figure: figure.id,
          name: 'recomputed from the data',
          from: 'data',
          with: [],
          outcome: fits ? 'agrees' : 'differs',
          working: `From the data: ${groups.join(' and ')} ${view.unit}s in the two groups; printed: ${printed.join(' and ')} in ${briefPrint(figure)}.`,
          ...(fits || !exchanged ? {} : { explained: 'the two numbers of records exchanged' }),
          ...(fits ? {} : { resolve: 'State how many records of each group entered the test.' }),
        },
      ];
    }),
  );
}

/** Whether a t of the same text has the sign that the groups give in the order of "select" and "versus". */
function signAsGiven(line: readonly PrintedFigure[], view: View): boolean {
  return line.some((figure) => {
    if (figure.quantity !== 'statistic' || figure.method !== 't' || figure.versus.length === 0) return false;
    const found = attempt(figure, view);
    const [way] = 'why' in found ? [] : found.ways;
    return way !== undefined && numberPrinted(figure) * way.value > 0;
  });
}
