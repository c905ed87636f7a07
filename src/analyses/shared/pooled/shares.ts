import { pooledShares } from '../../../numerics/models/dirichlet-multinomial.ts';
import type { Figure, ResultTable } from '../../contract.ts';
import { printNumber } from '../../phrasing.ts';
import { kindMarker, kindStyle } from '../figure/kinds.ts';
import { axis, escapeText, figureLayout } from '../figure/style.ts';

/** Shares of one attribute's kinds in groups, as they stand and drawn towards what the groups have in common. */
export interface PooledKinds {
  readonly id: string;
  readonly label: string;
  readonly kinds: readonly string[];
  /** Records that the common shares count for in each group; null where the groups do not differ. */
  readonly concentration: number | null;
  readonly common: readonly number[];
  readonly groups: readonly {
    readonly label: string;
    readonly n: number;
    readonly counts: readonly number[];
    readonly pooled: readonly number[];
  }[];
}

/** Null where groups or kinds are too few. */
export function pooledKinds(
  { id, label }: { readonly id: string; readonly label: string },
  groups: readonly { readonly label: string; readonly counts: ReadonlyMap<string, number> }[],
): PooledKinds | null {
  const kinds = [...new Set(groups.flatMap(({ counts }) => [...counts.keys()]))];
  const counts = groups.map((group) => kinds.map((kind) => group.counts.get(kind) ?? 0));
  const found = pooledShares(counts);
  if ('why' in found) return null;
  return {
    id,
    label,
    kinds,
    concentration: Number.isFinite(found.concentration) ? found.concentration : null,
    common: found.common,
    groups: groups.map((group, place) => ({
      label: group.label,
      n: counts[place].reduce((sum, count) => sum + count, 0),
      counts: counts[place],
      pooled: found.shares[place],
    })),
  };
}

export function pooledSharesTable(all: readonly PooledKinds[], by: string): Record<string, ResultTable> {
  if (all.length === 0) return {};
  return {
    pooledShares: {
      title: 'Shares, raw and pooled',
      columns: [
        { id: 'attribute', label: 'attribute' },
        { id: 'group', label: by },
        { id: 'kind', label: 'kind' },
        { id: 'count', label: 'count' },
        { id: 'n', label: 'n' },
        { id: 'share', label: 'share, raw' },
        { id: 'pooled', label: 'share, pooled' },
        { id: 'common', label: 'common to all' },
        { id: 'concentration', label: 'records that the common shares count for' },
      ],
      rows: all.flatMap(({ label, kinds, groups, common, concentration }) =>
        groups.flatMap(({ label: group, n, counts, pooled }) =>
          kinds.map((kind, place) => [
            label,
            group,
            kind,
            counts[place],
            n,
            n === 0 ? { why: 'no record' } : counts[place] / n,
            pooled[place],
            common[place],
            concentration === null ? { why: 'the groups do not differ more than by chance' } : concentration,
          ]),
        ),
      ),
      briefly: ['attribute', 'group', 'kind', 'count', 'n', 'pooled'],
      note: 'Pooled: (count + part of the common shares) / (n + records that these count for), by a Dirichlet-multinomial distribution at its greatest likelihood; the more the groups differ, the less the common shares count.',
    },
  };
}

/** Kinds that a figure has room for. */
const MOST_DRAWN = 3;

/** Raw shares (hollow) and pooled ones (filled) of the commonest kinds. */
export function pooledSharesFigure(
  { label, kinds, groups, common, concentration }: PooledKinds,
  by: string,
): Figure {
  const drawn = kinds
    .map((kind, place) => ({ kind, place }))
    .sort((a, b) => common[b.place] - common[a.place])
    .slice(0, MOST_DRAWN);
  const filled = groups.filter(({ n }) => n > 0);
  const names = filled.map((group) => escapeText(`${group.label} (${group.n})`));
  return {
    data: drawn.flatMap(({ kind, place }, at) => {
      const marker = kindMarker(kindStyle(at), 9);
      const dots = { type: 'scatter', mode: 'markers', y: names };
      return [
        {
          ...dots,
          name: `${escapeText(kind)}, raw`,
          x: filled.map(({ counts, n }) => (100 * counts[place]) / n),
          marker: { ...marker, symbol: `${String(marker.symbol)}-open` },
        },
        {
          ...dots,
          name: `${escapeText(kind)}, pooled`,
          x: filled.map(({ pooled }) => 100 * pooled[place]),
          marker,
        },
      ];
    }),
    layout: figureLayout({
      x: axis(`share of ${label} (%)`),
      y: axis(by, { autorange: 'reversed', type: 'category' }),
      height: 150 + 28 * names.length,
    }),
    caption: `Shares of ${label} by ${by}, n in brackets, of the commonest kinds: raw (hollow) and drawn towards the common shares (filled), ${concentration === null ? 'which is all, since groups differ no more than by chance' : `which count for ${printNumber(concentration, 2)} records in each group`}; ${filled.reduce((sum, { n }) => sum + n, 0)} shown.`,
  };
}
