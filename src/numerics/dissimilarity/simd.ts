import { startKernel } from '../wasm/assemble.ts';
import { flat } from '../wasm/instructions.ts';
import { JOINED_FROM, joinKinds } from './joined-kinds.ts';
import type { PreparedComparison } from './prepare.ts';
import { blockCode, rowLoop } from './simd-code.ts';
import { createPlan, type OwnValue, PARAMETERS } from './simd-plan.ts';

/**
 * The block dissimilarity for two pairs of records at a time: the loops of `kernel.ts` joined
 * into one that is written for the variables at hand, so that no sum leaves the processor between them. Same
 * operations in the same order, hence the same numbers to the last bit.
 */

/** Below this many records the kernel costs more to make than it saves. */
export const SIMD_FROM = JOINED_FROM;

/** Writes the dissimilarities of record i to the records after it, from `place` on. */
export type RowWriter = (i: number, out: Float64Array, place: number) => void;

/**
 * A writer for the records of the comparison; null where the plain loops must do it: few records, traits
 * compared by presence, ranges by other rules than their midpoints, a least overlap, no SIMD in the engine.
 */
export function simdRows(prepared: PreparedComparison): RowWriter | null {
  const made = makeKernel({ ...prepared, lanes: joinKinds(prepared).map(({ lane }) => lane) });
  if (made === null) return null;
  const { kernel, results } = made;
  const { n } = prepared;
  return (i, out, place) => {
    kernel.run(8 * i, 8 * n);
    out.set(results.subarray(0, n - 1 - i), place);
  };
}

/** The dissimilarities of a record from outside to all of the comparison; its values as the lanes are laid out. */
export type FindWriter = (own: readonly OwnValue[]) => Float64Array;

/**
 * The same for a record from outside, whose every value must be known: it is put before the others and compared
 * with all that follow. Null where `simdRows` would be, and where a number has no scale.
 */
export function simdTo(prepared: PreparedComparison): FindWriter | null {
  const { lanes, masks, n } = prepared;
  if (lanes.some(({ kind, scale }) => kind === 'quantity' && scale === 0)) return null;
  const made = makeKernel({
    ...prepared,
    n: n + 1,
    lanes: lanes.map((lane) => ({
      ...lane,
      known: lane.known === null ? null : before(lane.known, 1),
      middle: lane.kind === 'kinds' ? lane.middle : before(lane.middle, 0),
      codes: lane.kind === 'kinds' ? before(lane.codes, 0) : lane.codes,
    })),
    // All of the bits, since all of its values are known.
    masks: masks.map((mask) => ({ ...mask, bits: before(mask.bits, mask.weights.length - 1) })),
  });
  if (made === null) return null;
  const { kernel, results, plan } = made;
  const memory = new DataView(kernel.memory);
  return (own) => {
    for (const write of plan.own) write(memory, own);
    kernel.run(0, 8 * (n + 1));
    return results.slice(0, n);
  };
}

function before<Array extends Float64Array | Int32Array | Uint16Array>(values: Array, first: number): Array {
  const longer = new (values.constructor as new (length: number) => Array)(values.length + 1);
  longer[0] = first;
  longer.set(values, 1);
  return longer;
}

function makeKernel(prepared: PreparedComparison) {
  const { n, lanes, spec } = prepared;
  const fits = lanes.every(({ kind, exact }) => kind === 'kinds' || (kind === 'quantity' && exact));
  if (n < SIMD_FROM || !fits || spec.minimumOverlap > 0) return null;
  const plan = createPlan(n);
  const blocks = prepared.blockWeights.map((_, block) => blockCode(prepared, block, plan));
  const source = {
    parameters: PARAMETERS,
    locals: plan.locals,
    memory: plan.size(),
    body: flat(...plan.start, rowLoop(plan, blocks)),
  };
  const kernel = startKernel(source);
  if (kernel === null) return null;
  for (const [offset, values] of plan.contents) {
    const bytes = new Uint8Array(values.buffer, values.byteOffset, values.byteLength);
    new Uint8Array(kernel.memory).set(bytes, offset);
  }
  return { kernel, plan, results: new Float64Array(kernel.memory, plan.results, n) };
}
