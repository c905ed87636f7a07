import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { Figure } from '../contract.ts';
import { printCount } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { kindBar, kindMarker } from '../shared/figure/kinds.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import type { Apart, TypeMap } from './apart-found.ts';
import type { TypologyFound } from './found.ts';

/** The typed records on the first two axes of what did not define them; a ring where another type is predicted. */
export function mapFigure(found: TypologyFound, apart: Apart, map: TypeMap): Figure {
  const { labels, places, prediction } = apart;
  const typed = Array.from(found.assignment.type).flatMap((type, place) => (type >= 0 ? [place] : []));
  const all = Array.from(labels, (type, at) => ({ type, at, id: found.ids[typed[places[at]]] }));
  const strays = isUnavailable(prediction)
    ? []
    : all.filter(({ type, at }) => prediction.predicted[at] >= 0 && prediction.predicted[at] !== type);
  const points = (members: typeof all) => ({
    type: 'scatter',
    mode: 'markers',
    x: members.map(({ at }) => map.x[at]),
    y: members.map(({ at }) => map.y[at]),
    text: members.map(({ id }) => escapeText(id)),
  });
  const types = found.typology.types.flatMap(({ label }, place) => {
    const members = all.filter(({ type }) => type === place);
    return members.length === 0
      ? []
      : [
          {
            ...points(members),
            name: `${escapeText(label)} (${members.length})`,
            customdata: members.map(({ id }) => id),
            marker: kindMarker(markStyle(found.typeMarks[place]), 8),
            hovertemplate: '%{text}<extra>%{fullData.name}</extra>',
          },
        ];
  });
  const rings =
    strays.length === 0
      ? []
      : [
          {
            ...points(strays),
            name: 'predicted as another type',
            marker: { symbol: 'circle-open', size: 15, color: GROUND.ink, line: { width: 1.2 } },
            hoverinfo: 'skip',
          },
        ];
  return {
    data: [...types, ...rings],
    layout: figureLayout({
      x: axis(`axis 1 (${(100 * map.shares[0]).toFixed(1)} %)`),
      y: axis(`axis 2 (${(100 * map.shares[1]).toFixed(1)} %)`, { scaleanchor: 'x' }),
      legend: 'type by the rules',
      height: 460,
    }),
    caption:
      `${printCount(all.length, found.unit)} with a type, on the first two principal coordinates of what did not define the types (${apart.compared.map((id) => found.labelOf.get(id) ?? id).join(', ')}).` +
      `${rings.length === 0 ? '' : ` Ringed: ${strays.length} whose nearest records of other assemblages speak for another type.`} Directions of the axes are arbitrary.`,
  };
}

/** How well each type is found again without its rules. */
export function stabilityFigure(found: TypologyFound, apart: Apart): Figure | null {
  if (isUnavailable(apart.freeGroups)) return null;
  const { stability } = apart.freeGroups;
  const bars = found.typology.types.flatMap(({ label }, place) => {
    const one = stability[place];
    return apart.labels.includes(place) && one !== undefined && one.resamples > 0
      ? [{ label, place, ...one }]
      : [];
  });
  if (bars.length === 0) return null;
  const line = (at: number, dash: string) => ({
    type: 'line',
    xref: 'x',
    yref: 'paper',
    x0: at,
    x1: at,
    y0: 0,
    y1: 1,
    line: { color: GROUND.ink, width: 1, dash },
  });
  return {
    data: bars.map(({ label, place, mean, recovered, resamples }) => ({
      type: 'bar',
      orientation: 'h',
      x: [mean],
      y: [escapeText(label)],
      marker: kindBar(markStyle(found.typeMarks[place])),
      text: [mean.toFixed(2)],
      textposition: 'outside',
      cliponaxis: false,
      showlegend: false,
      hovertemplate: `%{y}: %{x:.3f}, found again in ${recovered} of ${resamples}<extra></extra>`,
    })),
    layout: figureLayout({
      x: axis('mean Jaccard coefficient', { range: [0, 1.1], tickvals: [0, 0.25, 0.5, 0.75, 1] }),
      y: axis('', { autorange: 'reversed' }),
      height: 110 + 34 * bars.length,
      more: { shapes: [line(0.6, 'dot'), line(0.75, 'dash')] },
    }),
    caption: `How well each type is found again by groups made without the rules from ${printCount(bars[0].resamples, 'draw')} of the items. From 0.75 (dashed) a type holds, below 0.6 (dotted) it is not to be trusted (Hennig 2007).`,
  };
}
