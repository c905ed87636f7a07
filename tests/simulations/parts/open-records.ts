import { readFileSync } from 'node:fs';
import { compareRecords } from '../../../src/fragments/comparison/comparison.ts';
import { groupRows } from '../../../src/fragments/groups.ts';
import type { DissimilaritySpec } from '../../../src/numerics/dissimilarity/variables.ts';
import { loadStudy, studyFiles } from '../../../src/study/load.ts';
import { prepareStudy } from '../../../src/study/prepare.ts';

export interface OpenRecords {
  readonly spec: DissimilaritySpec;
  /** The records of each label. */
  readonly groups: readonly { readonly label: string; readonly rows: readonly number[] }[];
}

/** An open data set under datasets/open, its records compared on `of` as a placement compares them, parted by `by`. */
export function openRecords(name: string, of: readonly string[], by: string): OpenRecords {
  const folder = new URL('../../../datasets/open/', import.meta.url);
  const study = loadStudy(readFileSync(new URL(`${name}-study.json`, folder), 'utf8'), `${name}-study.json`);
  const files = new Map(
    studyFiles(study).map((file) => [file, new Uint8Array(readFileSync(new URL(file, folder)))] as const),
  );
  const { records, register } = prepareStudy(study, files);
  const { spec } = compareRecords(records, register, {
    of,
    weights: {},
    attributeWeights: {},
    mode: 'blocks',
    intervals: 'midpoint',
    ordinal: 'ranks',
    scaling: 'range',
    minimumOverlap: 0,
  });
  const { groups } = groupRows(records, [by], register);
  return { spec, groups: groups.map(({ rows, labels }) => ({ rows, label: labels[0] })) };
}
