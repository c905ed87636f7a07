import { quantileSorted } from './quantile.ts';

/**
 * A sample whose readings come in blocks: fragments of one item, which resemble each other because
 * they were one thing. Whatever is drawn or dealt again is a block, never a single reading.
 */
export interface BlockedSample {
  readonly values: Float64Array;
  /** Block 0 … count - 1 of each value. */
  readonly blocks: Int32Array;
  readonly count: number;
}

/** A sample from its values and the name of the block that each came from; blocks in order of appearance. */
export function blockedSample(values: ArrayLike<number>, names: readonly string[]): BlockedSample {
  const numbers = new Map<string, number>();
  const blocks = Int32Array.from(names, (name) => {
    const known = numbers.get(name);
    if (known !== undefined) return known;
    numbers.set(name, numbers.size);
    return numbers.size - 1;
  });
  return { values: Float64Array.from(values), blocks, count: numbers.size };
}

/** True when some block holds more than one value, so that values are not independent. */
export function sharesBlocks(sample: BlockedSample): boolean {
  return sample.count < sample.values.length;
}

/** The values of each block. */
export function blockMembers(sample: BlockedSample): readonly Float64Array[] {
  const members = Array.from({ length: sample.count }, (): number[] => []);
  sample.values.forEach((value, i) => {
    members[sample.blocks[i]].push(value);
  });
  return members.map((values) => Float64Array.from(values));
}

/** All values of the blocks chosen, one after the other; a block chosen twice gives its values twice. */
export function gatherBlocks(members: readonly Float64Array[], choice: ArrayLike<number>): Float64Array {
  let length = 0;
  for (let i = 0; i < choice.length; i++) length += members[choice[i]].length;
  const gathered = new Float64Array(length);
  let at = 0;
  for (let i = 0; i < choice.length; i++) {
    gathered.set(members[choice[i]], at);
    at += members[choice[i]].length;
  }
  return gathered;
}

/** One value a block, the median of its values: a sample of independent things. */
export function blockMedians(sample: BlockedSample): Float64Array {
  return Float64Array.from(blockMembers(sample), (values) => quantileSorted(values.slice().sort(), 0.5));
}
