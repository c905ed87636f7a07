import { describe, expect, it } from 'vitest';
import { asBeforeShrinking } from '../../src/study/cautions/shrinkage.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { readinessOf } from '../../src/study/readiness/readiness.ts';
import { runStudy } from '../../src/study/run-study.ts';

/** Charred pieces of Ness counted 12 to 12.9 threads per cm where the dry ones of Holm have 10 to 10.7. */
const HEAD = 'id,item,site,preservation,warp density (per cm),diameter 1 (mm),length (mm),distance (km)';
const ROWS = Array.from({ length: 20 }, (_, i) =>
  i % 2
    ? `f${i},i${i},Ness,charred,${12 + i / 20},0.5,40,7`
    : `f${i},i${i},Holm,waterlogged,${10 + i / 24},0.6,50,7`,
);
const files = new Map([['finds.csv', new TextEncoder().encode([HEAD, ...ROWS].join('\n'))]]);

function study(shrinkage?: { preservation: string[]; upTo: number }) {
  const analyses = [
    { id: 'differ', kind: 'contrast', of: ['density1'], by: 'site', resamples: 199, relabellings: 999 },
    { id: 'kinds', kind: 'crosstab', rows: 'site', columns: 'preservation', relabellings: 199 },
  ];
  const whole = { title: 't', witness: { is: 'column' }, sources: [{ file: 'finds.csv' }], analyses };
  return checkStudy(shrinkage === undefined ? whole : { ...whole, shrinkage }, 'study.json');
}

const shrunk = study({ preservation: ['charred'], upTo: 0.2 });

describe('a stated shrinkage', () => {
  it('turns a verdict on counts that it could have made', () => {
    const plain = runStudy(study(), files).analyses.differ.words;
    expect(plain.answer).toMatch(/^Density of system 1 tends to be larger in Ness than in Holm/);
    const { words } = runStudy(shrunk, files).analyses.differ;
    expect(words.answer).toBe(
      'Cannot be told yet: with and without the shrinkage that the study allows for, the answers differ.',
    );
    expect(words.because[0]).toBe(plain.answer);
    expect(words.unless[0]).toMatchObject({
      what: 'With the lengths and counts of 10 fragments (charred) as before shrinking by 20 %',
      overturns: true,
    });
  });

  it('leaves a verdict that a smaller one cannot turn, and says so', () => {
    const { words } = runStudy(study({ preservation: ['charred'], upTo: 0.02 }), files).analyses.differ;
    expect(words.answer).toMatch(/^Density of system 1 tends to be larger in Ness than in Holm/);
    expect(words.unless.find(({ what }) => what.includes('shrinking'))?.size).toBe('the answer is the same');
  });

  it('says nothing of kinds, nor of another preservation than the stated one', () => {
    const { words } = runStudy(shrunk, files).analyses.kinds;
    expect(words.unless.filter(({ what }) => what.includes('shrinking'))).toEqual([]);
    const other = runStudy(study({ preservation: ['desiccated'], upTo: 0.2 }), files).analyses.differ;
    expect(other.words.unless.filter(({ what }) => what.includes('shrinking'))).toEqual([]);
  });

  // d' = d / (1 + s), by hand: 12.05 / 1.2 = 10.0417; a thread of 0.5 mm was 0.6 mm, a piece of 40 mm 48 mm.
  it('divides counts and multiplies lengths of those pieces alone, and never the readings themselves', () => {
    const prepared = prepareStudy(shrunk, files);
    const grown = asBeforeShrinking(prepared, ['density1'])?.prepared();
    const value = (of: Pick<typeof prepared, 'fragments'> | undefined, id: string, row: number) => {
      const column = of?.fragments.columns.get(id);
      return column?.kind === 'numeric' ? column.low[row] : null;
    };
    expect(value(grown, 'density1', 1)).toBeCloseTo(12.05 / 1.2, 12);
    expect(value(grown, 'diameter1', 1)).toBeCloseTo(0.6, 12);
    expect(value(grown, 'length', 1)).toBeCloseTo(48, 12);
    expect(value(grown, 'density1', 0)).toBe(10);
    expect(value(prepared, 'density1', 1)).toBe(12.05);
  });
});

describe('readiness', () => {
  const line = (of: ReturnType<typeof study>) =>
    readinessOf(prepareStudy(of, files)).find(({ topic }) => topic === 'shrinkage');

  it('says how many pieces have shrunk by an unknown amount, and how to allow for it', () => {
    expect(line(study())).toMatchObject({ state: 'mind' });
    expect(line(study())?.says).toContain('charred 10 of 20 fragments');
    expect(line(study())?.mend).toContain('"shrinkage" in the study');
    expect(line(shrunk)).toMatchObject({ state: 'ready' });
    expect(line(shrunk)?.says).toContain('as before shrinking by 20 %');
  });
});
