/**
 * Sums that keep their digits. A value is carried as `high + low`, twice the precision of a double,
 * so that the spread of readings far from zero is not lost to rounding.
 */
export interface DoubledNumber {
  readonly high: number;
  readonly low: number;
}

/** Sum of the values with the rounding error of every addition kept (Ogita, Rump & Oishi 2005, SIAM J. Sci. Comput. 26:1955, Sum2). */
export function doubledSum(values: ArrayLike<number>): DoubledNumber {
  let high = 0;
  let low = 0;
  for (let i = 0; i < values.length; i++) {
    const sum = high + values[i];
    const part = sum - high;
    low += high - (sum - part) + (values[i] - part);
    high = sum;
  }
  return { high, low };
}

/** Mean of the values as `high + low`; at least one value. */
export function doubledMean(values: ArrayLike<number>): DoubledNumber {
  const n = values.length;
  const total = doubledSum(values);
  const high = (total.high + total.low) / n;
  // What the division lost: the mean's remainder, itself divided.
  const [product, error] = twoProduct(high, n);
  return { high, low: (total.high - product - error + total.low) / n };
}

/** Sum of squared deviations from `centre`. */
export function squaredDeviations(values: ArrayLike<number>, centre: DoubledNumber): number {
  const squares = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) {
    const deviation = values[i] - centre.high - centre.low;
    squares[i] = deviation * deviation;
  }
  const total = doubledSum(squares);
  return total.high + total.low;
}

/** Product and its rounding error (Dekker 1971, Numer. Math. 18:224). */
function twoProduct(a: number, b: number): [number, number] {
  const product = a * b;
  const [aHigh, aLow] = split(a);
  const [bHigh, bLow] = split(b);
  return [product, aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow)];
}

function split(value: number): [number, number] {
  const scaled = value * 134217729;
  const high = scaled - (scaled - value);
  return [high, value - high];
}
