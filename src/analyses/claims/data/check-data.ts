import { InputError } from '../../../errors.ts';
import { viewItems } from '../../../fragments/items.ts';
import type { AnalysisInput } from '../../contract.ts';
import { fitOfWays } from '../conventions/way.ts';
import type { FigureCheck } from '../found.ts';
import { numberPrinted, shown } from '../judging/check.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { recompute } from './quantities.ts';
import { explain } from './reasons/explain.ts';
import type { Peer } from './reasons/trial.ts';
import type { Departure, Recomputed } from './recomputed.ts';
import type { View } from './values.ts';

/** What the figures are recomputed from. */
export type Material = Pick<AnalysisInput, 'fragments' | 'records' | 'unit' | 'register'>;

/**
 * Every figure recomputed from the records, in the study's unit, by the ordinary functions: it agrees where
 * the result prints so; where it does not, the usual reasons are tried.
 */
export function checkData(
  figures: readonly PrintedFigure[],
  material: Material,
  onProgress?: AnalysisInput['onProgress'],
): FigureCheck[] {
  const view = viewOf(material);
  const otherView = otherViewOf(material);
  const found = figures.map((figure, i) => {
    onProgress?.(i / figures.length, 'recomputing printed figures');
    return attempt(figure, view);
  });
  const peers: Peer[] = figures.map((figure, i) => ({ figure, value: valueIn(found[i]) }));
  return figures.map((figure, i) => checkOne(figure, found[i], { view, otherView, peers }));
}

function viewOf({ records, register, unit }: Material): View {
  return { table: records, register, unit };
}

function otherViewOf({ fragments, register, unit }: Material): View {
  return unit === 'item'
    ? { table: fragments, register, unit: 'fragment' }
    : { table: viewItems(fragments, register), register, unit: 'item' };
}

type Attempt = Recomputed | { readonly why: string; readonly mend?: string };

/** What the data cannot answer is said of the one figure; the others are checked all the same. */
function attempt(figure: PrintedFigure, view: View, departure: Departure = {}): Attempt {
  if (figure.manners.includes('another test'))
    return { why: 'that test is not computed here', mend: 'compute it where it was computed' };
  try {
    return recompute(figure, view, departure);
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    return { why: fault.what, mend: fault.mend };
  }
}

function valueIn(found: Attempt): number | null {
  return 'why' in found || found.ways.length === 0 ? null : found.ways[0].value;
}

function checkOne(
  figure: PrintedFigure,
  found: Attempt,
  {
    view,
    otherView,
    peers,
  }: { readonly view: View; readonly otherView: View; readonly peers: readonly Peer[] },
): FigureCheck {
  if (figure.values.length > 1) return checkDegrees(figure, view);
  const base = baseOf(figure);
  const value = valueIn(found);
  if ('why' in found || value === null)
    return {
      ...base,
      outcome: 'open',
      working: `The data cannot answer: ${'why' in found ? found.why : 'nothing to compute it from'}.`,
      resolve:
        'mend' in found && found.mend !== undefined
          ? sentence(found.mend)
          : `Complete the row of the claims file: ${'why' in found ? found.why : 'nothing to compute it from'}.`,
    };
  const list = found.ways
    .slice(0, MOST_SHOWN)
    .map((way) => `${shown(way.value, figure)}${wayName(way.said, figure)}`);
  const working = `From the data (${found.basis}): ${list.join('; ')}`;
  const fit = fitOfWays(figure, found.ways);
  if (fit !== null)
    return {
      ...base,
      ...fit.fit,
      working: `${working}; printed: ${figure.printed}${found.ways.length > 1 ? `, ${fit.said}` : ''}.`,
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
        working: `${working}; printed: ${figure.printed}, from permutations, whose chance it lies within.`,
      };
  }
  const alike = peers.filter(
    (peer) =>
      peer.figure !== figure &&
      peer.figure.quantity === figure.quantity &&
      peer.figure.attributes.join() === figure.attributes.join(),
  );
  const { explained, also } = explain({ figure, view, otherView, value, peers: alike });
  return {
    ...base,
    outcome: 'differs',
    working: `${working}; printed: ${figure.printed}, ${apart(figure, value)}.${
      also.length > 0 ? ` More than one of the usual reasons would give it: ${also.join('; ')}.` : ''
    }`,
    ...(explained === undefined ? {} : { explained }),
    resolve: 'State which records entered the figure and how it was computed.',
  };
}

function baseOf({ id }: PrintedFigure) {
  return { figure: id, name: 'recomputed from the data', from: 'data', with: [] } as const;
}

/** Both degrees of freedom of F: of the groups and within them, either of one analysis or of the other. */
function checkDegrees(figure: PrintedFigure, view: View): FigureCheck {
  const base = baseOf(figure);
  const found = figure.values.map((_, place) => attempt(figure, view, { place }));
  const refused = found.find((one) => 'why' in one);
  if (refused !== undefined && 'why' in refused)
    return {
      ...base,
      outcome: 'open',
      working: `The data cannot answer: ${refused.why}.`,
      resolve:
        'mend' in refused && refused.mend !== undefined
          ? sentence(refused.mend)
          : `Complete the row of the claims file: ${refused.why}.`,
    };
  const both = found as readonly Recomputed[];
  const parts = figure.values.map((value) => ({ ...figure, values: [value] }));
  const ways = both[0].ways.map(({ said }, i) => ({
    said,
    values: both.map((one) => one.ways[i].value),
    fits: parts.map((part, place) => fitOfWays(part, [both[place].ways[i]])),
  }));
  const fitting = ways.find(({ fits }) => fits.every((fit) => fit !== null));
  const list = ways.map(
    ({ said, values }) => `${values.map((value, i) => shown(value, parts[i])).join(', ')} (${said})`,
  );
  const working = `From the data (${both[0].basis}): ${list.join('; ')}; printed: ${figure.printed}`;
  if (fitting === undefined)
    return {
      ...base,
      outcome: 'differs',
      working: `${working}.`,
      resolve: 'State the groups and how many records of each entered the test.',
    };
  const cut = fitting.fits.find((fit) => fit?.fit.outcome === 'agrees only if rounded')?.fit;
  return { ...base, ...(cut ?? { outcome: 'agrees' }), working: `${working}, ${fitting.said}.` };
}

const MOST_SHOWN = 4;
/** No fewer are usual. */
const FEWEST_PERMUTATIONS = 999;

function wayName(said: string, figure: PrintedFigure): string {
  return said === figure.quantity || said === 'counted' ? '' : ` (${said})`;
}

function apart(figure: PrintedFigure, value: number): string {
  const difference = numberPrinted(figure) - value;
  return `${difference > 0 ? 'more' : 'less'} by ${shown(Math.abs(difference), figure)}`;
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
