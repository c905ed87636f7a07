import { type Code, f64x2, flat, get, i32, loopWhile, set, TYPE } from '../wasm/instructions.ts';
import type { Lane, PreparedComparison } from './prepare.ts';
import { AT, AT2, AT4, END, OUT, OWN, type Plan } from './simd-plan.ts';

/** The code of the loop over the records of a row, and of what each block and variable adds in it. */

export function rowLoop(plan: Plan, blocks: readonly Code[]): Code {
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
export function blockCode(prepared: PreparedComparison, block: number, plan: Plan): Code {
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
