import type { Unavailable } from '../contract.ts';
import type { Told } from '../verdicts.ts';

/** One value with the span of years that its record is dated to. */
export interface DatedValue {
  readonly id: string;
  readonly group: number;
  readonly item: string;
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

export interface TrendTest {
  readonly name: string;
  /** At the middles of the spans: rho, or the standardised statistic of the ordered groups. */
  readonly statistic: number;
  readonly p: number;
  readonly method: string;
  readonly told: Told;
  readonly direction: 'rises' | 'falls';
  /** Where the statistic lies when years are drawn within the spans: median and central share. */
  readonly drawn:
    | { readonly median: number; readonly low: number; readonly high: number; readonly draws: number }
    | Unavailable;
}

export interface Trend {
  readonly values: readonly DatedValue[];
  /** Values without a closed span of years. */
  readonly undated: number;
  /** Distinct spans: the dates that there really are. */
  readonly spans: number;
  /** Labels of the groups, earliest first. */
  readonly order: readonly string[];
  readonly tests: readonly (TrendTest | (Unavailable & { readonly name: string }))[];
}
