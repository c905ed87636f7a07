import type { Random } from '../../../../numerics/foundation/random.ts';
import { fisherTails } from '../../../../numerics/printed/fisher-tails.ts';
import { association, withoutEmptyLines } from '../../../../numerics/tests/contingency.ts';
import { fisherExact } from '../../../../numerics/tests/fisher-exact.ts';
import { triedText } from '../../conventions/register.ts';
import { checkByWays, fitOfWays, type Way } from '../../conventions/way.ts';
import { yates } from '../../conventions/yates.ts';
import type { FigureCheck } from '../../found.ts';
import { shown, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import type { Evidence } from '../evidence.ts';

/** Chi-squared, its df and p, and Fisher's exact p, recomputed from the printed table of counts. */
export function checkTableTests({ sets, tables }: Evidence, random: Random): FigureCheck[] {
  return [...tables.values()].flatMap((table) => {
    const counts = countsOf(table);
    const claims = (sets.get(table.name) ?? []).filter(
      (figure) =>
        (figure.quantity === 'statistic' || figure.quantity === 'df' || figure.quantity === 'p') &&
        isOfWhole(table, figure),
    );
    if (counts === null || claims.length === 0) return [];
    const statistic = claims.find(({ quantity }) => quantity === 'statistic');
    return claims.flatMap((figure) => {
      const method = figure.method ?? statistic?.method ?? null;
      const ways =
        method === 'fisher'
          ? fisherWays(counts, random)
          : method === 'chi-squared' || method === null
            ? chiSquaredWays(counts, figure)
            : [];
      const plain = ways.length > 0 && fitOfWays(figure, ways) !== null;
      const other = plain || method === 'fisher' ? null : otherKinds(table, counts, figure);
      if (ways.length > 0 && other !== null) return [other];
      return ways.length === 0 ? [] : [checkByWays(figure, ways, table.name)];
    });
  });
}

/** A test in the line of one measure, or at the head of one section of several, is not of the table as a whole. */
function isOfWhole({ rows, columns }: PrintedTable, { cell }: PrintedFigure): boolean {
  if (cell === null) return true;
  // Of a table that was turned the lines are its columns.
  const [lines, at] = rows[cell.row].holds === null ? [rows, cell.row] : [columns, cell.column];
  return lines[at].line === 'aside' && lines.filter(({ line }) => line === 'aside').length === 1;
}

/**
 * The same of the table with a row or a column left out, or two taken together, as is ordinary where kinds are rare
 * or uncertain. Of a table larger than two by two something of the kind may always be so, and a misfit only differs.
 */
function otherKinds(table: PrintedTable, counts: number[][], figure: PrintedFigure): FigureCheck | null {
  const turned = (lines: readonly (readonly number[])[]) =>
    lines[0].map((_, c) => lines.map((line) => line[c]));
  const along = [
    { labels: table.body.rows, lines: counts, back: (lines: number[][]) => lines },
    { labels: table.body.columns, lines: turned(counts), back: (lines: number[][]) => turned(lines) },
  ];
  const variants = along.flatMap(({ labels, lines, back }) =>
    lines.length < 3
      ? []
      : labels.flatMap((label, at) => [
          { said: `“${label}” left out`, counts: back(lines.filter((_, i) => i !== at)) },
          ...labels.slice(at + 1).map((other, i) => ({
            said: `“${label}” and “${other}” taken together`,
            counts: back(
              lines.flatMap((line, place) =>
                place === at
                  ? [line.map((one, k) => one + lines[at + 1 + i][k])]
                  : place === at + 1 + i
                    ? []
                    : [line],
              ),
            ),
          })),
        ]),
  );
  if (variants.length === 0) return null;
  const base = {
    figure: figure.id,
    name: `${figure.quantity} of the printed table`,
    from: 'print',
    with: [],
  } as const;
  const whole = chiSquaredWays(counts, figure);
  const working = `From "${table.name}" as a whole: ${whole.map(({ said, value }) => `${shown(value, figure)} (${said})`).join(', ')}; printed: ${figure.printed}`;
  const fitting = variants.filter((one) => fitOfWays(figure, chiSquaredWays(one.counts, figure)) !== null);
  if (fitting.length === 0)
    return {
      ...base,
      outcome: 'differs',
      working: `${working}. ${triedText(['continuity', 'droppedKind'])}`,
      resolve: 'State which rows and columns entered the test, and how it was computed.',
    };
  // Degrees of freedom fit many; a statistic to its digits fits one or none.
  const [one] = fitting;
  return figure.quantity === 'df' || fitting.length > 1
    ? {
        ...base,
        outcome: 'passes',
        working: `${working}. With ${fitting.length > 1 ? 'kinds left out or taken together' : one.said} it can be.`,
      }
    : { ...base, outcome: 'agrees', under: one.said, working: `${working}; with ${one.said} it agrees.` };
}

function countsOf(table: PrintedTable): number[][] | null {
  if (table.kind !== 'counts' || table.body.cells.length === 0) return null;
  const counts = table.body.cells.map((line) => line.map((cell) => (cell === null ? 0 : wholeOf(cell))));
  return counts.flat().includes(null) ? null : (counts as number[][]);
}

function chiSquaredWays(counts: number[][], figure: PrintedFigure): readonly Way[] {
  const { table } = withoutEmptyLines(counts);
  const found = association(table);
  if ('why' in found) return [];
  if (figure.quantity === 'df') return [{ said: '(rows − 1)(columns − 1)', value: found.df }];
  const corrected = table.length === 2 && table[0].length === 2 ? yates(table) : null;
  const p = figure.quantity === 'p';
  return [
    { said: 'Pearson', value: p ? found.p : found.chiSquared },
    { said: 'likelihood ratio', value: p ? found.gP : found.g },
    ...(corrected === null
      ? []
      : [{ said: "Yates's correction", value: p ? corrected.p : corrected.statistic }]),
  ];
}

function fisherWays(counts: number[][], random: Random): readonly Way[] {
  const found = fisherExact(counts, random);
  if ('why' in found || found.method !== 'exact') return [];
  const tails = counts.length === 2 && counts[0].length === 2 ? fisherTails(counts) : [];
  return [{ said: 'two-sided, tables no likelier than this', value: found.p }, ...tails];
}
