import { takeRows } from '../../fragments/subset.ts';
import type { SourceReading } from '../source-reading.ts';

/**
 * A normalised table holds rows of several sources; each of them is a source again, under its own name and with
 * its own rows, so that whatever asks where a row came from is answered as it was before the table was written.
 * Any other reading is its own only part.
 */
export function partsOf(reading: SourceReading): readonly SourceReading[] {
  const { table, profile } = reading;
  if (typeof profile.normalised !== 'object') return [reading];
  const rows = table.sources.map((): number[] => []);
  for (const [row, { source }] of table.origin.entries()) rows[source]!.push(row);
  return table.sources.map((name, source) => {
    const part = takeRows(table, rows[source]!);
    return {
      ...reading,
      name,
      // Their numbers were settled when the table was written.
      profile: { ...profile, itemNumbers: 'everywhere' as const },
      table: {
        ...part,
        origin: part.origin.map(({ row }) => ({ source: 0, row })),
        sources: [name],
        ...(table.tells === undefined ? {} : { tells: [table.tells[source] ?? []] }),
      },
    };
  });
}
