/**
 * How coarsely were numbers read? A step is what the readings are multiples of: it shows in their digits, and in
 * heaps on halves, fives and tens where a reader rounded further than the digits say (digit preference).
 */

/** So many of the readings must be multiples of a step; and so many readings there must be. */
const MOST = 0.9;
const FEWEST = 8;
const FEWEST_DIFFERENT = 3;
/** Rounding of the numbers themselves and of a change of unit, as a share of the step. */
const TOLERANCE = 0.02;
const ROUND_STEPS: readonly number[] = [1, 2, 2.5, 5];

/**
 * The largest step that at least 9 readings in 10 are multiples of; 0 where none is larger than what chance
 * gives. Tried: 1, 2, 2.5 and 5 times powers of ten, and the smallest gap between two readings (counts per inch
 * turned into counts per cm keep their step, though not a round one).
 *
 * @param values readings in one unit, by one hand.
 */
export function stepOf(values: ArrayLike<number>): number {
  const known = Array.from(values).filter((value) => Number.isFinite(value) && value !== 0);
  const sorted = [...new Set(known.map(Math.abs))].sort((a, b) => a - b);
  if (known.length < FEWEST || sorted.length < FEWEST_DIFFERENT) return 0;
  const largest = sorted[sorted.length - 1];
  let gap = largest;
  for (let i = 1; i < sorted.length; i++) {
    const between = sorted[i] - sorted[i - 1];
    if (between > 1e-9 * largest) gap = Math.min(gap, between);
  }
  const candidates: number[] = [gap];
  for (let power = exponentOf(largest); power >= -6; power--)
    for (const times of ROUND_STEPS) candidates.push(times * Number(`1e${power}`));
  candidates.sort((a, b) => b - a);
  for (const step of candidates) {
    // A step so fine that it could be met by chance says nothing.
    if (step < 1e-6 * largest) break;
    const fits = known.filter((value) => isMultiple(value, step)).length;
    if (fits >= MOST * known.length) return step;
  }
  return 0;
}

function isMultiple(value: number, step: number): boolean {
  const times = value / step;
  return Math.abs(times - Math.round(times)) <= TOLERANCE;
}

/** The power of ten of a number's first digit, read from its digits: a logarithm may fall short of it. */
function exponentOf(value: number): number {
  return Number(value.toExponential().split('e')[1]);
}
