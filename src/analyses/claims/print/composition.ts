import {
  brainerdRobinsonRange,
  evennessRange,
  shannonRange,
  simpsonRange,
} from '../../../numerics/printed/composition.ts';
import { exactly, overlap, type PrintHabit, type Range } from '../../../numerics/printed/range.ts';
import { diversityWays, similarityWays } from '../conventions/composition.ts';
import { checkByWays } from '../conventions/way.ts';
import type { FigureCheck } from '../found.ts';
import { printRangeText, rangeOfFigure, TRUNCATED, wholeOf } from '../judging/check.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { rowOf } from '../reading/printed-table.ts';
import { selectionText } from '../reading/select-text.ts';
import type { Evidence } from './evidence.ts';

/** Likeness and diversity recomputed from the counts or percentages that are printed beside them. */
export function checkComposition(evidence: Evidence): FigureCheck[] {
  return evidence.figures.flatMap((figure) => {
    if (figure.set === '' || (figure.quantity !== 'similarity' && figure.quantity !== 'diversity')) return [];
    const own = compositionOf(evidence, figure, figure.selectText);
    if (figure.quantity === 'diversity') return own === null ? [] : [diversityCheck(figure, own)];
    const other = compositionOf(evidence, figure, figure.versusText);
    return own === null || other === null ? [] : [similarityCheck(figure, own, other)];
  });
}

/** Kind -> what is printed of it, for one assemblage. */
interface Composition {
  readonly label: string;
  readonly counts: ReadonlyMap<string, number> | null;
  readonly shares: (habit: PrintHabit) => ReadonlyMap<string, Range>;
  readonly ids: readonly string[];
}

function compositionOf(evidence: Evidence, figure: PrintedFigure, label: string): Composition | null {
  const parts = partsOf(evidence, figure, label);
  if (parts.size < 2) return null;
  const figures = [...parts.values()];
  const counts = figures.every(({ quantity }) => quantity === 'count') ? figures.map(wholeOf) : [null];
  const names = [...parts.keys()];
  return {
    label,
    counts: counts.includes(null) ? null : new Map(names.map((name, i) => [name, counts[i] as number])),
    shares: (habit) => new Map(names.map((name, i) => [name, rangeOfFigure(figures[i], habit)])),
    ids: figures.map(({ id }) => id),
  };
}

/** From the row of a printed table, or from the counts (else the shares) that the set gives for a selection. */
function partsOf(evidence: Evidence, figure: PrintedFigure, label: string): Map<string, PrintedFigure> {
  const table = evidence.tables.get(figure.set);
  const parts = new Map<string, PrintedFigure>();
  if (table !== undefined) {
    const row = rowOf(table, label.replace(/^.*\sin\s/, ''));
    table.body.columns.forEach((column, place) => {
      const cell = row < 0 ? null : table.body.cells[row][place];
      if (cell !== null) parts.set(column, cell);
    });
    return parts;
  }
  const set = evidence.sets.get(figure.set) ?? [];
  for (const quantity of ['count', 'share'] as const) {
    for (const one of set)
      if (one.quantity === quantity && one.selectText === label && one.counted.length > 0)
        parts.set(selectionText(one.counted), one);
    if (parts.size > 0) return parts;
  }
  return parts;
}

function similarityCheck(figure: PrintedFigure, a: Composition, b: Composition): FigureCheck {
  const kinds = [...new Set([...a.shares('any').keys(), ...b.shares('any').keys()])];
  const from = `${a.label} and ${b.label}`;
  const resolve = 'State the coefficient, its scale, and the counts that it was computed from.';
  const [first, second] = [a.counts, b.counts];
  if (first !== null && second !== null) {
    const lists = [first, second].map((counts) => kinds.map((kind) => counts.get(kind) ?? 0));
    return {
      ...checkByWays(figure, similarityWays(figure.method, lists[0], lists[1]), from, resolve),
      with: [...a.ids, ...b.ids],
    };
  }
  if (figure.method !== null && figure.method !== 'brainerd-robinson')
    return open(figure, 'The coefficient needs the counts, not the percentages.', 'Give the counts.');
  const range = (habit: PrintHabit) => {
    const lists = [a, b].map((side) => kinds.map((kind) => side.shares(habit).get(kind) ?? exactly(0)));
    return brainerdRobinsonRange(lists[0], lists[1]);
  };
  return byRanges(figure, [{ said: 'Brainerd-Robinson', range }], [...a.ids, ...b.ids], from, resolve);
}

function diversityCheck(figure: PrintedFigure, { counts, shares, label, ids }: Composition): FigureCheck {
  const resolve = 'State the index, the base of its logarithm, and the counts that it was computed from.';
  if (counts !== null)
    return {
      ...checkByWays(figure, diversityWays(figure.method, [...counts.values()]), label, resolve),
      with: ids,
    };
  // What prints as 0 may be rare or absent.
  const printed = [...shares('any').values()];
  const fewest = printed.filter(({ low }) => low > 0).length;
  const most = printed.filter(({ high }) => high > 0).length;
  const list = (habit: PrintHabit) => [...shares(habit).values()];
  const ranges: readonly { readonly said: string; readonly range: (habit: PrintHabit) => Range }[] =
    figure.method === 'simpson'
      ? [
          { said: '1 − Σp²', range: (habit) => simpsonRange(list(habit)) },
          { said: 'Σp²', range: (habit) => flip(simpsonRange(list(habit))) },
          { said: '1/Σp²', range: (habit) => inverse(flip(simpsonRange(list(habit)))) },
        ]
      : figure.method === 'evenness'
        ? [{ said: "Pielou's evenness", range: (habit) => evennessOf(list(habit), fewest, most) }]
        : figure.method === 'richness'
          ? [{ said: 'kinds seen', range: () => ({ low: fewest, high: most }) }]
          : LOGARITHMS.map(({ said, by }) => ({
              said,
              range: (habit: PrintHabit) => {
                const { low, high } = shannonRange(list(habit));
                return { low: low / by, high: high / by };
              },
            }));
  return byRanges(figure, ranges, ids, label, resolve);
}

/** Over every number of kinds that the print allows. */
function evennessOf(shares: readonly Range[], fewest: number, most: number): Range {
  const ranges = Array.from({ length: most - Math.max(2, fewest) + 1 }, (_, more) =>
    evennessRange(shares, Math.max(2, fewest) + more),
  );
  return {
    low: Math.min(...ranges.map(({ low }) => low)),
    high: Math.max(...ranges.map(({ high }) => high)),
  };
}

const LOGARITHMS = [
  { said: 'natural logarithms', by: 1 },
  { said: 'logarithms to base 2', by: Math.LN2 },
  { said: 'logarithms to base 10', by: Math.LN10 },
] as const;

function flip({ low, high }: Range): Range {
  return { low: 1 - high, high: 1 - low };
}

function inverse({ low, high }: Range): Range {
  return { low: high > 0 ? 1 / high : Infinity, high: low > 0 ? 1 / low : Infinity };
}

function byRanges(
  figure: PrintedFigure,
  ways: readonly { readonly said: string; readonly range: (habit: PrintHabit) => Range }[],
  ids: readonly string[],
  from: string,
  resolve: string,
): FigureCheck {
  const fits = (habit: PrintHabit) =>
    ways.find(({ range }) => overlap(range(habit), rangeOfFigure(figure, habit)));
  const way = fits('rounded') ?? fits('any');
  const rounded = fits('rounded') !== undefined;
  const list = ways.map(({ said, range }) => `${printRangeText(range('any'), figure)} (${said})`).join(', ');
  return {
    figure: figure.id,
    name: `${figure.quantity} of the printed percentages`,
    from: 'print',
    outcome: way === undefined ? 'cannot be' : rounded ? 'agrees' : 'agrees only if rounded',
    ...(way !== undefined && !rounded ? { rounded: TRUNCATED } : {}),
    working: `From the percentages of ${from}: ${list}; printed: ${figure.printed}${way === undefined ? '' : ` (${way.said})`}.`,
    ...(way === undefined ? { resolve } : {}),
    with: ids,
  };
}

function open(figure: PrintedFigure, working: string, resolve: string): FigureCheck {
  return {
    figure: figure.id,
    name: figure.quantity,
    from: 'print',
    outcome: 'open',
    working,
    resolve,
    with: [],
  };
}
