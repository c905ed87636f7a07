import { startKernel } from '../wasm/assemble.ts';
import { type Code, f64x2, flat, get, i32, loopWhile, set, TYPE } from '../wasm/instructions.ts';
import { JOINED_FROM, joinKinds } from './joined-kinds.ts';
import type { Lane, PreparedComparison } from './prepare.ts';

/**
 * The block dissimilarity for two pairs of records at a time: the loops of `dissimilarity-kernel.ts` joined
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

/** The value of the record from outside in one lane: its scaled middle, or the code of its kind. */
export interface OwnValue {
  readonly middle: number;
  readonly code: number;
}

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

type Values = Float64Array | Int32Array | Uint16Array;

/** Where everything lies in memory, which locals are in use, and what a run begins with. */
interface Plan {
  readonly size: () => number;
  readonly results: number;
  readonly contents: readonly (readonly [offset: number, values: Values])[];
  readonly locals: readonly number[];
  readonly start: readonly Code[];
  /** Puts the values of a record from outside in the place of the first. */
  readonly own: ((memory: DataView, values: readonly OwnValue[]) => void)[];
  /** A local that stays 0. */
  readonly zero: number;
  readonly total: number;
  readonly weight: number;
  readonly local: (type: number) => number;
  /** Finds room for values that are written before the first run. */
  readonly place: (values: Values) => number;
  /** A local that holds what this code leaves on the stack when a run begins. */
  readonly begin: (type: number, code: Code) => number;
}

function createPlan(n: number): Plan {
  let size = 0;
  const contents: (readonly [number, Values])[] = [];
  const locals: number[] = [TYPE.i32, TYPE.i32, TYPE.i32, TYPE.i32];
  const start: Code[] = [];
  const local = (type: number) => PARAMETERS + locals.push(type) - 1;
  const reserve = (bytes: number) => {
    const offset = size;
    // Two records more than there are, so that the last pair may reach beyond the end.
    size += Math.ceil((bytes + 16) / 8) * 8;
    return offset;
  };
  return {
    size: () => size,
    results: reserve(8 * n),
    own: [],
    contents,
    locals,
    start,
    zero: local(TYPE.v128),
    total: local(TYPE.v128),
    weight: local(TYPE.v128),
    local,
    place: (values) => {
      const offset = reserve(values.byteLength);
      contents.push([offset, values]);
      return offset;
    },
    begin: (type, code) => {
      const name = local(type);
      start.push(flat(code, set(name)));
      return name;
    },
  };
}

/** Parameters: the record itself and the end, as places of doubles in bytes. */
const PARAMETERS = 2;
const OWN = 0;
const END = 1;
/** Places of the pair at hand: in doubles, in whole numbers of 32 bits and of 16, and in the results. */
const AT = 2;
const AT4 = 3;
const AT2 = 4;
const OUT = 5;

function rowLoop(plan: Plan, blocks: readonly Code[]): Code {
  const body = flat(
    ...[get(AT), i32.const(1), i32.shiftRight, set(AT4), get(AT), i32.const(2), i32.shiftRight, set(AT2)],
    ...[get(plan.zero), set(plan.total), get(plan.zero), set(plan.weight)],
    ...blocks,
    ...[get(OUT), get(plan.total), get(plan.weight), f64x2.div, f64x2.store(plan.results)],
    ...[get(OUT), i32.const(16), i32.add, set(OUT)],
    ...[get(AT), i32.const(16), i32.add, set(AT), get(AT), get(END), i32.less],
  );
  return flat(get(OWN), i32.const(8), i32.add, set(AT), i32.const(0), set(OUT), loopWhile(body));
}

/** Adds the mean of one block, times its weight, to the total where the block has anything to compare. */
function blockCode(prepared: PreparedComparison, block: number, plan: Plan): Code {
  const lanes = prepared.lanes.filter((lane) => lane.block === block);
  if (lanes.length === 0) return [];
  const sum = plan.local(TYPE.v128);
  const weight = plan.local(TYPE.v128);
  const counts = plan.local(TYPE.v128);
  const always = lanes.reduce((total, lane) => (lane.known === null ? total + lane.weight : total), 0);
  const terms = lanes.filter((lane) => lane.kind === 'kinds' || lane.scale > 0);
  const share = f64x2.const(prepared.blockWeights[block]);
  return flat(
    get(plan.zero),
    ...terms.map((lane) =>
      flat(
        (lane.kind === 'kinds' ? kindsCode : numberCode)(lane, prepared.lanes.indexOf(lane), plan),
        f64x2.add,
      ),
    ),
    set(sum),
    f64x2.const(always),
    ...prepared.masks
      .filter((mask) => mask.block === block)
      .map(({ bits, weights }) => flat(maskCode(bits, weights, plan), f64x2.add)),
    set(weight),
    ...[get(weight), get(plan.zero), f64x2.greater, set(counts)],
    ...[get(plan.total), share, get(sum), f64x2.mul, get(weight), f64x2.div],
    ...[get(counts), f64x2.and, f64x2.add, set(plan.total)],
    ...[get(plan.weight), share, get(counts), f64x2.and, f64x2.add, set(plan.weight)],
  );
}

/** |value - own value|, or 0 where one of them is not known: no comparison with NaN holds, so 0 stays the greater. */
function numberCode({ middle, known }: Lane, index: number, plan: Plan): Code {
  const values = plan.place(
    known === null ? middle : middle.map((value, i) => (known[i] > 0 ? value : Number.NaN)),
  );
  plan.own.push((memory, own) => memory.setFloat64(values, own[index].middle, true));
  const own = plan.begin(TYPE.v128, flat(get(OWN), f64x2.loadSplat(values)));
  const difference = flat(get(AT), f64x2.load(values), get(own), f64x2.sub, f64x2.abs);
  return known === null ? difference : flat(get(plan.zero), difference, f64x2.greaterOf);
}

/** The distance of the own kind to each of two others, from the row of the own kind. */
function kindsCode({ codes, between, levels }: Lane, index: number, plan: Plan): Code {
  const table = plan.place(between);
  const columns = plan.place(codes.map((code) => 8 * code));
  const rows = plan.place(codes.map((code) => table + 8 * code * (levels + 1)));
  plan.own.push((memory, own) => memory.setInt32(rows, table + 8 * own[index].code * (levels + 1), true));
  const row = plan.begin(TYPE.i32, flat(get(OWN), i32.const(1), i32.shiftRight, i32.load(rows)));
  const address = (next: number) => flat(get(row), get(AT4), i32.load(columns + 4 * next), i32.add);
  return flat(address(1), address(0), f64x2.loadFirst(0), f64x2.loadSecond(0));
}

/** The weight of the variables that both records of each pair have. */
function maskCode(bits: Uint16Array, weights: Float64Array, plan: Plan): Code {
  const table = plan.place(weights);
  const known = plan.place(bits);
  const own = plan.begin(TYPE.i32, flat(get(OWN), i32.const(2), i32.shiftRight, i32.load16(known)));
  const address = (next: number) =>
    flat(get(AT2), i32.load16(known + 2 * next), get(own), i32.and, i32.const(3), i32.shiftLeft);
  return flat(address(1), address(0), f64x2.loadFirst(table), f64x2.loadSecond(table));
}
