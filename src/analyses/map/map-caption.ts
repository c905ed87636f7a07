import { printCount } from '../phrasing.ts';
import type { MapFound } from './found.ts';
import type { Ground } from './ground.ts';

/** What every map says of itself, around what its symbols mean. */
export function captionOf(
  found: MapFound,
  ground: Ground,
  names: string,
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
    names,
  ].join('');
}
