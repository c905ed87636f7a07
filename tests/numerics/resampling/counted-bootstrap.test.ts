import { describe, expect, it } from 'vitest';
import { mean } from '../../../src/numerics/describing/moments.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { standardNormal } from '../../../src/numerics/modes/mixture-parts.ts';
import { jackknifeAcceleration } from '../../../src/numerics/resampling/acceleration.ts';
import { bootstrapInterval } from '../../../src/numerics/resampling/bootstrap.ts';
import {
  countedAcceleration,
  countedInterval,
  countedMean,
  kindsOfBlocks,
  kindsToCount,
} from '../../../src/numerics/resampling/counted-bootstrap.ts';
import {
  type Blocks,
  type Drawn,
  drawnDelta,
  drawnMedian,
  drawnMedianDifference,
} from '../../../src/numerics/resampling/resampled-ranks.ts';
import { gatherBlocks } from '../../../src/numerics/tests/blocked-sample.ts';
import { available, expectClose } from '../close.ts';

const random = createRandom(12);
/** Rounded readings, skewed; every fifth item has two. */
const sample = (n: number, shift: number): Blocks =>
  Array.from({ length: n }, (_, at) =>
    Float64Array.from(
      { length: at % 5 === 0 ? 2 : 1 },
      () => Math.round(20 * (shift + 8 * standardNormal(random) ** 2)) / 20,
    ).sort(),
  );
const first = sample(700, 12);
const second = sample(500, 10);

const STATISTICS: Readonly<
  Record<string, (pair: readonly Blocks[], how: Drawn) => (draws: readonly ArrayLike<number>[]) => number>
> = {
  'Cliff’s delta': ([a, b], how) => drawnDelta(a!, b!, how),
  'the median difference': ([a, b], how) => drawnMedianDifference(a!, b!, how)!,
  'the mean': ([a], how) => {
    if (how === 'times') {
      const mean = countedMean(a!);
      return ([times]) => mean(times!);
    }
    return ([draw]) => available(mean(gatherBlocks(a!, draw!)));
  },
  'the median': ([a], how) => {
    const median = drawnMedian(a!, how);
    return ([draw]) => median(draw!);
  },
};

describe.each(Object.entries(STATISTICS))(
  '%s of blocks drawn by how many hold the same',
  (name, statistic) => {
    const pair = [first, second];
    const kinds = pair.map(kindsOfBlocks);
    const counted = statistic(
      kinds.map((own) => own.kinds),
      'times',
    );
    const single = statistic(pair, 'blocks');

    it('is that of the blocks themselves, and so is its acceleration', () => {
      const all = pair.map((own) => Int32Array.from(own.keys()));
      // A mean is summed in another order.
      expectClose(counted(kinds.map(({ counts }) => counts)), single(all), name === 'the mean' ? 1e-14 : 0);
      // So few blocks that each is left out by itself.
      const left = jackknifeAcceleration(all, single, createRandom(1));
      const acceleration = countedAcceleration(
        kinds.map(({ counts }) => counts),
        counted,
      );
      if (left === undefined) expect(acceleration).toBeUndefined();
      // Leaving out one of so many pairs seldom moves their median, and by no more than rounding does.
      else expectClose(acceleration ?? Number.NaN, left, name === 'the median difference' ? 0.05 : 1e-9);
    });

    it('has their limits', () => {
      const settings = { resamples: 1999, level: 0.95 };
      const quick = available(
        countedInterval(
          kinds.map(({ counts }) => counts),
          counted,
          { ...settings, random: createRandom(1) },
        ),
      );
      const plain = available(
        bootstrapInterval(
          pair.map(({ length }) => length),
          single,
          { ...settings, random: createRandom(2) },
        ),
      );
      expect([quick.method, quick.resamples]).toEqual([plain.method, plain.resamples]);
      // Limits of a median fall on readings, a twentieth apart.
      const room = Math.max(0.12 * (plain.high - plain.low), 0.05);
      expect(Math.abs(quick.low - plain.low)).toBeLessThanOrEqual(room);
      expect(Math.abs(quick.high - plain.high)).toBeLessThanOrEqual(room);
    });
  },
);

it('blocks are of one kind where they hold the same', () => {
  const blocks = [[1, 2], [1], [1, 2], [2]].map((values) => Float64Array.from(values));
  const { kinds, counts } = kindsOfBlocks(blocks);
  expect(kinds.map((own) => [...own])).toEqual([[1, 2], [1], [2]]);
  expect([...counts]).toEqual([2, 1, 1]);
});

it('blocks are counted where they are very many and of few kinds', () => {
  const blocks = (n: number, kinds: number) =>
    Array.from({ length: n }, (_, at) => Float64Array.of(at % kinds));
  expect(kindsToCount(blocks(5000, 10))).toBeNull();
  expect(kindsToCount(blocks(6000, 6000))).toBeNull();
  expect(kindsToCount(blocks(6000, 751))).toBeNull();
  const found = kindsToCount(blocks(6000, 600));
  expect(found?.kinds).toHaveLength(600);
  expect(found?.counts.every((count) => count === 10)).toBe(true);
});
