import type { Lane, PreparedComparison } from './prepare.ts';

/**
 * Variables of kinds that many records lack, taken together: where few combinations of their values occur, one table
 * of combination against combination holds the sum of their distances, so that a pair of records needs one look-up
 * for all of them. Their sum is made in the order of the variables.
 */

/** Combinations of one table: it stays in the processor's nearest cache. */
const MOST = 64;
/** Below this many records the tables cost more to make than they save. */
export const JOINED_FROM = 400;

/** A lane of a comparison of its own records, and the lanes that it stands for. */
export interface JoinedLane {
  readonly lane: Lane;
  /** Places in the lanes of the comparison; one where nothing was joined. */
  readonly of: readonly number[];
}

/** The lanes of a comparison, those of kinds with gaps joined as far as a table holds them. */
export function joinKinds({ lanes, n, spec }: PreparedComparison): readonly JoinedLane[] {
  const single = lanes.map((lane, index): JoinedLane => ({ lane, of: [index] }));
  if (n < JOINED_FROM || spec.minimumOverlap > 0) return single;
  const joined: JoinedLane[] = [];
  for (const one of single) {
    const before = joined.at(-1);
    const both = before === undefined ? null : join(before, one, lanes, n);
    if (both === null) joined.push(one);
    else joined[joined.length - 1] = both;
  }
  return joined;
}

const fits = ({ kind, known }: Lane): boolean => kind === 'kinds' && known !== null;

function join(before: JoinedLane, one: JoinedLane, lanes: readonly Lane[], n: number): JoinedLane | null {
  const [a, b] = [before.lane, one.lane];
  if (!fits(a) || !fits(b) || a.block !== b.block) return null;
  const codes = new Int32Array(n);
  const places = new Map<number, number>();
  const wide = b.levels + 1;
  for (let i = 0; i < n; i++) {
    const combination = a.codes[i] * wide + b.codes[i];
    let code = places.get(combination);
    if (code === undefined) {
      if (places.size === MOST) return null;
      code = places.size;
      places.set(combination, code);
    }
    codes[i] = code;
  }
  const levels = places.size;
  const between = new Float64Array((levels + 1) * (levels + 1));
  for (const [first, x] of places) {
    for (const [second, y] of places) {
      const [rowA, columnA] = [Math.floor(first / wide), Math.floor(second / wide)];
      between[x * (levels + 1) + y] =
        a.between[rowA * (a.levels + 1) + columnA] + b.between[(first % wide) * wide + (second % wide)];
    }
  }
  const of = [...before.of, ...one.of];
  const weight = of.reduce((sum, index) => sum + lanes[index].weight, 0);
  return { lane: { ...a, codes, between, levels, weight }, of };
}
