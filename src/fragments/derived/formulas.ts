import { tangentOfDegrees } from '../../numerics/foundation/angles.ts';
import { ln } from '../../numerics/foundation/elementary.ts';
import { greatest, least } from '../../numerics/foundation/lists.ts';
import { difference, type Interval, product, quotient, tenOver } from '../intervals.ts';

/** Formulas of derived measures on intervals; every result holds each value that the readings allow. */
export type Formula = (...operands: readonly Interval[]) => Interval;

/** 10 / x: a count per cm from a spacing in mm, and back. */
export const turnedOver: Formula = (x) => tenOver(x);

export const same: Formula = (x) => x;

export const less: Formula = (a, b) => difference(a, b);

export const sum: Formula = (a, b) => [a[0] + b[0], a[1] + b[1]];

export const over: Formula = (a, b) => quotient(a, b);

export const times: Formula = (a, b) => product(a, b);

export const half: Formula = ([low, high]) => [low / 2, high / 2];

export const doubled: Formula = ([low, high]) => [low * 2, high * 2];

export const greater: Formula = (a, b) => [Math.max(a[0], b[0]), Math.max(a[1], b[1])];

export const lesser: Formula = (a, b) => [Math.min(a[0], b[0]), Math.min(a[1], b[1])];

export const logarithm: Formula = ([low, high]) => [ln(low), ln(high)];

/** Denser over sparser: at least 1, whichever of the two it is. */
export const larger: Formula = (a, b) => {
  const [low, high] = quotient(a, b);
  const ends = [low, high, 1 / low, 1 / high];
  return [low <= 1 && high >= 1 ? 1 : least(ends.filter((end) => end >= 1)), greatest(ends)];
};

/** Width over spacing, w d / 10, of elements as wide as `width` at so many per cm. Peirce 1937, J. Text. Inst. 28:T45. */
export const cover: Formula = (width, density) => {
  const [low, high] = product(width, density);
  return [low / 10, high / 10];
};

/** Spacing over width, less one: written with each operand once, so that the interval is no wider than it must be. */
export const gapOverWidth: Formula = (spacing, width) => {
  const [low, high] = quotient(spacing, width);
  return [low - 1, high - 1];
};

/** Metres of thread in a square metre of cloth, from both counts per cm. */
export const lengthPerArea: Formula = (a, b) => [100 * (a[0] + b[0]), 100 * (a[1] + b[1])];

/** 1000 tan(angle) / (pi w): turns of a helix per metre, on a round thread w mm thick. */
export const turnsPerMetre: Formula = (angle, width) => {
  const rise = (degrees: number) => 1000 * tangentOfDegrees(Math.min(89, degrees));
  return [rise(angle[0]) / (Math.PI * width[1]), rise(angle[1]) / (Math.PI * width[0])];
};

/** Grams per cubic centimetre of thread between which fibre, air and twist leave it. Common practice, no source. */
const PACKED: Interval = [0.45, 1.35];

/** 1000 pi / 4 w^2 rho: g per km of a round thread w mm thick. */
export const tex: Formula = ([low, high]) => {
  const area = (width: number) => 250 * Math.PI * width * width;
  return [area(low) * PACKED[0], area(high) * PACKED[1]];
};

/** (1 - c1)(1 - c2), covers cut at 0 and 1. Peirce 1937. */
export const open: Formula = (first, second) => {
  const left = (share: number) => 1 - Math.min(1, Math.max(0, share));
  return [left(first[1]) * left(second[1]), left(first[0]) * left(second[0])];
};
