import type { TabledTest } from '../../../src/numerics/printed/test-p.ts';
import { reference } from '../../references/reference.ts';

/** R 4.2.2 (pt, pf, pchisq, pnorm, pwilcox, fisher.test), by tests/references/scripts/printed-tests.R. */
interface Reference {
  readonly tests: readonly {
    readonly test: TabledTest;
    readonly statistic: readonly [number];
    readonly df: readonly number[];
    readonly p: readonly [number];
    /** p at the ends of what prints as this statistic to two decimals. */
    readonly ends: readonly [number, number];
  }[];
  readonly u: readonly {
    readonly u: number;
    readonly n: readonly [number, number];
    readonly exact: readonly [number];
    readonly corrected: readonly [number];
    readonly plain: readonly [number];
  }[];
  readonly tables: readonly {
    readonly cells: readonly [number, number, number, number];
    readonly two: readonly [number];
    readonly less: readonly [number];
    readonly more: readonly [number];
  }[];
}
export const { tests, u, tables } = reference<Reference>('printed-tests');
