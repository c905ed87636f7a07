import type { ResultTable, TableCell } from '../analyses/contract.ts';
import { printLevel, printTurn } from '../analyses/phrasing.ts';
import type { ListedFind } from './listed-finds.ts';
import type { AnalysisResult } from './results/results.ts';

/** One find of a table with its whole answer. */
export interface PlacedFind extends ListedFind {
  readonly result: AnalysisResult;
}

/** What a placement says of one attribute of labels at its level, as its table of sets has it. */
export interface SetInShort {
  readonly attribute: string;
  readonly level: number;
  /** "Ness, Holm; too few to exclude: Skerry"; "none of these". */
  readonly said: string;
}

/** The sets at the level that a placement was asked for. */
export function setsInShort(result: AnalysisResult): readonly SetInShort[] {
  return recordsOf(result.tables.sets)
    .filter(({ asked }) => asked === true)
    .map(({ attribute, level, set }) => ({
      attribute: String(attribute),
      level: Number(level),
      said: String(set),
    }));
}

/** One line a find: its nearest comparandum, and what cannot be excluded; why not, where it could not be placed. */
export function findsTable(placed: readonly PlacedFind[]): ResultTable {
  const sets = placed.map(({ result }) => setsInShort(result));
  const attributes = [...new Set(sets.flat().map(({ attribute }) => attribute))];
  const levelOf = (attribute: string) => sets.flat().find((one) => one.attribute === attribute)?.level ?? 0;
  return {
    title: 'The finds of the table',
    columns: [
      { id: 'find', label: 'find' },
      { id: 'row', label: 'row' },
      { id: 'nearest', label: 'nearest comparandum' },
      { id: 'assemblage', label: 'of' },
      { id: 'distance', label: 'distance' },
      ...attributes.map((attribute, place) => ({
        id: `set${place + 1}`,
        label: `${attribute} not excluded at ${printLevel(levelOf(attribute))}`,
      })),
      { id: 'cautions', label: 'to mind' },
    ],
    rows: placed.map(({ name, row, result }, find): TableCell[] => {
      const [nearest] = recordsOf(result.tables.neighbours);
      const why = { why: result.why ?? result.words.answer };
      if (nearest === undefined)
        return [name, row, why, ...Array.from({ length: attributes.length + 3 }, () => null)];
      return [
        name,
        row,
        nearest.id ?? null,
        nearest.assemblage ?? null,
        nearest.distance ?? null,
        ...attributes.map((attribute) => sets[find].find((one) => one.attribute === attribute)?.said ?? null),
        result.words.unless.map(printTurn).join(' '),
      ];
    }),
    note: 'Each find is compared on what is known of it, so that finds with more gaps rest on less. Labels with too few records to exclude stay in the set.',
  };
}

/** Rows of a table as records by column. */
export function recordsOf(table: ResultTable | undefined): Record<string, TableCell>[] {
  return (table?.rows ?? []).map((row) =>
    Object.fromEntries(row.map((cell, place) => [table?.columns[place]?.id ?? '', cell])),
  );
}
