import { describe, expect, it } from 'vitest';
import { columnHead, columnPrinter, printChance, tablePrinter } from '../../src/analyses/table-numbers.ts';
import { yearAxis, yearColumn } from '../../src/analyses/years.ts';

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

/** ISO 8601-1:2019, 4.2.1 note: year 0000 is 1 BC; so n BC is 1 - n: 400 BC is -0399 (from memory). */
describe('years', () => {
  const texts = (
    columns: Parameters<typeof tablePrinter>[0]['columns'],
    rows: readonly (string | number)[][],
  ) => {
    const print = tablePrinter({ title: 't', columns, rows });
    return rows.map((row) =>
      row.map((cell, place) => (typeof cell === 'number' ? print(row, place)(cell).text : cell)),
    );
  };

  it('of a column of years are BC and AD, with no year 0', () => {
    const years = [[-399], [-1], [0], [1], [79], [-0.4], [Number.NEGATIVE_INFINITY]];
    expect(texts([yearColumn('from', 'from')], years).flat()).toEqual([
      '400 BC',
      '2 BC',
      '1 BC',
      'AD 1',
      'AD 79',
      '1 BC',
      'without lower bound',
    ]);
    expect(columnHead(yearColumn('from', 'from'))).toBe('from');
    expect(columnHead({ id: 'mean', label: 'mean', unit: 'mm' })).toBe('mean (mm)');
  });

  it('of a row about a date are BC and AD where they are dates, and numbers where they are stretches of time', () => {
    const columns = ['unit', 'median', 'sd'].map((id) => ({ id, label: id }));
    expect(
      texts(columns, [
        ['year', -399, 120],
        ['mm', 0.25, 0.125],
      ]),
    ).toEqual([
      ['year', '400 BC', '120.00'],
      ['mm', '0.250', '0.13'],
    ]);
  });

  it('say in full what the number is', () => {
    const table = { title: 't', columns: [yearColumn('from', 'from')], rows: [[-399]] };
    expect(tablePrinter(table)(table.rows[0], 0)(-399).full).toBe('astronomical year -399');
  });

  it('on an axis have ticks at round years of either era', () => {
    expect(yearAxis('date', [-399, -120])).toMatchObject({
      tickvals: [-399, -349, -299, -249, -199, -149, -99],
      ticktext: ['400 BC', '350 BC', '300 BC', '250 BC', '200 BC', '150 BC', '100 BC'],
    });
    expect(yearAxis('date', [-150, 280])).toMatchObject({
      tickvals: [-199, -99, 1, 100, 200, 300],
      ticktext: ['200 BC', '100 BC', 'AD 1', 'AD 100', 'AD 200', 'AD 300'],
    });
    expect(yearAxis('date', [0, 1])).toMatchObject({ tickvals: [0, 1], ticktext: ['1 BC', 'AD 1'] });
    expect(yearAxis('date', [])).toMatchObject({ tickvals: [] });
  });
});
