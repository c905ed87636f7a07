import { intervalDistance } from './interval-distance.ts';
import type { Lane } from './prepare.ts';
import type { IntervalRule, RecordValue } from './variables.ts';

/** The loops over one variable each, from record `start` on: what it adds to the sums and weights of its block. */

export function isKnown(value: RecordValue): boolean {
  return value.code >= 0 && !Number.isNaN(value.low);
}

export function addLane(
  lane: Lane,
  value: RecordValue,
  rule: IntervalRule,
  start: number,
  count: number,
  sums: Float64Array,
  weights: Float64Array,
): void {
  if (lane.kind === 'presence') {
    if (value.code > 0) addPresent(lane, start, count, sums, weights);
    else addAbsent(lane, start, count, sums, weights);
    return;
  }
  if (lane.kind === 'kinds') {
    addKinds(lane.codes, lane.between, value.code * (lane.levels + 1), start, count, sums);
    return;
  }
  if (lane.scale === 0) {
    addConstant(lane, value, start, count, sums);
    return;
  }
  const low = (value.low - lane.offset) * lane.scale;
  const high = (value.high - lane.offset) * lane.scale;
  if (lane.exact && (low === high || rule === 'midpoint')) {
    const middle = (low + high) / 2;
    if (lane.known === null) addExact(lane.middle, middle, start, count, sums);
    else addExactWithGaps(lane.middle, lane.known, middle, start, count, sums);
  } else addIntervals(lane, rule, low, high, start, count, sums);
}

export function addMask(
  bits: Uint16Array,
  table: Float64Array,
  own: number,
  start: number,
  count: number,
  weights: Float64Array,
): void {
  for (let j = 0; j < count; j++) weights[j] += table[own & bits[start + j]];
}

function addExact(values: Float64Array, x: number, start: number, count: number, sums: Float64Array): void {
  for (let j = 0; j < count; j++) sums[j] += Math.abs(values[start + j] - x);
}

function addExactWithGaps(
  values: Float64Array,
  known: Float64Array,
  x: number,
  start: number,
  count: number,
  sums: Float64Array,
): void {
  for (let j = 0; j < count; j++) sums[j] += Math.abs(values[start + j] - x) * known[start + j];
}

export function addKnown(
  known: Float64Array | null,
  weight: number,
  start: number,
  count: number,
  weights: Float64Array,
): void {
  if (known === null) for (let j = 0; j < count; j++) weights[j] += weight;
  else for (let j = 0; j < count; j++) weights[j] += weight * known[start + j];
}

function addKinds(
  codes: Int32Array,
  between: Float64Array,
  row: number,
  start: number,
  count: number,
  sums: Float64Array,
): void {
  for (let j = 0; j < count; j++) sums[j] += between[row + codes[start + j]];
}

/** The record has the trait: compared with all who are known, distance 1 from those without it. */
function addPresent(
  lane: Lane,
  start: number,
  count: number,
  sums: Float64Array,
  weights: Float64Array,
): void {
  const { weight, middle } = lane;
  const known = lane.known!;
  for (let j = 0; j < count; j++) {
    weights[j] += weight * known[start + j];
    sums[j] += weight * (known[start + j] - middle[start + j]);
  }
}

/** The record lacks the trait: compared only with those who have it, all at distance 1. */
function addAbsent(
  lane: Lane,
  start: number,
  count: number,
  sums: Float64Array,
  weights: Float64Array,
): void {
  const { weight, middle } = lane;
  for (let j = 0; j < count; j++) {
    const term = weight * middle[start + j];
    weights[j] += term;
    sums[j] += term;
  }
}

function addIntervals(
  lane: Lane,
  rule: IntervalRule,
  low: number,
  high: number,
  start: number,
  count: number,
  sums: Float64Array,
): void {
  for (let j = 0; j < count; j++) {
    if (lane.known !== null && lane.known[start + j] === 0) continue;
    sums[j] += intervalDistance(rule, low, high, lane.low[start + j], lane.high[start + j]);
  }
}

/** All values of the sample are equal: there is no scale, so another value is simply another kind. */
function addConstant(lane: Lane, value: RecordValue, start: number, count: number, sums: Float64Array): void {
  if (value.low <= lane.offset && value.high >= lane.offset) return;
  addKnown(lane.known, lane.weight, start, count, sums);
}
