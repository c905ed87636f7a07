import { termAt } from '../../fragments/accessors.ts';
import { COMPARED_BLOCKS, type Comparison } from '../../fragments/comparison/comparison.ts';
import { termLabel } from '../../fragments/groups.ts';
import { isMissing } from '../../fragments/missing.ts';
import { pickVariables } from '../../numerics/dissimilarity/dissimilarity.ts';
import { explainPairTo } from '../../numerics/dissimilarity/explain-pair.ts';
import type { RecordValue } from '../../numerics/dissimilarity/variables.ts';
import type { AnalysisInput } from '../contract.ts';
import type { Neighbour } from './found.ts';

/** The comparanda at these rows, each with the reasons of its distance. */
export function nearestNeighbours(
  input: AnalysisInput,
  comparison: Comparison,
  known: readonly number[],
  record: readonly RecordValue[],
  rows: readonly number[],
  distances: Float64Array,
  bounds: { readonly least: Float64Array; readonly greatest: Float64Array },
): readonly Neighbour[] {
  const { records } = input;
  const spec = pickVariables(comparison.spec, known);
  const used = COMPARED_BLOCKS.map((_, block) => block).filter((block) =>
    comparison.spec.variables.some((variable) => variable.block === block),
  );
  return rows.map((row) => {
    const pair = explainPairTo(spec, record, row);
    const origin = records.origin[row];
    return {
      row,
      id: records.id[row],
      item: records.item[row],
      assemblage: records.assemblage[row],
      distance: distances[row],
      least: bounds.least[row],
      greatest: bounds.greatest[row],
      blocks: used.map((block) => {
        const parts = pair.variables.filter((part) => part.block === block && part.state === 'compared');
        const contribution = parts.reduce((sum, part) => sum + part.contribution, 0);
        return { block: COMPARED_BLOCKS[block], contribution: parts.length > 0 ? contribution : null };
      }),
      notCompared: pair.variables
        .filter((part) => part.state === 'unknown')
        .map((part) => comparison.attributes[known[part.variable]].attribute.label),
      shared: pair.variables.filter(({ state }) => state === 'compared' || state === 'both absent').length,
      of: pair.variables.filter(({ state }) => state !== 'said already' && state !== 'no weight').length,
      source: records.sources[origin.source] ?? '',
      sourceRow: origin.row,
      use: textAt(input, 'recordedUse', row),
      useBasis: textAt(input, 'useBasis', row),
    };
  });
}

function textAt({ records, register }: AnalysisInput, id: string, row: number): string {
  const column = records.columns.get(id);
  if (column === undefined || column.kind === 'numeric' || isMissing(column, row)) return '';
  if (column.kind === 'text') return column.raw[row].trim();
  const term = termAt(column, row);
  return term === null ? '' : termLabel(column.attribute, term, register);
}
