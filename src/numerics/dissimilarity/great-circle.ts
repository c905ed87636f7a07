import { sineAndCosine } from '../foundation/angles.ts';

/** Mean radius of the Earth in km (IUGG, Moritz 2000, J. Geod. 74:128). */
export const EARTH_RADIUS = 6371.0088;

/**
 * Straight distance in km through the sphere between two places, degrees of latitude and longitude. Shorter
 * than the way over the ground by less than 1 in 1000 up to 1000 km, and in the same order at any distance, as
 * comparisons of distances need. Sine and cosine are summed as series, so that every machine gives the same.
 */
export function chordDistance(
  first: readonly [latitude: number, longitude: number],
  second: readonly [latitude: number, longitude: number],
): number {
  const [ax, ay, az] = onSphere(first);
  const [bx, by, bz] = onSphere(second);
  const [dx, dy, dz] = [ax - bx, ay - by, az - bz];
  return EARTH_RADIUS * Math.sqrt(dx * dx + dy * dy + dz * dz);
}

function onSphere([latitude, longitude]: readonly [number, number]): [number, number, number] {
  const [up, out] = sineAndCosine((latitude * Math.PI) / 180);
  const [east, front] = sineAndCosine((longitude * Math.PI) / 180);
  return [out * front, out * east, up];
}
