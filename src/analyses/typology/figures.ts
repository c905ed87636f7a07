import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { Figure } from '../contract.ts';
import { printCount, printLevel, printNumber, printQuantity } from '../phrasing.ts';
import { GROUND, SEQUENTIAL } from '../shared/figure/colours.ts';
import { kindBar } from '../shared/figure/kinds.ts';
import { logTicks } from '../shared/figure/log-axis.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { NO_TYPE, type TypologyFound } from './found.ts';
import type { HeapSplit, Threshold } from './split-found.ts';
import { typeName } from './table-parts.ts';
import { mapFigure, stabilityFigure } from './type-figures.ts';

/** Coverage, the density of each cut attribute with its threshold, the map of the types, the types predicted, stability. */
export function typologyFigures(found: TypologyFound): Readonly<Record<string, Figure>> {
  const densities = found.splits
    .filter((split) => !isUnavailable(split.dip))
    .map((split): [string, Figure] => [`density ${split.attribute}`, densityFigure(found, split)]);
  const stability = 'why' in found.apart ? null : stabilityFigure(found, found.apart);
  return {
    coverage: coverageFigure(found),
    ...Object.fromEntries(densities),
    ...('why' in found.apart || 'why' in found.apart.map
      ? {}
      : { map: mapFigure(found, found.apart, found.apart.map) }),
    ...('why' in found.apart || 'why' in found.apart.prediction
      ? {}
      : { confusion: confusionFigure(found, found.apart.prediction.confusion) }),
    ...(stability === null ? {} : { stability }),
  };
}

function coverageFigure(found: TypologyFound): Figure {
  const kinds = [
    ...found.typology.types.map((_, place) => place),
    NO_TYPE.none,
    NO_TYPE.several,
    NO_TYPE.undecided,
  ];
  const bars = kinds
    .map((type) => ({ type, n: found.assignment.type.filter((own) => own === type).length }))
    .filter(({ type, n }) => type >= 0 || n > 0);
  return {
    data: bars.map(({ type, n }) => ({
      type: 'bar',
      orientation: 'h',
      x: [n],
      y: [escapeText(typeName(found, type))],
      marker: type >= 0 ? kindBar(markStyle(found.typeMarks[type])) : { color: GROUND.neutral },
      text: [String(n)],
      textposition: 'outside',
      cliponaxis: false,
      showlegend: false,
      hovertemplate: '%{y}: %{x}<extra></extra>',
    })),
    layout: figureLayout({
      x: axis(found.unit === 'item' ? 'items' : 'fragments', { rangemode: 'tozero' }),
      y: axis('', { autorange: 'reversed' }),
      height: 90 + 34 * bars.length,
    }),
    caption: `How many ${found.unit === 'item' ? 'items' : 'fragments'} fit each type of "${found.typology.title}", n = ${found.assignment.rows.length}; grey: none, several or undecided.`,
  };
}

function densityFigure(found: TypologyFound, split: HeapSplit): Figure {
  const { at, height } = split.curve;
  const top = height.reduce((most, value) => Math.max(most, value), 0);
  const threshold = isUnavailable(split.threshold) ? undefined : split.threshold;
  const line = (value: number, dash: string, color: string) => ({
    type: 'line',
    xref: 'x',
    yref: 'paper',
    x0: value,
    x1: value,
    y0: 0,
    y1: 1,
    line: { color, width: 1.5, dash },
  });
  const band =
    threshold === undefined
      ? []
      : [
          {
            type: 'rect',
            xref: 'x',
            yref: 'paper',
            x0: (threshold.gap ?? threshold).low,
            x1: (threshold.gap ?? threshold).high,
            y0: 0,
            y1: 1,
            fillcolor: GROUND.line,
            opacity: 0.6,
            line: { width: 0 },
            layer: 'below',
          },
        ];
  const title = `${split.label}${split.unit === '' ? '' : ` (${split.unit})`}`;
  return {
    data: [
      {
        type: 'scatter',
        mode: 'lines',
        x: [...at],
        y: [...height],
        line: { color: GROUND.ink, width: 2 },
        fill: 'tozeroy',
        fillcolor: 'rgba(30,44,92,0.12)',
        showlegend: false,
        hoverinfo: 'skip',
      },
      {
        type: 'scatter',
        mode: 'markers',
        x: [...split.values],
        y: Array.from(split.values, () => -0.04 * top),
        marker: { symbol: 'line-ns-open', size: 9, color: GROUND.ink, opacity: 0.6 },
        showlegend: false,
        hovertemplate: '%{x}<extra></extra>',
      },
    ],
    layout: figureLayout({
      x: axis(title, split.logarithm ? logTicks([...split.values]) : {}),
      y: axis('density', { showticklabels: false, ticks: '', range: [-0.1 * top, 1.08 * top] }),
      height: 300,
      more: {
        shapes: [
          ...band,
          ...split.cuts.map((cut) => line(cut, 'solid', '#8C2418')),
          ...(threshold === undefined || threshold.gap !== null
            ? []
            : [threshold.estimate, ...(threshold.second === null ? [] : [threshold.second.estimate])].map(
                (at) => line(at, 'dash', GROUND.ink),
              )),
        ],
      },
    }),
    caption: `${title} of ${printCount(split.values.length, found.unit)}: density${split.logarithm ? ' on a log scale' : ''}, one tick a record. Solid line: where the rules cut (${split.cuts.map((cut) => printQuantity(cut, split.unit)).join(', ')}).${
      threshold === undefined ? '' : thresholdCaption(split, threshold, found.confidence)
    }`,
  };
}

function thresholdCaption(
  { unit }: HeapSplit,
  { estimate, low, high, second, gap }: Threshold,
  confidence: number,
): string {
  if (gap !== null)
    return ` Shaded: no reading lies between ${printNumber(gap.low)} and ${printQuantity(gap.high, unit)}; any cut there parts the same.`;
  const again = second === null ? '' : ` and again at ${printQuantity(second.estimate, unit)}`;
  return ` Dashed: two parts cross at ${printQuantity(estimate, unit)}${again}; shaded its ${printLevel(confidence)} interval, ${printNumber(low)} to ${printNumber(high)}.`;
}

function confusionFigure(found: TypologyFound, confusion: readonly (readonly number[])[]): Figure {
  const labels = found.typology.types.map((type) => escapeText(type.label));
  const shares = confusion.map((line) => {
    const total = line.reduce((sum, value) => sum + value, 0);
    return line.map((value) => (total === 0 ? null : value / total));
  });
  const n = confusion.flat().reduce((sum, value) => sum + value, 0);
  return {
    data: [
      {
        type: 'heatmap',
        x: labels,
        y: labels,
        z: shares,
        zmin: 0,
        zmax: 1,
        colorscale: SEQUENTIAL,
        text: confusion.map((line) => line.map(String)),
        texttemplate: '%{text}',
        xgap: 2,
        ygap: 2,
        colorbar: { title: { text: 'share of the line' }, thickness: 12, tickformat: '.0%' },
        hovertemplate: 'by the rules %{y}, predicted %{x}: %{text}<extra></extra>',
      },
    ],
    layout: figureLayout({
      x: axis('predicted'),
      y: axis('by the rules', { autorange: 'reversed' }),
      height: 160 + 46 * labels.length,
    }),
    caption: `Types predicted for each assemblage from all the others, n = ${n}, in attributes that did not define them; figures are counts, shade is the share of the line.`,
  };
}
