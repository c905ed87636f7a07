import { entriesOf } from '../../study/load.ts';
import type { Material } from '../../study/prepare.ts';
import type { AnalysisResult } from '../../study/results/results.ts';
import type { Claim } from '../../study/run-study.ts';

/** What a thread is given: the material, read and laid out, and the count that all threads of a run share. */
export interface Errand {
  readonly prepared: Material;
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly count: Int32Array;
}

/** What it hands over: its answers by the analyses' ids, and the faults that are ours. */
export interface Handed {
  readonly answers: ReadonlyMap<string, AnalysisResult>;
  readonly faults: [id: string, fault: unknown][];
}

/** A count that threads share: how many analyses have been taken. */
export function commonCount(): Int32Array {
  return new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
}

/** Kinds that take longest, longest first: begun last, one would keep a single thread busy while the others wait. */
const LONGEST: readonly string[] = ['grouping', 'typology', 'standing', 'placement'];

/** The next analysis that nobody has taken, long ones first; each goes to one thread alone. */
export function countedBy(count: Int32Array, { study }: Material): Claim {
  const rank = ({ kind }: { readonly kind: string }) => {
    const place = LONGEST.indexOf(kind);
    return place < 0 ? LONGEST.length : place;
  };
  const order = [...entriesOf(study).entries()].sort(([, a], [, b]) => rank(a) - rank(b));
  return () => order[Atomics.add(count, 0, 1)]?.[0] ?? null;
}
