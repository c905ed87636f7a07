import { exactly, type Range } from '../../../../numerics/printed/range.ts';
import type { TabledTest } from '../../../../numerics/printed/test-p.ts';
import { CONVENTIONS } from '../../conventions/register.ts';
import { numberPrinted, rangeOf, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';

/** One reading of the degrees of freedom: as printed, or as what they may have been before rounding. */
export interface Degrees {
  readonly said: string;
  readonly ranges: readonly { readonly rounded: Range; readonly any: Range }[];
}

/** Fewer degrees of freedom are those of one sample or of pairs, and whole. */
const FEWEST_WELCH = 4;

/** The degrees of freedom as printed, and as what they may stand for. */
export function degreesOf(
  test: TabledTest,
  df: PrintedFigure | undefined,
  sizes: readonly PrintedFigure[],
): readonly Degrees[] {
  if (test === 'z') return [{ said: '', ranges: [] }];
  const whole = test === 'F' ? 2 : 1;
  if (df !== undefined && df.values.length === whole) {
    const at = (value: (typeof df.values)[number]) => numberPrinted({ ...df, values: [value] });
    const asPrinted = df.values.map((value) =>
      // Whole degrees of freedom are counts first.
      value.number.decimals === 0
        ? { rounded: exactly(at(value)), any: exactly(at(value)) }
        : { rounded: rangeOf(value, 'rounded'), any: rangeOf(value, 'any') },
    );
    const readings: Degrees[] = [{ said: '', ranges: asPrinted }];
    const last = df.values[df.values.length - 1];
    const n = sizes
      .map(wholeOf)
      .reduce<number | null>((sum, one) => (sum === null || one === null ? null : sum + one), 0);
    const pooled = sizes.length === 2 && n !== null && n - 2 === at(last);
    if ((test === 't' || test === 'F') && last.number.decimals === 0 && at(last) >= FEWEST_WELCH && !pooled) {
      const cut = { low: Math.max(1, at(last) - 0.5), high: at(last) + 1 };
      readings.push({
        said: CONVENTIONS.welch.under,
        ranges: [...asPrinted.slice(0, -1), { rounded: cut, any: cut }],
      });
    }
    if (test === 'r' && at(last) > 2)
      readings.push({
        said: CONVENTIONS.pairs.under,
        ranges: [{ rounded: exactly(at(last) - 2), any: exactly(at(last) - 2) }],
      });
    return readings;
  }
  const [n] = sizes.length === 1 ? sizes.map(wholeOf) : [null];
  return test === 'r' && n !== null && n > 2
    ? [{ said: '', ranges: [{ rounded: exactly(n - 2), any: exactly(n - 2) }] }]
    : [];
}
