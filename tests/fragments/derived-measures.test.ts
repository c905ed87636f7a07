import { describe, expect, it } from 'vitest';
import { defaultRegister } from '../../src/attributes/register.ts';
import { midpoint, termAt } from '../../src/fragments/accessors.ts';
import { compareRecords } from '../../src/fragments/comparison/comparison.ts';
import { deriveColumns } from '../../src/fragments/derive.ts';
import { collapseItems } from '../../src/fragments/items/items.ts';
import type { FragmentTable } from '../../src/fragments/table.ts';
import { explainPair } from '../../src/numerics/dissimilarity/explain-pair.ts';
import { read } from '../sources/support.ts';

const register = defaultRegister();
const derived = (csv: string): FragmentTable => deriveColumns(read(csv).table, register);
const ends = (table: FragmentTable, id: string, row = 0): number[] | undefined => {
  const column = table.columns.get(id);
  return column?.kind === 'numeric' ? [column.low[row], column.high[row]] : undefined;
};
const middle = (table: FragmentTable, id: string, row = 0): number => {
  const column = table.columns.get(id);
  return column?.kind === 'numeric' ? midpoint(column, row) : Number.NaN;
};
const terms = (table: FragmentTable, id: string): (string | null)[] => {
  const column = table.columns.get(id);
  return column?.kind === 'term' ? Array.from({ length: table.rows }, (_, row) => termAt(column, row)) : [];
};
const from = (table: FragmentTable, id: string, row = 0) => {
  const column = table.columns.get(id);
  return column === undefined || column.kind === 'text' ? undefined : column.derivedFrom?.get(row);
};

// Geometry: a quarter turn makes the stroke of S that of Z; a mirror image does the same.
describe('the slant of a row as it is on the object, held upright', () => {
  it('S read upright and Z read lying across are one slant', () => {
    const table = derived(
      'Find no.,Structure,Slant,Slant convention\nA,twining,S,held upright\nB,twining,Z,row lying across\nC,twining,countered,across\n',
    );
    expect(terms(table, 'rowSlant')).toEqual(['S', 'S', 'countered']);
    expect(from(table, 'rowSlant', 0)).toBeUndefined();
    expect(from(table, 'rowSlant', 1)).toEqual(['rowSlant', 'slantReading']);
  });

  it('what states no reading is kept apart from what does, and unknown beside it', () => {
    const table = derived(
      'Find no.,Structure,Slant,Slant convention\nA,twining,S,upright\nB,twining,S,\nC,twining,Z,\n',
    );
    expect(terms(table, 'rowSlant')).toEqual(['S', 'sUnread', 'zUnread']);
    const { spec } = compareRecords(table, register, {
      of: ['rowSlant', 'structure'],
      weights: {},
      attributeWeights: {},
      mode: 'blocks',
      intervals: 'expected',
      ordinal: 'grades',
      scaling: 'range',
      minimumOverlap: 0,
    });
    expect(explainPair(spec, 0, 1).variables.map(({ state }) => state)).toContain('unknown');
  });

  it('where nobody states a reading, the letters stay as they are written', () => {
    expect(terms(derived('Find no.,Structure,Slant\nA,twining,S\nB,twining,Z\n'), 'rowSlant')).toEqual([
      'S',
      'Z',
    ]);
  });

  it('an impression mirrors slant, twist and ply, a cast mirrors back', () => {
    const table = derived(
      'Find no.,Structure,Slant,Slant convention,Warp twist,Warp ply,Read from\n' +
        'A,twining,S,upright,Z,S2z,impression\nB,twining,S,upright,Z,S2z,cast\nC,twining,S,across,none,S2z,impression\n',
    );
    expect(terms(table, 'rowSlant')).toEqual(['Z', 'S', 'S']);
    expect(terms(table, 'twist1')).toEqual(['S', 'Z', 'none']);
    expect(terms(table, 'ply1')).toEqual(['Z2s', 'S2z', 'Z2s']);
  });

  it('preserved as an impression, without a word of what was read, is neither S nor Z', () => {
    const table = derived(
      'Find no.,Structure,Warp twist,Preservation\nA,tabby,Z,impression\nB,tabby,Z,charred\n',
    );
    expect(terms(table, 'twist1')).toEqual(['zUnread', 'Z']);
  });

  it('"up to the right" waits for the convention', () => {
    const { ledger, table } = read('Find no.,Structure,Slant\nA,twining,up to the right\nB,twining,S\n');
    expect(terms(table, 'rowSlant')[0]).toBeNull();
    expect(ledger.find(({ raw }) => raw === 'up to the right')?.why).toContain('convention');
  });
});

// By hand: rows 2.4 mm wide, 2 per cm, are 5 mm apart: 2.4 / 5 = 0.48; passives 1 mm wide at 5 per cm cover
// 0.5, and (1 - 0.5)(1 - 0.48) = 0.26. The gap is 2.6 mm, 1.08333 of a row; 1 / (1 + 1.08333) = 0.48 again.
describe('cover and openness of rows', () => {
  const twined =
    'Find no.,Structure,Warp density (per cm),Warp diameter (mm),Weft density (per cm),Weft diameter (mm),Row width (mm)\n' +
    'A,twining,5.0,1.0,2.0,1.2,2.4\nB,tabby,5.0,1.0,2.0,1.2,\nC,twining,5.0,1.0,2.0,1.2,\n';
  const table = derived(twined);

  it('goes by the width of the row, and agrees with the gap ratio', () => {
    expect(middle(table, 'cover2')).toBeCloseTo(0.48, 12);
    expect(middle(table, 'openness')).toBeCloseTo(0.26, 12);
    expect(1 / (1 + middle(table, 'gapRatio'))).toBeCloseTo(0.48, 12);
    expect(from(table, 'cover2')).toEqual(['rowWidth', 'rowSpacing']);
  });

  it('of a tabby it goes by the thread, and of rows without a width nothing is said', () => {
    expect(middle(table, 'cover2', 1)).toBeCloseTo(0.24, 12);
    expect(ends(table, 'cover2', 2)).toEqual([Number.NaN, Number.NaN]);
  });

  it('of coiling likewise: a coil 4 mm wide at a pitch of 5 mm covers 0.8', () => {
    const coiled = derived(
      'Find no.,Structure,Coil pitch (mm),Row width (mm),Weft diameter (mm)\nA,coiled,5.0,4.0,1.0\n',
    );
    expect(middle(coiled, 'cover2')).toBeCloseTo(0.8, 12);
  });
});

// By hand: a count of 2 is 1.5 to 2.5; over 5 cm that is 0.3 to 0.5 per cm, and 10 / d is 20 to 33.3 mm.
describe('printed precision is carried on', () => {
  it('2 rows per 5 cm are 20 to 33 mm apart, and 25 in the middle of the counts', () => {
    const table = derived('Find no.,Structure,Rows per 5 cm\nA,twining,2\n');
    const [low, high] = ends(table, 'rowSpacing') ?? [];
    expect(low).toBeCloseTo(20, 10);
    expect(high).toBeCloseTo(100 / 3, 10);
    expect(middle(table, 'rowSpacing')).toBeCloseTo(25, 12);
    expect(from(table, 'rowSpacing')).toEqual(['density2']);
    expect(from(table, 'density2')).toBeUndefined();
  });

  it('35 mm, printed to the millimetre, is 10 / 35.5 to 10 / 34.5 per cm', () => {
    const [low, high] =
      ends(derived('Find no.,Structure,Row spacing (mm)\nA,twining,35\n'), 'density2') ?? [];
    expect([low, high]).toEqual([10 / 35.5, 10 / 34.5]);
  });

  it('an item keeps what is derived, its middle and where it is from', () => {
    const { table } = collapseItems(derived('Find no.,Structure,Rows per 5 cm\nA,twining,2\n'), register);
    expect(middle(table, 'rowSpacing')).toBeCloseTo(25, 12);
    expect(from(table, 'rowSpacing')).toEqual(['density2']);
  });
});

describe('one measure under several names', () => {
  // Geometry: a coil pitch is the row spacing of coiling, 10 divided by the coils per cm.
  it('a coil pitch of 5 mm is a row spacing of 5 mm, and 2 coils per cm are a pitch of 5 mm', () => {
    const pitch = derived('Find no.,Structure,Coil pitch (mm)\nA,coiled,5.0\n');
    expect(middle(pitch, 'rowSpacing')).toBe(5);
    expect(middle(pitch, 'density2')).toBeCloseTo(2, 12);
    const coils = derived('Find no.,Structure,Coils/cm\nA,coiled,2.0\n');
    expect(middle(coils, 'coilPitch')).toBeCloseTo(5, 12);
  });

  it('loops per cm of looping are its density along the row', () => {
    const loops = derived('Find no.,Structure,Loops/cm\nA,looping,3.0\nB,looping,\n');
    expect(middle(loops, 'density1')).toBe(3);
    expect(from(loops, 'density1')).toEqual(['loopDensity']);
  });

  // ISO 1107, from memory: a mesh drawn out is two bars.
  it('a stretched mesh of 60 mm has bars of 30 mm', () => {
    expect(middle(derived('Find no.,Structure,stretched mesh (mm)\nA,netting,60\n'), 'meshGauge')).toBe(30);
  });

  it('a gap and a width make a spacing, and a spacing and a gap a width', () => {
    const table = derived(
      'Find no.,Structure,Space between rows (mm),Row width (mm),Row spacing (mm)\nA,twining,3.0,2.0,\nB,twining,3.0,,5.0\n',
    );
    expect(middle(table, 'rowSpacing')).toBe(5);
    expect(middle(table, 'rowWidth', 1)).toBe(2);
  });
});

describe('systems that nobody told apart', () => {
  it('14 x 10 and 10 x 14 are one fabric, with the twist that goes with each system', () => {
    const table = derived(
      'Find no.,Structure,Density system 1 (per cm),Density system 2 (per cm),Twist system 1,Twist system 2\nA,tabby,14,10,Z,S\nB,tabby,10,14,S,Z\n',
    );
    expect([middle(table, 'balance', 0), middle(table, 'balance', 1)]).toEqual([1.4, 1.4]);
    expect(terms(table, 'twist1')).toEqual(['Z', 'Z']);
    expect(from(table, 'density1', 1)).toEqual(['density2']);
  });

  it('a known warp keeps its place, and the larger over the smaller is comparable all the same', () => {
    const table = derived(
      'Find no.,Structure,Warp density (per cm),Weft density (per cm)\nA,tabby,14,10\nB,tabby,10,14\n',
    );
    expect(terms(table, 'orientation')).toEqual(['warpWeft', 'warpWeft']);
    expect(middle(table, 'balance', 1)).toBeCloseTo(10 / 14, 12);
    expect([middle(table, 'balanceEither', 0), middle(table, 'balanceEither', 1)]).toEqual([1.4, 1.4]);
    expect([middle(table, 'denser', 1), middle(table, 'sparser', 1)]).toEqual([14, 10]);
  });

  it('rows of twining are the active system, whatever the headers call them', () => {
    const table = derived(
      'Find no.,Structure,Density system 1 (per cm),Density system 2 (per cm)\nA,twining,1,4\n',
    );
    expect(middle(table, 'density2')).toBe(4);
  });
});

// Worked by hand, or stated in the trade notes' section 6 (recomputed there in R 4.2.2).
describe('measures of threads and cloth', () => {
  it('14 x 12 per cm are 2600 m of thread in a square metre, and 168 crossings in a cm2', () => {
    const table = derived('Find no.,Structure,Warp density (per cm),Weft density (per cm)\nA,tabby,14,12\n');
    expect(middle(table, 'threadLength')).toBeCloseTo(2600, 9);
    expect(middle(table, 'bindingPoints')).toBe(168);
  });

  it('a thread 0.5 mm thick twisted at 20 degrees has 231.7 turns in a metre', () => {
    const table = derived(
      'Find no.,Structure,Warp twist angle (degree),Warp diameter (mm)\nA,tabby,20,0.5\n',
    );
    expect(middle(table, 'turnsPerMetre1')).toBeCloseTo(231.7, 1);
    expect(terms(table, 'angleClass1')).toEqual(['11 to 25 degrees']);
  });

  it('0.5 mm thick is 177 tex at 0.9 g/cm3, within the wide guess', () => {
    const [low, high] =
      ends(derived('Find no.,Structure,Warp diameter (mm)\nA,tabby,0.5\n'), 'linearDensity1') ?? [];
    expect(low).toBeLessThan(177 / 2);
    expect(high).toBeGreaterThan(177 * 1.5);
  });

  it('an angle across one limit is either class', () => {
    const table = derived('Find no.,Structure,Warp twist angle (degree)\nA,tabby,20-30\nB,tabby,5-50\n');
    expect(terms(table, 'angleClass1')).toEqual(['11 to 25 degrees or 26 to 45 degrees', null]);
  });
});
