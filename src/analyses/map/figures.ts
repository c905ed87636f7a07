import type { Figure } from '../contract.ts';
import { escapeText, findMarker, GROUND, kindMarker, passiveMarker, SEQUENTIAL } from '../figure-style.ts';
import { leftOut, type PlacedLabel } from '../label-places.ts';
import { coefficientName } from '../likeness-rank.ts';
import { markStyle } from '../marks.ts';
import { inSentence, printCount, printNumber } from '../phrasing.ts';
import type { MapFound, MapPlace } from './found.ts';
import { coastTraces, type Ground, groundOf, mapLayout } from './ground.ts';
import { networkFigure } from './network-figure.ts';
import {
  cells,
  drawnEnds,
  groupsIn,
  lineSaid,
  lineTraces,
  named,
  namesIn,
  onGround,
  type Point,
  sizeOf,
} from './place-traces.ts';

/** Places by share, by likeness and by group on the map, and by their likeness to each other on a network. */
export function mapFigures(found: MapFound): Readonly<Record<string, Figure>> {
  const ground = groundOf(found);
  const network = networkFigure(found);
  return {
    ...(ground === null
      ? {}
      : {
          likeness: likenessMap(found, ground),
          share: shareMap(found, ground),
          ...(found.groupLabel === null ? {} : { groups: groupMap(found, ground) }),
        }),
    ...(network === null ? {} : { network }),
  };
}

interface Colouring {
  readonly value: (place: MapPlace) => number | null;
  readonly title: string;
  readonly most: number;
  /** Whether less is darker, as with distances. */
  readonly reversed: boolean;
}

function coloured(
  found: MapFound,
  points: readonly Point[],
  labels: readonly PlacedLabel[],
  { value, title, most, reversed }: Colouring,
) {
  const shown = points.flatMap((point, at) => {
    const own = value(point.place);
    return own === null ? [] : [{ point, label: labels[at], own }];
  });
  const largest = found.places.reduce((a, { records }) => Math.max(a, records), 1);
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
      size: shown.map(({ point }) => sizeOf(point.place, largest)),
      color: shown.map(({ own }) => own),
      colorscale: scale,
      cmin: 0,
      cmax: most,
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

function shareMap(found: MapFound, ground: Ground): Figure {
  const points = onGround(ground);
  const labels = namesIn(ground, points, []);
  const colouring = {
    value: ({ share }: MapPlace) => share,
    title: `share of ${found.share}`,
    most: 1,
    reversed: false,
  };
  return {
    data: [...coastTraces(found), ...cells(ground), coloured(found, points, labels, colouring)],
    layout: mapLayout(ground),
    caption: captionOf(found, ground, labels, [
      `coloured by the share of ${found.share} among their ${inSentence(found.kindsLabel)}, darker for more; area by ${found.unit}s counted`,
    ]),
  };
}

function likenessMap(found: MapFound, ground: Ground): Figure {
  const { options, to } = found;
  const name = coefficientName(options.coefficient);
  const reversed = options.coefficient === 'chi-square';
  const values = found.places.flatMap(({ likeness }) => (likeness === null ? [] : [likeness]));
  const greatest = values.reduce((a, b) => Math.max(a, b), 0);
  const most = reversed ? greatest : options.coefficient === 'brainerd-robinson' ? 200 : 1;
  const points = onGround(ground);
  const ends = drawnEnds(found, points);
  const labels = namesIn(ground, points, ends);
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
              marker: findMarker(18),
              showlegend: false,
            },
          ]),
    ],
    layout: mapLayout(ground),
    caption: captionOf(found, ground, labels, [
      `coloured by how alike they are to ${to}${own < 0 ? '' : ' (star)'} in ${inSentence(found.kindsLabel)}, darker for more alike (${name}); area by ${found.unit}s counted`,
      lineSaid(found),
    ]),
  };
}

function groupMap(found: MapFound, ground: Ground): Figure {
  const points = onGround(ground);
  const ends = drawnEnds(found, points);
  const labels = namesIn(ground, points, ends);
  return {
    data: [
      ...coastTraces(found),
      ...cells(ground),
      ...lineTraces(ends),
      ...groupsIn(points).map((group) => {
        const at = points.flatMap((point, place) => (point.place.group === group ? [place] : []));
        const own = at.map((place) => points[place]);
        return {
          ...named(
            own,
            at.map((place) => labels[place]),
            (place) => `${place.group ?? 'not recorded'} (n = ${place.records})`,
          ),
          name: escapeText(`${group ?? 'not recorded, or several'} (${at.length})`),
          marker:
            group === null
              ? passiveMarker(markStyle(null), 10)
              : kindMarker(markStyle(own[0].place.mark), 11),
        };
      }),
    ],
    layout: mapLayout(ground),
    caption: captionOf(found, ground, labels, [
      `symbols by ${inSentence(found.groupLabel ?? '')}, hollow where none is recorded`,
      lineSaid(found),
    ]),
  };
}

function captionOf(
  found: MapFound,
  ground: Ground,
  labels: readonly PlacedLabel[],
  [what, more = '']: readonly [string, string?],
): string {
  const coarse = ground.places.filter(({ within }) => within > 0).length;
  const outside = found.without.length;
  const records = found.places.reduce((sum, place) => sum + place.records, 0);
  return [
    `Map of ${printCount(ground.places.length, 'place')} (${records} ${found.unit}s), ${what}.${more}`,
    coarse === 0
      ? ''
      : ` Dotted squares: the cells in which ${printCount(coarse, 'coarsened place')} ${coarse === 1 ? 'lies' : 'lie'}.`,
    outside === 0
      ? ''
      : ` ${printCount(outside, 'place')} without coordinates ${outside === 1 ? 'is' : 'are'} left out.`,
    ` Coordinates alone${found.outlines.length === 0 ? '' : ', coast and borders as the study brings them'}: no base map.`,
    leftOut(labels),
  ].join('');
}
