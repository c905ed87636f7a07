import { margins } from '../../numerics/tests/contingency.ts';
import type { ResultTable, TableCell } from '../contract.ts';
import { printCount, printLevel, printNumber } from '../phrasing.ts';
import { guardTable } from '../shared/guard/tables.ts';
import { levelNote } from '../shared/level/said.ts';
import { SHARES_OF_RECORDS } from '../shared/options/mixtures.ts';
import { pooledSharesTable } from '../shared/pooled/shares.ts';
import type { CrosstabFound } from './found.ts';
import { boundsTable, otherwiseTable, quotedTable } from './further-tables.ts';

/** "40 items", or the mentions where mixtures count in each of their kinds. */
export const countedOf = ({ table, mixtures, bases, unit }: CrosstabFound): string =>
  mixtures === null
    ? printCount(table.entries.length, unit)
    : `${printCount(table.entries.length, 'mention')} of ${printCount(bases.all, unit)}`;

/** Of tables of many lines with expected counts of about 3: docs/methods/crosstab.md. */
const THIN =
  ' So few are expected in many cells that the limits may hold more seldom than asked: in 90 of 100 such tables at 95 %.';

/** Below this base a share is written as a count of its base, since a percentage would pretend to more. */
const LEAST_BASE = 20;

/** Counts, shares along rows and columns, every cell in full, and the tests. */
export function crosstabTables(found: CrosstabFound): Record<string, ResultTable> {
  return {
    counts: countsTable(found),
    rowShares: sharesTable(found, 'row'),
    columnShares: sharesTable(found, 'column'),
    cells: cellsTable(found),
    tests: testsTable(found),
    ...(found.quoted.length === 0 ? {} : { quoted: quotedTable(found) }),
    ...(found.bounds.length === 0 ? {} : { bounds: boundsTable(found) }),
    ...(found.pooled === null ? {} : pooledSharesTable([found.pooled], found.rowsLabel)),
    ...(found.otherwise.length === 0 ? {} : { otherwise: otherwiseTable(found) }),
    ...guardTable([{ of: `${found.rowsLabel} and ${found.columnsLabel}`, guard: found.guard }]),
  };
}

function columnHeads({ table, rowsLabel }: CrosstabFound) {
  return [
    { id: 'row', label: rowsLabel },
    ...table.columns.map((label, place) => ({ id: `column${place + 1}`, label })),
  ];
}

function countsTable(found: CrosstabFound): ResultTable {
  const { counts, rows } = found.table;
  const sums = margins(counts);
  return {
    title: found.mixtures === null ? `Counts of ${found.unit}s` : `Mentions, of ${found.unit}s`,
    columns: [...columnHeads(found), { id: 'total', label: 'all' }],
    rows: [
      ...rows.map((label, row) => [label, ...counts[row], sums.rows[row]]),
      ['all', ...sums.columns, sums.n],
    ],
    ...(found.level.differs ? { note: levelNote(found.level, found.unit).trim() } : {}),
  };
}

function sharesTable(found: CrosstabFound, along: 'row' | 'column'): ResultTable {
  const { counts, rows } = found.table;
  const sums = margins(counts);
  const { bases: records, mixtures } = found;
  const base = (row: number, column: number) =>
    along === 'row' ? records.rows[row] : records.columns[column];
  const bases: TableCell[] =
    along === 'row'
      ? sums.columns.map((count) => share(count, records.all))
      : records.columns.map((count) => `n = ${count}`);
  return {
    title:
      along === 'row'
        ? `Shares along the rows (of each ${found.rowsLabel})`
        : `Shares along the columns (of each ${found.columnsLabel})`,
    columns: [...columnHeads(found), { id: 'n', label: along === 'row' ? 'base' : 'share of all' }],
    rows: [
      ...rows.map((label, row): TableCell[] => [
        label,
        ...counts[row].map((count, column) => share(count, base(row, column))),
        along === 'row' ? `n = ${records.rows[row]}` : share(records.rows[row], records.all),
      ]),
      [along === 'row' ? 'all' : 'base', ...bases, `n = ${records.all}`],
    ],
    note: `With a base below ${LEAST_BASE} the count of the base stands instead of a percentage.${mixtures === null ? '' : ` ${SHARES_OF_RECORDS}`}`,
  };
}

/** "3/7" on a small base, otherwise "43 % of 21". */
export function share(count: number, base: number): string {
  return base < LEAST_BASE ? `${count}/${base}` : `${Math.round((100 * count) / base)} % of ${base}`;
}

function cellsTable(found: CrosstabFound): ResultTable {
  const { table, cells, standsBeyond, bases, mixtures } = found;
  return {
    title: 'Cells',
    columns: [
      { id: 'row', label: found.rowsLabel },
      { id: 'column', label: found.columnsLabel },
      { id: 'count', label: 'count' },
      { id: 'fragments', label: 'fragments' },
      { id: 'items', label: 'items' },
      { id: 'share', label: 'share of all' },
      { id: 'rowShare', label: 'share of the row' },
      { id: 'columnShare', label: 'share of the column' },
      { id: 'expected', label: 'expected' },
      { id: 'residual', label: 'adjusted residual' },
      { id: 'contribution', label: 'part of chi-square' },
      { id: 'stands', label: 'stands out' },
    ],
    rows: table.rows.flatMap((rowLabel, row) =>
      table.columns.map((columnLabel, column): TableCell[] => {
        const cell = cells[row][column];
        return [
          rowLabel,
          columnLabel,
          cell.count,
          cell.fragments,
          cell.items,
          cell.count / bases.all,
          cell.count / bases.rows[row],
          cell.count / bases.columns[column],
          cell.expected,
          cell.residual,
          cell.contribution,
          cell.stands,
        ];
      }),
    ),
    briefly: ['row', 'column', 'count', 'fragments', 'items', 'expected', 'residual'],
    note:
      'Expected: if rows and columns had nothing to do with each other. Adjusted residuals (Haberman 1973) are about standard normal then; ' +
      `beyond ±${printNumber(standsBeyond)} a cell stands out.${mixtures === null ? '' : ' They take mentions for independent, which those of one mixture are not: the test deals whole items.'}`,
  };
}

/** A record that counts in several columns is not several: the distribution of independent counts does not hold. */
const NOT_INDEPENDENT = { why: 'mixtures count in several columns, which are then not independent' };

function testsTable({ association, test, interval, options, mixtures, thin }: CrosstabFound): ResultTable {
  const independent = (p: number): TableCell =>
    mixtures === null || mixtures.records === 0 ? p : NOT_INDEPENDENT;
  const chosen: TableCell[] =
    'why' in test
      ? ['chosen test', test, null, test, '', '']
      : [`chosen: ${test.name}`, null, null, test.p, test.method, test.reason];
  const limits: TableCell[] = 'why' in interval ? [interval, interval] : [interval.low, interval.high];
  return {
    title: 'Association',
    columns: [
      { id: 'test', label: 'measure' },
      { id: 'statistic', label: 'statistic' },
      { id: 'df', label: 'df' },
      { id: 'p', label: 'p' },
      { id: 'method', label: 'p from' },
      { id: 'reason', label: 'why this test' },
      { id: 'low', label: 'at least' },
      { id: 'high', label: 'at most' },
    ],
    rows: [
      [...chosen, null, null],
      [
        'chi-square',
        association.chiSquared,
        association.df,
        independent(association.p),
        'chi-squared',
        '',
        null,
        null,
      ],
      [
        'likelihood ratio G',
        association.g,
        association.df,
        independent(association.gP),
        'chi-squared',
        '',
        null,
        null,
      ],
      ["Cramér's V", association.cramersV, null, null, '', '', null, null],
      ["Cramér's V, bias-corrected", association.cramersVCorrected, null, null, '', '', ...limits],
    ],
    note: `Chi-square without continuity correction; V corrected after Bergsma 2013, limits at ${printLevel(options.confidence)} by noncentral chi-squared (Smithson 2003), widened for how far samples of such a table spread, items as units.${thin ? THIN : ''}`,
  };
}
