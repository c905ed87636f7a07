import { compareRecords } from '../../../src/fragments/comparison/comparison.ts';
import type { DissimilaritySpec } from '../../../src/numerics/dissimilarity/variables.ts';
import { attribute, madeInput } from '../../analyses/grouping/made-table.ts';
import { reference } from '../../references/reference.ts';

interface Outcome {
  readonly right: number;
  readonly perLabel: Readonly<Record<string, number>>;
}

export interface LabelledTable {
  readonly source: string;
  readonly attributes: readonly string[];
  readonly values: readonly (readonly number[])[];
  readonly labels: readonly string[];
  /** Records whose label scikit-learn finds when they are left out, by classifier. */
  readonly accuracy: Readonly<Record<'nearest' | 'five nearest' | 'linear discriminants', Outcome>>;
}

/** Open tables with labels: tests/references/scripts/open-labels.py. */
export const labelledTables = reference<{ tables: Readonly<Record<string, LabelledTable>> }>(
  'open-labels',
).tables;

/** Such a table as a study would have it: numbers on their own scale, and the label as its site. */
export function inputOf(table: LabelledTable, labels: readonly string[] = table.labels) {
  return madeInput([
    { attribute: attribute('site', 'context', 'nominal'), values: labels },
    ...table.attributes.map((_, column) => ({
      attribute: attribute(`number${column + 1}`, 'spacing', 'interval'),
      values: table.values.map((row) => row[column]),
    })),
  ]);
}

export const numbersOf = (table: LabelledTable) => table.attributes.map((_, column) => `number${column + 1}`);

/** Its records compared as a placement compares them, and those of each label. */
export function comparedTable(table: LabelledTable): {
  readonly spec: DissimilaritySpec;
  readonly groups: readonly { readonly label: string; readonly rows: readonly number[] }[];
} {
  const { records, register } = inputOf(table);
  const { spec } = compareRecords(records, register, {
    of: numbersOf(table),
    weights: {},
    attributeWeights: {},
    mode: 'blocks',
    intervals: 'midpoint',
    ordinal: 'ranks',
    scaling: 'range',
    minimumOverlap: 0,
  });
  const groups = [...new Set(table.labels)].sort().map((label) => ({
    label,
    rows: table.labels.flatMap((own, row) => (own === label ? [row] : [])),
  }));
  return { spec, groups };
}
