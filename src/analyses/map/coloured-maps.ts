import type { Figure } from '../contract.ts';
import type { PlacedLabel } from '../label-places.ts';
import { coefficientName } from '../likeness-rank.ts';
import { inSentence, printNumber } from '../phrasing.ts';
import { GROUND, SEQUENTIAL } from '../shared/figure/colours.ts';
import { findMarker } from '../shared/figure/kinds.ts';
import { escapeText } from '../shared/figure/style.ts';
import type { MapFound, MapPlace } from './found.ts';
import { coastTraces, type Ground, mapLayout } from './ground.ts';
import { captionOf } from './map-caption.ts';
import {
  cells,
  drawnEnds,
  lineSaid,
  lineTraces,
  named,
  namesIn,
  onGround,
  type PlacePoint,
  sizesIn,
} from './place-traces.ts';

/** CSS pixels across the place asked. */
const STAR = 18;

interface Colouring {
  readonly value: (place: MapPlace) => number | null;
  readonly title: string;
  readonly most: number;
  /** Whether less is darker, as with distances. */
  readonly reversed: boolean;
}

function coloured(
  found: MapFound,
  points: readonly PlacePoint[],
  labels: readonly PlacedLabel[],
  { value, title, most, reversed }: Colouring,
) {
  const shown = points.flatMap((point, at) => {
    const own = value(point.place);
    return own === null ? [] : [{ point, label: labels[at], own }];
  });
  const sizeOf = sizesIn(found);
  const scale = SEQUENTIAL.map(([at], place) => [
    at,
    SEQUENTIAL[reversed ? SEQUENTIAL.length - 1 - place : place][1],
  ]);
  return {
    ...named(
      shown.map(({ point }) => point),
      shown.map(({ label }) => label),
      (place) => `${printNumber(value(place) ?? 0)} (n = ${place.records})`,
    ),
    marker: {
      symbol: 'circle',
      size: shown.map(({ point }) => sizeOf(point.place)),
      color: shown.map(({ own }) => own),
      colorscale: scale,
      cmin: 0,
      cmax: most,
      showscale: true,
      opacity: 1,
      line: { color: GROUND.ink, width: 1 },
      colorbar: {
        orientation: 'h',
        title: { text: escapeText(title), side: 'top', font: { size: 10 } },
        thickness: 9,
        len: 0.55,
        x: 0,
        xanchor: 'left',
        y: 1,
        yanchor: 'bottom',
        tickfont: { size: 10 },
      },
    },
    showlegend: false,
  };
}

/** Places coloured by the share of one kind. */
export function shareMap(found: MapFound, ground: Ground): Figure {
  const points = onGround(ground);
  const { labels, said } = namesIn(ground, points, [], { sizeAt: sizesIn(found) });
  const colouring = {
    value: ({ share }: MapPlace) => share,
    title: `share of ${found.share}`,
    most: 1,
    reversed: false,
  };
  return {
    data: [...coastTraces(found), ...cells(ground), coloured(found, points, labels, colouring)],
    layout: mapLayout(ground),
    caption: captionOf(found, ground, said, [
      `coloured by the share of ${found.share} among their ${inSentence(found.kindsLabel)}, darker for more; area by ${found.unit}s counted`,
    ]),
  };
}

/** Places coloured by their likeness to the place asked, and lines between those that lean the same way. */
export function likenessMap(found: MapFound, ground: Ground): Figure {
  const { options, to } = found;
  const name = coefficientName(options.coefficient);
  const reversed = options.coefficient === 'chi-square';
  const values = found.places.flatMap(({ likeness }) => (likeness === null ? [] : [likeness]));
  const greatest = values.reduce((a, b) => Math.max(a, b), 0);
  const most = reversed ? greatest : options.coefficient === 'brainerd-robinson' ? 200 : 1;
  const points = onGround(ground);
  const ends = drawnEnds(found, points);
  const sizeOf = sizesIn(found);
  const { labels, said } = namesIn(ground, points, ends, {
    sizeAt: (place) => (place.likeness === null ? STAR : sizeOf(place)),
  });
  const own = points.findIndex(({ place }) => place.likeness === null);
  return {
    data: [
      ...coastTraces(found),
      ...cells(ground),
      ...lineTraces(ends),
      coloured(found, points, labels, {
        value: ({ likeness }) => likeness,
        title: `${name} to ${to}`,
        most,
        reversed,
      }),
      ...(own < 0
        ? []
        : [
            {
              ...named([points[own]], [labels[own]], (place) => `the place asked (n = ${place.records})`),
              marker: findMarker(STAR),
              showlegend: false,
            },
          ]),
    ],
    layout: mapLayout(ground),
    caption: captionOf(found, ground, said, [
      `coloured by how alike they are to ${to}${own < 0 ? '' : ' (star)'} in ${inSentence(found.kindsLabel)}, darker for more alike (${name}); area by ${found.unit}s counted`,
      lineSaid(found),
    ]),
  };
}
