import { describe, expect, it } from 'vitest';
import { columnPrinter, printChance } from '../../src/analyses/table-numbers.ts';

const column = (values: readonly number[], id = 'mean') => {
  const print = columnPrinter({ id, label: id }, values);
  return values.map(print);
};

describe('numbers of a column', () => {
  it('have equal decimals, three digits of the largest', () => {
    expect(column([1.5, 22.25, 3])).toEqual(['1.5', '22.3', '3.0']);
    expect(column([0.4696, 0.487])).toEqual(['0.470', '0.487']);
  });

  it('have no decimals where all are whole', () => {
    expect(column([3, 1250, 0])).toEqual(['3', '1250', '0']);
  });

  it('keep two digits of small ones that share the column with large ones', () => {
    expect(column([27, 0.3704, 32.5])).toEqual(['27.00', '0.37', '32.50']);
  });

  it('are never printed as zero unless they are zero', () => {
    expect(column([0.5, 0.25, 0.75, 0.125, 0.00000408, 0])).toEqual([
      '0.500',
      '0.250',
      '0.750',
      '0.125',
      '0.000004',
      '0.000',
    ]);
    expect(column([-0.00001, 12.5])[0]).toBe('−0.00001');
  });

  it('have a true minus and no minus before zero', () => {
    expect(column([-0.61, 0.5])).toEqual(['−0.610', '0.500']);
  });

  it('gaps do not decide the decimals', () => {
    const print = columnPrinter({ id: 'sd', label: 'sd' }, [{ why: 'one value' }, null, 2.5]);
    expect(print(2.5)).toBe('2.50');
  });

  it('chances are never printed as zero', () => {
    expect(column([1e-12, 0.0312, 0.5], 'p')).toEqual(['< 0.001', '0.031', '0.50']);
    expect(printChance(0.001)).toBe('0.001');
  });
});
