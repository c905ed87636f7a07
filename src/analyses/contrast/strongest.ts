import type { JudgedPair } from './found.ts';

/** The pair that differs most among those told apart with items enough to be quoted. */
export function strongestOf(pairs: readonly JudgedPair[]): JudgedPair | undefined {
  const size = ({ delta }: JudgedPair) => ('why' in delta ? 0 : Math.abs(delta.estimate));
  return [...pairs].filter(({ quotable }) => quotable).sort((a, b) => size(b) - size(a))[0];
}
