import type { PrintedFigure } from '../../reading/claim.ts';
import type { Quantity, TestMethod } from '../../reading/terms.ts';
import { finest } from '../evidence.ts';

/** What a set says of one test. */
export interface PrintedTest {
  readonly method: TestMethod;
  readonly statistic: PrintedFigure;
  readonly df: PrintedFigure | undefined;
  readonly p: readonly PrintedFigure[];
  readonly sizes: readonly PrintedFigure[];
  /** The p values that are printed beside tests of the same kind, this one's among them. */
  readonly family: number;
}

/**
 * The tests of a set: each statistic with the degrees of freedom, p and numbers of records that are printed in
 * the same text or row; what stands in rows of its own goes to the statistic of the same groups.
 */
export function testsOf(set: readonly PrintedFigure[]): PrintedTest[] {
  const statistics = set.filter(({ quantity }) => quantity === 'statistic' || quantity === 'correlation');
  const taken = new Set(statistics.map(({ line }) => line));
  return statistics.flatMap((statistic) => {
    const own = set.filter(({ line, id }) => line === statistic.line && id !== statistic.id);
    const loose = set.filter(({ line }) => line !== statistic.line && !taken.has(line));
    const of = (quantity: Quantity): readonly PrintedFigure[] => {
      const here = own.filter((figure) => figure.quantity === quantity);
      if (here.length > 0) return here;
      const elsewhere = loose.filter(
        (figure) =>
          figure.quantity === quantity &&
          (figure.method === null || statistic.method === null || figure.method === statistic.method),
      );
      const alike = elsewhere.filter((figure) => groupsOf(figure) === groupsOf(statistic));
      if (alike.length > 0) return alike;
      return statistics.length === 1 ? elsewhere : [];
    };
    const p = of('p');
    const df = finest(of('df'));
    const method =
      statistic.method ?? p[0]?.method ?? df?.method ?? (statistic.quantity === 'correlation' ? 'r' : null);
    if (method === null) return [];
    const sizes = own.filter(({ quantity }) => quantity === 'n');
    return [
      {
        method,
        statistic,
        df,
        p,
        sizes:
          sizes.length > 0
            ? sizes
            : set.filter(
                ({ quantity, counted, line }) =>
                  quantity === 'n' && counted.length === 0 && !(taken.has(line) && line !== statistic.line),
              ),
        family: set.filter((figure) => figure.quantity === 'p').length,
      },
    ];
  });
}

function groupsOf({ attributes, selectText, versusText }: PrintedFigure): string {
  return JSON.stringify([attributes, selectText, versusText]);
}
