import type { Prepared } from '../../study/prepare.ts';
import type { AnalysisResult } from '../../study/results.ts';
import type { Claim } from '../../study/run-study.ts';

/** What a thread is given: the material, read and laid out, and the count that all threads of a run share. */
export interface Errand {
  readonly prepared: Prepared;
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

/** The next analysis that nobody has taken; each goes to one thread alone. */
export function countedBy(count: Int32Array, { study }: Prepared): Claim {
  return () => {
    const place = Atomics.add(count, 0, 1);
    return place < study.analyses.length ? place : null;
  };
}
