import { reference } from '../references/reference.ts';

/** What R gives for tables of counts, limits of shares, readings that are intervals, trends and likeness of means. */
interface Reference {
  readonly contingency: Record<
    string,
    {
      table: number[][];
      chiSquared: number;
      df: number;
      p: number;
      g: number;
      gP: number;
      cramersV: number;
      fisher: number | null;
      residuals: number[][];
    }
  >;
  readonly limits: { count: number; n: number; exact: number[]; jeffreys: number[] }[];
  readonly turnbull: { low: number[]; high: (string | number)[]; time: number[]; surv: number[] };
  readonly spearman: Record<string, { x: number[]; y: number[]; rho: number; p: number }>;
  readonly equivalence: { first: number[]; second: number[]; margin: number; p: number; interval: number[] };
}

export const r = reference<Reference>('counts-and-trends');
