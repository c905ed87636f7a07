import { type Condensed, takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import { adjustKnown } from '../../numerics/tests/adjust.ts';
import { type PermutationalAnova, permanova } from '../../numerics/tests/permanova.ts';
import type { Unavailable } from '../contract.ts';
import { toldAt } from '../verdicts.ts';
import type { Within } from './apart-found.ts';

const FEWEST = 3;

export interface Kind {
  readonly kind: string;
  readonly rows: readonly number[];
}

/**
 * Are the types apart where the condition that could pass for them is the same? One permutational
 * analysis of variance for each kind of the attribute in which two types have three records each.
 *
 * @param kinds each with its rows, as places in the matrix.
 */
export function withinKinds(
  kinds: readonly Kind[],
  matrix: Condensed,
  labels: Int32Array,
  { relabellings, confidence, random }: { relabellings: number; confidence: number; random: Random },
): Within[] {
  const tests = kinds.map(({ kind, rows }) => ({
    kind,
    n: rows.length,
    difference: compare(matrix, labels, rows, relabellings, random.stream(kind)),
  }));
  const adjusted = adjustKnown(
    tests.map(({ difference }) => (isUnavailable(difference) ? difference : difference.p)),
    'holm',
  );
  return tests.map((test, place) => ({
    ...test,
    pAdjusted: adjusted[place],
    told: toldAt(adjusted[place], confidence),
  }));
}

function compare(
  matrix: Condensed,
  labels: Int32Array,
  rows: readonly number[],
  relabellings: number,
  random: Random,
): PermutationalAnova | Unavailable {
  const sizes = new Map<number, number>();
  for (const row of rows) sizes.set(labels[row], (sizes.get(labels[row]) ?? 0) + 1);
  const types = [...sizes].filter(([, size]) => size >= FEWEST).map(([type]) => type);
  if (types.length < 2) return { why: `no two types with ${FEWEST} records each` };
  const kept = rows.filter((row) => types.includes(labels[row]));
  return permanova(
    takeRecords(matrix, kept),
    kept.map((row) => types.indexOf(labels[row])),
    { random, relabellings },
  );
}
