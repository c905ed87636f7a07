import { fitOfWays, type Way } from '../conventions/way.ts';
import type { FigureCheck } from '../found.ts';
import { numberPrinted, shown } from '../judging/check.ts';
import { briefPrint } from '../place-words.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { Attempt } from './attempt.ts';
import { checkDegrees } from './degrees.ts';
import { type Indicated, waysIndicated } from './indicated.ts';
import { openCheck } from './open-check.ts';
import { explain } from './reasons/explain.ts';
import type { Peer } from './reasons/trial.ts';
import type { View } from './values.ts';

const MOST_SHOWN = 4;
/** No fewer are usual. */
const FEWEST_PERMUTATIONS = 999;

/** One figure against what the data give for it. */
export function checkFigure(
  figure: PrintedFigure,
  found: Attempt,
  {
    view,
    otherView,
    peers,
    indicated,
  }: {
    readonly view: View;
    readonly otherView: View;
    readonly peers: readonly Peer[];
    readonly indicated: Indicated | null;
  },
): FigureCheck {
  if (figure.values.length > 1) return checkDegrees(figure, view);
  const base = { figure: figure.id, name: 'recomputed from the data', from: 'data', with: [] } as const;
  if ('why' in found) return openCheck(figure, found);
  if (found.ways.length === 0) return openCheck(figure, { why: 'nothing to compute it from' });
  const meant = waysIndicated(found.ways, indicated);
  const nearest = nearestOf(figure, meant);
  const listed = listedWays(found.ways, nearest);
  const working = `From the data (${found.basis}): ${listed
    .map((way) => `${shown(way.value, figure)}${wayName(way.said, figure)}`)
    .join('; ')}`;
  const printed = briefPrint(figure);
  const fit = fitOfWays(figure, meant);
  if (fit !== null)
    return {
      ...base,
      ...fit.fit,
      working: `${working}; printed: ${printed}${found.ways.length > 1 ? `, ${fit.said}` : ''}.`,
    };
  if (figure.quantity === 'p' && figure.manners.includes('permuted')) {
    const p = numberPrinted(figure);
    const near = found.ways.some(
      (way) =>
        Math.abs(way.value - p) <=
        4 * Math.sqrt((way.value * (1 - way.value)) / FEWEST_PERMUTATIONS) + 1 / FEWEST_PERMUTATIONS,
    );
    if (near)
      return {
        ...base,
        outcome: 'passes',
        working: `${working}; printed: ${printed}, from permutations, whose chance it lies within.`,
      };
  }
  const alike = peers.filter(
    (peer) =>
      peer.figure !== figure &&
      peer.figure.quantity === figure.quantity &&
      peer.figure.attributes.join() === figure.attributes.join(),
  );
  const elsewhere = meant.length < found.ways.length ? fitOfWays(figure, found.ways) : null;
  const { explained, also } =
    elsewhere === null || indicated === null
      ? explain({ figure, view, otherView, value: nearest.value, peers: alike })
      : {
          explained: `the figure of ${elsewhere.said}, where ${indicated.by} ${indicated.by.endsWith('s of freedom') ? 'are' : 'is'} of ${[...indicated.names].join(' or ')}`,
          also: [],
        };
  const of =
    meant.length < found.ways.length && indicated !== null
      ? ` than ${nearest.said}, which ${indicated.by} ${indicated.by.endsWith('s of freedom') ? 'say' : 'says'}`
      : found.ways.length > 1 && nearest.said !== figure.quantity
        ? ` than the nearest, ${nearest.said}`
        : '';
  return {
    ...base,
    outcome: 'differs',
    working: `${working}; printed: ${printed}, ${apart(figure, nearest.value)}${of}.${
      also.length > 0 ? ` More than one of the usual reasons would give it: ${also.join('; ')}.` : ''
    }`,
    ...(explained === undefined ? {} : { explained }),
    resolve: 'State which records entered the figure and how it was computed.',
  };
}

function nearestOf(figure: PrintedFigure, ways: readonly Way[]): Way {
  const printed = numberPrinted(figure);
  return ways.reduce((best, way) =>
    Math.abs(way.value - printed) < Math.abs(best.value - printed) ? way : best,
  );
}

/** The first ways, and the one that the figure is measured from. */
function listedWays(ways: readonly Way[], nearest: Way): readonly Way[] {
  const first = ways.slice(0, MOST_SHOWN);
  return first.includes(nearest) ? first : [...first.slice(0, MOST_SHOWN - 1), nearest];
}

function wayName(said: string, figure: PrintedFigure): string {
  return said === figure.quantity || said === 'counted' ? '' : ` (${said})`;
}

function apart(figure: PrintedFigure, value: number): string {
  const difference = numberPrinted(figure) - value;
  return `${difference > 0 ? 'more' : 'less'} by ${shown(Math.abs(difference), figure)}`;
}
