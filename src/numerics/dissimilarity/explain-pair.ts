import { intervalDistance } from './interval-distance.ts';
import { openWays, saidByBoth, waysOf } from './said-already.ts';
import type { DissimilaritySpec, IntervalRule, RecordValue, Variable } from './variables.ts';
import { valueAt } from './variables.ts';

/** What one variable says about a pair. */
export interface VariableShare {
  /** Place of the variable in the spec. */
  readonly variable: number;
  readonly block: number;
  /**
   * `compared`; `unknown` (one or both have no value); `both absent` (a presence that neither has);
   * `no weight` (the variable or its block counts nothing); `said already` (both have what it follows from).
   */
  readonly state: 'compared' | 'unknown' | 'both absent' | 'no weight' | 'said already';
  /** 0 = alike; NaN unless compared. */
  readonly distance: number;
  /** What it adds to the dissimilarity of the pair; the contributions of all variables sum to it. */
  readonly contribution: number;
}

export interface BlockShare {
  readonly block: number;
  /** Weighted mean distance within the block; NaN when nothing in it could be compared. */
  readonly distance: number;
  readonly contribution: number;
}

/** Why two records are as unlike as they are. */
export interface PairExplanation {
  /** NaN when unknown. */
  readonly dissimilarity: number;
  /** Share of the total weight that could be compared or was jointly absent, 0 to 1. */
  readonly overlap: number;
  readonly blocks: readonly BlockShare[];
  readonly variables: readonly VariableShare[];
}

/** Why records i and j are as unlike as they are: per block and per variable. */
export function explainPair(spec: DissimilaritySpec, i: number, j: number): PairExplanation {
  return explain(
    spec,
    spec.variables.map((variable) => valueAt(variable, i)),
    j,
  );
}

/** As `explainPair`, for a record from outside (values in the order of `spec.variables`) and record j. */
export function explainPairTo(
  spec: DissimilaritySpec,
  record: readonly RecordValue[],
  j: number,
): PairExplanation {
  return explain(spec, record, j);
}

function explain(spec: DissimilaritySpec, record: readonly RecordValue[], j: number): PairExplanation {
  const plain = spec.mode === 'plain';
  const blockCount = plain ? 1 : spec.blockWeights.length;
  const sums = new Float64Array(blockCount);
  const weights = new Float64Array(blockCount);
  const totals = new Float64Array(blockCount);
  const seen = new Float64Array(blockCount);
  const blockOf = (variable: Variable) => (plain ? 0 : variable.block);
  const weightOf = (block: number) => (plain ? 1 : spec.blockWeights[block]);
  const ways = waysOf(spec);
  const shared =
    openWays(ways, (place) => record[place]) & openWays(ways, (place) => valueAt(spec.variables[place], j));
  const said = saidByBoth(ways, shared);
  const judged = spec.variables.map((variable, index) => {
    const block = blockOf(variable);
    if (variable.weight <= 0 || weightOf(block) <= 0)
      return { state: 'no weight' as const, distance: Number.NaN };
    if (said.includes(index)) return { state: 'said already' as const, distance: Number.NaN };
    const outcome = compare(variable, record[index], valueAt(variable, j), spec.intervals);
    if (variable.besides !== true) {
      totals[block] += variable.weight;
      if (outcome.state !== 'unknown') seen[block] += variable.weight;
    }
    if (outcome.state === 'compared') {
      sums[block] += variable.weight * outcome.distance;
      weights[block] += variable.weight;
    }
    return outcome;
  });
  let comparedWeight = 0;
  let allWeight = 0;
  let overlap = 0;
  for (let block = 0; block < blockCount; block++) {
    if (weights[block] > 0) comparedWeight += weightOf(block);
    if (totals[block] === 0) continue;
    allWeight += weightOf(block);
    overlap += (weightOf(block) * seen[block]) / totals[block];
  }
  overlap = allWeight > 0 ? overlap / allWeight : 0;
  const known = comparedWeight > 0 && overlap >= spec.minimumOverlap - 1e-9;
  const blocks = Array.from(sums, (sum, block) => {
    const distance = weights[block] > 0 ? sum / weights[block] : Number.NaN;
    return {
      block,
      distance,
      contribution: weights[block] > 0 ? (distance * weightOf(block)) / comparedWeight : 0,
    };
  });
  const variables = judged.map(({ state, distance }, index) => {
    const variable = spec.variables[index];
    const block = blockOf(variable);
    const part = state === 'compared' ? (distance * variable.weight) / weights[block] : 0;
    return {
      variable: index,
      block: variable.block,
      state,
      distance,
      contribution: state === 'compared' ? (part * weightOf(block)) / comparedWeight : 0,
    };
  });
  const dissimilarity = known ? blocks.reduce((sum, block) => sum + block.contribution, 0) : Number.NaN;
  return { dissimilarity, overlap, blocks, variables };
}

function compare(
  variable: Variable,
  a: RecordValue,
  b: RecordValue,
  rule: IntervalRule,
): { state: 'compared' | 'unknown' | 'both absent'; distance: number } {
  const unknown = { state: 'unknown' as const, distance: Number.NaN };
  if (variable.kind === 'quantity') {
    if (Number.isNaN(a.low) || Number.isNaN(b.low)) return unknown;
    const apart = intervalDistance(rule, a.low, a.high, b.low, b.high);
    if (variable.range > 0) return { state: 'compared', distance: apart / variable.range };
    return { state: 'compared', distance: a.high < b.low || b.high < a.low ? 1 : 0 };
  }
  if (a.code < 0 || b.code < 0) return unknown;
  if (variable.kind === 'kinds') {
    return { state: 'compared', distance: variable.between[a.code * variable.levels + b.code] };
  }
  if (a.code === 0 && b.code === 0) return { state: 'both absent', distance: Number.NaN };
  return { state: 'compared', distance: a.code > 0 === b.code > 0 ? 0 : 1 };
}
