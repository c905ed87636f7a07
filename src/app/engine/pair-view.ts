import { z } from 'zod';
import { nearestMedoids } from '../../analyses/grouping/nearest-medoids.ts';
import {
  comparisonOptions,
  comparisonSettings,
  skewedOption,
} from '../../analyses/shared/options/comparison.ts';
import { COMPARED_BLOCKS, compareRecords } from '../../fragments/comparison/comparison.ts';
import { explainPair } from '../../numerics/dissimilarity/explain-pair.ts';
import type { Prepared } from '../../study/prepare.ts';
import { readingWords } from './record-view.ts';
import type { PairView } from './views/records.ts';

const compared = z.object({ ...comparisonOptions, skewed: skewedOption });
const known = (value: number) => (Number.isNaN(value) ? null : value);

/** Who belongs to which medoid under the options of the study's one analysis. */
export function nearestGroups(prepared: Prepared, medoids: readonly string[]): ReadonlyMap<string, number> {
  const { records, register, study } = prepared;
  const settings = comparisonSettings(compared.parse(study.analyses[0]));
  const groups = nearestMedoids(records, register, settings, medoids);
  return new Map(records.id.flatMap((id, row) => (groups[row] < 0 ? [] : [[id, groups[row]] as const])));
}

/** Why two records are as alike as they are, under the options of the study's one analysis. */
export function explainRecords(prepared: Prepared, left: string, right: string): PairView {
  const { records, register, study } = prepared;
  const settings = comparisonSettings(compared.parse(study.analyses[0]));
  const comparison = compareRecords(records, register, settings);
  const [i, j] = [records.id.indexOf(left), records.id.indexOf(right)];
  const why = explainPair(comparison.spec, i, j);
  const total = Number.isNaN(why.dissimilarity) ? 0 : why.dissimilarity;
  const words = (id: string, row: number) => {
    const column = records.columns.get(id);
    return column === undefined ? '' : readingWords(register, column, row);
  };
  return {
    distance: known(why.dissimilarity),
    blocks: why.blocks.map((block) => ({
      block: settings.mode === 'plain' ? 'all attributes' : (COMPARED_BLOCKS[block.block] ?? ''),
      distance: known(block.distance),
      share: Number.isNaN(block.distance) || total === 0 ? null : block.contribution / total,
    })),
    attributes: why.variables.map((variable) => {
      const attribute = comparison.attributes[variable.variable]?.attribute;
      const id = attribute?.id ?? '';
      return {
        label: attribute?.label ?? id,
        block: COMPARED_BLOCKS[variable.block] ?? '',
        left: words(id, i),
        right: words(id, j),
        distance: known(variable.distance),
        share: Number.isNaN(variable.distance) || total === 0 ? null : variable.contribution / total,
      };
    }),
  };
}
