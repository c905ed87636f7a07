import { describe, expect, it } from 'vitest';
import { type MixedModel, mixedModel } from '../../../src/numerics/models/mixed-model.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

interface Fit {
  readonly fixed: readonly number[] | number;
  readonly se: readonly number[] | number;
  readonly covariance: readonly (readonly number[])[];
  readonly variances: readonly number[] | number;
  readonly residual: number;
  readonly logLikelihood: number;
  readonly intercepts: readonly (readonly number[])[];
  readonly predicted: readonly { x: readonly number[] | number; estimate: number; se: number }[];
}

interface Case {
  readonly y: readonly number[];
  readonly fixed: readonly (readonly number[])[];
  readonly groups: readonly (readonly number[])[];
  readonly REML: Fit;
  readonly ML: Fit;
  readonly nlme: Omit<Fit, 'covariance' | 'intercepts' | 'predicted'> | null;
}

const r = reference<{
  readonly cases: Record<string, Case>;
  readonly leastSquares: { fixed: number[]; se: number[]; residual: number; logLikelihood: number };
}>('mixed-models');
const list = <T>(value: readonly T[] | T): readonly T[] => (Array.isArray(value) ? value : [value as T]);

function fit({ y, fixed, groups }: Case, method: 'REML' | 'ML'): MixedModel {
  const factors = groups.map((codes) => ({ codes, count: Math.max(...codes) + 1 }));
  return available(mixedModel({ y, fixed, groups: factors }, method));
}

describe(`linear mixed models, as ${r.tool} (${r.version})`, () => {
  for (const [name, one] of Object.entries(r.cases))
    for (const method of ['REML', 'ML'] as const)
      it(`${name} by ${method}: estimates, errors, variances and intercepts within 1e-6`, () => {
        const found = fit(one, method);
        const expected = one[method];
        list(expected.fixed).forEach((value, j) => {
          expectClose(found.fixed[j].estimate, value, 1e-6);
          expectClose(found.fixed[j].se, list(expected.se)[j], 1e-6);
        });
        const errors = list(expected.se);
        expected.covariance.flat().forEach((value, at) => {
          const size = errors[Math.floor(at / errors.length)] * errors[at % errors.length];
          expect(Math.abs(found.covariance[at] - value) / size).toBeLessThan(1e-6);
        });
        list(expected.variances).forEach((value, k) => {
          expectClose(found.variances[k], value, 1e-6);
        });
        expectClose(found.residual, expected.residual, 1e-6);
        expectClose(found.logLikelihood, expected.logLikelihood, 1e-9);
        expected.intercepts.forEach((values, k) => {
          const size = Math.max(...values.map(Math.abs), 1e-9);
          values.forEach((value, level) => {
            expect(Math.abs(found.intercepts[k][level] - value) / size).toBeLessThan(1e-6);
          });
        });
        expected.predicted.forEach(({ x, estimate, se }, k) => {
          const told = found.predict(k, 0, list(x));
          expectClose(told.estimate, estimate, 1e-6);
          expectClose(told.se, se, 1e-6);
        });
      });

  it('a second opinion: nlme, whose own stopping rule is coarser', () => {
    const seconded = Object.values(r.cases).filter(({ nlme }) => nlme !== null);
    expect(seconded.length).toBeGreaterThanOrEqual(2);
    for (const one of seconded) {
      const found = fit(one, 'REML');
      list(one.nlme?.fixed ?? []).forEach((value, j) => {
        expectClose(found.fixed[j].estimate, value, 1e-6);
        expectClose(found.fixed[j].se, list(one.nlme?.se ?? [])[j], 1e-6);
      });
      expectClose(found.variances[0], list(one.nlme?.variances ?? [])[0], 1e-5);
      expectClose(found.residual, one.nlme?.residual ?? 0, 1e-6);
    }
  });

  it('without grouping it is least squares', () => {
    const { y, fixed } = r.cases.orthodont;
    const found = available(mixedModel({ y, fixed, groups: [] }));
    r.leastSquares.fixed.forEach((value, j) => {
      expectClose(found.fixed[j].estimate, value, 1e-9);
      expectClose(found.fixed[j].se, r.leastSquares.se[j], 1e-9);
    });
    expectClose(found.residual, r.leastSquares.residual, 1e-9);
    expectClose(found.logLikelihood, r.leastSquares.logLikelihood, 1e-9);
  });

  it('a part that is nothing is nothing, not a small number', () => {
    expect(fit(r.cases.dyestuffNothing, 'REML').variances).toEqual([0]);
  });

  it('says why where nothing can be fitted', () => {
    const y = [1, 2, 3, 4];
    const one = [1, 1, 1, 1];
    const codes = [0, 0, 1, 1];
    const groups = [{ codes, count: 2 }];
    expect(mixedModel({ y, fixed: [one], groups: [{ codes: [0, 1, 2, 3], count: 4 }] })).toHaveProperty(
      'why',
    );
    expect(mixedModel({ y, fixed: [one, one], groups })).toHaveProperty('why');
    expect(mixedModel({ y: [2, 2, 2, 2], fixed: [one], groups })).toHaveProperty('why');
  });
});
