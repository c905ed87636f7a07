import {
  exactly,
  over,
  overlap,
  type PrintHabit,
  plus,
  type Range,
  root,
  square,
  times,
  total,
} from '../../../../numerics/printed/range.ts';
import type { Check } from '../../found.ts';
import { fitOf, printRangeText, rangeOfFigure, TRUNCATED, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import type { Quantity } from '../../reading/terms.ts';
import { finest } from '../evidence.ts';

/**
 * The line of all groups in a table of means: its n is the sum, its mean the weighted mean, its deviation that of
 * the groups within and between, its ends those of the groups. Some print the plain mean of the group means.
 */
export function checkTableMeans(table: PrintedTable): Check[] {
  if (table.kind !== 'samples') return [];
  const totals = table.rows.flatMap(({ line }, r) => (line === 'total' ? [r] : []));
  const parts = table.rows.flatMap(({ line }, r) => (line === 'part' ? [r] : []));
  const [all] = totals;
  if (totals.length !== 1 || parts.length < 2) return [];
  const blocks = blocksOf(table);
  return blocks.flatMap((columns) => {
    const of = (row: number, quantity: Quantity) =>
      finest(
        columns
          .flatMap((column) => table.cells[row][column])
          .filter((figure) => figure.quantity === quantity && !figure.vague),
      );
    return block(
      (quantity) => of(all, quantity),
      parts.map((row) => (quantity: Quantity) => of(row, quantity)),
    );
  });
}

/** Columns of one sample: those under one head; a quantity said again starts the next. */
function blocksOf({ columns }: PrintedTable): number[][] {
  const blocks: number[][] = [];
  let seen = new Set<string>();
  let group = '';
  columns.forEach((column, at) => {
    if (blocks.length === 0 || column.group !== group || seen.has(column.role)) {
      blocks.push([]);
      seen = new Set();
      group = column.group;
    }
    blocks[blocks.length - 1].push(at);
    seen.add(column.role);
  });
  return blocks;
}

type Of = (quantity: Quantity) => PrintedFigure | undefined;

function block(all: Of, parts: readonly Of[]): Check[] {
  const checks: Check[] = [];
  const list = (quantity: Quantity) => {
    const found = parts.map((of) => of(quantity));
    return found.some((figure) => figure === undefined) ? null : (found as readonly PrintedFigure[]);
  };
  const ns = list('n');
  const sizes = ns?.map(wholeOf) ?? null;
  const whole = sizes?.every((n) => n !== null) ? (sizes as readonly number[]) : null;
  const n = all('n');
  const nAll = wholeOf(n);
  if (whole !== null && ns !== null && n !== undefined && nAll !== null) {
    const sum = whole.reduce((one, other) => one + other, 0);
    checks.push({
      figure: n.id,
      name: 'total of its parts',
      from: 'print',
      outcome: sum === nAll ? 'agrees' : 'differs',
      working: `${whole.join(' + ')} is ${sum}.`,
      ...(sum === nAll ? {} : { resolve: 'Say which records the line of all takes in.' }),
      with: ns.map(({ id }) => id),
    });
    if (sum !== nAll) return checks;
  }
  const means = list('mean');
  const mean = all('mean');
  if (mean !== undefined && means !== null) checks.push(...meanOfMeans(mean, means, whole));
  const sds = list('sd');
  const sd = all('sd');
  if (sd !== undefined && sds !== null && means !== null && whole !== null)
    checks.push(...pooled(sd, sds, means, whole, mean));
  for (const [quantity, end] of [
    ['min', 'low'],
    ['max', 'high'],
  ] as const) {
    const [figure, ends] = [all(quantity), list(quantity)];
    if (figure === undefined || ends === null) continue;
    const pick = quantity === 'min' ? Math.min : Math.max;
    const compute = (habit: PrintHabit): Range => {
      const ranges = ends.map((one) => rangeOfFigure(one, habit));
      return { low: pick(...ranges.map(({ low }) => low)), high: pick(...ranges.map(({ high }) => high)) };
    };
    checks.push(
      weighed(
        figure,
        [{ said: `the ${end === 'low' ? 'smallest' : 'largest'} of the groups`, compute }],
        ends,
      ),
    );
  }
  return checks;
}

function meanOfMeans(
  mean: PrintedFigure,
  means: readonly PrintedFigure[],
  sizes: readonly number[] | null,
): Check[] {
  const at = (habit: PrintHabit) => means.map((one) => rangeOfFigure(one, habit));
  const bounds = at('any');
  const inside = {
    low: Math.min(...bounds.map(({ low }) => low)),
    high: Math.max(...bounds.map(({ high }) => high)),
  };
  if (!overlap(inside, rangeOfFigure(mean, 'any')))
    return [
      {
        figure: mean.id,
        name: 'mean of all groups',
        from: 'print',
        outcome: 'cannot be',
        working: `The mean of all lies between the means of the groups, ${printRangeText(inside, mean, 'and')}; printed: ${mean.printed}.`,
        resolve: 'Say which records the line of all takes in.',
        with: means.map(({ id }) => id),
      },
    ];
  if (sizes === null) return [];
  const n = sizes.reduce((one, other) => one + other, 0);
  const weighted = (habit: PrintHabit) =>
    over(total(at(habit).map((one, i) => times(one, exactly(sizes[i])))), exactly(n));
  const plain = (habit: PrintHabit) => over(total(at(habit)), exactly(means.length));
  return [
    weighed(
      mean,
      [
        { said: 'weighted by n', compute: weighted },
        { said: 'the plain mean of the groups', compute: plain },
      ],
      means,
    ),
  ];
}

/** Spread of all: squares within the groups and between their means; or within alone (pooled). */
function pooled(
  sd: PrintedFigure,
  sds: readonly PrintedFigure[],
  means: readonly PrintedFigure[],
  sizes: readonly number[],
  mean: PrintedFigure | undefined,
): Check[] {
  const n = sizes.reduce((one, other) => one + other, 0);
  if (n - sizes.length < 1 || sizes.some((size) => size < 1)) return [];
  const within = (habit: PrintHabit, less: number) =>
    total(
      sds.map((one, i) => times(square(rangeOfFigure(one, habit)), exactly(Math.max(0, sizes[i] - less)))),
    );
  const centre = (habit: PrintHabit) => {
    const own = over(
      total(means.map((one, i) => times(rangeOfFigure(one, habit), exactly(sizes[i])))),
      exactly(n),
    );
    return mean === undefined
      ? own
      : {
          low: Math.min(own.low, rangeOfFigure(mean, habit).low),
          high: Math.max(own.high, rangeOfFigure(mean, habit).high),
        };
  };
  const between = (habit: PrintHabit) => {
    const middle = centre(habit);
    return total(
      means.map((one, i) => {
        const range = rangeOfFigure(one, habit);
        return times(
          square({ low: range.low - middle.high, high: range.high - middle.low }),
          exactly(sizes[i]),
        );
      }),
    );
  };
  return [
    weighed(
      sd,
      [
        {
          said: 'within and between the groups',
          compute: (habit) => root(over(plus(within(habit, 1), between(habit)), exactly(n - 1))),
        },
        {
          said: 'over n',
          compute: (habit) => root(over(plus(within(habit, 0), between(habit)), exactly(n))),
        },
        {
          said: 'pooled within the groups',
          compute: (habit) => root(over(within(habit, 1), exactly(n - sizes.length))),
        },
      ],
      [...sds, ...means],
    ),
  ];
}

function weighed(
  figure: PrintedFigure,
  ways: readonly { readonly said: string; readonly compute: (habit: PrintHabit) => Range }[],
  rests: readonly PrintedFigure[],
): Check {
  const found = ways.map((way) => ({ way, fit: fitOf(figure, way.compute) }));
  const best = found.find(({ fit }) => fit === 'agrees') ?? found.find(({ fit }) => fit !== 'no');
  const list = ways
    .map(({ said, compute }) => `${printRangeText(compute('any'), figure)} (${said})`)
    .join(', ');
  return {
    figure: figure.id,
    name: 'line of all groups',
    from: 'print',
    outcome: best === undefined ? 'differs' : best.fit === 'no' ? 'differs' : best.fit,
    ...(best?.fit === 'agrees only if rounded' ? { rounded: TRUNCATED } : {}),
    ...(best !== undefined && best.way !== ways[0] ? { under: best.way.said } : {}),
    working: `From the groups: ${list}; printed: ${figure.printed}.`,
    ...(best === undefined
      ? { resolve: 'Say which records the line of all takes in, and how it was computed.' }
      : {}),
    with: rests.map(({ id }) => id),
  };
}
