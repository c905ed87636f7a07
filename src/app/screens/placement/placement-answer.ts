import type { ResultTable, TableCell } from '../../../analyses/contract.ts';
import type { AnalysisResult } from '../../../study/results/results.ts';
import type { CutLabel, CutLevel } from '../../parts/pictures/cut-chart.tsx';

/** What the screen shows of a placement, taken out of its tables. */

export interface NeighbourRow {
  readonly rank: number;
  readonly id: string;
  readonly distance: number;
  /** Block -> what it adds to the distance; null where it could not be compared. */
  readonly blocks: Readonly<Record<string, number | null>>;
  /** The least and the greatest that broad terms allow. */
  readonly span: readonly [number, number] | null;
  readonly notCompared: string;
  /** "3 of 4": attributes that both have, of those that the find has. */
  readonly comparedOn: string;
  readonly source: string;
}

export interface PlacementAnswer {
  readonly neighbours: readonly NeighbourRow[];
  /** Attribute of labels -> its labels, likeliest first, with their p values and what is said of them at each level. */
  readonly labelSets: ReadonlyMap<string, { readonly title: string; readonly labels: readonly CutLabel[] }>;
  /** Levels at which labels were judged, lowest first. */
  readonly levels: readonly CutLevel[];
  /** The set of labels that may hold the find, in words. */
  readonly setAt: (attribute: string, level: number) => string | null;
  /** How often such sets held the true label when finds were simulated, in words. */
  readonly simulatedAt: (attribute: string, level: number) => string | null;
  /** How often the order of an attribute's labels is right, in words. */
  readonly orderOf: (attribute: string) => string | null;
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
    levels: levelsOf(result.tables.sets),
    setAt: (attribute, level) => saidAt(result.tables.sets, 'set', attribute, level),
    simulatedAt: (attribute, level) => saidAt(result.tables.simulated, 'said', attribute, level),
    orderOf: (attribute) => {
      const { order } = result.tables;
      const row = order?.rows.find((one) => one[at(order, 'attribute')] === attribute);
      return row === undefined ? null : text(row[at(order, 'said')]);
    },
  };
}

/** The text in a column of the row of an attribute and a level. */
function saidAt(
  table: ResultTable | undefined,
  column: string,
  attribute: string,
  level: number,
): string | null {
  const row = table?.rows.find(
    (one) => one[at(table, 'attribute')] === attribute && one[at(table, 'level')] === level,
  );
  return row === undefined ? null : text(row[at(table, column)]);
}

function levelsOf(table: ResultTable | undefined): readonly CutLevel[] {
  const levels = new Map<number, CutLevel>();
  for (const row of table?.rows ?? []) {
    const level = number(row[at(table, 'level')]);
    if (level !== null) levels.set(level, { level, asked: row[at(table, 'asked')] === true });
  }
  return [...levels.values()];
}

function neighboursOf(table: ResultTable | undefined): NeighbourRow[] {
  if (table === undefined) return [];
  const column = (name: string) => at(table, name);
  return table.rows.map((row, i) => ({
    rank: number(row[column('rank')]) ?? i + 1,
    id: text(row[column('id')]),
    distance: number(row[column('distance')]) ?? 0,
    span: spanOf(number(row[column('least')]), number(row[column('greatest')])),
    blocks: Object.fromEntries(
      BLOCKS.filter((block) => column(block) >= 0).map((block) => [block, number(row[column(block)])]),
    ),
    notCompared: text(row[column('notCompared')]),
    comparedOn: `${text(row[column('shared')])} of ${text(row[column('of')])}`,
    source: text(row[column('source')]),
  }));
}

/** From where to where the distance goes as broad terms are read; null where it is one number. */
function spanOf(least: number | null, greatest: number | null): NeighbourRow['span'] {
  return least === null || greatest === null || least === greatest ? null : [least, greatest];
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
      verdicts: new Map(
        table.columns.flatMap(({ id }, place) =>
          /^at\d/.test(id) ? [[Number(id.slice(2)) / 100, text(row[place])] as const] : [],
        ),
      ),
    });
    sets.set(attribute, set);
  }
  return sets;
}
