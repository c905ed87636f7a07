import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { association, margins } from '../../numerics/tests/contingency.ts';
import type { LookAlikeKinds } from '../look-alike-kinds.ts';
import type { BothAtLevel } from '../shared/level/counted.ts';
import { toldAt } from '../verdicts.ts';
import { chooseTest } from './choose-test.ts';
import type { CountedOtherwise } from './found.ts';
import type { CrosstabOptions } from './options.ts';

/** Lines that are left out in turn: the largest ones, which could carry a verdict alone. */
const MOST_LINES = 12;
/** Random tables a trial; only whether it passes the level is asked of them. */
const TRIAL_TABLES = 499;
/** Search of the exact test in a trial. */
const TRIAL_VISITS = 500;

/** The same question at the other level, with look-alikes as one kind, and with each row and column left out in turn: does the verdict stand? */
export function countedOtherwise(
  table: CrossedTable,
  other: Pick<BothAtLevel, 'other' | 'found' | 'finer'>,
  alike: readonly LookAlikeKinds[],
  options: CrosstabOptions,
  random: Random,
): CountedOtherwise[] {
  const ask = (change: CountedOtherwise['change'], names: readonly string[], made: CrossedTable) =>
    asked(change, names, made, options, random.stream(JSON.stringify([change, names])));
  const sums = margins(table.counts);
  const lines = [
    ...(table.rows.length < 3 ? [] : table.rows.map((label, at) => ({ label, row: at, n: sums.rows[at] }))),
    ...(table.columns.length < 3
      ? []
      : table.columns.map((label, at) => ({ label, column: at, n: sums.columns[at] }))),
  ]
    .sort((a, b) => b.n - a.n)
    .slice(0, MOST_LINES);
  const { finer } = other;
  return [
    ...(finer === null
      ? []
      : [
          ask(
            'told more closely',
            finer.unfolded.flatMap(({ narrower }) => narrower),
            finer.table,
          ),
        ]),
    ...atOtherLevel(other, options, random.stream('other level')),
    ...alike.map(({ kinds, merged }): CountedOtherwise => {
      if (merged !== null) return ask('look-alikes as one', kinds, merged);
      const why = { why: 'nothing else is counted' };
      return { change: 'look-alikes as one', names: kinds, told: 'cannot be told', p: why, v: why };
    }),
    ...lines.map((line) =>
      ask(
        'line left out',
        [line.label],
        recount(
          table,
          table.rows,
          table.columns,
          table.entries.filter((entry) =>
            'row' in line ? entry.row !== line.row : entry.column !== line.column,
          ),
        ),
      ),
    ),
  ];
}

function atOtherLevel(
  { other, found }: Pick<BothAtLevel, 'other' | 'found'>,
  options: CrosstabOptions,
  random: Random,
): CountedOtherwise[] {
  if (other === null) return [];
  const change = options.level === 'recorded' ? 'at the common level' : 'as recorded';
  const names = found.folds.map(({ label }) => label);
  if ('why' in other) return [{ change, names, told: 'cannot be told', p: other, v: other }];
  return [asked(change, names, other, options, random)];
}

function asked(
  change: CountedOtherwise['change'],
  names: readonly string[],
  table: CrossedTable,
  options: CrosstabOptions,
  random: Random,
): CountedOtherwise {
  const found = association(table.counts);
  if ('why' in found) return { change, names, told: 'cannot be told', p: found, v: found };
  const settings = { ...options, relabellings: Math.min(options.relabellings, TRIAL_TABLES) };
  const test = chooseTest(table, found, settings, random, TRIAL_VISITS);
  const p = 'why' in test ? test : test.p;
  return { change, names, told: toldAt(p, options.confidence), p, v: found.cramersVCorrected };
}

/** The table of these entries, lines without any left out. */
function recount(
  table: CrossedTable,
  rows: readonly string[],
  columns: readonly string[],
  entries: CrossedTable['entries'],
): CrossedTable {
  const down = rows.map((_, at) => at).filter((at) => entries.some(({ row }) => row === at));
  const across = columns.map((_, at) => at).filter((at) => entries.some(({ column }) => column === at));
  const placed = entries.map((entry) => ({
    ...entry,
    row: down.indexOf(entry.row),
    column: across.indexOf(entry.column),
  }));
  const counts = down.map(() => across.map(() => 0));
  for (const { row, column } of placed) counts[row][column]++;
  return {
    ...table,
    rows: down.map((at) => rows[at]),
    columns: across.map((at) => columns[at]),
    counts,
    entries: placed,
  };
}
