import type { Figure } from '../contract.ts';
import { coefficientName } from '../likeness-rank.ts';
import { inSentence, printCount, printNumber } from '../phrasing.ts';
import { kindMarker, passiveMarker } from '../shared/figure/kinds.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import type { MapFound } from './found.ts';
import { frameOf, MAP_HEIGHT } from './ground.ts';
import {
  drawnEnds,
  groupsIn,
  lineSaid,
  lineTraces,
  named,
  namesIn,
  type PlacePoint,
  sizesIn,
} from './place-traces.ts';

/** Places laid out by their likeness to each other alone, with the lines of the map. */
export function networkFigure(found: MapFound): Figure | null {
  const { places, axesShares, options } = found;
  const points = places.flatMap((place): PlacePoint[] =>
    place.onAxes === null ? [] : [{ place, x: place.onAxes[0], y: place.onAxes[1] }],
  );
  if (points.length < 3 || axesShares.length < 2) return null;
  const frame = frameOf(
    points.map(({ x, y }) => ({ x, y, within: 0 })),
    1,
  );
  const ends = drawnEnds(found, points);
  const sizeOf = sizesIn(found);
  const { labels, said } = namesIn(frame, points, ends, {
    nameOf: ({ label, records }) => `${label} (${records})`,
    sizeAt: sizeOf,
  });
  const share = (place: number) => `${printNumber(100 * axesShares[place])} %`;
  return {
    data: [
      ...lineTraces(ends),
      ...groupsIn(points).map((group) => {
        const at = points.flatMap((point, place) => (point.place.group === group ? [place] : []));
        const own = at.map((place) => points[place]);
        const base =
          found.groupLabel === null
            ? kindMarker(markStyle(0), 10)
            : group === null
              ? passiveMarker(markStyle(null), 10)
              : kindMarker(markStyle(own[0].place.mark), 10);
        return {
          ...named(
            own,
            at.map((place) => labels[place]),
            (place) => `n = ${place.records}`,
          ),
          name: escapeText(group ?? 'not recorded, or several'),
          marker: { ...base, size: own.map(({ place }) => sizeOf(place)), opacity: 1 },
          showlegend: found.groupLabel !== null,
        };
      }),
    ],
    layout: figureLayout({
      x: axis(`axis 1 of likeness (${share(0)})`, { range: frame.x, constrain: 'domain' }),
      y: axis(`axis 2 of likeness (${share(1)})`, { range: frame.y, scaleanchor: 'x', constrain: 'domain' }),
      height: MAP_HEIGHT,
    }),
    caption:
      `${printCount(points.length, 'place')} by their likeness to each other in ${inSentence(found.kindsLabel)} (${coefficientName(options.coefficient)}; principal coordinates), near where alike; area by ${found.unit}s counted, in brackets.` +
      `${lineSaid(found)}${said}`,
  };
}
