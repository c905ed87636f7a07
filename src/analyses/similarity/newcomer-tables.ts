import type { ResultColumn, ResultTable, TableCell } from '../contract.ts';
import { NAMED, SAID } from '../shared/options/coefficient.ts';
import type { SimilarityFound } from './found.ts';

const col = (id: string, label: string): ResultColumn => ({ id, label });
const ends = (limits: SimilarityFound['newcomers'][number]['limits'][number] | undefined): TableCell[] =>
  limits === undefined ? [null, null] : 'why' in limits ? [limits, limits] : [limits.low, limits.high];

/** Where assemblages placed afterwards fall, and whom those typed in are like; nothing where there are none. */
export function newcomerTables({ newcomers, options, unit }: SimilarityFound): Record<string, ResultTable> {
  if (newcomers.length === 0) return {};
  const level = `${Number((options.confidence * 100).toPrecision(6))} %`;
  const typed = newcomers.filter(({ likeness }) => likeness.length > 0);
  return {
    newcomers: {
      title: 'Placed afterwards',
      columns: [
        col('label', 'assemblage'),
        col('n', 'n'),
        col('unplaced', 'of kinds that none on the axes has'),
        ...[1, 2].flatMap((axis) => [
          col(`axis${axis}`, `axis ${axis}`),
          col(`low${axis}`, 'at least'),
          col(`high${axis}`, 'at most'),
        ]),
      ],
      rows: newcomers.map(({ label, n, unplaced, at, limits }): TableCell[] => [
        label,
        n,
        unplaced,
        ...[0, 1].flatMap((axis): TableCell[] => ['why' in at ? at : at[axis], ...ends(limits[axis])]),
      ]),
      note: `Supplementary rows (Greenacre 1984): they do not help to make the axes. Limits at ${level}: their ${unit}s drawn again (${options.resamples} draws), the axes as they are.`,
    },
    ...(typed.length === 0
      ? {}
      : {
          newcomerLikeness: {
            title: 'Whom the new site is like',
            columns: [
              col('newSite', 'new site'),
              col('label', 'assemblage'),
              col('likeness', NAMED[options.coefficient]),
              col('low', 'at least'),
              col('high', 'at most'),
            ],
            rows: typed.flatMap(({ label, likeness }) =>
              likeness.map(({ label: other, value, interval }): TableCell[] => [
                label,
                other,
                value,
                ...('why' in interval ? [interval, interval] : [interval.low, interval.high]),
              ]),
            ),
            note: `${SAID[options.coefficient]}; most alike first. Limits: ${level} of draws of the ${unit}s of both, moved so that their middle is the value found; each count of the new site is taken for one item.`,
          },
        }),
  };
}
