import type { DissimilaritySpec, IntervalRule, KindsVariable, Variable } from './variables.ts';

/**
 * A comparison laid out for the inner loops: numbers scaled once, gaps as weights and bit masks, so
 * that the loops themselves never branch on them.
 */

/** A variable laid out for the loops: numbers already multiplied by weight / range. */
export interface Lane {
  readonly kind: Variable['kind'];
  readonly block: number;
  readonly weight: number;
  /** Share of the whole comparison's weight that this variable carries. */
  readonly share: number;
  /** 1 where known, 0 where not; null when every record has it. */
  readonly known: Float64Array | null;
  /** Quantity: scaled midpoints and ends, 0 where unknown. Presence: 1 where present. */
  readonly middle: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Quantity: every reading is exact, so that all interval rules agree. */
  readonly exact: boolean;
  readonly offset: number;
  readonly scale: number;
  /** Kinds: codes with `levels` for unknown, and weighted distances with a last row and column of 0. */
  readonly codes: Int32Array;
  readonly between: Float64Array;
  readonly levels: number;
}

/**
 * Which of up to eight variables of one block a record has, as bits, and the weight that any set of
 * them carries: one look-up for a pair instead of one addition a variable.
 */
export interface GapMask {
  readonly block: number;
  /** Places of the variables in `lanes`, lowest bit first. */
  readonly lanes: readonly number[];
  readonly bits: Uint16Array;
  readonly weights: Float64Array;
}

/** A specification made ready for many comparisons. */
export interface PreparedComparison {
  readonly spec: DissimilaritySpec;
  readonly n: number;
  readonly lanes: readonly Lane[];
  readonly masks: readonly GapMask[];
  readonly blockWeights: readonly number[];
}

const NONE = new Float64Array(0);
const NO_CODES = new Int32Array(0);

/** Checks shapes and lays out the variables; variables or blocks of weight 0 take no part. */
export function prepareComparison(spec: DissimilaritySpec): PreparedComparison {
  const blockOf = (variable: Variable) => (spec.mode === 'plain' ? 0 : variable.block);
  const blockWeights = spec.mode === 'plain' ? [1] : spec.blockWeights;
  const active = spec.variables.filter(
    (variable) => variable.weight > 0 && (blockWeights[blockOf(variable)] ?? 0) > 0,
  );
  const n = spec.variables.length === 0 ? 0 : lengthOf(spec.variables[0]);
  const totals = blockWeights.map(() => 0);
  for (const variable of active) if (variable.besides !== true) totals[blockOf(variable)] += variable.weight;
  const all = blockWeights.reduce((sum, weight, block) => sum + (totals[block] > 0 ? weight : 0), 0);
  const lanes = active.map((variable) => {
    if (lengthOf(variable) !== n) throw new RangeError('dissimilarity: variables differ in length');
    const block = blockOf(variable);
    const share =
      variable.besides === true ? 0 : (variable.weight / totals[block]) * (blockWeights[block] / all);
    return layOut(variable, block, share, n, spec.intervals);
  });
  return { spec, n, lanes, masks: gapMasks(lanes, blockWeights.length, n), blockWeights };
}

const MASK_WIDTH = 8;

function gapMasks(lanes: readonly Lane[], blocks: number, n: number): GapMask[] {
  const masks: GapMask[] = [];
  for (let block = 0; block < blocks; block++) {
    const gappy = lanes.flatMap((lane, index) =>
      lane.block === block && lane.kind !== 'presence' && lane.known !== null ? [index] : [],
    );
    for (let start = 0; start < gappy.length; start += MASK_WIDTH) {
      masks.push(gapMask(lanes, gappy.slice(start, start + MASK_WIDTH), block, n));
    }
  }
  return masks;
}

function gapMask(lanes: readonly Lane[], chosen: readonly number[], block: number, n: number): GapMask {
  const bits = new Uint16Array(n);
  const weights = new Float64Array(1 << chosen.length);
  chosen.forEach((index, bit) => {
    const known = lanes[index].known!;
    for (let i = 0; i < n; i++) if (known[i] > 0) bits[i] |= 1 << bit;
    for (let set = 0; set < weights.length; set++) {
      if ((set & (1 << bit)) !== 0) weights[set] += lanes[index].weight;
    }
  });
  return { block, lanes: chosen, bits, weights };
}

function lengthOf(variable: Variable): number {
  return variable.kind === 'quantity' ? variable.low.length : variable.codes.length;
}

function layOut(variable: Variable, block: number, share: number, n: number, rule: IntervalRule): Lane {
  const known = new Float64Array(n);
  const base = {
    kind: variable.kind, block, weight: variable.weight, share, middle: NONE, low: NONE, high: NONE,
    exact: true, offset: 0, scale: 0, codes: NO_CODES, between: NONE, levels: 0,
  }; // biome-ignore format: one line says as much
  if (variable.kind === 'presence') {
    const middle = new Float64Array(n);
    for (let i = 0; i < n; i++) {
      known[i] = variable.codes[i] >= 0 ? 1 : 0;
      middle[i] = variable.codes[i] > 0 ? 1 : 0;
    }
    return { ...base, known, middle };
  }
  if (variable.kind === 'kinds') {
    const codes = new Int32Array(n);
    for (let i = 0; i < n; i++) {
      const code = variable.codes[i];
      known[i] = code >= 0 ? 1 : 0;
      codes[i] = code >= 0 ? code : variable.levels;
    }
    return { ...base, known: whereGaps(known), codes, between: padded(variable), levels: variable.levels };
  }
  const low = new Float64Array(n);
  const high = new Float64Array(n);
  const middle = new Float64Array(n);
  let offset = Number.POSITIVE_INFINITY;
  for (const value of variable.low) if (value < offset) offset = value;
  if (!Number.isFinite(offset)) offset = 0;
  const scale = variable.range > 0 ? variable.weight / variable.range : 0;
  let exact = true;
  for (let i = 0; i < n; i++) {
    const [start, end] = [variable.low[i], variable.high[i]];
    if (Number.isNaN(start) || Number.isNaN(end)) continue;
    if (!Number.isFinite(start) || !Number.isFinite(end)) {
      throw new RangeError('dissimilarity: an open-ended interval must be closed by the caller');
    }
    known[i] = 1;
    low[i] = (start - offset) * scale;
    high[i] = (end - offset) * scale;
    middle[i] = (low[i] + high[i]) / 2;
    if (start !== end) exact = false;
  }
  exact ||= rule === 'midpoint';
  return { ...base, known: whereGaps(known), middle, low, high, exact, offset, scale };
}

function whereGaps(known: Float64Array): Float64Array | null {
  return known.includes(0) ? known : null;
}

function padded(variable: KindsVariable): Float64Array {
  const { levels, between, weight } = variable;
  const wide = new Float64Array((levels + 1) * (levels + 1));
  for (let a = 0; a < levels; a++) {
    for (let b = 0; b < levels; b++) wide[a * (levels + 1) + b] = between[a * levels + b] * weight;
  }
  return wide;
}
