/**
 * Sine and cosine of an angle in radians within plus or minus pi, as Taylor series to the last digits of a
 * double: every machine gives the same, which ECMAScript leaves open for Math.sin and Math.cos.
 */
export function sineAndCosine(angle: number): [sine: number, cosine: number] {
  let term = 1;
  let sine = 0;
  let cosine = 1;
  for (let k = 1; k < 40; k++) {
    term *= angle / k;
    const sign = k % 4 < 2 ? 1 : -1;
    if (k % 2 === 1) sine += sign * term;
    else cosine += sign * term;
  }
  return [sine, cosine];
}

/** Tangent of an angle in degrees, below 90. */
export function tangentOfDegrees(degrees: number): number {
  const [sine, cosine] = sineAndCosine((degrees * Math.PI) / 180);
  return sine / cosine;
}
