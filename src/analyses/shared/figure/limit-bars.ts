/** Bars of limits around the points of a figure. */

export interface LimitedPoint {
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
}

/** Points with limits, and points whose limits are not known: these are drawn without a bar, not with one of length 0. */
export function partByLimits<Point extends LimitedPoint>(
  points: readonly Point[],
): { readonly barred: readonly (Point & { low: number; high: number })[]; readonly bare: readonly Point[] } {
  const barred = points.flatMap((point) =>
    point.low === null || point.high === null ? [] : [{ ...point, low: point.low, high: point.high }],
  );
  return { barred, bare: points.filter(({ low, high }) => low === null || high === null) };
}

/** A plotly `error_x` or `error_y` from the values to their limits; an end on the wrong side of its value has no length. */
export function limitBars(
  points: readonly { readonly value: number; readonly low: number; readonly high: number }[],
  color: string,
): Readonly<Record<string, unknown>> {
  return {
    type: 'data',
    symmetric: false,
    array: points.map(({ value, high }) => Math.max(0, high - value)),
    arrayminus: points.map(({ value, low }) => Math.max(0, value - low)),
    color,
    thickness: 1,
    width: 4,
  };
}
