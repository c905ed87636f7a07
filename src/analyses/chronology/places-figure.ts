import type { Figure } from '../contract.ts';
import { inSentence, printCount, printNumber } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { kindBar, MOST_KINDS } from '../shared/figure/kinds.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { acrossFor, panelAxes, panelsLayout } from '../shared/figure/panels.ts';
import { axis, escapeText } from '../shared/figure/style.ts';
import { printSlice, yearAxis } from '../years.ts';
import type { ChronologyFound } from './found.ts';
import { thinned, yearRange } from './slices-figures.ts';

/** More panels than this would not be read on a page; the largest places are drawn. */
const MOST_PANELS = 12;

/** One panel a place, the kinds stacked through time; null where there are fewer than two places. */
export function placesFigure(found: ChronologyFound): Figure | null {
  const { places, kinds, edges, unit, placesLabel, kindsLabel, withoutKind } = found;
  if (places.length < 2) return null;
  const chosen = new Set([...places].sort((a, b) => b.n - a.n).slice(0, MOST_PANELS));
  const shown = places.filter((place) => chosen.has(place));
  const middle = edges.slice(0, -1).map((from, slice) => (from + edges[slice + 1]) / 2);
  const width = edges[1] - edges[0];
  const own = kinds.flatMap(({ label, mark }, at) =>
    mark !== null && mark < MOST_KINDS ? [{ label, mark, lines: [at] }] : [],
  );
  const others = kinds.flatMap(({ mark }, at) => (mark === null || mark >= MOST_KINDS ? [at] : []));
  const sets = [
    ...own.sort((a, b) => a.mark - b.mark),
    ...(others.length === 0
      ? []
      : [
          {
            label: others.length === 1 ? kinds[others[0]].label : `${others.length} other kinds`,
            mark: null,
            lines: others,
          },
        ]),
    ...(withoutKind === 0 ? [] : [{ label: 'not recorded', mark: 'none' as const, lines: [kinds.length] }]),
  ];
  const highest = shown
    .flatMap(({ slices }) => slices.map(({ expected }) => expected))
    .reduce((a, b) => Math.max(a, b), 0);
  const data = shown.flatMap((place, at) =>
    sets.map(({ label, mark, lines }) => {
      const counts = middle.map((_, slice) =>
        lines.reduce((sum, line) => sum + place.byKind[line][slice], 0),
      );
      return {
        type: 'bar',
        ...panelAxes(at),
        name: escapeText(label),
        legendgroup: escapeText(label),
        showlegend: at === 0,
        x: middle,
        y: counts.map((count) => (count === 0 ? null : count)),
        width: 0.9 * width,
        text: counts.map((count, slice) =>
          escapeText(`${label}, ${printSlice(edges[slice], edges[slice + 1])}: ${printNumber(count)}`),
        ),
        textposition: 'none',
        hovertemplate: '%{text}<extra></extra>',
        marker: {
          ...(mark === 'none' ? { color: GROUND.sheet } : kindBar(markStyle(mark), 5)),
          line: { color: GROUND.ink, width: 0.5 },
        },
      };
    }),
  );
  const shared = (place: number, side: 'x' | 'y') => (place === 0 ? {} : { matches: side });
  const layout = panelsLayout({
    headings: shown.map(({ label, n }) => `${label} (${n})`),
    x: (place) => ({
      ...thinned(yearAxis('', edges, { range: yearRange(edges) })),
      ...shared(place, 'x'),
    }),
    y: (place) => ({ ...axis('', { range: [0, 1.06 * highest] }), ...shared(place, 'y') }),
    xTitle: 'year',
    yTitle: `${unit}s in a slice`,
    across: acrossFor(shown.length),
    height: 110,
    legend: sets.map(({ label }) => label),
  });
  return {
    data,
    layout: { ...layout, barmode: 'stack', bargap: 0.1 },
    caption:
      `${kindsLabel} through time, one panel a ${inSentence(placesLabel)}, the earliest first, in slices of ${printCount(width, 'year')}, the same axes in all; in brackets ${unit}s dated. ` +
      `Each ${unit} shared out evenly over its span of years; the limits of the counts stand in the table.` +
      `${places.length > shown.length ? ` The ${shown.length} largest of ${places.length}.` : ''}`,
  };
}
