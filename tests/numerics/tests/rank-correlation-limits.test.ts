import { describe, expect, it } from 'vitest';
import { correlationLimits, pooledCorrelation } from '../../../src/numerics/tests/rank-correlation-limits.ts';
import { expectClose } from '../close.ts';

const R_POOLED = [0.2269664560231, -0.04097721116, 0.4644558425669, 0.0960095424741] as const;

// R 4.2.2: r <- 0.5; n <- 20; tanh(atanh(r) + c(-1, 1) * qnorm(.975) * sqrt((1 + r^2/2) / (n - 3)))
describe('limits of a rank correlation (Bonett & Wright 2000)', () => {
  it('are those of the formula in R', () => {
    const limits = correlationLimits(0.5, 20, 0.95) as { low: number; high: number };
    expectClose(limits.low, 0.0450789963822, 1e-10);
    expectClose(limits.high, 0.7831644163301, 1e-10);
  });

  it('turn over with the sign, and are wider at a higher confidence', () => {
    const up = correlationLimits(0.5, 20, 0.95) as { low: number; high: number };
    const down = correlationLimits(-0.5, 20, 0.95) as { low: number; high: number };
    expectClose(down.low, -up.high, 1e-12);
    expectClose(down.high, -up.low, 1e-12);
    const wide = correlationLimits(0.5, 20, 0.99) as { low: number; high: number };
    expect(wide.low).toBeLessThan(up.low);
    expect(wide.high).toBeGreaterThan(up.high);
  });

  it('are refused in words for few pairs and for ranks that agree wholly', () => {
    expect(correlationLimits(0.5, 4, 0.95)).toEqual({ why: 'limits of a correlation need 5 pairs, not 4' });
    expect(correlationLimits(1, 30, 0.95)).toHaveProperty('why');
    expect(correlationLimits(-1, 30, 0.95)).toHaveProperty('why');
  });
});

describe('one correlation of several groups', () => {
  // R 4.2.2: r <- c(.5, .1); n <- c(20, 40); v <- (1 + r^2/2)/(n - 3); w <- 1/v; m <- sum(w*atanh(r))/sum(w); s <- sqrt(1/sum(w));
  // print(c(tanh(m), tanh(m - qnorm(.975)*s), tanh(m + qnorm(.975)*s), 2*pnorm(-abs(m/s))), digits = 12)
  it('is the weighted mean of their z values, as in R', () => {
    const pooled = pooledCorrelation(
      [
        { rho: 0.5, n: 20 },
        { rho: 0.1, n: 40 },
        { rho: 0.9, n: 4 },
      ],
      0.95,
    );
    if ('why' in pooled) throw new Error(pooled.why);
    const [rho, low, high, p] = R_POOLED;
    expectClose(pooled.rho, rho, 1e-9);
    expectClose(pooled.low, low, 1e-9);
    expectClose(pooled.high, high, 1e-9);
    expectClose(pooled.p, p, 1e-9);
    expect(pooled).toMatchObject({ groups: 2, n: 60 });
  });

  it('needs one group of five', () => {
    expect(pooledCorrelation([{ rho: 0.9, n: 4 }], 0.95)).toHaveProperty('why');
  });
});
