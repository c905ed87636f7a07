import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { gaussianMixture } from '../../../src/numerics/modes/gaussian-mixture.ts';
import { intervalMixture } from '../../../src/numerics/modes/interval-mixture.ts';
import { sampleMixture } from '../../../src/numerics/modes/mixture-parts.ts';
import { reference } from '../../references/reference.ts';

interface Fit {
  readonly share: number | readonly number[];
  readonly mean: number | readonly number[];
  readonly sd: number | readonly number[];
  readonly logLikelihood: number;
}
/** Maxima of the same likelihood found by R's `optim`: tests/references/scripts/interval-mixture.R. */
const { cases } = reference<{
  readonly cases: readonly {
    readonly step: number;
    readonly values: readonly number[];
    readonly one: Fit;
    readonly equal: Fit;
    readonly own: Fit;
  }[];
}>('interval-mixture');
const listOf = (value: number | readonly number[]) => (typeof value === 'number' ? [value] : value);

describe('a mixture fitted to rounded readings', () => {
  it.each(cases)(
    'in steps of $step reaches the maximum that R finds',
    ({ step, values, one, equal, own }) => {
      const readings = {
        low: Float64Array.from(values, (value) => value - step / 2),
        high: Float64Array.from(values, (value) => value + step / 2),
      };
      for (const [wanted, k, spread] of [
        [one, 1, 'equal'],
        [equal, 2, 'equal'],
        [own, 2, 'own'],
      ] as const) {
        const fit = intervalMixture(readings, k, { spread, tolerance: 1e-13 });
        if ('why' in fit) throw new Error(fit.why);
        expect(Math.abs(fit.logLikelihood - wanted.logLikelihood)).toBeLessThan(1e-5);
        fit.parts.forEach((part, j) => {
          expect(Math.abs(part.mean - listOf(wanted.mean)[j])).toBeLessThan(2e-3);
          expect(Math.abs(part.sd - listOf(wanted.sd)[j])).toBeLessThan(2e-3);
          expect(Math.abs(part.share - listOf(wanted.share)[j])).toBeLessThan(2e-3);
        });
      }
    },
  );

  it('is the plain fit where readings are exact', () => {
    const values = sampleMixture(
      [
        { share: 0.5, mean: 0, sd: 1 },
        { share: 0.5, mean: 5, sd: 1 },
      ],
      60,
      createRandom(3),
    );
    const exact = { low: values, high: values.slice() };
    expect(intervalMixture(exact, 2, { spread: 'own', tolerance: 1e-10 })).toEqual(
      gaussianMixture(values, 2, { spread: 'own', tolerance: 1e-10 }),
    );
  });
});
