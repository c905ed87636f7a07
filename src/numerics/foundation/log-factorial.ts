import gammaln from '@stdlib/math-base-special-gammaln';

const known: number[] = [0];

/** Natural logarithm of the factorial of a whole number from 0 on; each is worked out once. */
export function logFactorial(count: number): number {
  for (let next = known.length; next <= count; next++) known.push(gammaln(next + 1));
  return known[count];
}
