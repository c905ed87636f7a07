import { powerOfTen } from '../../../../numerics/printed/printed-number.ts';
import { overlap, total as sumOf } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import { additionText, sumCheck } from './sum-check.ts';
import { type SumReading, sumsOf } from './table-lines.ts';

/** Sums of a printed table against what they take in, and its cells against their sums. */
export function tableSums(table: PrintedTable): FigureCheck[] {
  const byKind = (['count', 'share'] as const).map((kind) =>
    sumsOf(table, kind).flatMap((ways) => settle(ways, kind)),
  );
  const counts = table.kind === 'samples' ? byKind[0] : byKind[0].map(withCulprit(byKind[0], table));
  const checks = [...counts, ...byKind[1]];
  return [...checks, ...cellChecks(table, checks), ...hundreds(table)];
}

/**
 * Which reading of a sum holds is told by its lines together: all, or all but a few. Where no reading holds for
 * most lines, a table sums something that is not printed, and nothing is said against it.
 */
function settle(ways: readonly SumReading[], kind: 'count' | 'share'): FigureCheck[] {
  const tried = ways.map((way) => {
    const checks = way.lines.map(({ sum, parts }) =>
      kind === 'share' ? percentSum(sum, parts) : sumCheck(sum, parts),
    );
    const fits = checks.filter(({ outcome }) => outcome !== 'cannot be' && outcome !== 'differs').length;
    return { way, checks, fits };
  });
  const best = tried.reduce((one, other) => (other.fits > one.fits ? other : one));
  const lines = best.checks.length;
  const misfits = lines - best.fits;
  const said = best.way.lines[0].sum;
  const plain = said.quantity === 'total';
  // A lone sum is held to its plainest reading; a column headed "n" only where it adds up.
  // Rates do not add up: a lone sum of percentages is held to its parts only where it is 100.
  const rates = kind === 'share' && lines === 1 && !isHundred(said);
  const told =
    !rates &&
    (best.fits > misfits || (plain && lines <= 2 && best.fits >= misfits) || (plain && lines === 1));
  if (!told)
    return best.checks.map((check) =>
      check.outcome === 'cannot be' || check.outcome === 'differs'
        ? {
            ...check,
            outcome: 'open' as const,
            working: `${check.working} Most of these sums take in something that is not printed, or less than all.`,
            resolve: 'Say what the total takes in.',
          }
        : check,
    );
  const soft = lines === 1 || best.fits <= misfits;
  return best.checks.map((check) =>
    check.outcome === 'cannot be' && kind === 'share'
      ? { ...check, outcome: 'differs' as const }
      : soft && check.outcome === 'cannot be' && !alone(check, best.way)
        ? { ...check, outcome: 'differs' as const }
        : check,
  );
}

function isHundred({ values: [{ number }] }: PrintedFigure): boolean {
  return Math.abs(Number(`${number.digits}e-${number.decimals}`) - 1) < 0.015;
}

/** A single column of counts under a total is a plain addition. */
function alone({ figure }: FigureCheck, way: SumReading): boolean {
  return way.said === 'all of them' && way.lines.some(({ sum }) => sum.id === figure);
}

/** A sum of percentages prints as the sum of what is printed, as the rounded true sum, or as 100. */
function percentSum(sum: PrintedFigure, parts: readonly PrintedFigure[]): FigureCheck {
  const check = sumCheck(sum, parts);
  if (check.outcome !== 'cannot be') return check;
  const printed = parts.reduce((all, part) => all + scaledDigits(part, 6), 0n);
  if (printed === scaledDigits(sum, 6))
    return {
      ...check,
      outcome: 'agrees',
      working: `${additionText(parts)} is that, as printed.`,
      resolve: '',
    };
  const range = sumOf(parts.map((part) => rangeOfFigure(part, 'any')));
  const whole = Number(scaledDigits(sum, 6)) === 1e6 && overlap(range, { low: 0.99, high: 1.01 });
  return whole
    ? {
        ...check,
        outcome: 'agrees',
        working: `${additionText(parts)} is 100 % but for rounding.`,
        resolve: '',
      }
    : check;
}

function scaledDigits({ values: [{ number }] }: PrintedFigure, decimals: number): bigint {
  return number.decimals <= decimals
    ? number.digits * powerOfTen(decimals - number.decimals)
    : number.digits / powerOfTen(number.decimals - decimals);
}

/** One slip shows in a row and in a column: the cell where the two meet, where its change alone mends both. */
function withCulprit(checks: readonly FigureCheck[], table: PrintedTable) {
  const off = checks.filter(({ outcome }) => outcome === 'cannot be' || outcome === 'differs');
  const figures = new Map(table.figures.map((figure) => [figure.id, figure]));
  const gap = ({ figure, with: parts }: FigureCheck) => {
    const sum = parts.reduce((all, id) => all + (wholeOf(figures.get(id)) ?? 0), 0);
    return (wholeOf(figures.get(figure)) ?? 0) - sum;
  };
  const explained = ((): string | null => {
    if (off.length !== 2) return null;
    const [a, b] = off;
    const shared = [...a.with, a.figure].filter((id) => [...b.with, b.figure].includes(id));
    if (shared.length !== 1) return null;
    const cell = figures.get(shared[0]);
    const value = wholeOf(cell);
    if (cell === undefined || value === null) return null;
    const asPart = (check: FigureCheck) => (check.figure === cell.id ? -gap(check) : gap(check));
    if (asPart(a) !== asPart(b) || value + asPart(a) < 0) return null;
    return `one slip, in ${cell.id}: ${value + asPart(a)} instead of ${cell.printed}`;
  })();
  return (check: FigureCheck): FigureCheck =>
    explained !== null && off.includes(check) ? { ...check, explained } : check;
}

/** A single slip in a cell would show in a total that fits, so the cell agrees with it. */
function cellChecks(table: PrintedTable, totals: readonly FigureCheck[]): FigureCheck[] {
  const outcomes = new Map<string, FigureCheck[]>();
  for (const check of totals)
    for (const id of check.with) outcomes.set(id, [...(outcomes.get(id) ?? []), check]);
  return table.figures.flatMap((cell): FigureCheck[] => {
    const sums = outcomes.get(cell.id) ?? [];
    if (sums.length === 0 || cell.quantity === 'total') return [];
    const bad = sums.filter(({ outcome }) => outcome === 'cannot be' || outcome === 'differs');
    const good = sums.filter(({ outcome }) => outcome.startsWith('agrees'));
    if (bad.length + good.length === 0) return [];
    const fits = bad.length === 0;
    return [
      {
        figure: cell.id,
        name: 'cell in its totals',
        from: 'print',
        outcome: !fits ? 'open' : cell.values[0].percent ? 'passes' : 'agrees',
        working: fits
          ? `It adds up with its ${good.length > 1 ? 'row and column' : 'line'}.`
          : `A total it belongs to does not add up: ${bad.map(({ figure }) => figure).join(', ')}.`,
        ...(fits ? {} : { resolve: 'Settle that total first.' }),
        with: sums.map(({ figure }) => figure),
      },
    ];
  });
}

/** Percentages without a printed total: most lines add up to 100, so one that does not is asked about. */
function hundreds(table: PrintedTable): FigureCheck[] {
  const { cells, rows, columns } = table.body;
  if (table.kind !== 'shares') return [];
  const one = { low: 1 - 1e-9, high: 1 + 1e-9 };
  const along = [
    { lines: cells.map((line) => line.filter((cell) => cell !== null)), labels: rows },
    { lines: columns.map((_, c) => cells.flatMap((line) => line[c] ?? [])), labels: columns },
  ];
  return along.flatMap(({ lines, labels }) => {
    const fits = lines.map(
      (line) => line.length > 1 && overlap(one, sumOf(line.map((cell) => rangeOfFigure(cell, 'any')))),
    );
    const good = fits.filter(Boolean).length;
    if (good < 3 || good * 3 < fits.length * 2) return [];
    return lines.flatMap((line, at) =>
      line.length < 2
        ? []
        : line.map(
            (cell): FigureCheck => ({
              figure: cell.id,
              name: 'percentages of a line',
              from: 'print',
              outcome: fits[at] ? 'passes' : 'differs',
              working: `${additionText(line)} adds up to ${Math.round(10_000 * line.reduce((sum, each) => sum + Number(`${each.values[0].number.digits}e-${each.values[0].number.decimals}`), 0)) / 100} %.`,
              ...(fits[at]
                ? {}
                : {
                    resolve: `State what else the percentages of "${labels[at]}" are of, or print the one that was meant otherwise.`,
                  }),
              with: line.filter((other) => other !== cell).map(({ id }) => id),
            }),
          ),
    );
  });
}
