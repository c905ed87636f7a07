import type { Figure } from '../contract.ts';
import { inSentence } from '../phrasing.ts';
import { kindMarker, passiveMarker } from '../shared/figure/kinds.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { escapeText } from '../shared/figure/style.ts';
import { likenessMap, shareMap } from './coloured-maps.ts';
import type { MapFound } from './found.ts';
import { coastTraces, type Ground, groundOf, mapLayout } from './ground.ts';
import { captionOf } from './map-caption.ts';
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

/** CSS pixels across the symbol of a group. */
const GROUP_MARK = 11;

function groupMap(found: MapFound, ground: Ground): Figure {
  const points = onGround(ground);
  const ends = drawnEnds(found, points);
  const { labels, said } = namesIn(ground, points, ends, { sizeAt: () => GROUP_MARK });
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
              ? passiveMarker(markStyle(null), GROUP_MARK - 1)
              : kindMarker(markStyle(own[0].place.mark), GROUP_MARK),
        };
      }),
    ],
    layout: mapLayout(ground),
    caption: captionOf(found, ground, said, [
      `symbols by ${inSentence(found.groupLabel ?? '')}, hollow where none is recorded`,
      lineSaid(found),
    ]),
  };
}
