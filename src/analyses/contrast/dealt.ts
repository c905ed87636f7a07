import type { PermutationTest } from '../../numerics/resampling/permutation.ts';

/** "all 252 ways to deal the items", "9999 random ways to deal the items". */
export function dealtBy(test: PermutationTest): string {
  return test.method === 'exact'
    ? `exact, all ${test.relabellings} ways to deal the items`
    : `${test.relabellings} random ways to deal the items`;
}
