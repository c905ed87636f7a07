import { describe, expect, it } from 'vitest';
import type { AnalysisInput } from '../../src/analyses/contract.ts';
import { printTurn } from '../../src/analyses/phrasing.ts';
import { computePlacement } from '../../src/analyses/placement/compute.ts';
import { placementOptions } from '../../src/analyses/placement/options.ts';
import { placementWords } from '../../src/analyses/placement/words.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import { defaultAttributes, defaultOfComplete } from '../../src/fragments/compared-by-default.ts';
import { compareRecords } from '../../src/fragments/comparison/comparison.ts';
import { deriveColumns } from '../../src/fragments/derive.ts';
import { recordedItself } from '../../src/fragments/follows-from.ts';
import { dissimilarityAt } from '../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../src/numerics/dissimilarity/dissimilarity.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { read } from '../sources/support.ts';

const register = defaultRegister();
const derived = (csv: string) => deriveColumns(read(csv).table, register);
const SETTINGS = {
  of: [],
  weights: {},
  attributeWeights: {},
  mode: 'blocks',
  intervals: 'midpoint',
  ordinal: 'ranks',
  scaling: 'range',
  minimumOverlap: 0,
} as const;

describe('a computed attribute that was recorded', () => {
  // One header and two cells for each attribute that a formula can fill.
  it.each([
    ['Row gap (mm)', 'rowGap', '4', '8'],
    ['gap ratio', 'gapRatio', '0.5', '2'],
    ['density ratio', 'balance', '1.4', '2'],
    ['cover1', 'cover1', '0.4', '0.6'],
    ['openness', 'openness', '0.2', '0.3'],
    ['turnsPerMetre1', 'turnsPerMetre1', '300', '400'],
    ['linearDensity1', 'linearDensity1', '300', '400'],
    ['bindingPoints', 'bindingPoints', '12', '40'],
  ])('"%s" takes part where nothing that it follows from is recorded', (header, id, one, other) => {
    const structure = id === 'bindingPoints' ? 'tabby' : 'twining';
    const table = derived(`Find no.,Structure,${header}\nA,${structure},${one}\nB,${structure},${other}\n`);
    expect(recordedItself(table)).toContain(id);
    expect(defaultAttributes(table)).toContain(id);
    expect(defaultOfComplete(table)).toContain(id);
    const { spec } = compareRecords(table, register, SETTINGS);
    expect(dissimilarityAt(dissimilarities(spec), 0, 1)).toBeGreaterThan(0);
  });

  it('what was only computed takes no part, and what it follows from does', () => {
    const table = derived(
      'Find no.,Structure,Row spacing (mm),Row width (mm),Warps per cm\nA,twining,9,3,4\nB,twining,5,3,6\n',
    );
    expect(table.columns.has('rowGap')).toBe(true);
    expect(table.columns.has('balance')).toBe(true);
    expect(recordedItself(table)).toEqual([]);
    expect(defaultAttributes(table).filter((id) => register.attributes.get(id)?.derived)).toEqual([]);
  });

  it('a record with the gap alone is compared by it with one that has spacing and width', () => {
    const table = derived(
      'Find no.,Structure,Row spacing (mm),Row width (mm),Row gap (mm)\nA,twining,9,3,\nB,twining,5,3,\nC,twining,,,6\nD,twining,,,2\n',
    );
    const comparison = compareRecords(table, register, SETTINGS);
    const matrix = dissimilarities(comparison.spec);
    // A and C have one gap, as have B and D; the structure is the same throughout.
    expect(dissimilarityAt(matrix, 0, 2)).toBeCloseTo(0, 12);
    expect(dissimilarityAt(matrix, 1, 3)).toBeCloseTo(0, 12);
    expect(dissimilarityAt(matrix, 2, 3)).toBeCloseTo(0.5, 12);
    const named = compareRecords(table, register, { ...SETTINGS, of: ['structure', 'density2', 'rowWidth'] });
    expect(dissimilarityAt(matrix, 0, 1)).toBeCloseTo(dissimilarityAt(dissimilarities(named.spec), 0, 1), 12);
    expect(comparison.notes.join()).toContain('Row gap: compared of records that do not both have');
  });

  it('methods that need every value of a record keep to what it follows from', () => {
    const table = derived(
      'Find no.,Structure,Row spacing (mm),Row gap (mm)\nA,twining,9,\nB,twining,5,\nC,twining,,6\nD,twining,,2\n',
    );
    expect(defaultAttributes(table)).toContain('rowGap');
    expect(defaultOfComplete(table)).not.toContain('rowGap');
    expect(defaultOfComplete(table)).toContain('density2');
  });
});

describe('a find of which the row gap alone was measured', () => {
  const table = derived(
    `Find no.,Site,Structure,Row gap (mm),Row spacing (mm),Row width (mm)\n${Array.from(
      { length: 12 },
      (_, row) =>
        row < 6 ? `N${row},North,twining,${2 + row * 0.1},,` : `S${row},South,twining,,${20 + row},3`,
    ).join('\n')}\n`,
  );
  const input: AnalysisInput = {
    records: table,
    fragments: table,
    register,
    unit: 'fragment',
    random: createRandom(3),
  };
  const place = (find: Record<string, string>, of: string[] = []) =>
    computePlacement(input, placementOptions.parse({ find, of, draws: 0, map: false, moves: false }));

  it('is placed by it, among those that record it and those of which it can be computed', () => {
    const near = place({ rowGap: '2.2 mm' });
    expect(near.unplaced).toBeNull();
    expect(near.comparedOn).toEqual(['Row gap']);
    expect(near.neighbours[0].id).toBe('N2');
    const far = place({ rowGap: '24 mm' });
    expect(far.neighbours[0].assemblage).toBe('South');
    expect(far.lacking).toContain('Row width');
  });

  it('one with spacing and width is held against those that record the gap alone', () => {
    const found = place({ structure: 'twining', rowSpacing: '5.3 mm', rowWidth: '3.0 mm' });
    expect(found.comparedOn).toContain('Row gap');
    expect(found.neighbours[0].assemblage).toBe('North');
    expect(found.lacking).not.toContain('Row gap');
  });

  it('where only other attributes are asked for, that is said, and not that nothing is known', () => {
    const found = place({ rowGap: '2 mm' }, ['structure']);
    expect(found.unplaced).toBe('what is known of it (row gap) is not among what is compared');
  });

  it('nearest because less is known is said, with who is nearest of those of whom as much is known', () => {
    const more = derived(
      `Find no.,Site,Structure,Row gap (mm)\nA,North,twining,\nB,North,twining,\nC,North,twining,\nD,South,twining,8\nE,South,twining,2\nF,South,twining,30\n`,
    );
    const found = computePlacement(
      { ...input, records: more, fragments: more },
      placementOptions.parse({ find: { structure: 'twining', rowGap: '9' }, map: false, draws: 0 }),
    );
    expect(found.neighbours.slice(0, 3).map(({ id, shared, of }) => [id, shared, of])).toEqual([
      ['A', 1, 2],
      ['B', 1, 2],
      ['C', 1, 2],
    ]);
    expect(found.lessKnown).toMatchObject({ shared: 1, others: 1.5, of: 2, lacking: ['Row gap'] });
    expect(found.lessKnown?.whole?.id).toBe('D');
    const { unless, because } = placementWords(found);
    expect(because[0]).toContain('A (North, distance 0, on 1 of 2)');
    expect(unless.map(printTurn).join(' ')).toContain(
      'The nearest may be nearest because less is known of them (row gap not recorded): of 2 attributes of the find they have 1, all comparanda 1.5 on average; nearest of those that lack nothing: D',
    );
    const told = place({ structure: 'twining', rowGap: '2.2 mm' });
    expect(told.lessKnown).toBeNull();
  });
});
