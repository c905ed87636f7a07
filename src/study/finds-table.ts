import type { ResultTable, TableCell } from '../analyses/contract.ts';
import { printTurn } from '../analyses/phrasing.ts';
import { LEVELS } from '../analyses/placement/options.ts';
import type { ListedFind } from './listed-finds.ts';
import type { AnalysisResult } from './results.ts';

/** One find of a table with its whole answer. */
export interface PlacedFind extends ListedFind {
  readonly result: AnalysisResult;
}

/** What a placement says of one attribute of labels at its level. */
export interface SetInShort {
  readonly attribute: string;
  readonly kept: readonly string[];
  readonly tooFew: readonly string[];
  readonly judged: number;
}

/** Level, in per cent, at which a placement's sets are told in short. */
export function levelInShort({ options }: Pick<AnalysisResult, 'options'>): number {
  return Math.round(100 * (LEVELS.find((known) => known === options.level) ?? 0.9));
}

/** For each attribute the labels that cannot be excluded, and those too few to judge. */
export function setsInShort(result: AnalysisResult): readonly SetInShort[] {
  const at = `at${levelInShort(result)}`;
  const lines = recordsOf(result.tables.typicality);
  return [...new Set(lines.map(({ attribute }) => String(attribute)))].map((attribute) => {
    const own = lines.filter((line) => line.attribute === attribute);
    const named = (test: (cell: TableCell | undefined) => boolean) =>
      own.filter((line) => test(line[at])).map(({ label }) => String(label));
    const tooFew = named((cell) => typeof cell === 'object' || cell === 'too few to judge');
    return {
      attribute,
      kept: named((cell) => cell === 'cannot be excluded'),
      tooFew,
      judged: own.length - tooFew.length,
    };
  });
}

/** One line a find: its nearest comparandum, and what cannot be excluded; why not, where it could not be placed. */
export function findsTable(placed: readonly PlacedFind[]): ResultTable {
  const sets = placed.map(({ result }) => setsInShort(result));
  const attributes = [...new Set(sets.flat().map(({ attribute }) => attribute))];
  const level = placed[0] === undefined ? 90 : levelInShort(placed[0].result);
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
        label: `${attribute} not excluded at ${level} %`,
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
        ...attributes.map((attribute) => said(sets[find].find((one) => one.attribute === attribute))),
        result.words.unless.map(printTurn).join(' '),
      ];
    }),
    note: 'Each find is compared on what is known of it, so that finds with more gaps rest on less. Labels with too few records to judge are neither in nor out and not listed.',
  };
}

function said(set: SetInShort | undefined): TableCell {
  if (set === undefined || set.judged === 0) return { why: 'too few to judge' };
  return set.kept.length > 0 ? set.kept.join(', ') : 'none of those that can be judged';
}

/** Rows of a table as records by column. */
export function recordsOf(table: ResultTable | undefined): Record<string, TableCell>[] {
  return (table?.rows ?? []).map((row) =>
    Object.fromEntries(row.map((cell, place) => [table?.columns[place]?.id ?? '', cell])),
  );
}
