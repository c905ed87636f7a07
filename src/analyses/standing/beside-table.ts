import type { ResultTable, TableCell } from '../contract.ts';
import type { StandingFound } from './found.ts';

/** Numbers of the page that sets the site beside all others. */
export function besideTable({ beside, options }: StandingFound): ResultTable {
  const none = { why: 'nothing recorded' };
  const few = { why: 'no other has five' };
  return {
    title: `${options.site} beside all others together`,
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'what', label: 'what' },
      { id: 'unit', label: 'unit' },
      { id: 'siteN', label: `n at ${options.site}` },
      { id: 'site', label: options.site },
      { id: 'othersN', label: 'n elsewhere' },
      { id: 'others', label: 'all others' },
      { id: 'min', label: 'least of a single one' },
      { id: 'max', label: 'most of a single one' },
    ],
    rows: beside.flatMap((one): TableCell[][] => {
      const ends = (range: readonly [number, number] | null): TableCell[] =>
        range === null ? [few, few] : [...range];
      if (one.kind === 'kinds')
        return one.kinds.map(({ label, site, others, range }) => [
          one.label,
          label,
          'share',
          one.siteN,
          site ?? none,
          one.othersN,
          others ?? none,
          ...ends(range),
        ]);
      return (['q1', 'median', 'q3'] as const).map((statistic) => [
        one.label,
        { q1: 'lower quartile', median: 'median', q3: 'upper quartile' }[statistic],
        one.unit,
        one.siteN,
        one.site?.[statistic] ?? none,
        one.othersN,
        one.others?.[statistic] ?? none,
        ...(statistic === 'median' ? ends(one.range) : [null, null]),
      ]);
    }),
    briefly: ['attribute', 'what', 'siteN', 'site', 'othersN', 'others'],
    note: 'Items, each once; kinds at the level that all record. Least and most: shares or medians of the other assemblages of five items or more, one by one. Described, not tested: what sets it apart stands in its own table.',
  };
}
