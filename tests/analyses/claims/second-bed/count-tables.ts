import { type Hand, number, percent, pText } from './styles.ts';
import { asCsv, type Cells, inColumns, sum } from './table-text.ts';
import type { CountTable } from './values.ts';

interface Margins {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly all: number;
}

function marginsOf({ cells }: CountTable): Margins {
  const rows = cells.map(sum);
  return { rows, columns: cells[0].map((_, c) => sum(cells.map((row) => row[c]))), all: sum(rows) };
}

type Layout = (table: CountTable, hand: Hand) => string;

/** A whole number as this hand prints it. */
const count = (value: number, hand: Hand) => number(value, hand, 0);
const share = (over: number, under: number, hand: Hand) => (under === 0 ? '–' : percent(over, under, hand));
const signed = (over: number, under: number, hand: Hand) =>
  `${share(over, under, hand)}${hand.percentSpace}%`;

export const COUNT_TABLES: Readonly<Record<string, Layout>> = {
  'sizes in the heads, count and per cent in a cell': (table, hand) => {
    const m = marginsOf(table);
    return asCsv(
      [
        ['', ...table.columns.map((head, c) => `${head} (n = ${count(m.columns[c], hand)})`)],
        ...table.rows.map((label, r) => [
          label,
          ...table.cells[r].map((one, c) => `${count(one, hand)} (${share(one, m.columns[c], hand)})`),
        ]),
      ],
      ';',
    );
  },
  'sizes in the heads, per cent alone': (table, hand) => {
    const m = marginsOf(table);
    return asCsv(
      [
        ['Kind', ...table.columns.map((head, c) => `${head}, N=${count(m.columns[c], hand)}`)],
        ...table.rows.map((label, r) => [
          label,
          ...table.cells[r].map((one, c) => signed(one, m.columns[c], hand)),
        ]),
      ],
      '\t',
    );
  },
  'dashes for nought, sums headed by a sigma': (table, hand) => {
    const m = marginsOf(table);
    const cell = (one: number) => (one === 0 ? '–' : count(one, hand));
    return inColumns([
      ['Type', ...table.columns.map((head) => head.replaceAll(' ', '-')), 'N'],
      ...table.rows.map((label, r) => [label, ...table.cells[r].map(cell), count(m.rows[r], hand)]),
      ['Σ', ...m.columns.map((one) => count(one, hand)), count(m.all, hand)],
    ]);
  },
  'thousands with totals': (table, hand) => {
    const by = 137;
    const m = marginsOf(table);
    return asCsv(
      [
        ['Region', ...table.columns, 'All kinds'],
        ...table.rows.map((label, r) => [
          label,
          ...table.cells[r].map((one) => count(one * by, hand)),
          count(m.rows[r] * by, hand),
        ]),
        ['Overall', ...m.columns.map((one) => count(one * by, hand)), count(m.all * by, hand)],
      ],
      ';',
    );
  },
  'stacked lines of count, row and column per cent': (table, hand) => {
    const m = marginsOf(table);
    const lines: Cells = table.rows.flatMap((label, r) => [
      [label, 'Count', ...table.cells[r].map((one) => count(one, hand)), count(m.rows[r], hand)],
      ['', '% within row', ...table.cells[r].map((one) => signed(one, m.rows[r], hand)), signed(1, 1, hand)],
      [
        '',
        '% within column',
        ...table.cells[r].map((one, c) => signed(one, m.columns[c], hand)),
        signed(m.rows[r], m.all, hand),
      ],
      [
        '',
        '% of total',
        ...table.cells[r].map((one) => signed(one, m.all, hand)),
        signed(m.rows[r], m.all, hand),
      ],
    ]);
    return asCsv(
      [
        ['', '', ...table.columns, 'Total'],
        ...lines,
        ['Total', 'Count', ...m.columns.map((one) => count(one, hand)), count(m.all, hand)],
        ['', '% within row', ...m.columns.map((one) => signed(one, m.all, hand)), signed(1, 1, hand)],
      ],
      ';',
    );
  },
  'one line a cell': (table, hand) => {
    const m = marginsOf(table);
    return asCsv(
      [
        ['Group', 'Kind', 'n', '%'],
        ...table.rows.flatMap((label, r) =>
          table.columns.map((head, c) => [
            c === 0 ? label : '',
            head,
            count(table.cells[r][c], hand),
            share(table.cells[r][c], m.rows[r], hand),
          ]),
        ),
      ],
      ';',
    );
  },
  'frequencies with valid and cumulative per cent': (table, hand) => {
    const m = marginsOf(table);
    const missing = 7;
    let so = 0;
    return asCsv(
      [
        ['', 'Frequency', 'Percent', 'Valid Percent', 'Cumulative Percent'],
        ...table.rows.map((label, r) => {
          so += m.rows[r];
          return [
            label,
            count(m.rows[r], hand),
            share(m.rows[r], m.all + missing, hand),
            share(m.rows[r], m.all, hand),
            share(so, m.all, hand),
          ];
        }),
        ['Valid total', count(m.all, hand), share(m.all, m.all + missing, hand), share(1, 1, hand), ''],
        ['Missing', count(missing, hand), share(missing, m.all + missing, hand), '', ''],
        ['Total', count(m.all + missing, hand), share(1, 1, hand), '', ''],
      ],
      ';',
    );
  },
  'totals in the first line': (table, hand) => {
    const m = marginsOf(table);
    return asCsv(
      [
        ['', 'All', ...table.columns],
        [
          'All groups',
          count(m.all, hand),
          ...m.columns.map((one) => `${count(one, hand)} (${signed(one, m.all, hand)})`),
        ],
        ...table.rows.map((label, r) => [
          `  ${label}`,
          count(m.rows[r], hand),
          ...table.cells[r].map((one) => `${count(one, hand)} (${signed(one, m.rows[r], hand)})`),
        ]),
      ],
      '\t',
    );
  },
  'footnotes and raised letters': (table, hand) => {
    const m = marginsOf(table);
    return `Table 2. Finds by kind.${'\n'}${asCsv(
      [
        ['Group', ...table.columns.map((head, c) => (c === 0 ? `${head}ᵃ` : head)), 'Total*'],
        ...table.rows.map((label, r) => [
          r === 0 ? `${label}†` : label,
          ...table.cells[r].map((one, c) => (r === 0 && c === 1 ? `${count(one, hand)}ᵇ` : count(one, hand))),
          count(m.rows[r], hand),
        ]),
        ['Totals', ...m.columns.map((one) => count(one, hand)), count(m.all, hand)],
      ],
      ';',
    )}* all seasons; † including doubtful pieces${'\n'}`;
  },
  'with a test at the end of the first line': (table, hand) => {
    const m = marginsOf(table);
    return asCsv(
      [
        ['Kind', ...table.columns.map((head) => `${head} n (%)`), 'χ²', 'df', 'p'],
        ...table.rows.map((label, r) => [
          label,
          ...table.cells[r].map((one, c) => `${count(one, hand)} (${share(one, m.columns[c], hand)})`),
          ...(r === 0
            ? [
                number(table.chi[0], hand),
                String(table.df[0]),
                pText(table.p[0], hand)
                  .replace(/^\S+?\s?=\s?/, '')
                  .replace(/^[A-Za-z.]+\s?(?=[<>])/, ''),
              ]
            : ['', '', '']),
        ]),
      ],
      ';',
    );
  },
  'observed and expected': (table, hand) => {
    const m = marginsOf(table);
    return asCsv(
      [
        ['Observed (expected)', ...table.columns, 'Total'],
        ...table.rows.map((label, r) => [
          label,
          ...table.cells[r].map(
            (one, c) => `${count(one, hand)} (${number((m.rows[r] * m.columns[c]) / m.all, hand, 1)})`,
          ),
          count(m.rows[r], hand),
        ]),
        ['Total', ...m.columns.map((one) => count(one, hand)), count(m.all, hand)],
      ],
      ';',
    );
  },
  'density and area beside the counts': (table, hand) => {
    const m = marginsOf(table);
    return inColumns([
      ['Trench', 'Area-m2', ...table.columns.map((head) => head.replaceAll(' ', '-')), 'Total', 'per-m2'],
      ...table.rows.map((label, r) => [
        label.replaceAll(' ', '-'),
        count(12 + 7 * r, hand),
        ...table.cells[r].map((one) => count(one, hand)),
        count(m.rows[r], hand),
        number(m.rows[r] / (12 + 7 * r), hand, 2),
      ]),
    ]);
  },
  'shares as parts of one with n': (table, hand) => {
    const m = marginsOf(table);
    return asCsv(
      [
        ['Assemblage', ...table.columns, 'n'],
        ...table.rows.map((label, r) => [
          label,
          ...table.cells[r].map((one) => number(m.rows[r] === 0 ? 0 : one / m.rows[r], hand, 3, hand.bare)),
          count(m.rows[r], hand),
        ]),
      ],
      ';',
    );
  },
  'sections with subtotals and a grand total': (table, hand) => {
    const m = marginsOf(table);
    const half = Math.ceil(table.rows.length / 2);
    const part = (from: number, to: number, head: string): Cells => {
      if (to - from < 1) return [];
      const rows = table.rows.slice(from, to);
      return [
        [head, ...table.columns.map(() => ''), ''],
        ...rows.map((label, i) => [
          label,
          ...table.cells[from + i].map((one) => count(one, hand)),
          count(m.rows[from + i], hand),
        ]),
        [
          'Subtotal',
          ...table.columns.map((_, c) => count(sum(table.cells.slice(from, to).map((row) => row[c])), hand)),
          count(sum(m.rows.slice(from, to)), hand),
        ],
      ];
    };
    return asCsv(
      [
        ['Finds', ...table.columns, 'Sum'],
        ...part(0, half, 'Lower layers'),
        ...part(half, table.rows.length, 'Upper layers'),
        ['Grand total', ...m.columns.map((one) => count(one, hand)), count(m.all, hand)],
      ],
      ';',
    );
  },
};
