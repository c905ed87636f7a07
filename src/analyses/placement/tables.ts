import type { ResultTable, TableCell } from '../contract.ts';
import { printLevel } from '../phrasing.ts';
import { guardTable } from '../shared/guard/tables.ts';
import type { PlacementFound } from './found.ts';
import { neighboursTable, usesTable } from './neighbour-tables.ts';
import { coordinatesTable, positionTable } from './position-tables.ts';
import { orderTable, setsTable, typicalityTable } from './sets-tables.ts';
import { simulatedTable } from './simulated-table.ts';

/** Every answer as a table; those without a row are left out. */
export function placementTables(found: PlacementFound): Readonly<Record<string, ResultTable>> {
  const all: Record<string, ResultTable> = {
    neighbours: neighboursTable(found),
    sets: setsTable(found),
    typicality: typicalityTable(found),
    order: orderTable(found),
    simulated: simulatedTable(found),
    novelty: noveltyTable(found),
    percentiles: percentilesTable(found),
    moves: movesTable(found),
    next: nextTable(found),
    uses: usesTable(found),
    position: positionTable(found),
    coordinates: coordinatesTable(found),
    ...guardTable(found.guarded.map(({ attribute, guard }) => ({ of: attribute, guard }))),
  };
  return Object.fromEntries(Object.entries(all).filter(([, table]) => table.rows.length > 0));
}

function noveltyTable({ novelty, options, anywhere }: PlacementFound): ResultTable {
  return {
    title: 'None of these?',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'p', label: 'greatest p of its labels' },
      { id: 'verdict', label: `some label at ${printLevel(options.noneLevel)}` },
      { id: 'tooFew', label: 'too few to judge' },
      { id: 'anywhere', label: 'p among all records' },
      { id: 'unseen', label: 'chance that the next record has an unseen label' },
      { id: 'unseenHigh', label: 'at most (95 %)' },
      { id: 'singletons', label: 'labels met once' },
    ],
    rows: novelty.map(({ attribute, greatest, verdict, tooFew, unseen }) => {
      const next: TableCell[] =
        'why' in unseen ? [unseen, unseen, unseen] : [unseen.chance, unseen.high, unseen.singletons];
      return [
        attribute,
        greatest,
        verdict,
        tooFew.join(', '),
        'why' in anywhere ? anywhere : anywhere.p,
        ...next,
      ];
    }),
    note: 'The chance of an unseen label is estimated by Good 1953 (after Turing), its limit by Esty 1983.',
  };
}

function percentilesTable({ percentiles }: PlacementFound): ResultTable {
  return {
    title: 'Where its measurements stand',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'unit', label: 'unit' },
      { id: 'by', label: 'grouped by' },
      { id: 'group', label: 'group' },
      { id: 'n', label: 'n' },
      { id: 'low', label: 'share surely below' },
      { id: 'high', label: 'share at or below, at most' },
      { id: 'outside', label: 'outside the observed range' },
    ],
    rows: percentiles.map(({ label, unit, by, group, bounds }) => {
      const head = [label, unit, by === '' ? 'all records' : by, group];
      if ('why' in bounds) return [...head, 0, bounds, bounds, bounds];
      return [...head, bounds.n, bounds.low, bounds.high, bounds.outside ?? 'no'];
    }),
    note: 'Ranges of the find and of the records are taken as they are, so the share has a lower and an upper bound.',
  };
}

function movesTable({ moves, options }: PlacementFound): ResultTable {
  return {
    title: 'How the answer moves',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'label', label: 'label' },
      { id: 'change', label: 'change' },
      { id: 'low', label: 'lowest p' },
      { id: 'high', label: 'highest p' },
      { id: 'turned', label: `verdict at ${printLevel(options.level)} differs` },
      { id: 'tried', label: 'tried' },
      { id: 'by', label: 'turned by' },
    ],
    rows: moves.map(({ attribute, label, change, lowest, highest, turned, tried, by }) => [
      attribute,
      label,
      change,
      lowest,
      highest,
      turned,
      tried,
      by.join(', '),
    ]),
  };
}

function nextTable({ next, options }: PlacementFound): ResultTable {
  const rows = [...next].sort((a, b) => b.now - b.expected - (a.now - a.expected));
  return {
    title: 'What to measure next',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'labels', label: 'labels of' },
      { id: 'now', label: 'not excluded now' },
      { id: 'expected', label: 'expected once measured' },
      { id: 'shrink', label: 'expected shrink' },
      { id: 'values', label: 'values tried' },
    ],
    rows: rows.map(({ label, of, now, expected, values }) => [
      label,
      of,
      now,
      expected,
      now - expected,
      values,
    ]),
    note:
      `Mean number of labels that cannot be excluded at ${printLevel(options.level)}, or are too few to judge, over the values ` +
      'of the nearest comparanda; each label judged by at most 80 records.',
  };
}
