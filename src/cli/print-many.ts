import { printCount } from '../analyses/phrasing.ts';
import { isMissing } from '../fragments/missing.ts';
import { countOf } from '../fragments/quantity.ts';
import type { FragmentTable } from '../fragments/table.ts';
import {
  type AlignedColumn,
  alignColumns,
  type ProposedJoin,
  proposeJoins,
} from '../sources/combine/align.ts';
import type { SourceReading } from '../sources/source-reading.ts';
import type { Terminal } from './terminal.ts';
import { columnsThatFit, tame, textTable, wrap } from './text-table.ts';

export interface Together {
  readonly aligned: readonly AlignedColumn[];
  readonly joins: readonly ProposedJoin[];
  readonly ready: Readiness;
}

/** What can be computed from the tables as they stand, in counts. */
export interface Readiness {
  readonly tables: number;
  readonly rows: number;
  readonly objects: number;
  readonly places: number;
  readonly numbers: number;
  readonly kinds: number;
  /** Columns and faults that wait for a decision. */
  readonly open: number;
}

/** How several tables go together: columns of one meaning, joins by key, and what is ready. */
export function together(readings: readonly SourceReading[], table: FragmentTable): Together {
  return {
    aligned: alignColumns(readings),
    joins: proposeJoins(readings),
    ready: readinessOf(readings, table),
  };
}

function readinessOf(readings: readonly SourceReading[], table: FragmentTable): Readiness {
  const compared = [...table.columns.values()].filter(
    (column) =>
      column.attribute.scale !== 'text' &&
      column.attribute.block !== 'context' &&
      column.raw.some((_, row) => !isMissing(column, row)),
  );
  const site = table.columns.get('site');
  return {
    tables: readings.length,
    rows: table.rows,
    objects: countOf(table, table.id.keys()),
    places: site?.kind === 'term' ? new Set(site.codes.filter((code) => code >= 0)).size : 0,
    numbers: compared.filter(({ kind }) => kind === 'numeric').length,
    kinds: compared.filter(({ kind }) => kind === 'term').length,
    open: readings.reduce(
      (sum, { columns, faults }) =>
        sum + faults.length + columns.filter(({ status }) => status === 'suggested').length,
      0,
    ),
  };
}

/** One sentence: what there is to compare, and what waits. */
export function readinessLine(ready: Readiness): string {
  const { tables, rows, objects, places, numbers, kinds, open } = ready;
  const counted = objects === rows ? '' : ` that stand for ${objects} objects`;
  const named = places === 0 ? 'no column of sites' : printCount(places, 'site');
  const compared =
    numbers + kinds === 0
      ? 'nothing to compare yet: take the columns as they are with --as-is'
      : `${printCount(numbers, 'column')} of numbers and ${kinds} of kinds to compare`;
  const waits = open === 0 ? 'Nothing waits for a decision.' : `${printCount(open, 'decision')} to make.`;
  return `Ready: ${printCount(tables, 'table')}, ${printCount(rows, 'row')}${counted}, ${named}; ${compared}. ${waits}`;
}

const MOST_ALIGNED = 30;

export function printTogether(terminal: Terminal, readings: readonly SourceReading[], found: Together): void {
  const { out, colour, width } = terminal;
  out(
    textTable(
      [
        { head: 'table', align: 'left' },
        { head: 'rows kept', align: 'right' },
        { head: 'set aside', align: 'right' },
        { head: 'columns', align: 'right' },
        { head: 'recognised', align: 'right' },
        { head: 'to decide', align: 'right' },
      ],
      readings.map(({ name, rowsKept, rowsSetAside, columns, faults }) => [
        name,
        String(rowsKept),
        String(rowsSetAside.length),
        String(columns.length),
        String(columns.filter(({ status }) => status === 'matched').length),
        String(faults.length + columns.filter(({ status }) => status === 'suggested').length),
      ]),
      width,
    ),
  );
  if (found.aligned.length > 0) {
    out(`\n${colour.underline('Columns of the same meaning')}\n`);
    const widths = [18, ...readings.map(({ name }) => Math.min(24, Math.max(name.length, 10)))];
    const fits = Math.max(
      2,
      columnsThatFit(
        widths,
        widths.map(() => true),
        width,
      ),
    );
    out(
      textTable(
        [
          { head: 'means', align: 'left' },
          ...readings.slice(0, fits - 1).map(({ name }) => ({ head: tame(name), align: 'left' as const })),
        ],
        found.aligned
          .slice(0, MOST_ALIGNED)
          .map(({ label, headers }) => [label, ...headers.slice(0, fits - 1).map((header) => header || '·')]),
        width,
      ),
    );
    const more = [
      ...(readings.length > fits - 1 ? [`${readings.length - fits + 1} more tables`] : []),
      ...(found.aligned.length > MOST_ALIGNED ? [`${found.aligned.length - MOST_ALIGNED} more columns`] : []),
    ];
    if (more.length > 0) out(`and ${more.join(' and ')}; --json has them all.\n`);
  }
  const roleOf = (table: string) => readings.find(({ name }) => name === table)?.role;
  for (const { finds, describing, label, keys, matched } of found.joins)
    out(
      `\n${wrap(
        tame(
          roleOf(describing) === 'assemblages'
            ? `"${describing}" describes the rows of "${finds}" by ${label} and is joined to them: ${matched} of ${keys} are in it.`
            : `"${describing}" may describe the rows of "${finds}" by ${label}: ${matched} of ${keys} are in it. If so, give it "role": "assemblages" in its profile.`,
        ),
        width,
      ).join('\n')}\n`,
    );
  for (const { name, faults } of readings)
    for (const { what, where, mend } of faults.slice(0, 3))
      out(
        `\n${colour.yellow(wrap(tame(`${name}${where.row === undefined ? '' : `, row ${where.row}`}: ${what}; ${mend}.`), width).join('\n'))}\n`,
      );
  out(`\n${wrap(readinessLine(found.ready), width).join('\n')}\n`);
}
