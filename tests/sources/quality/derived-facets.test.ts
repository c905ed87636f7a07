import { describe, expect, it } from 'vitest';
import type { Register } from '../../../src/attributes/definition.ts';
import { deriveColumns } from '../../../src/fragments/derive.ts';
import { reportQuality } from '../../../src/sources/quality/quality.ts';
import { checkStudy, studyRegister } from '../../../src/study/load.ts';
import { read, register, termsOf } from '../support.ts';

/**
 * Facets that were recorded beside the measurements that they follow from. The limits are common practice, no source:
 * rows are close up to a gap of a tenth of their width, open from a gap wider than a row; a weave is balanced up to
 * 1.25 threads of one system to one of the other, faced from 2 to 1. The gaps and ratios were worked out by hand.
 */
const agreement = (csv: string) => reportQuality(read(csv).table, register).derivedFacets;
const flagged = (csv: string, rule: string) =>
  read(csv)
    .ledger.filter((entry) => entry.rule === rule)
    .map(({ row, raw, why }) => ({ row, raw, why }));

const ROWS = `Structure,Spacing class,Row spacing (mm),Row width (mm)
twining,open,12.0,4.0
twining,close,4.2,4.0
twining,close,12.0,4.0
twining,semi-open,12.0,4.0
twining,open,8-9,4-5
twining,open,35,
twining,close,35,
twining,open,,4.0
`;

describe('openness against the gap of rows', () => {
  it('is counted: agreeing, disagreeing, and left open where the readings reach across a limit', () => {
    // Gaps over width, by row: 2; 0.05; 2 (close: no); 2 (semi-open: no); 3/5 to 5/4 across 1; 35 mm is open
    // at any width to 10 mm: (35 - 10) / 10 = 2.5, once as recorded and once not; the last has no spacing.
    expect(agreement(ROWS)).toEqual([
      { attribute: 'spacingClass', label: 'Spacing class', both: 7, agree: 3, disagree: 3, undecided: 1 },
    ]);
  });

  it('flags each disagreement with both cells', () => {
    const found = flagged(ROWS, 'spacing-class-against-gap');
    expect(found.map(({ row }) => row)).toEqual([4, 5, 8]);
    expect(found.map(({ raw }) => raw)).toEqual([
      'close | 12.0 | 4.0',
      'semi-open | 12.0 | 4.0',
      'close | 35',
    ]);
    expect(found[0]?.why).toMatch(
      /said to be close, and the gap comes to 1\.9\d? to 2\.\d+ of a row's width/,
    );
  });
});

const COUNTS = `Structure,Face,Warp density (per cm),Weft density (per cm)
tabby,balanced,10.0,10.0
tabby,warp-faced,20.0,8.0
tabby,weft-faced,8.0,20.0
tabby,balanced,20.0,8.0
tabby,weft-faced,10.0,10.0
tabby,balanced,15.0,10.0
tabby,balanced,10-14,10
tapestry,weft-faced,10.0,10.0
`;

describe('face against the counts', () => {
  it('is counted; between the limits, and across them, it is left open', () => {
    // Ratios: 1; 2.5; 0.4; 2.5 (balanced: no); 1 (weft-faced: no); 1.5 lies between 1.25 and 2; 1 to 1.4 reaches
    // across 1.25. Which system hides the other is not said by counts. A tapestry has no balance to speak of.
    expect(agreement(COUNTS)).toEqual([
      { attribute: 'face', label: 'Face', both: 7, agree: 3, disagree: 2, undecided: 2 },
    ]);
  });

  it('flags each disagreement with both cells', () => {
    expect(flagged(COUNTS, 'face-against-counts').map(({ row, raw }) => [row, raw])).toEqual([
      [5, 'balanced | 20.0 | 8.0'],
      [6, 'weft-faced | 10.0 | 10.0'],
    ]);
  });
});

describe('a study with limits of its own', () => {
  const own = studyRegister(
    checkStudy(
      {
        title: 'Other limits',
        sources: [{ file: 'finds.csv' }],
        limits: { openness: { open: 3 }, face: { faced: 3 } },
      },
      'study.json',
    ),
  );
  const agreementThere = (csv: string) =>
    reportQuality(read(csv, undefined, { register: own }).table, own).derivedFacets.map(
      ({ agree, disagree, undecided }) => [agree, disagree, undecided],
    );

  it('checks what was recorded by them', () => {
    // Open from a gap of three widths: 2 is semi-open, so that row 4 agrees and "open" does not; 3/5 to 5/4 is semi-open
    // too; 35 mm apart is 2.5 to 34 widths, semi-open or open. Faced from 3 to 1: 2.5 and 0.4 lie between the limits.
    expect(agreementThere(ROWS)).toEqual([[2, 4, 1]]);
    expect(agreementThere(COUNTS)).toEqual([[1, 1, 5]]);
  });

  it('derives by them', () => {
    const row = 'Structure,Row spacing (mm),Row width (mm)\ntwining,12.0,4.0\n';
    const derived = (there: Register) =>
      termsOf(
        { table: deriveColumns(read(row, undefined, { register: there }).table, there) },
        'spacingClass',
      );
    expect([derived(register), derived(own)]).toEqual([['open'], ['semi-open']]);
  });

  it('refuses limits that contradict one another', () => {
    const of = (limits: object) => () =>
      checkStudy({ title: 'x', sources: [{ file: 'finds.csv' }], limits }, 'study.json');
    expect(of({ openness: { close: 2, open: 1 } })).toThrow(/close and open at once/);
    expect(of({ face: { balanced: 3, faced: 2 } })).toThrow(/balanced and faced at once/);
  });
});
