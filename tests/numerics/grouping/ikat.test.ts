import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Condensed } from '../../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { linkage } from '../../../src/numerics/grouping/linkage.ts';
import {
  copheneticCorrelation,
  copheneticDissimilarities,
  cutTree,
} from '../../../src/numerics/grouping/tree.ts';
import { reference } from '../../references/reference.ts';
import { relativeError, renumbered } from './helpers.ts';

/**
 * 36 weaving traditions by 110 traits (Buckley 2012, PLOS ONE 7(12) e52064, figshare 115810, CC BY; read where
 * it lies, passed over where it is absent). Reference trees by R hclust and by scipy, each on its own
 * Jaccard dissimilarity; only their numbers are kept here.
 */
const folder = new URL('../../../../shared/real/ikat-textiles/', import.meta.url);
const present = existsSync(folder);

const METHODS = ['average', 'complete', 'single', 'mcquitty', 'ward'] as const;
type Method = (typeof METHODS)[number];

const r = reference<{
  readonly dissimilarities: readonly number[];
  readonly trees: Readonly<
    Record<
      Method,
      {
        readonly heights: readonly number[];
        readonly correlation: readonly [number];
        readonly cuts: readonly { readonly k: number; readonly membership: readonly number[] }[];
      }
    >
  >;
}>('ikat');
const scipy = reference<{
  readonly columns: readonly number[];
  readonly trees: Readonly<
    Record<
      Method,
      {
        readonly merges: readonly (readonly number[])[];
        readonly tied: boolean;
        readonly cophenetic: readonly number[];
      }
    >
  >;
}>('ikat-merges');

function presenceMatrix(file: string, columns?: readonly number[]): Condensed {
  const lines = readFileSync(new URL(file, folder), 'utf8').trim().split(/\r?\n/).slice(1);
  const cells = lines.map((line) => line.split(',').slice(1));
  const code = (text: string) => (['1', 'TRUE'].includes(text) ? 1 : ['0', 'FALSE'].includes(text) ? 0 : -1);
  return dissimilarities({
    variables: (columns ?? cells[0].map((_, column) => column)).map((column) => ({
      kind: 'presence',
      codes: Int32Array.from(cells, (row) => code(row[column])),
      block: 0,
      weight: 1,
    })),
    blockWeights: [1],
    mode: 'blocks',
    intervals: 'midpoint',
    minimumOverlap: 0,
  });
}

describe.skipIf(!present)('ikat traditions (passed over where ../shared/real is absent)', () => {
  const digits = present ? presenceMatrix('ikat_Data_S1.csv') : { n: 0, values: new Float64Array(0) };

  it('give the same dissimilarities and merges in both codings', () => {
    const words = presenceMatrix('textiles_ikat_seasia_decoded.csv');
    expect(words).toEqual(digits);
    for (const method of METHODS) expect(linkage(words, method)).toEqual(linkage(digits, method));
  });

  it('have the dissimilarities of R dist, and the cophenetic correlation that the data set states', () => {
    expect(relativeError(digits.values, r.dissimilarities)).toBeLessThan(1e-12);
    const stated = JSON.parse(readFileSync(new URL('reference_values.json', folder), 'utf8'));
    const found = copheneticCorrelation(digits, linkage(digits, 'average'));
    // It is printed to 8 digits.
    expect(Math.abs((found ?? 0) - stated.coph_average)).toBeLessThan(5e-9);
  });

  it.each(METHODS)(
    '%s: heights, cophenetic correlation and every cut that no tie can move of R hclust',
    (method) => {
      const tree = linkage(digits, method);
      const given = r.trees[method];
      expect(relativeError(tree.height, given.heights)).toBeLessThan(1e-9);
      expect(Math.abs((copheneticCorrelation(digits, tree) ?? 0) - given.correlation[0])).toBeLessThan(1e-9);
      for (const { k, membership } of given.cuts)
        expect(renumbered(cutTree(tree, k))).toEqual(renumbered(membership));
    },
  );

  it.each(METHODS)(
    '%s: merges of scipy without the one trait with a gap; cophenetic distances where heights tie',
    (method) => {
      const tree = linkage(presenceMatrix('ikat_Data_S1.csv', scipy.columns), method);
      const { merges, tied, cophenetic } = scipy.trees[method];
      expect(
        relativeError(
          tree.height,
          merges.map(([, , height]) => height),
        ),
      ).toBeLessThan(1e-9);
      expect(relativeError(copheneticDissimilarities(tree).values, cophenetic)).toBeLessThan(1e-9);
      if (tied) return;
      expect([...tree.first]).toEqual(merges.map(([first]) => first));
      expect([...tree.second]).toEqual(merges.map(([, second]) => second));
    },
  );
});
