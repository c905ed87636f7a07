import { type PassivePoint, passiveCos2 } from '../../numerics/ordination/passive-point.ts';
import type { PlacedPoint } from './found.ts';

/** Something that was placed without a say, on at most `most` axes. */
export function passivePlace(point: PassivePoint, label: string, role: string, most: number): PlacedPoint {
  const shown = (values: Float64Array) => [...values.slice(0, most)];
  return {
    label,
    role,
    at: shown(point.coordinates),
    contributions: [],
    cos2: shown(passiveCos2(point)),
  };
}

/** Entries of point i in a flat array of points by axes, at most `most` of them. */
export function entriesOf(flat: ArrayLike<number>, i: number, axes: number, most: number): number[] {
  return Array.from({ length: Math.min(axes, most) }, (_, k) => flat[i * axes + k]);
}
