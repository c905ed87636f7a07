import { quantileSorted } from '../describing/quantile.ts';

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

/**
 * A sample from its values and the name of the block that each came from. Blocks are numbered by what they
 * hold, smallest first, so that what is drawn depends neither on the order of the rows nor on their names.
 */
export function blockedSample(values: ArrayLike<number>, names: readonly string[]): BlockedSample {
  const held = new Map<string, number[]>();
  names.forEach((name, i) => {
    const block = held.get(name);
    if (block === undefined) held.set(name, [values[i]]);
    else block.push(values[i]);
  });
  const ordered = [...held]
    .map(([name, block]) => ({ name, block: block.sort(ascending) }))
    .sort((a, b) => byContent(a.block, b.block));
  const numbers = new Map(ordered.map(({ name }, place) => [name, place]));
  return {
    values: Float64Array.from(values),
    blocks: Int32Array.from(names, (name) => numbers.get(name) ?? 0),
    count: numbers.size,
  };
}

/** Order that holds for infinite ends too, whose difference would be no number. */
function ascending(a: number, b: number): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function byContent(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < Math.min(a.length, b.length); i++) {
    const order = ascending(a[i], b[i]);
    if (order !== 0) return order;
  }
  return a.length - b.length;
}

/** True when some block holds more than one value, so that values are not independent. */
export function sharesBlocks(sample: BlockedSample): boolean {
  return sample.count < sample.values.length;
}

/** The values of each block, ascending. */
export function blockMembers(sample: BlockedSample): readonly Float64Array[] {
  const members = Array.from({ length: sample.count }, (): number[] => []);
  sample.values.forEach((value, i) => {
    members[sample.blocks[i]].push(value);
  });
  return members.map((values) => Float64Array.from(values).sort());
}

/** All values of the blocks chosen, one after the other; a block chosen twice gives its values twice. */
export function gatherBlocks(members: readonly Float64Array[], choice: ArrayLike<number>): Float64Array {
  let length = 0;
  for (let i = 0; i < choice.length; i++) length += members[choice[i]].length;
  const gathered = new Float64Array(length);
  let at = 0;
  for (let i = 0; i < choice.length; i++) {
    const values = members[choice[i]];
    // Most blocks hold a value or two, for which setting them one by one is far quicker.
    for (let j = 0; j < values.length; j++) gathered[at++] = values[j];
  }
  return gathered;
}

/** One value a block, the median of its values: a sample of independent things. */
export function blockMedians(sample: BlockedSample): Float64Array {
  return Float64Array.from(blockMembers(sample), (values) => quantileSorted(values, 0.5));
}
