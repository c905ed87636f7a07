import type { Figure } from '../contract.ts';
import { inSentence, printCount } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { kindMarker } from '../shared/figure/kinds.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { acrossFor, panelAxes, panelsLayout } from '../shared/figure/panels.ts';
import { escapeText } from '../shared/figure/style.ts';
import { axisTitle, measuredAxis } from './axes.ts';
import type { ThreadcountFound } from './found.ts';
import { heaped, heapIds, heapName, heapsSaid } from './heaps.ts';

/** More panels than this would not be read on a page; the largest groups are drawn. */
const MOST_PANELS = 12;
/** Points of the others behind each panel; more make the ground no clearer. */
const MOST_BEHIND = 250;
/** What the inside of a panel measures, and symbols in all panels together that a browser draws at once. */
const INSIDE = { width: 130, height: 126 };
const MOST_SYMBOLS = 1500;

/** One panel a group, the others pale behind it, on the same axes; null where there is but one group. */
export function panelsFigure(found: ThreadcountFound): Figure | null {
  const { groups, points, x, y, logarithmic, unit } = found;
  if (groups.length < 2) return null;
  const heaps = heaped(found, INSIDE, MOST_SYMBOLS);
  const counted = groups.map((group, place) => {
    const own = heaps.heaps.filter(([point]) => point.group === place);
    return { ...group, own, n: own.reduce((sum, heap) => sum + heap.length, 0) };
  });
  const chosen = [...counted].sort((a, b) => b.n - a.n).slice(0, MOST_PANELS);
  const every = Math.ceil(points.length / MOST_BEHIND);
  const behind = points.filter((_, place) => place % every === 0);
  const data = chosen.flatMap(({ own, label, mark }, place) => [
    {
      type: 'scatter',
      mode: 'markers',
      ...panelAxes(place),
      x: behind.map((point) => point.x.point),
      y: behind.map((point) => point.y.point),
      marker: { color: GROUND.line, size: 4 },
      hoverinfo: 'skip',
    },
    {
      type: 'scatter',
      mode: 'markers',
      ...panelAxes(place),
      name: escapeText(label),
      x: own.map(([point]) => point.x.point),
      y: own.map(([point]) => point.y.point),
      customdata: own.map(heapIds),
      text: own.map(heapName),
      hovertemplate: '%{text}<extra></extra>',
      marker: { ...kindMarker(markStyle(mark), 6), opacity: 0.7 },
    },
  ]);
  const shared = (place: number, side: 'x' | 'y') => (place === 0 ? {} : { matches: side });
  return {
    data,
    layout: panelsLayout({
      headings: chosen.map(({ label, n }) => `${label} (${n})`),
      x: (place) => ({ ...measuredAxis(x, points, 'x', logarithmic), ...shared(place, 'x') }),
      y: (place) => ({ ...measuredAxis(y, points, 'y', logarithmic), ...shared(place, 'y') }),
      xTitle: axisTitle(x, logarithmic),
      yTitle: axisTitle(y, logarithmic),
      across: acrossFor(chosen.length),
      height: 126,
    }),
    caption:
      `${x.label} against ${inSentence(y.label)}, one panel a group of ${inSentence(found.byLabel)}, the same axes in all${logarithmic ? ', logarithmic' : ''}; in brackets ${unit}s, pale behind them those of the others (n = ${points.length}).${heapsSaid(heaps, points.length, found.find !== null)}` +
      `${counted.length > chosen.length ? ` The ${chosen.length} largest of ${printCount(counted.length, 'group')}.` : ''}`,
  };
}
