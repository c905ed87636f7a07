import { createRandom } from '../../../numerics/foundation/random.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import { fisherTails } from '../../../numerics/printed/fisher-tails.ts';
import { association, withoutEmptyLines } from '../../../numerics/tests/contingency.ts';
import { fisherExact } from '../../../numerics/tests/fisher-exact.ts';
import type { Unavailable } from '../../contract.ts';
import { yates } from '../conventions/yates.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { lacking } from './lacking.ts';
import type { Results } from './two-groups.ts';
import { rowsOf, termsOf, type View } from './values.ts';

/** Kinds by kinds, or kinds by the two selections. */
export function ofTable(method: 'chi-squared' | 'G' | 'fisher', figure: PrintedFigure, view: View): Results {
  const counts = crossed(figure, view);
  if ('why' in counts) return counts;
  const { table } = withoutEmptyLines(counts.table);
  if (method === 'fisher') {
    const found = fisherExact(table, createRandom(1));
    if (isUnavailable(found)) return found;
    if (found.method !== 'exact') return { why: 'the table is too large for an exact test' };
    const tails = table.length === 2 && table[0].length === 2 ? fisherTails(table) : [];
    return {
      list: [
        { said: 'exact', statistic: null, df: [], p: found.p },
        ...tails.map(({ said, value }) => ({ said, statistic: null, df: [], p: value })),
      ],
      basis: counts.basis,
    };
  }
  const found = association(table);
  if (isUnavailable(found)) return found;
  const corrected = table.length === 2 && table[0].length === 2 ? yates(table) : null;
  return {
    list: [
      { said: 'Pearson', statistic: found.chiSquared, df: [found.df], p: found.p },
      { said: 'likelihood ratio', statistic: found.g, df: [found.df], p: found.gP },
      ...(corrected === null
        ? []
        : [{ said: "Yates's correction", statistic: corrected.statistic, df: [1], p: corrected.p }]),
    ],
    basis: counts.basis,
  };
}

/** Counts of two attributes, or of one by the two selections. */
export function crossed(
  figure: PrintedFigure,
  view: View,
): { readonly table: number[][]; readonly basis: string } | Unavailable {
  const [first, second] = figure.attributes;
  if (first === undefined) return lacking(figure, 'crossed');
  const lines: { readonly line: string; readonly kind: string }[] = [];
  if (second === undefined) {
    if (figure.versus.length === 0) return lacking(figure, 'crossed');
    for (const [line, part] of [
      ['select', figure.select],
      ['versus', figure.versus],
    ] as const) {
      const terms = termsOf(view, first, rowsOf(view, part));
      if ('why' in terms) return terms;
      for (const kind of terms) if (kind !== null) lines.push({ line, kind });
    }
  } else {
    const rows = rowsOf(view, figure.select);
    const [a, b] = [termsOf(view, first, rows), termsOf(view, second, rows)];
    if ('why' in a) return a;
    if ('why' in b) return b;
    rows.forEach((_, i) => {
      const [line, kind] = [a[i], b[i]];
      if (line !== null && kind !== null) lines.push({ line, kind });
    });
  }
  const names = [...new Set(lines.map(({ line }) => line))];
  const kinds = [...new Set(lines.map(({ kind }) => kind))];
  return {
    table: names.map((name) =>
      kinds.map((kind) => lines.filter((one) => one.line === name && one.kind === kind).length),
    ),
    basis: `${lines.length} ${view.unit}s`,
  };
}
