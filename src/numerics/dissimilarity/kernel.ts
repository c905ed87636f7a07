import { addKnown, addLane, addMask, isKnown } from './lane-loops.ts';
import type { Lane, PreparedComparison } from './prepare.ts';
import type { RecordValue } from './variables.ts';

/**
 * The inner loops of the block dissimilarity. One record is compared with a run of others, variable by
 * variable, so that every loop runs over one typed array and adds to one buffer: two to three times as
 * fast as looking at one pair after the other. A gap is a weight of 0, never a branch.
 */

/** Records compared in one run: buffers of this length stay in the processor's nearest cache. */
const RUN = 1024;

/** Buffers of one run, by block. */
export interface Run {
  readonly sums: readonly Float64Array[];
  readonly weights: readonly Float64Array[];
  readonly seen: Float64Array;
  readonly total: Float64Array;
  readonly weight: Float64Array;
}

export function createRun(prepared: PreparedComparison): Run {
  const buffers = () => prepared.blockWeights.map(() => new Float64Array(RUN));
  const buffer = () => new Float64Array(RUN);
  return { sums: buffers(), weights: buffers(), seen: buffer(), total: buffer(), weight: buffer() };
}

const shared = new Map<number, Run>();

/** The same buffers again for whoever needs them only until it returns: a find is compared with many small sets. */
export function sharedRun(prepared: PreparedComparison): Run {
  const blocks = prepared.blockWeights.length;
  const before = shared.get(blocks);
  if (before !== undefined) return before;
  const made = createRun(prepared);
  shared.set(blocks, made);
  return made;
}

/**
 * Dissimilarities of one record to the records from … to - 1, written to `out` from `place` on.
 * The record's values stand in the order of the comparison's lanes; `own` are the bits of its masks.
 */
export function compareRun(
  prepared: PreparedComparison,
  record: readonly RecordValue[],
  from: number,
  to: number,
  out: Float64Array,
  place: number,
  run: Run,
  own: readonly number[] = ownBits(prepared, record),
): void {
  for (let start = from; start < to; start += RUN) {
    const count = Math.min(RUN, to - start);
    compareChunk(prepared, record, own, start, count, run);
    finish(prepared, run, count, out, place + start - from);
  }
}

function compareChunk(
  prepared: PreparedComparison,
  record: readonly RecordValue[],
  own: readonly number[],
  start: number,
  count: number,
  run: Run,
): void {
  const { lanes, masks, spec } = prepared;
  for (let block = 0; block < run.sums.length; block++) {
    run.sums[block].fill(0, 0, count);
    run.weights[block].fill(alwaysKnown(lanes, record, block), 0, count);
  }
  for (const [at, mask] of masks.entries())
    addMask(mask.bits, mask.weights, own[at], start, count, run.weights[mask.block]);
  if (spec.minimumOverlap > 0) run.seen.fill(0, 0, count);
  for (let index = 0; index < lanes.length; index++) {
    const lane = lanes[index];
    const value = record[index];
    if (!isKnown(value)) continue;
    if (spec.minimumOverlap > 0) addKnown(lane.known, lane.share, start, count, run.seen);
    addLane(lane, value, spec.intervals, start, count, run.sums[lane.block], run.weights[lane.block]);
  }
}

/** Which of the variables of each mask a record has. */
function ownBits({ masks }: PreparedComparison, record: readonly RecordValue[]): readonly number[] {
  return masks.map(({ lanes }) =>
    lanes.reduce((bits, lane, bit) => (isKnown(record[lane]) ? bits | (1 << bit) : bits), 0),
  );
}

/** Weight of the variables that every record has, this one included. */
function alwaysKnown(lanes: readonly Lane[], record: readonly RecordValue[], block: number): number {
  let weight = 0;
  for (let index = 0; index < lanes.length; index++) {
    const lane = lanes[index];
    if (lane.block === block && lane.known === null && isKnown(record[index])) weight += lane.weight;
  }
  return weight;
}

function finish(
  prepared: PreparedComparison,
  run: Run,
  count: number,
  out: Float64Array,
  place: number,
): void {
  const { blockWeights, spec } = prepared;
  const total = run.total.fill(0, 0, count);
  const weight = run.weight.fill(0, 0, count);
  for (let block = 0; block < blockWeights.length; block++) {
    addBlock(run.sums[block], run.weights[block], blockWeights[block], count, total, weight);
  }
  for (let j = 0; j < count; j++) out[place + j] = weight[j] > 0 ? total[j] / weight[j] : Number.NaN;
  if (spec.minimumOverlap <= 0) return;
  const least = spec.minimumOverlap - 1e-9;
  for (let j = 0; j < count; j++) if (run.seen[j] < least) out[place + j] = Number.NaN;
}

function addBlock(
  sums: Float64Array,
  weights: Float64Array,
  blockWeight: number,
  count: number,
  total: Float64Array,
  weight: Float64Array,
): void {
  for (let j = 0; j < count; j++) {
    if (weights[j] > 0) {
      total[j] += (blockWeight * sums[j]) / weights[j];
      weight[j] += blockWeight;
    }
  }
}
