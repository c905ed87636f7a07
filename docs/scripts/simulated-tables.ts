import type { ErrorCell, PowerCell, SetCell, Simulated } from '../../src/analyses/shared/simulated/cells.ts';

/** The tables of simulations as pages under docs/methods show them, from the same results that the answers show. */

const percent = (count: number, of: number) => `${((100 * count) / of).toFixed(1)} %`;

export function setsTable({ date, cells }: Simulated<SetCell>): string {
  const rows = cells.map(({ design, labels, items, gaps, ranges, finds, held, tooFew, none, kept }) => [
    design,
    `${labels}`,
    `${items}`,
    `${100 * gaps} %`,
    ranges ? 'ranges' : 'exact',
    ...held.map((count) => percent(count, finds)),
    percent(tooFew, finds),
    (kept / finds).toFixed(2),
    percent(none, finds),
  ]);
  return table(
    `Run on ${date}, ${cells[0].finds} finds a cell.`,
    [
      'what the find is',
      'labels',
      'items a label',
      'gaps',
      'readings',
      'true label in the 80 % set',
      '90 %',
      '95 %',
      'there as too few (90 %)',
      'labels in the 90 % set',
      '"none of these"',
    ],
    rows,
  );
}

/** What part of samples of one kind is taken for two. */
export function splitErrorsTable({ date, cells }: Simulated<ErrorCell>): string {
  const sizes = [...new Set(cells.map(({ n }) => n))];
  const sum = (some: readonly ErrorCell[]) => {
    const samples = some.reduce((all, cell) => all + cell.samples, 0);
    return percent(
      some.reduce((all, cell) => all + cell.found, 0),
      samples,
    );
  };
  const row = (name: string, some: readonly ErrorCell[]) => [
    name,
    ...sizes.map((n) => sum(some.filter((cell) => cell.n === n))),
    sum(some),
  ];
  return table(
    `Run on ${date}, ${cells[0].samples} samples a shape and size, ${cells.reduce((all, { samples }) => all + samples, 0)} in all.`,
    ['one kind', ...sizes.map((n) => `n = ${n}`), 'together'],
    [
      ...[...new Set(cells.map(({ shape }) => shape))].map((shape) =>
        row(
          shape,
          cells.filter((cell) => cell.shape === shape),
        ),
      ),
      row('all shapes', cells),
    ],
  );
}

/** What part of samples of two heaps is found divided; empty where that distance was not looked at. */
export function splitPowerTable({ date, cells }: Simulated<PowerCell>): string {
  const distances = [...new Set(cells.map(({ distance }) => distance))].sort((a, b) => a - b);
  const lines = [...new Set(cells.map(({ share, n }) => `${share} ${n}`))].map((line) =>
    line.split(' ').map(Number),
  );
  const rows = lines.map(([share, n]) => [
    `${100 * share} %`,
    `${n}`,
    ...distances.map((distance) => {
      const cell = cells.find((one) => one.share === share && one.n === n && one.distance === distance);
      return cell === undefined ? '' : percent(cell.found, cell.samples);
    }),
  ]);
  return table(
    `Run on ${date}, ${cells[0].samples} samples a cell.`,
    ['smaller heap', 'n', ...distances.map((distance) => `${distance} sd`)],
    rows,
  );
}

function table(head: string, columns: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [head, '', line(columns), line(columns.map(() => '---')), ...rows.map(line)].join('\n');
}

const MARKS = (simulation: string) =>
  [`<!-- simulated: ${simulation} -->`, `<!-- end of ${simulation} -->`] as const;

/** A page with what stands between the marks of a simulation replaced. */
export function withTable(page: string, simulation: string, text: string): string {
  const [from, to] = MARKS(simulation).map((mark) => page.indexOf(mark));
  if (from < 0 || to < 0) throw new Error(`the page has no marks of ${simulation}`);
  return `${page.slice(0, from)}${MARKS(simulation)[0]}\n${text}\n${page.slice(to)}`;
}
