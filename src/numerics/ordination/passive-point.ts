/** A point that took no part in the making of axes. */
export interface PassivePoint {
  /** Place on each axis. */
  readonly coordinates: Float64Array;
  /**
   * Squared distance from the centre of those that took part; the axes may show only a part of it.
   * Negative only in principal coordinates of dissimilarities that are not Euclidean.
   */
  readonly fromCentre: number;
}

/** Share (0 to 1) of a passive point's squared distance from the centre that each axis shows; 0 where it has none. */
export function passiveCos2({ coordinates, fromCentre }: PassivePoint): Float64Array {
  return coordinates.map((value) => (fromCentre > 0 ? Math.min(1, (value * value) / fromCentre) : 0));
}
