import type { Random } from '../foundation/random.ts';

/**
 * Of more blocks than these not each is left out by itself but one of as many groups, dealt by chance: the skewness
 * of sums of g falls by the root of g and their number by g, so that the acceleration is the same (the grouped
 * jackknife: Shao & Tu 1995, section 2.3, from memory), and the time does not grow with the square of the blocks.
 */
const MOST_LEFT_OUT = 1000;

/**
 * Sixth of the skewness of the values with one block left out (Efron & Tibshirani 1993, equation 14.15); undefined
 * when they are all equal.
 *
 * @param everything the blocks of each stratum, 0 and up.
 */
export function jackknifeAcceleration(
  everything: readonly Int32Array[],
  statistic: (choice: readonly Int32Array[]) => number,
  random: Random,
): number | undefined {
  let squares = 0;
  let cubes = 0;
  everything.forEach((stratum, which) => {
    if (stratum.length < 2) return;
    const groups = dealtGroups(stratum.length, random);
    const count = Math.min(stratum.length, MOST_LEFT_OUT);
    const values = Array.from({ length: count }, (_, left) =>
      statistic(everything.map((blocks, s) => (s === which ? without(blocks, groups, left) : blocks))),
    ).filter((value) => !Number.isNaN(value));
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    // Strata of different sizes weigh by their own n (Davison & Hinkley 1997, equation 5.22 for several samples).
    for (const value of values) {
      const influence = ((count - 1) * (mean - value)) / count;
      squares += influence * influence;
      cubes += influence * influence * influence;
    }
  });
  return squares > 0 ? cubes / (6 * squares * Math.sqrt(squares)) : undefined;
}

function without(blocks: Int32Array, groups: Int32Array, left: number): Int32Array {
  const others = new Int32Array(blocks.length);
  let count = 0;
  for (let i = 0; i < blocks.length; i++) if (groups[i] !== left) others[count++] = blocks[i];
  return others.subarray(0, count);
}

/** Group of each block: its own, or one of as many as are left out in turn, of equal size but for one. */
function dealtGroups(blocks: number, random: Random): Int32Array {
  const groups = Int32Array.from({ length: blocks }, (_, block) => block % MOST_LEFT_OUT);
  if (blocks <= MOST_LEFT_OUT) return groups;
  for (let i = blocks - 1; i > 0; i--) {
    const j = random.integer(i + 1);
    [groups[i], groups[j]] = [groups[j], groups[i]];
  }
  return groups;
}
