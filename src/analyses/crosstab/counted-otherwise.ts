import type { Register } from '../../attributes/definition.ts';
import { isWithin } from '../../attributes/tree.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { association, margins } from '../../numerics/tests/contingency.ts';
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

/**
 * The same question with narrower kinds folded into the broad kinds that stand beside them, and with each
 * row and column left out in turn: does the verdict stand?
 */
export function countedOtherwise(
  table: CrossedTable,
  folded: CrossedTable | null,
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
  return [
    ...(folded === null ? [] : [ask('broad kinds folded', table.nested, folded)]),
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

/** Narrower kinds counted under the broadest kind beside them; null where none stand beside each other. */
export function foldBroad(
  table: CrossedTable,
  options: CrosstabOptions,
  register: Register,
): CrossedTable | null {
  if (table.nested.length === 0) return null;
  const fold = (attribute: string, labels: readonly string[]): string[] => {
    const name = register.attributes.get(attribute)?.vocabulary;
    const vocabulary = name === undefined ? undefined : register.vocabularies.get(name);
    if (vocabulary === undefined) return [...labels];
    const idOf = (label: string) => vocabulary.terms.find((term) => term.label === label)?.id;
    const contains = (broad: string, label: string) => {
      const [outer, inner] = [idOf(broad), idOf(label)];
      return (
        outer !== undefined && inner !== undefined && outer !== inner && isWithin(vocabulary, inner, outer)
      );
    };
    const broadest = labels.filter((label) => !labels.some((other) => contains(other, label)));
    return labels.map((label) => broadest.find((broad) => contains(broad, label)) ?? label);
  };
  const rows = fold(options.rows, table.rows);
  const columns = fold(options.columns, table.columns);
  const [down, across] = [[...new Set(rows)], [...new Set(columns)]];
  const entries = table.entries.map((entry) => ({
    ...entry,
    row: down.indexOf(rows[entry.row]),
    column: across.indexOf(columns[entry.column]),
  }));
  return recount(table, down, across, entries);
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
