import type { ResultTable, TableCell } from '../contract.ts';
import { printLevel } from '../phrasing.ts';
import { col } from './cells.ts';
import type { ContrastFound } from './found.ts';

/** Tests of a trend over time; nothing where none was asked. */
export function trendTable({ attributes, options }: ContrastFound): Record<string, ResultTable> {
  const rows = attributes.flatMap(({ samples, trend }): TableCell[][] => {
    if (trend === null) return [];
    const { label } = samples.attribute;
    if ('why' in trend)
      return [[label, 'trend', trend, trend, 'cannot be told', '', null, null, null, null, null]];
    const counts = [trend.values.length, trend.spans];
    return trend.tests.map((test) => {
      if ('why' in test)
        return [
          label,
          test.name,
          { why: test.why },
          { why: test.why },
          'cannot be told',
          '',
          null,
          null,
          null,
          ...counts,
        ];
      const drawn =
        'why' in test.drawn
          ? [test.drawn, test.drawn, test.drawn]
          : [test.drawn.median, test.drawn.low, test.drawn.high];
      return [label, test.name, test.statistic, test.p, test.told, test.method, ...drawn, ...counts];
    });
  });
  if (rows.length === 0) return {};
  return {
    trend: {
      title: 'Trend over time',
      columns: [
        col('attribute', 'attribute'),
        col('test', 'test'),
        col('statistic', 'rho or z'),
        col('p', 'p'),
        col('told', 'verdict'),
        col('method', 'p from'),
        col('median', 'over drawn years, median'),
        col('low', 'over drawn years, low'),
        col('high', 'over drawn years, high'),
        col('n', 'n'),
        col('spans', 'distinct spans'),
      ],
      rows,
      note: `Statistics at the middles of the spans; low and high enclose ${printLevel(options.confidence)} of what years drawn evenly within the spans give. Positive: values rise with time.`,
    },
  };
}
