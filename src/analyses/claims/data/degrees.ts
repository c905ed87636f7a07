import { fitOfWays } from '../conventions/way.ts';
import type { FigureCheck } from '../found.ts';
import { shown } from '../judging/check.ts';
import { briefPrint } from '../place-words.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { attempt } from './attempt.ts';
import { openCheck } from './open-check.ts';
import type { Recomputed } from './recomputed.ts';
import type { View } from './values.ts';

/** Both degrees of freedom of F in each way in which they are computed. */
export function degreesWays(figure: PrintedFigure, view: View) {
  const found = figure.values.map((_, place) => attempt(figure, view, { place }));
  const refused = found.find((one) => 'why' in one);
  if (refused !== undefined && 'why' in refused) return refused;
  const both = found as readonly Recomputed[];
  const parts = figure.values.map((value) => ({ ...figure, values: [value] }));
  return {
    basis: both[0].basis,
    ways: both[0].ways.map(({ said }, i) => ({
      said,
      text: both.map((one, place) => shown(one.ways[i].value, parts[place])).join(', '),
      fits: parts.map((part, place) => fitOfWays(part, [both[place].ways[i]])),
    })),
  };
}

/** Both degrees of freedom of F: of the groups and within them, either of one analysis or of the other. */
export function checkDegrees(figure: PrintedFigure, view: View): FigureCheck {
  const base = { figure: figure.id, name: 'recomputed from the data', from: 'data', with: [] } as const;
  const found = degreesWays(figure, view);
  if ('why' in found) return openCheck(figure, found);
  const { ways, basis } = found;
  const fitting = ways.find(({ fits }) => fits.every((fit) => fit !== null));
  const list = ways.map(({ said, text }) => `${text} (${said})`);
  const working = `From the data (${basis}): ${list.join('; ')}; printed: ${briefPrint(figure)}`;
  if (fitting === undefined)
    return {
      ...base,
      outcome: 'differs',
      working: `${working}.`,
      ...(exchanged(figure, view) ? { explained: 'the two degrees of freedom exchanged' } : {}),
      resolve: 'State the groups and how many records of each entered the test.',
    };
  const cut = fitting.fits.find((fit) => fit?.fit.outcome === 'agrees only if rounded')?.fit;
  return { ...base, ...(cut ?? { outcome: 'agrees' }), working: `${working}, ${fitting.said}.` };
}

function exchanged(figure: PrintedFigure, view: View): boolean {
  const found = degreesWays({ ...figure, values: figure.values.toReversed() as typeof figure.values }, view);
  return !('why' in found) && found.ways.some(({ fits }) => fits.every((fit) => fit !== null));
}
