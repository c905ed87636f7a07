import { countBehind } from '../../fragments/behind.ts';
import type { ByParts } from '../../fragments/by-parts.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { shareBounds } from '../../fragments/share-bounds.ts';
import { normalQuantileUpper } from '../../numerics/foundation/distributions.ts';
import { type Association, association, margins } from '../../numerics/tests/contingency.ts';
import type { AnalysisInput } from '../contract.ts';
import { lookAlikeKinds } from '../look-alike-kinds.ts';
import { marksOf } from '../shared/figure/marks.ts';
import { withKindsBeside } from '../shared/kinds-beside.ts';
import { bothAtLevel, lackingAtLevel } from '../shared/level/counted.ts';
import { levelSaid } from '../shared/level/said.ts';
import { isMentioned } from '../shared/mentioned.ts';
import { partedInput, recordsFor } from '../shared/options/mixtures.ts';
import { pooledKinds } from '../shared/pooled/shares.ts';
import { lossesIn } from '../shared/survival/compute.ts';
import type { Loss } from '../shared/survival/found.ts';
import { toldAt } from '../verdicts.ts';
import { chooseTest, isCarried } from './choose-test.ts';
import { countedOtherwise } from './counted-otherwise.ts';
import type { Bases, Cell, CrosstabFound, QuotedCell, SmallLine } from './found.ts';
import { guarded } from './guarded.ts';
import { missingFor } from './missing.ts';
import type { CrosstabOptions } from './options.ts';
import { cramersInterval } from './strength-limits.ts';

/** Below this many records a row or column is not quoted as evidence. */
const FEWEST_QUOTED = 5;
/** Up to tables of three by four the limits of V hold as asked where few are expected too (docs/methods/crosstab.md). */
const DF_THAT_HOLD = 6;

/**
 * Which kinds go with which? Counts of two attributes, their association, its strength, the cells that
 * carry it, and whether the verdict stands when the table is counted otherwise. Kinds are counted at the level
 * that all compared have in common. Records that lack either are set aside and counted.
 *
 * @throws InputError for numbers, and when either attribute has fewer than two values.
 */
export function computeCrosstab(given: AnalysisInput, options: CrosstabOptions): CrosstabFound {
  const both = [options.rows, options.columns];
  const asked = withKindsBeside(
    given,
    both,
    both.filter((id) => id !== 'kind'),
  );
  const { input, parts, counted: mixtures } = partedInput(asked, [options.rows, options.columns], options);
  const { records, register, unit, random } = input;
  const counted = bothAtLevel(records, options.rows, options.columns, register, options.level);
  const { table, other } = counted;
  const level = levelSaid(options.level, counted.found);
  const found = association(table.counts);
  if ('why' in found) throw new Error(`a table without empty lines has an association: ${found.why}`);
  const labelOf = (id: string) =>
    register.attributes.get(id)?.label ?? (id === 'assemblage' ? 'Assemblage' : id);
  const test = chooseTest(table, found, options, random.stream('test'));
  asked.onProgress?.(0.4, 'drawing items');
  const told = toldAt('why' in test ? test : test.p, options.confidence);
  const otherwise =
    told === 'cannot be told'
      ? []
      : countedOtherwise(
          table,
          counted,
          lookAlikeKinds(table, records, register),
          options,
          random.stream('counted otherwise'),
        );
  // How closely somebody recorded is no evidence, whatever was asked for.
  const quotable = options.level === 'recorded' && other !== null && !('why' in other) ? other : table;
  const standsBeyond = normalQuantileUpper((1 - options.confidence) / 2);
  const losses = lossesIn(records, quotable, options, register);
  const quoted = quotedCells(quotable, standsBeyond, losses, basesOf(quotable, parts).rows);
  const more = quoted.filter(({ stands }) => stands === 'more');
  const named = more.length > 0 ? more : quoted;
  const cells = cellsOf(input, table, found, standsBeyond);
  const behind = (rows: readonly number[]) =>
    countBehind(input.fragments, asked.records, unit, recordsFor(parts, rows));
  const bases = basesOf(table, parts);
  const here = behind(table.entries.map(({ record }) => record));
  const setAside = lackingAtLevel(counted, labelOf).map(({ reason, rows }) => ({
    reason,
    fragments: behind(rows).fragments,
  }));
  const aside = setAside.reduce((sum, { fragments }) => sum + fragments, 0);
  return {
    options,
    unit,
    rowsLabel: labelOf(options.rows),
    columnsLabel: labelOf(options.columns),
    table,
    marks: marksOf(input, options.columns, level.folds),
    level,
    mixtures,
    bases,
    // Bounds and pooling are of records that count once.
    bounds: mixtures !== null ? [] : shareBounds(records, options.columns, [options.rows], register),
    pooled:
      mixtures !== null
        ? null
        : pooledKinds(
            { id: options.columns, label: labelOf(options.columns) },
            table.rows.map((label, row) => ({
              label,
              counts: new Map(table.columns.map((kind, column) => [kind, table.counts[row][column]])),
            })),
          ),
    association: found,
    test,
    told,
    otherwise,
    hangsOn: otherwise.filter((one) => one.told !== told),
    interval: cramersInterval(table, found, options, random.stream('interval')),
    cells,
    standsBeyond,
    quoted,
    named,
    smallLines: smallLines(table),
    thin: found.df > DF_THAT_HOLD && !isCarried(table, found),
    doubtful: !('why' in test) && test.asked && test.name === 'chi-square' && !isCarried(table, found),
    losses,
    guard: guarded(input, table, { told, named }, options),
    missing: mixtures === null ? missingFor(records, table, { test, told }, options, register) : null,
    manyAside: isMentioned(aside / here.fragments, 'setAside') ? aside : null,
    n: { ...here, setAside },
  };
}

function cellsOf(
  input: AnalysisInput,
  table: CrossedTable,
  { expected, residuals, contributions }: Association,
  beyond: number,
): Cell[][] {
  return table.rows.map((_, row) =>
    table.columns.map((__, column): Cell => {
      const own = table.entries.filter((entry) => entry.row === row && entry.column === column);
      const residual = residuals[row][column];
      return {
        count: table.counts[row][column],
        ...countBehind(
          input.fragments,
          input.records,
          input.unit,
          own.map(({ record }) => record),
        ),
        expected: expected[row][column],
        residual,
        contribution: contributions[row][column],
        stands: residual >= beyond ? 'more' : residual <= -beyond ? 'fewer' : 'as expected',
      };
    }),
  );
}

/** The records of each row and column and of all, of which shares are taken: of mentions where no record counts twice. */
function basesOf({ rows, columns, entries }: CrossedTable, parts: ByParts | null): Bases {
  const of = (own: CrossedTable['entries']) =>
    recordsFor(
      parts,
      own.map(({ record }) => record),
    ).length;
  return {
    rows: rows.map((_, at) => of(entries.filter(({ row }) => row === at))),
    columns: columns.map((_, at) => of(entries.filter(({ column }) => column === at))),
    all: of(entries),
  };
}

function quotedCells(
  table: CrossedTable,
  beyond: number,
  losses: readonly Loss[],
  bases: readonly number[],
): QuotedCell[] {
  const found = association(table.counts);
  if ('why' in found) return [];
  const sums = margins(table.counts);
  return found.residuals
    .flatMap((line, row) => line.map((residual, column) => ({ residual, row, column })))
    .filter(
      ({ residual, row, column }) =>
        Math.abs(residual) >= beyond && Math.min(sums.rows[row], sums.columns[column]) >= FEWEST_QUOTED,
    )
    .sort((a, b) => Math.abs(b.residual) - Math.abs(a.residual))
    .map(({ residual, row, column }) => {
      const cell = {
        row: table.rows[row],
        column: table.columns[column],
        stands: residual > 0 ? ('more' as const) : ('fewer' as const),
        count: table.counts[row][column],
        of: bases[row],
      };
      return { ...cell, lost: lostBehind(cell, losses) };
    });
}

/** The fibre itself that could not survive where it is scarce; another that could not where it is plenty. */
function lostBehind(
  { row, column, stands }: Pick<QuotedCell, 'row' | 'column' | 'stands'>,
  losses: readonly Loss[],
): QuotedCell['lost'] {
  const here = losses.filter(({ place }) => place === row || place === column);
  const own = here.find(({ kinds }) => kinds.includes(row) || kinds.includes(column));
  if (stands === 'fewer') return own ?? null;
  return own === undefined ? (here[0] ?? null) : null;
}

function smallLines({ rows, columns, counts }: CrossedTable): SmallLine[] {
  const sums = margins(counts);
  return [
    ...rows.map((label, row) => ({ label, records: sums.rows[row] })),
    ...columns.map((label, column) => ({ label, records: sums.columns[column] })),
  ].filter(({ records }) => records < FEWEST_QUOTED);
}
