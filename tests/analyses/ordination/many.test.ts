import { expect, it } from 'vitest';
import { computeOrdination } from '../../../src/analyses/ordination/compute.ts';
import { ordinationOptions } from '../../../src/analyses/ordination/options.ts';
import { axisName } from '../../../src/analyses/ordination/tables.ts';
import { ordinationWords } from '../../../src/analyses/ordination/words.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { standardNormal } from '../../../src/numerics/modes/mixture-parts.ts';
import { attribute, madeInput } from '../grouping/made-table.ts';

/** Three measurements, of which two rise together. */
function axesOf(n: number, alone = false) {
  const random = createRandom(9);
  const draws = Array.from({ length: n }, () => [0, 1, 2].map(() => standardNormal(random)));
  const input = madeInput([
    { attribute: attribute('a', 'spacing', 'interval'), values: draws.map(([x]) => x!) },
    { attribute: attribute('b', 'spacing', 'interval'), values: draws.map(([x, y]) => x! + 0.3 * y!) },
    { attribute: attribute('c', 'spacing', 'interval'), values: draws.map(([, , z]) => z!) },
  ]);
  const found = computeOrdination(
    { ...input, alone },
    ordinationOptions.parse({ method: 'pcoa', of: ['a', 'b', 'c'], resamples: 0 }),
  );
  if ('why' in found.axes) throw new Error(found.axes.why);
  return { found, axes: found.axes };
}

it('of very many records every pair of which is compared, some are drawn to make the axes and the others placed', () => {
  const drawn = axesOf(2600);
  expect(drawn.axes.records.length).toBe(2000);
  expect(drawn.axes.passive.length).toBe(600);
  expect(new Set([...drawn.axes.rows, ...drawn.axes.passiveRows]).size).toBe(2600);
  expect(drawn.axes.notes[0]).toBe(
    'Every pair is compared, so that 2000 of 2600 records, drawn by chance, make the axes and the others are placed on them.',
  );
  const all = axesOf(1000);
  expect(all.found.n.setAside).toEqual([]);
  expect(all.axes.records.length).toBe(1000);
  // The axes are those of the same cloud.
  expect(Math.abs(Number(drawn.axes.shares[0]) - Number(all.axes.shares[0]))).toBeLessThan(0.04);
});

it('of more than can be told apart on a map, some are drawn to be placed, and the others are counted', () => {
  const { found, axes } = axesOf(12_500);
  expect([axes.records.length, axes.passive.length]).toEqual([2000, 10_000]);
  expect(new Set([...axes.rows, ...axes.passiveRows]).size).toBe(12_000);
  expect(axes.notes[0]).toContain(
    '2000 of 12500 records, drawn by chance, make the axes and 10000 others are placed on them',
  );
  expect(found.n.setAside).toContainEqual({
    reason: 'neither drawn to make the axes nor to be placed on them',
    fragments: 500,
  });
  // Nothing of it is missing in the sources.
  expect(found.lost).toEqual([]);
});

it('asked for the answer alone, places none, and answers the same', () => {
  const whole = axesOf(2600);
  const alone = axesOf(2600, true);
  expect(alone.axes.passive).toEqual([]);
  expect(ordinationWords(alone.found).answer).toBe(ordinationWords(whole.found).answer);
  expect(ordinationWords(alone.found).because[0]).toBe(ordinationWords(whole.found).because[0]);
  expect(alone.found.n.fragments).toBe(whole.found.n.fragments);
});

it('says what the axes carry of what any axes could show, and of very many records that they carry it at most', () => {
  const few = axesOf(300);
  expect(few.axes.sharesAtMost).toBe(false);
  // Differences added up are not Euclidean: two axes would carry more of the trace.
  expect(few.axes.notes.join()).toContain('not Euclidean');
  const [one, two] = few.axes.shares.map(Number);
  const said = /carry (?<share>[\d.]+) % of/.exec(ordinationWords(few.found).answer)?.groups?.share;
  expect(Number(said)).toBeCloseTo(100 * (one! + two!), 0);
  const many = axesOf(1000);
  expect(many.axes.sharesAtMost).toBe(true);
  expect(ordinationWords(many.found).answer).toMatch(/^The first two axes carry at most \d/);
  expect(axisName(many.axes, 0)).toMatch(/^axis 1 \(at most \d/);
});
