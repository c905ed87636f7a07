import { reference } from '../../../references/reference.ts';

/** Values that R computed of further open data sets: tests/references/scripts/printed-more.R. */
export interface SampleSet {
  readonly data: string;
  readonly of: string;
  readonly step: number;
  readonly groups: readonly string[];
  readonly readings: readonly (readonly number[])[];
  /** In the order of `STATISTICS`, of each group. */
  readonly values: readonly (readonly number[])[];
  readonly all: readonly number[];
}

const STATISTICS = [
  'n',
  'mean',
  'sd',
  'se',
  'cv',
  'median',
  'q1',
  'q3',
  'min',
  'max',
  'low',
  'high',
  'range',
  'iqr',
  'total',
] as const;
export type Statistic = (typeof STATISTICS)[number];
export type Described = Readonly<Record<Statistic, number>>;

export function described(values: readonly number[]): Described {
  return Object.fromEntries(STATISTICS.map((name, i) => [name, values[i]])) as Record<Statistic, number>;
}

/** Groups of which a statistic was tested. */
export interface Groups {
  readonly data: string;
  readonly of: string;
  readonly a: string;
  readonly b: string;
}

export interface TestValues {
  readonly kind: string;
  readonly statistic: readonly number[];
  readonly df: readonly number[];
  readonly p: readonly number[];
  readonly n: readonly number[];
  readonly at?: Groups;
  readonly ci?: readonly number[];
  readonly cohen?: readonly number[];
  readonly hedges?: readonly number[];
  readonly eta?: readonly number[];
  readonly omega?: readonly number[];
  readonly epsilon?: readonly number[];
  readonly r2?: readonly number[];
  readonly z?: readonly (number | null)[];
  readonly r?: readonly number[];
  readonly two?: readonly number[];
  readonly ss?: readonly number[];
  readonly ms?: readonly number[];
  readonly holm?: readonly number[];
  readonly bonferroni?: readonly number[];
  readonly bh?: readonly number[];
}

export interface CountTable {
  readonly data: string;
  readonly rows: readonly string[];
  readonly columns: readonly string[];
  readonly cells: readonly (readonly number[])[];
  readonly chi: readonly number[];
  readonly df: readonly number[];
  readonly p: readonly number[];
  readonly v: readonly number[];
  readonly g: readonly number[];
  readonly yates?: readonly number[];
  readonly fisher?: readonly number[];
  readonly or?: readonly number[];
}

export interface AnovaTable {
  readonly data: string;
  readonly rows: readonly string[];
  readonly df: readonly number[];
  readonly ss: readonly number[];
  readonly ms: readonly number[];
  readonly f: readonly (number | null)[];
  readonly p: readonly (number | null)[];
}

export const more = reference<{
  readonly samples: readonly SampleSet[];
  readonly tests: readonly TestValues[];
  readonly counts: readonly CountTable[];
  readonly goodness: readonly {
    readonly counts: readonly number[];
    readonly statistic: readonly number[];
    readonly df: readonly number[];
    readonly p: readonly number[];
  }[];
  readonly anova: readonly AnovaTable[];
}>('printed-more');
