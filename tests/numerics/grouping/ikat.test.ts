import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Condensed } from '../../../src/numerics/condensed.ts';
import { dissimilarities } from '../../../src/numerics/dissimilarity.ts';
import { linkage } from '../../../src/numerics/grouping/linkage.ts';
import { copheneticCorrelation } from '../../../src/numerics/grouping/tree.ts';

/**
 * 36 weaving traditions by 110 traits (Buckley 2012, PLOS ONE 7(12) e52064, figshare 115810, CC BY; read where
 * it lies, passed over where it is absent). Reference values by scipy, from the folder's reference_values.json.
 */
const folder = new URL('../../../../shared/real/ikat-textiles/', import.meta.url);
const present = existsSync(folder);

function presenceMatrix(file: string): Condensed {
  const lines = readFileSync(new URL(file, folder), 'utf8').trim().split(/\r?\n/).slice(1);
  const cells = lines.map((line) => line.split(',').slice(1));
  const code = (text: string) => (['1', 'TRUE'].includes(text) ? 1 : ['0', 'FALSE'].includes(text) ? 0 : -1);
  return dissimilarities({
    variables: cells[0].map((_, column) => ({
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
  it('give the same dissimilarities and merges in both codings, and the reference cophenetic correlation', () => {
    const expected = JSON.parse(readFileSync(new URL('reference_values.json', folder), 'utf8'));
    const digits = presenceMatrix('ikat_Data_S1.csv');
    const words = presenceMatrix('textiles_ikat_seasia_decoded.csv');
    expect(words).toEqual(digits);
    const tree = linkage(digits, 'average');
    expect(linkage(words, 'average')).toEqual(tree);
    // The reference is printed to 8 digits.
    expect(Math.abs((copheneticCorrelation(digits, tree) ?? 0) - expected.coph_average)).toBeLessThan(5e-9);
  });
});
