import type { Figure } from '../contract.ts';
import { escapeText, GROUND, kindMarker } from '../figure-style.ts';
import { markStyle } from '../marks.ts';
import { acrossFor, panelAxes, panelsLayout } from '../panels.ts';
import { inSentence, printCount } from '../phrasing.ts';
import { axisTitle, measuredAxis } from './axes.ts';
import type { ThreadcountFound } from './found.ts';

/** More panels than this would not be read on a page; the largest groups are drawn. */
const MOST_PANELS = 12;
/** Points of the others behind each panel; more make the ground no clearer. */
const MOST_BEHIND = 600;

/** One panel a group, the others pale behind it, on the same axes; null where there is but one group. */
export function panelsFigure(found: ThreadcountFound): Figure | null {
  const { groups, points, x, y, logarithmic, unit } = found;
  if (groups.length < 2) return null;
  const counted = groups.map((group, place) => ({
    ...group,
    own: points.filter((point) => point.group === place),
  }));
  const chosen = [...counted].sort((a, b) => b.own.length - a.own.length).slice(0, MOST_PANELS);
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
      x: own.map((point) => point.x.point),
      y: own.map((point) => point.y.point),
      customdata: own.map(({ id }) => id),
      text: own.map(({ id }) => escapeText(id)),
      hovertemplate: '%{text}<extra></extra>',
      marker: { ...kindMarker(markStyle(mark), 6), opacity: 0.7 },
    },
  ]);
  const shared = (place: number, side: 'x' | 'y') => (place === 0 ? {} : { matches: side });
  return {
    data,
    layout: panelsLayout({
      headings: chosen.map(({ label, own }) => `${label} (${own.length})`),
      x: (place) => ({ ...measuredAxis(x, points, 'x', logarithmic), ...shared(place, 'x') }),
      y: (place) => ({ ...measuredAxis(y, points, 'y', logarithmic), ...shared(place, 'y') }),
      xTitle: axisTitle(x, logarithmic),
      yTitle: axisTitle(y, logarithmic),
      across: acrossFor(chosen.length),
      height: 126,
    }),
    caption:
      `${x.label} against ${inSentence(y.label)}, one panel a group of ${inSentence(found.byLabel)}, the same axes in all${logarithmic ? ', logarithmic' : ''}; in brackets ${unit}s, pale behind them those of the others (n = ${points.length}).` +
      `${counted.length > chosen.length ? ` The ${chosen.length} largest of ${printCount(counted.length, 'group')}.` : ''}`,
  };
}
