import { describe, expect, it } from 'vitest';
import { ordination } from '../../../src/analyses/ordination/index.ts';
import { type OrdinationMethod, ordinationOptions } from '../../../src/analyses/ordination/options.ts';
import { exp } from '../../../src/numerics/foundation/elementary.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { attribute, madeInput } from '../grouping/made-table.ts';

/** Two numbers whose logarithms are even and go together; neither definition names a scale. */
function skewedTable() {
  const random = createRandom(5);
  const along = Array.from({ length: 40 }, () => 4 * random.next());
  return madeInput(
    ['mass', 'length'].map((id) => ({
      attribute: attribute(id, 'spacing', 'ratio'),
      values: along.map((at) => exp(at + 0.1 * random.next())),
    })),
  );
}

/** How uneven the records lie on the first axis: third moment over the cube of the spread; 0 where even. */
function unevenness(method: OrdinationMethod, skewed: 'log' | 'plain') {
  const found = ordination.compute(
    skewedTable(),
    ordinationOptions.parse({ method, of: ['mass', 'length'], skewed, resamples: 0 }),
  );
  if ('why' in found.axes) throw new Error(found.axes.why);
  const first = found.axes.records.map(({ at }) => at[0]);
  const mean = first.reduce((sum, value) => sum + value, 0) / first.length;
  const moment = (power: number) =>
    first.reduce((sum, value) => sum + (value - mean) ** power, 0) / first.length;
  return { skew: Math.abs(moment(3) / moment(2) ** 1.5), notes: found.axes.notes };
}

describe.each(['pcoa', 'pca'] as const)('%s of numbers spread like a lognormal', (method) => {
  it('goes by logarithms unless asked otherwise, and says so', () => {
    const { skew, notes } = unevenness(method, 'log');
    expect(skew).toBeLessThan(0.5);
    expect(notes.join(' ')).toContain('mass: compared by its logarithm, which its readings fit better');
    expect(ordinationOptions.parse({}).skewed).toBe('log');
  });

  it('and as measured where that is asked', () => {
    const { skew, notes } = unevenness(method, 'plain');
    expect(skew).toBeGreaterThan(0.8);
    expect(notes.join(' ')).not.toContain('logarithm');
  });
});
