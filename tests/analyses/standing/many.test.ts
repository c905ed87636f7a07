import { expect, it } from 'vitest';
import { comparisonSettings } from '../../../src/analyses/shared/options/comparison.ts';
import { standingOptions } from '../../../src/analyses/standing/options.ts';
import {
  atHomeElsewhere,
  ownItems,
  siteDistances,
  unlikeOthers,
} from '../../../src/analyses/standing/unlike.ts';
import { compareRecords } from '../../../src/fragments/comparison/comparison.ts';
import { groupRows } from '../../../src/fragments/groups.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { standardNormal } from '../../../src/numerics/modes/mixture-parts.ts';
import { available } from '../../numerics/close.ts';
import { attribute, madeInput } from '../grouping/made-table.ts';

/** Three sites of two measurements and a kind: Ness, of 1200 items, lies between Holm and Skerry, nearer to Holm. */
function made() {
  const random = createRandom(31);
  const names = Array.from({ length: 2400 }, (_, at) => ['Ness', 'Ness', 'Holm', 'Skerry'][at % 4]!);
  const middle = { Ness: 0, Holm: 0.8, Skerry: -2 } as Readonly<Record<string, number>>;
  const around = (name: string) => middle[name]! + standardNormal(random);
  return madeInput([
    { attribute: attribute('site', 'context', 'nominal'), values: names },
    { attribute: attribute('a', 'spacing', 'interval'), values: names.map(around) },
    { attribute: attribute('b', 'spacing', 'interval'), values: names.map(around) },
    {
      attribute: attribute('fibre', 'fibre', 'nominal'),
      values: names.map((name) => (random.next() < 0.5 + middle[name]! / 6 ? 'flax' : 'bast')),
    },
  ]);
}

it('of a very large site some items stand for all: the same order of the others, and about the same numbers', () => {
  const { records, register } = made();
  const { groups } = groupRows(records, ['site'], register);
  const site = groups.findIndex(({ labels }) => labels[0] === 'Ness');
  const options = standingOptions.parse({ site: 'Ness', among: 'site', of: 'fibre', resamples: 199 });
  const { spec } = compareRecords(
    records,
    register,
    comparisonSettings({ ...options, of: ['a', 'b', 'fibre'] }),
  );
  const found = (own: readonly number[]) => {
    const compared = { own, distances: siteDistances(spec, own) };
    return {
      unlike: unlikeOthers(spec, compared, groups, site, options, createRandom(2)),
      home: available(atHomeElsewhere(records, compared, groups, site, options.nearest)),
    };
  };
  const all = groups[site]!.rows;
  const some = ownItems(all, createRandom(1));
  expect([all.length, some.length]).toEqual([1200, 300]);
  const [whole, drawn] = [found(all), found(some)];
  expect([whole.home.judged, drawn.home.judged]).toEqual([1200, 300]);
  expect(drawn.unlike.unlike.map(({ label }) => label)).toEqual(['Holm', 'Skerry']);
  expect(whole.unlike.unlike.map(({ label }) => label)).toEqual(['Holm', 'Skerry']);
  expect(Math.abs(available(drawn.unlike.within) - available(whole.unlike.within))).toBeLessThan(0.01);
  whole.unlike.unlike.forEach((one, place) => {
    const other = drawn.unlike.unlike[place]!;
    expect(other.items).toBe(one.items);
    expect(Math.abs(available(other.between) - available(one.between))).toBeLessThan(0.01);
    expect(Math.abs(available(other.excess) - available(one.excess))).toBeLessThan(0.01);
    const [few, many] = [available(other.interval), available(one.interval)];
    expect(Math.abs(few.low - many.low)).toBeLessThan(0.02);
    expect(Math.abs(few.high - many.high)).toBeLessThan(0.02);
  });
  expect(drawn.home.expected).toBe(whole.home.expected);
  // A share of 300 has a standard error of about 0.02.
  expect(Math.abs(drawn.home.share - whole.home.share)).toBeLessThan(0.06);
});
