import type { Figure } from '../contract.ts';
import { inSentence, printCount, printLevel, printNumber } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { type KindStyle, kindMarker } from '../shared/figure/kinds.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { panelAxes, panelsLayout } from '../shared/figure/panels.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { printSlice, yearAxis } from '../years.ts';
import type { ChronologyFound, Series, SliceCount } from './found.ts';

/** Counts through time with what is not known of the dates: of all finds, and one panel a kind. */

/** More panels than this would not be read on a page; the commonest kinds are drawn. */
const MOST_PANELS = 12;

/** The line of all finds has no kind's symbol. */
const ALL_STYLE: KindStyle = { colour: GROUND.ink, symbol: 'circle', dash: 'solid', pattern: '' };

interface Drawn {
  readonly series: Series;
  readonly edges: readonly number[];
  readonly style: KindStyle;
  readonly axes?: Readonly<Record<string, string>>;
  readonly size: number;
}

function traces({ series, edges, style, axes = {}, size }: Drawn) {
  const { slices } = series;
  const middle = slices.map((_, slice) => (edges[slice] + edges[slice + 1]) / 2);
  const uprights = (
    range: (one: SliceCount) => { readonly low: number; readonly high: number },
    width: number,
  ) => ({
    type: 'scatter',
    mode: 'lines',
    ...axes,
    x: slices.flatMap((_, slice) => [middle[slice], middle[slice], null]),
    y: slices.flatMap((one) => [range(one).low, range(one).high, null]),
    line: { color: GROUND.ink, width },
    hoverinfo: 'skip',
    showlegend: false,
  });
  return [
    {
      type: 'scatter',
      mode: 'lines',
      ...axes,
      x: middle,
      y: slices.map(({ expected }) => expected),
      line: { color: GROUND.neutral, width: 1 },
      hoverinfo: 'skip',
      showlegend: false,
    },
    uprights(({ together }) => together, 0.8),
    uprights(({ apart }) => apart, 2.6),
    {
      type: 'scatter',
      mode: 'markers',
      ...axes,
      name: escapeText(series.label),
      x: middle,
      y: slices.map(({ expected }) => expected),
      text: slices.map((one, slice) =>
        escapeText(
          `${printSlice(edges[slice], edges[slice + 1])}: ${printNumber(one.expected)}, limits ${one.apart.low} to ${one.apart.high}; made together ${one.together.low} to ${one.together.high}; wholly within ${one.sure}, possible ${one.possible}`,
        ),
      ),
      hovertemplate: '%{text}<extra></extra>',
      marker: kindMarker(style, size),
      showlegend: false,
    },
  ];
}

/** From the first to the last slice, with room for half the year that stands at either end. */
export function yearRange(edges: readonly number[]): readonly [number, number] {
  const [first, last] = [edges[0], edges[edges.length - 1]];
  const room = 0.02 * (last - first);
  return [first - room, last + room];
}

const years = (edges: readonly number[], title: string) =>
  yearAxis(title, edges, { range: yearRange(edges) });

/** Share of an axis at either end in which a year would run into that of the next panel. */
const AT_THE_END = 0.12;
const MOST_IN_PANEL = 3;

/** Highest upright, so that panels share an axis with room above. */
function most(list: readonly Series[]): number {
  return list
    .flatMap(({ slices }) => slices.map(({ apart, together }) => Math.max(apart.high, together.high)))
    .reduce((a, b) => Math.max(a, b), 1);
}

export function countsFigure(found: ChronologyFound): Figure {
  const { all, edges, unit } = found;
  return {
    data: traces({ series: all, edges, style: ALL_STYLE, size: 8 }),
    layout: figureLayout({
      x: years(edges, 'year'),
      y: axis(`${unit}s in a slice`, { range: [0, 1.06 * most([all])] }),
      height: 340,
      more: { margin: { l: 56, r: 32, t: 16, b: 48, pad: 2 } },
    }),
    caption: `${unit === 'item' ? 'Items' : 'Fragments'} through time, in slices of ${printCount(edges[1] - edges[0], 'year')} (n = ${all.n}). ${howDrawn(found)}`,
  };
}

export function kindsFigure(found: ChronologyFound): Figure | null {
  const { kinds, edges, unit, kindsLabel, withoutKind } = found;
  if (kinds.length === 0) return null;
  const shown = kinds.slice(0, MOST_PANELS);
  const highest = most(shown);
  const shared = (place: number, side: 'x' | 'y') => (place === 0 ? {} : { matches: side });
  const across = Math.min(3, shown.length);
  return {
    data: shown.flatMap((series, place) =>
      traces({ series, edges, style: markStyle(series.mark), axes: panelAxes(place), size: 7 }),
    ),
    layout: panelsLayout({
      headings: shown.map(({ label, n }) => `${label} (${n})`),
      x: (place) => ({ ...thinned(years(edges, '')), ...shared(place, 'x') }),
      y: (place) => ({ ...axis('', { range: [0, 1.06 * highest] }), ...shared(place, 'y') }),
      xTitle: 'year',
      yTitle: `${unit}s in a slice`,
      across,
      height: 110,
    }),
    caption:
      `${kindsLabel} through time, one panel a kind, in slices of ${printCount(edges[1] - edges[0], 'year')}, the same axes in all; in brackets ${unit}s dated. ${howDrawn(found)}` +
      `${withoutKind > 0 ? ` Left out: ${printCount(withoutKind, unit)} without a recorded ${inSentence(kindsLabel)}.` : ''}` +
      `${kinds.length > shown.length ? ` The ${shown.length} commonest of ${kinds.length} kinds.` : ''}`,
  };
}

/** Fewer ticks of an axis of years, for panels a third as wide, none where the next panel begins. */
export function thinned(made: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { tickvals, ticktext, range } = made as {
    tickvals: readonly number[];
    ticktext: readonly string[];
    range: readonly [number, number];
  };
  const edge = AT_THE_END * (range[1] - range[0]);
  const inner = tickvals.flatMap((year, place) =>
    year >= range[0] + edge && year <= range[1] - edge ? [place] : [],
  );
  const every = Math.max(1, Math.ceil(inner.length / MOST_IN_PANEL));
  const chosen = new Set(inner.filter((_, place) => place % every === 0));
  const kept = (_: unknown, place: number) => chosen.has(place);
  return { ...made, tickvals: tickvals.filter(kept), ticktext: ticktext.filter(kept) };
}

function howDrawn({ unit, options, outside }: ChronologyFound): string {
  return (
    `Symbols: each ${unit} shared out evenly over its span of years; thick lines: ${printLevel(options.confidence)} limits of the count, each having a date of its own within its span; ` +
    `thin lines: limits where all of one place and span were made together.${outside > 0 ? ` ${printCount(outside, unit)} outside the slices.` : ''}`
  );
}
