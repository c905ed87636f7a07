import { isDistance } from '../../numerics/assemblages/similarity.ts';
import { condensedIndex } from '../../numerics/dissimilarity/condensed.ts';
import type { Figure } from '../contract.ts';
import { printCount, printNumber } from '../phrasing.ts';
import { GROUND, SEQUENTIAL } from '../shared/figure/colours.ts';
import { kindMarker, kindStyle } from '../shared/figure/kinds.ts';
import { limitBars, partByLimits } from '../shared/figure/limit-bars.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { SAID } from '../shared/options/coefficient.ts';
import { biplotFigure, orderFigure } from './axes-figures.ts';
import type { SimilarityFound } from './found.ts';

/** Matrix in found order, biplot, order against time, diversity. */
export function similarityFigures(found: SimilarityFound): Readonly<Record<string, Figure>> {
  const order = orderFigure(found);
  const biplot = biplotFigure(found);
  return {
    matrix: matrixFigure(found),
    ...(biplot === null ? {} : { biplot }),
    ...(order === null ? {} : { order }),
    diversity: diversityFigure(found),
  };
}

function matrixFigure(found: SimilarityFound): Figure {
  const { table, likeness, foundOrder, options } = found;
  const sizes = table.counts.map((line) => line.reduce((sum, count) => sum + count, 0));
  const names = foundOrder.map((row) => escapeText(`${table.rows[row]} (${sizes[row]})`));
  const z = foundOrder.map((row) =>
    foundOrder.map((other) =>
      row === other ? null : likeness.values[condensedIndex(likeness.n, row, other)],
    ),
  );
  const distance = isDistance(options.coefficient);
  const scale = distance
    ? SEQUENTIAL.map(([at], place) => [at, SEQUENTIAL[SEQUENTIAL.length - 1 - place][1]])
    : SEQUENTIAL;
  const small = table.rows.length <= 14;
  return {
    data: [
      {
        type: 'heatmap',
        x: names,
        y: names,
        z,
        zmin: 0,
        ...(distance ? {} : { zmax: options.coefficient === 'brainerd-robinson' ? 200 : 1 }),
        colorscale: scale,
        xgap: 1,
        ygap: 1,
        ...(small
          ? {
              texttemplate: options.coefficient === 'brainerd-robinson' ? '%{z:.0f}' : '%{z:.2f}',
              textfont: { size: 10 },
            }
          : {}),
        colorbar: { thickness: 12 },
        hovertemplate: '%{y}, %{x}: %{z:.3g}<extra></extra>',
      },
    ],
    layout: figureLayout({
      x: axis('', { type: 'category', showgrid: false, tickangle: -45 }),
      y: axis('', { type: 'category', autorange: 'reversed', showgrid: false }),
      height: 200 + 28 * table.rows.length,
    }),
    caption:
      `Likeness of ${printCount(table.rows.length, 'assemblage')} in ${found.kindsLabel}: ${SAID[options.coefficient]}; darker is more alike; in found order ` +
      `(average linkage). In brackets ${found.unit}s counted, ${table.entries.length} in all.`,
  };
}

function diversityFigure(found: SimilarityFound): Figure {
  const { table, diversity, rarefiedTo, unit } = found;
  const names = table.rows.map((label, row) => escapeText(`${label} (${diversity[row].n})`));
  const { barred, bare } = partByLimits(
    diversity.flatMap(({ rarefied: { value, low, high } }, row) => {
      if (typeof value !== 'number') return [];
      const known = typeof low === 'number' && typeof high === 'number';
      return [{ y: names[row], value, low: known ? low : null, high: known ? high : null }];
    }),
  );
  const name = `kinds expected in ${rarefiedTo} ${unit}s`;
  return {
    data: [
      ...[barred, bare]
        .filter((points) => points.length > 0)
        .map((points, part) => ({
          type: 'scatter',
          mode: 'markers',
          name,
          legendgroup: name,
          showlegend: part === 0,
          x: points.map(({ value }) => value),
          y: points.map(({ y }) => y),
          ...(points === barred ? { error_x: limitBars(barred, GROUND.ink) } : {}),
          marker: kindMarker(kindStyle(0), 9),
        })),
      {
        type: 'scatter',
        mode: 'markers',
        name: 'kinds seen',
        x: diversity.map(({ richness }) => richness),
        y: names,
        marker: { ...kindMarker(kindStyle(1), 8), symbol: 'square-open', color: kindStyle(1).colour },
      },
    ],
    layout: figureLayout({
      x: axis('kinds', { rangemode: 'tozero' }),
      y: axis(found.assemblagesLabel, {
        autorange: 'reversed',
        type: 'category',
        categoryorder: 'array',
        categoryarray: names,
      }),
      height: 130 + 28 * table.rows.length,
    }),
    caption:
      `Kinds of ${found.kindsLabel} in each assemblage: expected in a draw of ${rarefiedTo} ${unit}s (rarefaction), with ${printNumber(found.options.confidence * 100)} % limits, ` +
      `and seen in all; in brackets ${unit}s counted.`,
  };
}
