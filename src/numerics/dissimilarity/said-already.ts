import type { DissimilaritySpec, RecordValue, Variable } from './variables.ts';
import { valueAt } from './variables.ts';

/**
 * A variable that follows from others says nothing more of two records that both have those others: compared as well,
 * one measurement would count twice. Of two records of which one lacks them it is all there is to compare.
 */

/** One way in which a variable follows from others, all as places in the specification. */
export interface Way {
  readonly variable: number;
  readonly inputs: readonly number[];
}

/** The ways of a specification whose variables all take part: what counts nothing stands for nothing. */
export function waysOf({ variables, mode, blockWeights }: DissimilaritySpec): readonly Way[] {
  const counts = ({ weight, block }: Variable) =>
    weight > 0 && (mode === 'plain' || (blockWeights[block] ?? 0) > 0);
  return variables.flatMap((one, variable) =>
    counts(one)
      ? (one.insteadOf ?? [])
          .filter((inputs) => inputs.every((input) => counts(variables[input])))
          .map((inputs) => ({ variable, inputs }))
      : [],
  );
}

/** The ways that are open to a record, as bits: those of which it has every input. */
export function openWays(ways: readonly Way[], valueIn: (place: number) => RecordValue): number {
  if (ways.length > 30) throw new RangeError('dissimilarity: more than 30 ways to compute variables');
  return ways.reduce((bits, { inputs }, way) => {
    const open = inputs.every((input) => {
      const { low, code } = valueIn(input);
      return code >= 0 && !Number.isNaN(low);
    });
    return open ? bits | (1 << way) : bits;
  }, 0);
}

/** The same of every record. */
export function openWaysOfAll(spec: DissimilaritySpec, ways: readonly Way[], n: number): Int32Array {
  return Int32Array.from({ length: n }, (_, row) =>
    openWays(ways, (place) => valueAt(spec.variables[place], row)),
  );
}

/** The variables that both records of a pair have said already, by the ways that are open to both. */
export function saidByBoth(ways: readonly Way[], shared: number): readonly number[] {
  return [...new Set(ways.flatMap(({ variable }, way) => ((shared & (1 << way)) === 0 ? [] : [variable])))];
}

/** The comparison without these variables, every other then compared wherever it is known. */
export function withoutVariables(spec: DissimilaritySpec, places: readonly number[]): DissimilaritySpec {
  return {
    ...spec,
    variables: spec.variables
      .filter((_, place) => !places.includes(place))
      .map((variable) => ({ ...variable, insteadOf: [] })),
  };
}
