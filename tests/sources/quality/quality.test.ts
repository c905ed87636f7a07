import { describe, expect, it } from 'vitest';
import { proposeAttributes } from '../../../src/sources/columns/propose-attributes.ts';
import { translateTerm, unknownTerms } from '../../../src/sources/names/terms.ts';
import { reportQuality } from '../../../src/sources/quality/quality.ts';
import { numbers, read, register, termsOf } from '../support.ts';

const report = (text: string) => reportQuality(read(text).table, register);

describe('the quality report', () => {
  it('counts what is recorded, and why the rest is not', () => {
    const { filled } = report('Find no.,Row spacing (mm)\nA1,35\nA2,c. 30\nA3,?\nA4,\n');
    expect(filled.find(({ attribute }) => attribute === 'rowSpacing')).toMatchObject({
      rows: 4,
      filled: 2,
      approximate: 1,
      notObserved: 2,
    });
  });

  it('asks whether 350 mm of row spacing was 35 mm, and keeps the reading', () => {
    const text = 'Find no.,Row spacing (cm)\nA1,35\nA2,1.2\nA3,0.9\nA4,2\n';
    const { outOfBounds, columnSlips } = report(text);
    // Row spacing is usually 1 to 40 mm, at most 300 mm (trade notes, section 3; common practice, no source).
    expect(outOfBounds).toMatchObject([{ attribute: 'rowSpacing', row: 0, low: 350, beyond: 'limit' }]);
    expect(outOfBounds[0].likely).toBe('350 mm? 35 mm? (written in mm, read as cm?)');
    expect(columnSlips).toEqual([]);
  });

  it('doubts the unit of a whole column when one slip explains most of it', () => {
    const { columnSlips } = report('Find no.,Yarn diameter 1 (cm)\nA1,12\nA2,15\nA3,9\nA4,11\n');
    expect(columnSlips).toMatchObject([{ attribute: 'diameter1', readings: 4 }]);
  });

  it('finds heaping on 0 and 5, and none in even digits', () => {
    const rows = (value: (i: number) => number) =>
      `Find no.,Length (mm)\n${Array.from({ length: 100 }, (_, i) => `A${i},${value(i)}`).join('\n')}\n`;
    const heaped = report(rows((i) => 5 * (i + 2))).heaping;
    // All hundred end in 0 or 5: chi-squared = 2 (50 - 10)^2 / 10 + 8 * 10 = 400, by hand.
    expect(heaped).toMatchObject([{ attribute: 'length', n: 100, zeroOrFive: 1, statistic: 400 }]);
    expect(heaped[0].p).toBeLessThan(1e-10);
    const even = report(rows((i) => 20 + i)).heaping;
    expect(even[0]).toMatchObject({ statistic: 0, p: 1, zeroOrFive: 0.2 });
  });

  it('names items whose fragments cannot both be right, and not those that differ in detail', () => {
    const { contradictions } = report(
      'Find no.,Item,Structure,Row spacing (mm)\nA1,T1,tabby,\nA2,T1,twill,\nB1,T2,woven,10\nB2,T2,tabby,12\nC1,T3,twined,4\nC2,T3,twined,12\n',
    );
    expect(contradictions.map(({ item, attribute }) => `${item} ${attribute}`)).toEqual([
      'T1 structure',
      'T3 rowSpacing',
    ]);
  });

  it('lists recorders who differ on one assemblage, compared item by item', () => {
    const rows = Array.from(
      { length: 24 },
      (_, i) => `A${i},Ottmere,${i % 2 === 0 ? 'A. B.' : 'C. D.'},${i % 2 === 0 ? 10 + i / 10 : 20 + i / 10}`,
    );
    const { recorders } = report(`Find no.,Site,Recorder,Row spacing (mm)\n${rows.join('\n')}\n`);
    // Twelve against twelve without overlap: exact p = 2 / choose(24, 12) = 7.4e-7.
    expect(recorders).toMatchObject([
      { by: 'recorder', attribute: 'rowSpacing', names: ['A. B.', 'C. D.'], n: [12, 12] },
    ]);
    expect(recorders[0].p).toBeCloseTo(2 / 2_704_156, 12);
  });
});

describe('terms that are not understood', () => {
  const text = 'Find no.,Fibre\nA1,flax\nA2,flaxx\nA3,glarb\nA4,glarb\n';

  it('are listed with counts, the likely one named and not taken', () => {
    const unknown = unknownTerms(read(text), register);
    expect(unknown.map(({ text: wording, count }) => `${wording} ${count}`)).toEqual(['glarb 2', 'flaxx 1']);
    expect(unknown[1].suggestion?.term).toBe('flax');
    expect(termsOf(read(text), 'fibre')).toEqual(['flax', null, null, null]);
  });

  it('are settled once, in the profile', () => {
    const first = read(text);
    const second = read(
      text,
      translateTerm(translateTerm(first.profile, 'fibre', 'glarb', 'nettle'), 'fibre', 'flaxx', 'flax'),
    );
    expect(termsOf(second, 'fibre')).toEqual(['flax', 'flax', 'nettle', 'nettle']);
    expect(unknownTerms(second, register)).toEqual([]);
  });

  it('are asked about without a mark of doubt, which stays with its cell when they are settled', () => {
    const doubted =
      'Find no.,Fibre\nA0,flax\nA1,glarb\nA2,prob. glarb\nA3,glarb ?\nA4,(glarb)\nA5,wool\nA6,silk\nA7,nettle\n';
    const first = read(doubted);
    expect(unknownTerms(first, register).map(({ text: wording, count }) => `${wording} ${count}`)).toEqual([
      'glarb 4',
    ]);
    const second = read(doubted, translateTerm(first.profile, 'fibre', 'glarb', 'nettle'));
    expect(termsOf(second, 'fibre')).toEqual([
      ...['flax', 'nettle', 'nettle', 'nettle', 'nettle', 'wool', 'silk', 'nettle'],
    ]);
    const column = second.table.columns.get('fibre');
    if (column?.kind !== 'term') throw new Error('no terms');
    const [, sure, ...doubts] = column.certainty.slice(0, 5);
    expect(doubts.every((one) => one !== sure)).toBe(true);
  });
});

describe('columns that nothing claims', () => {
  it('are proposed as attributes of the reader’s own, by what their cells hold', () => {
    const reading = read(
      'Find no.,Whorl bore (cm),Slip colour,Holed\nA1,0.8,red,yes\nA2,1.1,red,no\nA3,0.9,buff,yes\nA4,1.0,buff,yes\n',
    );
    const proposals = proposeAttributes(reading, register).map(({ attribute: { id, scale, unit } }) => [
      id,
      scale,
      unit,
    ]);
    expect(proposals).toEqual([
      ['whorlBore', 'ratio', 'cm'],
      ['slipColour', 'nominal', undefined],
      ['holed', 'presence', undefined],
    ]);
  });

  it('are suggested an attribute when the wording is near, and take it only when told to', () => {
    const text = 'Find no.,Row spacng (mm)\nA1,35\n';
    const open = read(text);
    expect(open.columns[1]).toMatchObject({
      status: 'suggested',
      attributes: [],
      suggestion: { attribute: 'rowSpacing' },
    });
    expect(open.table.columns.has('rowSpacing')).toBe(false);
    expect(read(text, undefined, { accept: true }).table.columns.has('rowSpacing')).toBe(true);
  });

  it('whose cells hold two values are suggested to be parted, and are when told to', () => {
    const text = 'Find no.,Thread count (per cm),Dimensions (mm)\nA1,14 x 12,39 x 29\nA2,10 x 9,40 x 31\n';
    const open = read(text);
    expect(open.columns.map(({ attributes }) => attributes)).toEqual([['fragment'], [], []]);
    const taken = read(text, undefined, { accept: true });
    expect(taken.columns.map(({ attributes }) => attributes)).toEqual([
      ['fragment'],
      ['density1', 'density2'],
      ['length', 'width'],
    ]);
    expect([...numbers(taken, 'density2').low, ...numbers(taken, 'width').low]).toEqual([12, 9, 29, 31]);
    expect(read(text, taken.profile).table).toEqual(taken.table);
  });
});
