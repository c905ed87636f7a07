import { InputError } from '../errors.ts';

/**
 * The part of danfojs-node that Thrum's notebooks and spreadsheets lean on, typed narrowly. The library
 * weighs 300 MB and takes a second to load: it is imported here, on first use, and nowhere else.
 *
 * A frame is for looking, joining and plotting. No published statistic is computed through it and no
 * CSV is parsed by it: its grouped counts, grouped means and its CSV forms are wrong in silence where
 * there are gaps, commas or leading zeros. tests/frames/danfo.test.ts pins each of these.
 */

export type FrameValue = string | number | null;

/** One column. These statistics pass over gaps, as tests/frames/danfo.test.ts shows. */
export interface Series {
  readonly dtype: string;
  readonly values: readonly FrameValue[];
  mean(): number;
  median(): number;
  std(): number;
  min(): number;
  max(): number;
  /** Values that are there. */
  count(): number;
  /** One boolean a row, for `query`. */
  eq(value: FrameValue): Series;
  ge(value: number): Series;
  le(value: number): Series;
}

export interface DataFrame {
  readonly shape: readonly [rows: number, columns: number];
  readonly columns: readonly string[];
  readonly values: readonly (readonly FrameValue[])[];
  readonly ctypes: { readonly values: readonly string[] };
  column(name: string): Series;
  head(rows?: number): DataFrame;
  tail(rows?: number): DataFrame;
  loc(at: { rows?: readonly (string | number)[]; columns?: readonly string[] }): DataFrame;
  /** The rows for which the condition holds. */
  query(condition: Series): DataFrame;
  print(): void;
  /** Drawn as a table. */
  toString(): string;
}

export interface Danfo {
  readonly DataFrame: new (
    rows: readonly (readonly FrameValue[])[],
    options: { columns: readonly string[]; dtypes?: readonly string[] },
  ) => DataFrame;
  merge(how: {
    left: DataFrame;
    right: DataFrame;
    on: readonly string[];
    how: 'left' | 'right' | 'inner' | 'outer';
  }): DataFrame;
  toExcel(frame: DataFrame, options: { filePath: string; sheetName: string }): void;
}

/** Loads danfojs-node once; later calls get the same module. */
export async function loadDanfo(): Promise<Danfo> {
  try {
    return (await import('danfojs-node')) as unknown as Danfo;
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code !== 'ERR_MODULE_NOT_FOUND') throw fault;
    throw new InputError(
      'data frames need the package danfojs-node, which is not installed',
      {},
      'install it beside Thrum, with the overrides that docs/dependencies.md gives',
    );
  }
}
