import { countBehind } from '../../fragments/behind.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { AnalysisInput } from '../contract.ts';
import { inSentence, printSome } from '../phrasing.ts';
import type { PlacementFound } from './found.ts';
import type { PlacementOptions } from './options.ts';

/** What a record of the comparanda stands for, when the find is set among them. */
export function standsFor(
  { fragments, unit }: AnalysisInput,
  { findIs }: PlacementOptions,
  drawn: boolean,
): PlacementFound['standsFor'] {
  if (drawn) return 'one fragment an item';
  if (findIs === 'item' && unit === 'fragment' && new Set(fragments.item).size < fragments.rows)
    return 'dependent fragments';
  return unit === 'item' && findIs === 'item' ? 'whole items' : 'independent records';
}

/** Labels of what the find and some comparandum have, free text left out. */
function recordedOfBoth(records: FragmentTable, find: FragmentTable): readonly string[] {
  return [...find.columns].flatMap(([id, column]) => {
    const theirs = records.columns.get(id);
    if (column.kind === 'text' || theirs === undefined || theirs.kind === 'text') return [];
    if (isMissing(column, 0) || !theirs.state.some((_, row) => !isMissing(theirs, row))) return [];
    return [column.attribute.label];
  });
}

/** The answer where the find has nothing to be compared by. */
export function nothingPlaced(
  input: AnalysisInput,
  base: Pick<PlacementFound, 'options' | 'unit' | 'standsFor' | 'lacking' | 'notes'>,
  known: number,
  find: FragmentTable,
): PlacementFound {
  const notAsked = recordedOfBoth(input.records, find);
  const why =
    known > 0
      ? 'no record has a value of any attribute that is known of the find'
      : notAsked.length > 0
        ? `what is known of it (${printSome(notAsked.map(inSentence), 3)}) is not among what is compared`
        : 'nothing is known of the find that the comparanda record too';
  const all = Array.from({ length: input.records.rows }, (_, row) => row);
  const { fragments } = countBehind(input.fragments, input.records, input.unit, all);
  return {
    ...base,
    unplaced: why,
    comparedOn: [],
    lacked: { records: 0, of: 0, attributes: [] },
    circular: [],
    neighbours: [],
    lessKnown: null,
    broad: null,
    percentiles: [],
    judged: [],
    marks: new Map(),
    rankings: [],
    sets: [],
    guarded: [],
    simulated: [],
    anywhere: { why },
    novelty: [],
    moves: [],
    next: [],
    position: { why },
    n: { fragments: 0, items: 0, setAside: [{ reason: 'nothing in common with the find', fragments }] },
  };
}
