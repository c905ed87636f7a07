import { type bed, printed, type Style } from './bed.ts';

/** Tables of the bed as papers lay them out; each is the text of a file. */

type Counts = (typeof bed.counts)[number];
type Samples = (typeof bed.samples)[number];

const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);
const csv = (rows: readonly (readonly string[])[]) =>
  `${rows.map((row) => row.map((cell) => (/[",\n]/.test(cell) ? `"${cell}"` : cell)).join(',')).join('\n')}\n`;

interface Margins {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly all: number;
}

function margins({ cells }: Counts): Margins {
  const rows = cells.map(sum);
  return { rows, columns: cells[0].map((_, c) => sum(cells.map((row) => row[c]))), all: sum(rows) };
}

const percent = (over: number, under: number, style: Style) =>
  printed((100 * over) / under, style, style.percents);

export const COUNT_LAYOUTS: Readonly<Record<string, (table: Counts, style: Style) => string>> = {
  'counts with totals': (table) => {
    const m = margins(table);
    return csv([
      ['Group', ...table.columns, 'Total'],
      ...table.rows.map((label, r) => [label, ...table.cells[r].map(String), String(m.rows[r])]),
      ['Total', ...m.columns.map(String), String(m.all)],
    ]);
  },
  'counts with per cent of columns': (table, style) => {
    const m = margins(table);
    const cell = (over: number, under: number) => `${over} (${percent(over, under, style)} %)`;
    return csv([
      ['Group', ...table.columns, 'Total'],
      ...table.rows.map((label, r) => [
        label,
        ...table.cells[r].map((one, c) => cell(one, m.columns[c])),
        cell(m.rows[r], m.all),
      ]),
      ['Total', ...m.columns.map((one) => `${one} (100 %)`), `${m.all} (100 %)`],
    ]);
  },
  'counts with per cent of rows': (table, style) => {
    const m = margins(table);
    return csv([
      ['Group', ...table.columns, 'n'],
      ...table.rows.map((label, r) => [
        label,
        ...table.cells[r].map((one) => `${one} (${percent(one, m.rows[r], style)}%)`),
        String(m.rows[r]),
      ]),
      ['All', ...m.columns.map((one) => `${one} (${percent(one, m.all, style)}%)`), String(m.all)],
    ]);
  },
  'counts with per cent of all': (table, style) => {
    const m = margins(table);
    const cell = (over: number) => `${over} (${percent(over, m.all, style)})`;
    return csv([
      ['Group', ...table.columns, 'Total'],
      ...table.rows.map((label, r) => [label, ...table.cells[r].map(cell), cell(m.rows[r])]),
      ['Total', ...m.columns.map(cell), cell(m.all)],
    ]);
  },
  'pairs of n and per cent': (table, style) => {
    const m = margins(table);
    return csv([
      ['', ...table.columns.flatMap((head) => [head, '']), 'Total', ''],
      ['Group', ...[...table.columns, 'Total'].flatMap(() => ['n', '%'])],
      ...table.rows.map((label, r) => [
        label,
        ...table.cells[r].flatMap((one, c) => [String(one), percent(one, m.columns[c], style)]),
        String(m.rows[r]),
        percent(m.rows[r], m.all, style),
      ]),
      ['Total', ...m.columns.flatMap((one) => [String(one), '100']), String(m.all), '100'],
    ]);
  },
  'per cent over an n row': (table, style) => {
    const m = margins(table);
    return csv([
      ['Group (%)', ...table.columns],
      ...table.rows.map((label, r) => [
        label,
        ...table.cells[r].map((one, c) => percent(one, m.columns[c], style)),
      ]),
      ['n', ...m.columns.map(String)],
    ]);
  },
  'per cent with printed sums': (table, style) => {
    const m = margins(table);
    const shown = (over: number, under: number) => percent(over, under, style);
    return csv([
      ['%', ...table.columns, 'Total'],
      ...table.rows.map((label, r) => {
        const cells = table.cells[r].map((one) => shown(one, m.rows[r]));
        const total = sum(cells.map((cell) => Number(cell.replace(',', '.'))));
        return [
          label,
          ...cells,
          printed(total, { ...style, cut: undefined } as unknown as Style, style.percents),
        ];
      }),
    ]);
  },
  'one column of n and per cent with subtotals': (table, style) => {
    const m = margins(table);
    return csv([
      ['Kind', 'n', '%'],
      ...table.rows.flatMap((label, r) => [
        ...table.columns.map((head, c) => [
          `${label} ${head}`,
          String(table.cells[r][c]),
          percent(table.cells[r][c], m.all, style),
        ]),
        [`Subtotal ${label}`, String(m.rows[r]), percent(m.rows[r], m.all, style)],
      ]),
      ['Total', String(m.all), '100'],
    ]);
  },
  'set in blanks with an area': (table) => {
    const m = margins(table);
    const rows = [
      ['Trench', 'Area (m2)', ...table.columns, 'Total'],
      ...table.rows.map((label, r) => [
        label,
        String(25 * (r + 1)),
        ...table.cells[r].map(String),
        String(m.rows[r]),
      ]),
      ['Total', '', ...m.columns.map(String), String(m.all)],
    ];
    const widths = rows[0].map((_, c) => Math.max(...rows.map((row) => row[c].length)) + 3);
    const body = rows
      .map((row) =>
        row.map((cell, c) => (c === 0 ? cell.padEnd(widths[c]) : cell.padStart(widths[c]))).join(''),
      )
      .join('\n');
    return `Table 3. Finds by group\n\n${body}\nNote: counts of items.\n`;
  },
  'parted by single blanks': (table, style) => {
    const m = margins(table);
    const word = (text: string) => text.replaceAll(' ', '-');
    return [
      ['Group', ...table.columns.map(word), 'Total'],
      ...table.rows.map((label, r) => [
        label,
        ...table.cells[r].map((one) => `${one} (${percent(one, m.rows[r], style)} %)`),
        String(m.rows[r]),
      ]),
      ['Total', ...m.columns.map((one) => `${one} (${percent(one, m.all, style)} %)`), String(m.all)],
    ]
      .map((row) => row.join(' '))
      .join('\n');
  },
  'sections with a row of per cent below each': (table, style) => {
    const m = margins(table);
    return csv([
      ['Group', ...table.columns, 'Sum'],
      ...table.rows.flatMap((label, r) => [
        [label, ...table.cells[r].map(String), String(m.rows[r])],
        ['', ...table.cells[r].map((one) => `${percent(one, m.rows[r], style)} %`), '100 %'],
      ]),
    ]);
  },
};

const [N, MEAN, SD, SE, CV, MEDIAN, Q1, Q3, MIN, MAX, LOW, HIGH] = Array.from({ length: 12 }, (_, i) => i);

const stepDecimals = (step: number) => (step >= 1 ? 0 : step >= 0.1 ? 1 : 2);

export const SAMPLE_LAYOUTS: Readonly<Record<string, (table: Samples, style: Style) => string>> = {
  'one column a statistic': ({ of, groups, values, all, step }, style) => {
    const d = stepDecimals(step);
    const line = (label: string, v: readonly number[]) => [
      label,
      String(v[N]),
      printed(v[MEAN], style),
      printed(v[SD], style),
      printed(v[SE], style),
      printed(100 * v[CV], style, 1),
      printed(v[MIN], style, d),
      printed(v[MAX], style, d),
    ];
    return csv([
      [of, 'n', 'mean', 'SD', 'S.E.', 'CV', 'min', 'max'],
      ...groups.map((label, g) => line(label, values[g])),
      line('Total', all),
    ]);
  },
  'mean and deviation in one cell': ({ of, groups, values, step }, style) => {
    const d = stepDecimals(step);
    return csv([
      [of, 'N', 'Mean ± SD', 'Range', 'Median (IQR)'],
      ...groups.map((label, g) => {
        const v = values[g];
        return [
          label,
          String(v[N]),
          `${printed(v[MEAN], style)} ± ${printed(v[SD], style)}`,
          `${printed(v[MIN], style, d)}–${printed(v[MAX], style, d)}`,
          `${printed(v[MEDIAN], style)} (${printed(v[Q1], style)}–${printed(v[Q3], style)})`,
        ];
      }),
    ]);
  },
  'deviation in brackets with an interval': ({ of, groups, values }, style) =>
    csv([
      [of, 'n', 'M (SD)', '95 % CI'],
      ...groups.map((label, g) => {
        const v = values[g];
        return [
          label,
          String(v[N]),
          `${printed(v[MEAN], style)} (${printed(v[SD], style)})`,
          `[${printed(v[LOW], style)}; ${printed(v[HIGH], style)}]`,
        ];
      }),
    ]),
  'statistics in the first column': ({ of, groups, values }, style) =>
    csv([
      [of, ...groups],
      ['n', ...values.map((v) => String(v[N]))],
      ['Mean', ...values.map((v) => printed(v[MEAN], style))],
      ['Std. dev.', ...values.map((v) => printed(v[SD], style))],
      ['SEM', ...values.map((v) => printed(v[SE], style))],
      ['CV (%)', ...values.map((v) => printed(100 * v[CV], style, 1))],
      ['Median', ...values.map((v) => printed(v[MEDIAN], style))],
    ]),
  'groups side by side': ({ of, groups, values }, style) =>
    csv([
      [of, ...groups.flatMap((label) => [label, '', ''])],
      ['', ...groups.flatMap(() => ['n', 'mean', 'sd'])],
      ['all', ...values.flatMap((v) => [String(v[N]), printed(v[MEAN], style), printed(v[SD], style)])],
      ['again', ...values.flatMap((v) => [String(v[N]), printed(v[MEAN], style), printed(v[SD], style)])],
    ]),
  'set in blanks': ({ of, groups, values, step }, style) => {
    const d = stepDecimals(step);
    const rows = [
      [of, 'n', 'Min', 'Q1', 'Median', 'Q3', 'Max', 'Mean', 's.d.'],
      ...groups.map((label, g) => {
        const v = values[g];
        return [
          label,
          String(v[N]),
          printed(v[MIN], style, d),
          printed(v[Q1], style),
          printed(v[MEDIAN], style),
          printed(v[Q3], style),
          printed(v[MAX], style, d),
          printed(v[MEAN], style),
          printed(v[SD], style),
        ];
      }),
    ];
    const widths = rows[0].map((_, c) => Math.max(...rows.map((row) => row[c].length)) + 2);
    return rows
      .map((row) =>
        row.map((cell, c) => (c === 0 ? cell.padEnd(widths[c]) : cell.padStart(widths[c]))).join(''),
      )
      .join('\n');
  },
};
