import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convert, knownUnit } from '../../src/cells/units.ts';
import { InputError } from '../../src/errors.ts';

describe('convert', () => {
  // The inch is 25.4 mm exactly (international yard and pound agreement, 1959); SI prefixes.
  it.each([
    [[1, 1], 'inch', 'mm', [25.4, 25.4]],
    [[1, 1], 'foot', 'mm', [304.8, 304.8]],
    [[3.5, 3.5], 'cm', 'mm', [35, 35]],
    [[0.07, 0.12], 'cm', 'mm', [0.7, 1.2]],
    [[1, 2], 'm', 'cm', [100, 200]],
    [[1, 1], 'cm2', 'mm2', [100, 100]],
    [[1, 1], 'inch2', 'cm2', [6.4516, 6.4516]],
    [[1.5, 1.5], 'kg', 'g', [1500, 1500]],
    [[250, 250], 'mg', 'g', [0.25, 0.25]],
    // The avoirdupois ounce is 28.349523125 g exactly (same agreement).
    [[1, 1], 'ounce', 'g', [28.349523125, 28.349523125]],
  ] as const)('%j %s is %s %j exactly', (from, unit, to, expected) => {
    expect(convert(from, unit, to)).toEqual(expected);
  });

  // ISO 7211-2 counts over 10 cm, or shorter lengths for dense cloth; a count per decimetre is one tenth per cm.
  it.each([
    [140, 'per dm', 14],
    [140, 'per 10 cm', 14],
    [35, 'per 5 cm', 7],
    [75, 'per 3 cm', 25],
    [25, 'per 2 cm', 12.5],
    [1.2, 'per mm', 12],
    [47, 'per 2 cm', 23.5],
    [38, 'per 2 cm', 19],
    [36, 'per inch', 36 / 2.54],
    [20, 'per inch', 20 / 2.54],
  ] as const)('%d %s is %d per cm', (value, unit, expected) => {
    expect(convert([value, value], unit, 'per cm')).toEqual([expected, expected]);
  });

  // Exact arithmetic: spacing in mm = 10 / count per cm.
  it.each([
    [[3, 4], 'per cm', 'mm', [2.5, 10 / 3]],
    [[0, 1], 'per cm', 'mm', [10, Number.POSITIVE_INFINITY]],
    [[20, Number.POSITIVE_INFINITY], 'mm', 'per cm', [0, 0.5]],
    [[35, 35], 'mm', 'per cm', [10 / 35, 10 / 35]],
    [[1, 1], 'per inch', 'mm', [25.4, 25.4]],
    [[5, 5], 'per dm', 'mm', [20, 20]],
    [[8, 8], 'mm', 'per 5 cm', [6.25, 6.25]],
    [[2, 4], 'per cm', 'cm', [0.25, 0.5]],
  ] as const)('%j %s turns over into %s %j', (from, unit, to, expected) => {
    expect(convert(from, unit, to)).toEqual(expected);
  });

  it('numbers years without an off-by-one', () => {
    expect(convert([550, 800], 'BC', 'year')).toEqual([-799, -549]);
    expect(convert([-799, -549], 'year', 'BC')).toEqual([550, 800]);
    expect(convert([0, 0], 'cal BP', 'year')).toEqual([1950, 1950]);
    // n BC = n + 1949 BP (arithmetic).
    expect(convert([800, 800], 'BC', 'cal BP')).toEqual([2749, 2749]);
  });

  it('refuses what does not measure the same, in a sentence', () => {
    for (const [from, to] of [
      ['mm', 'g'],
      ['per cm2', 'per cm'],
      ['degree', 'mm'],
      ['furlongs', 'mm'],
      ['BP', 'year'],
      ['mm', 'year'],
      ['', 'mm'],
      ['__proto__', 'mm'],
    ] as const) {
      expect(() => convert([1, 2], from, to)).toThrow(InputError);
    }
    expect(() => convert([-1, 2], 'per cm', 'mm')).toThrow(InputError);
  });

  const positive = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
  const pairs = [
    ['mm', 'inch'],
    ['cm', 'm'],
    ['per cm', 'per inch'],
    ['per 5 cm', 'per dm'],
    ['mm', 'per cm'],
    ['per inch', 'cm'],
    ['g', 'ounce'],
    ['mm2', 'cm2'],
  ] as const;

  it('there and back changes nothing beyond rounding', () => {
    fc.assert(
      fc.property(positive, positive, fc.constantFrom(...pairs), (a, b, [from, to]) => {
        const low = Math.min(a, b);
        const high = Math.max(a, b);
        const back = convert(convert([low, high], from, to), to, from);
        expect(Math.abs(back[0] - low)).toBeLessThanOrEqual(1e-14 * low);
        expect(Math.abs(back[1] - high)).toBeLessThanOrEqual(1e-14 * high);
      }),
    );
  });

  it('keeps low <= high, open ends and zero included', () => {
    const end = fc.oneof(positive, fc.constant(0), fc.constant(Number.POSITIVE_INFINITY));
    fc.assert(
      fc.property(end, end, fc.constantFrom(...pairs), (a, b, [from, to]) => {
        const [low, high] = convert([Math.min(a, b), Math.max(a, b)], from, to);
        return low <= high;
      }),
    );
  });

  it('multiplies a count and its spacing to one length', () => {
    fc.assert(
      fc.property(positive, (count) => {
        const [spacing] = convert([count, count], 'per cm', 'mm');
        expect(Math.abs(count * spacing - 10)).toBeLessThanOrEqual(1e-14 * 10);
      }),
    );
  });
});

describe('knownUnit', () => {
  it.each([
    ['mm', 'mm'],
    ['Millimeter', 'mm'],
    ['cm.', 'cm'],
    ['Zentimeter', 'cm'],
    ['pouces', 'inch'],
    ['in.', 'inch'],
    ['pulgadas', 'inch'],
    ['per cm', 'per cm'],
    ['/cm', 'per cm'],
    ['1/cm', 'per cm'],
    ['cm-1', 'per cm'],
    ['Fäden/cm', 'per cm'],
    ['Fd./cm', 'per cm'],
    ['fils/cm', 'per cm'],
    ['fili/cm', 'per cm'],
    ['hilos por cm', 'per cm'],
    ['tråde pr. cm', 'per cm'],
    ['threads per inch', 'per inch'],
    ['epi', 'per inch'],
    ['per 5 cm', 'per 5 cm'],
    ['thr. per 10 cm', 'per 10 cm'],
    ['per dm', 'per dm'],
    ['per cm²', 'per cm2'],
    ['cm²', 'cm2'],
    ['gr.', 'g'],
    ['Gramm', 'g'],
    ['°', 'degree'],
    ['Grad', 'degree'],
    ['BC', 'year BC'],
    ['v. Chr.', 'year BC'],
    ['av. J.-C.', 'year BC'],
    ['cal BP', 'year cal BP'],
    ['BP', 'year BP'],
    ['years', 'year'],
    ['AD', 'year'],
    ['%', '%'],
  ])('reads %j as %s', (text, unit) => {
    expect(knownUnit(text)).toBe(unit);
  });

  it.each(['', 'xyz', 'K', 'tabby', 'per 0 cm', 'constructor', '__proto__', 'per tabby'])(
    'does not know %j',
    (text) => {
      expect(knownUnit(text)).toBeNull();
    },
  );

  it('knows its own canonical names', () => {
    for (const unit of [
      'mm',
      'per cm',
      'per 5 cm',
      'per inch',
      'degree',
      'year',
      'year BC',
      'per cm2',
      'mm2',
      'g',
    ]) {
      expect(knownUnit(unit)).toBe(unit);
    }
  });

  it('never throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) =>
        [null, 'string'].includes(knownUnit(text) === null ? null : 'string'),
      ),
    );
  });
});
