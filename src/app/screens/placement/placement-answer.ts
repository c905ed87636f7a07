import type { ResultTable, TableCell } from '../../../analyses/contract.ts';
import type { AnalysisResult } from '../../../study/results.ts';
import type { CutLabel } from '../../parts/cut-chart.tsx';

/** What the screen shows of a placement, taken out of its tables. */

export interface Neighbour {
  readonly rank: number;
  readonly id: string;
  readonly distance: number;
  /** Block -> what it adds to the distance; null where it could not be compared. */
  readonly blocks: Readonly<Record<string, number | null>>;
  readonly notCompared: string;
  readonly source: string;
}

export interface PlacementAnswer {
  readonly neighbours: readonly Neighbour[];
  /** Attribute of labels -> its labels with their p values. */
  readonly labelSets: ReadonlyMap<string, { readonly title: string; readonly labels: readonly CutLabel[] }>;
}

const BLOCKS = ['structure', 'spacing', 'fibre', 'find', 'context'];

const at = (table: ResultTable | undefined, name: string) =>
  table?.columns.findIndex((column) => column.id === name) ?? -1;
const text = (cell: TableCell | undefined) =>
  typeof cell === 'string' || typeof cell === 'number' ? String(cell) : '';
const number = (cell: TableCell | undefined) => (typeof cell === 'number' ? cell : null);

export function readPlacement(result: AnalysisResult): PlacementAnswer {
  return {
    neighbours: neighboursOf(result.tables.neighbours),
    labelSets: labelSetsOf(result.tables.typicality),
  };
}

function neighboursOf(table: ResultTable | undefined): Neighbour[] {
  if (table === undefined) return [];
  const column = (name: string) => at(table, name);
  return table.rows.map((row, i) => ({
    rank: number(row[column('rank')]) ?? i + 1,
    id: text(row[column('id')]),
    distance: number(row[column('distance')]) ?? 0,
    blocks: Object.fromEntries(
      BLOCKS.filter((block) => column(block) >= 0).map((block) => [block, number(row[column(block)])]),
    ),
    notCompared: text(row[column('notCompared')]),
    source: text(row[column('source')]),
  }));
}

function labelSetsOf(table: ResultTable | undefined): PlacementAnswer['labelSets'] {
  const sets = new Map<string, { title: string; labels: CutLabel[] }>();
  if (table === undefined) return sets;
  for (const row of table.rows) {
    const attribute = text(row[at(table, 'attribute')]);
    const p = row[at(table, 'p')];
    const set = sets.get(attribute) ?? { title: attribute, labels: [] };
    set.labels.push({
      label: text(row[at(table, 'label')]),
      n: number(row[at(table, 'n')]) ?? 0,
      p: number(p),
      ...(typeof p === 'object' && p !== null ? { why: p.why } : {}),
    });
    sets.set(attribute, set);
  }
  for (const set of sets.values()) set.labels.sort((a, b) => (b.p ?? -1) - (a.p ?? -1));
  return sets;
}
