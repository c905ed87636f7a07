import type { Figure, ResultTable, Unavailable } from '../../contract.ts';
import { printNumber, printQuantity } from '../../phrasing.ts';
import { kindMarker, kindStyle } from '../figure/kinds.ts';
import { axis, escapeText, figureLayout } from '../figure/style.ts';
import type { PooledMeans } from './means.ts';

/** Pooled means beside the raw ones, of one attribute. */
export interface PooledAttribute {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly pooled: PooledMeans | Unavailable | null;
}

/** Raw and pooled means of every attribute that has them; no table where none has. */
export function pooledTable(attributes: readonly PooledAttribute[], by: string): Record<string, ResultTable> {
  const rows = attributes.flatMap(({ label, unit, pooled }) =>
    pooled === null || 'why' in pooled
      ? []
      : pooled.groups.map((group) => [
          label,
          unit,
          group.label,
          group.n,
          group.items,
          pooled.geometric ? 'geometric' : 'arithmetic',
          group.mean,
          group.pooled,
          pooled.common,
          pooled.between,
        ]),
  );
  if (rows.length === 0) return {};
  return {
    pooled: {
      title: 'Means, raw and pooled',
      columns: [
        { id: 'attribute', label: 'attribute' },
        { id: 'unit', label: 'unit' },
        { id: 'group', label: by },
        { id: 'n', label: 'n' },
        { id: 'items', label: 'items' },
        { id: 'kind', label: 'mean' },
        { id: 'mean', label: 'raw' },
        { id: 'pooled', label: 'pooled' },
        { id: 'common', label: 'common to all' },
        { id: 'between', label: 'share of variance between groups' },
      ],
      rows,
      briefly: ['attribute', 'group', 'n', 'mean', 'pooled'],
      note: 'Pooled: each mean drawn towards the common one, the more the fewer its readings and the less groups differ (predictions of a linear mixed model with random intercepts of groups and items, REML).',
    },
  };
}

/** Raw means (hollow) and pooled ones (filled), joined; the common one as a line. */
export function pooledFigure({ label, unit, pooled }: PooledAttribute, by: string): Figure | null {
  if (pooled === null || 'why' in pooled) return null;
  const names = pooled.groups.map((group) => escapeText(`${group.label} (${group.n})`));
  const dots = (name: string, of: 'mean' | 'pooled', marker: object) => ({
    type: 'scatter',
    mode: 'markers',
    name,
    x: pooled.groups.map((group) => group[of]),
    y: names,
    marker,
  });
  const filled = kindMarker(kindStyle(0), 9);
  return {
    data: [
      ...pooled.groups.map((group, place) => ({
        type: 'scatter',
        mode: 'lines',
        x: [group.mean, group.pooled],
        y: [names[place], names[place]],
        line: { width: 1, color: '#888888' },
        hoverinfo: 'skip',
        showlegend: false,
      })),
      dots('raw', 'mean', { ...filled, symbol: 'circle-open' }),
      dots('pooled', 'pooled', filled),
    ],
    layout: {
      ...figureLayout({
        x: axis(`${label}${unit === '' ? '' : ` (${unit})`}`),
        y: axis(by, { autorange: 'reversed', type: 'category' }),
        height: 130 + 28 * names.length,
      }),
      shapes: [
        {
          type: 'line',
          yref: 'paper',
          y0: 0,
          y1: 1,
          x0: pooled.common,
          x1: pooled.common,
          line: { width: 1, dash: 'dot', color: '#888888' },
        },
      ],
    },
    caption: `${pooled.geometric ? 'Geometric means' : 'Means'} of ${label} by ${by}: raw (hollow) and drawn towards the common one (filled; dotted line, ${printQuantity(pooled.common, unit)}), the more the fewer the readings, in brackets; ${printNumber(100 * pooled.between, 2)} % of the variance lies between groups; ${pooled.groups.reduce((sum, { n }) => sum + n, 0)} shown.`,
  };
}
