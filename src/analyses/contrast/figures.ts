import type { Figure } from '../contract.ts';
import { printLevel, printYear } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { kindMarker, kindStyle } from '../shared/figure/kinds.ts';
import { styleOf } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { pooledFigure } from '../shared/pooled/faces.ts';
import { yearAxis } from '../years.ts';
import { pooledAttribute } from './cells.ts';
import { boxFigure, countsOf, cumulativeFigure, outlineFigure, valueAxis } from './distribution-figures.ts';
import type { AttributeContrast, ContrastFound } from './found.ts';
import type { Trend } from './trend-found.ts';

/** For each attribute: points and boxes, outlines, cumulative curves, medians, effects, and the trend where asked. */
export function contrastFigures(found: ContrastFound): Readonly<Record<string, Figure>> {
  const figures: Record<string, Figure> = {};
  for (const contrast of found.attributes) {
    const { id } = contrast.samples.attribute;
    if (contrast.samples.groups.length === 0) continue;
    figures[id] = boxFigure(found, contrast);
    figures[`${id}Outlines`] = outlineFigure(found, contrast);
    figures[`${id}Cumulative`] = cumulativeFigure(found, contrast);
    if (contrast.samples.tested.length > 0) figures[`${id}Medians`] = mediansFigure(found, contrast);
    const pooled = pooledFigure(pooledAttribute(contrast), found.by);
    if (pooled !== null) figures[`${id}Pooled`] = pooled;
    if (contrast.pairs.length > 0) figures[`${id}Effects`] = effectsFigure(found, contrast);
    if (contrast.trend !== null && !('why' in contrast.trend)) {
      figures[`${id}Trend`] = trendFigure(found, contrast, contrast.trend);
    }
  }
  return figures;
}

/** Dot and interval: the median of each group and where it plausibly lies. */
function mediansFigure(found: ContrastFound, { samples, medians }: AttributeContrast): Figure {
  const groups = samples.tested;
  return {
    data: groups.map((group, place) => {
      const interval = medians[place];
      const middle = group.quartiles[1];
      const name = escapeText(`${group.label} (${group.points.count})`);
      return {
        type: 'scatter',
        mode: 'markers',
        name,
        x: [middle],
        y: [name],
        ...('why' in interval ? {} : { error_x: bar(middle, interval.low, interval.high) }),
        marker: kindMarker(styleOf(found.marks, group.label), 9),
        showlegend: false,
      };
    }),
    layout: figureLayout({
      x: valueAxis(samples),
      y: axis(found.by, { autorange: 'reversed', type: 'category' }),
      height: 110 + 28 * groups.length,
    }),
    caption:
      `Medians of ${samples.attribute.label} by ${found.by} with ${printLevel(found.options.confidence)} intervals, items drawn again (BCa); ` +
      `in brackets the number of items; ${countsOf(found, groups)}.`,
  };
}

/** Dot and interval of Cliff's delta for each pair; 0 is no difference. */
function effectsFigure(found: ContrastFound, { samples, pairs }: AttributeContrast): Figure {
  const drawn = pairs.flatMap((pair) => ('why' in pair.delta ? [] : [{ pair, delta: pair.delta }]));
  const names = drawn.map(({ pair }) =>
    escapeText(`${samples.tested[pair.first].label} against ${samples.tested[pair.second].label}`),
  );
  const placed = drawn.map(({ delta }, place) => ({ ...delta, name: names[place] }));
  const dots = (chosen: typeof placed) => ({
    type: 'scatter',
    mode: 'markers',
    x: chosen.map(({ estimate }) => estimate),
    y: chosen.map(({ name }) => name),
    marker: kindMarker(kindStyle(0), 8),
    showlegend: false,
  });
  const limited = placed.flatMap((one) =>
    'why' in one.interval ? [] : [{ ...one, interval: one.interval }],
  );
  const bare = placed.filter(({ interval }) => 'why' in interval);
  const scored = limited.some(({ estimate }) => Math.abs(estimate) === 1);
  return {
    data: [
      ...(limited.length === 0
        ? []
        : [
            {
              ...dots(limited),
              error_x: {
                ...bar(0, 0, 0),
                array: limited.map(({ estimate, interval }) => interval.high - estimate),
                arrayminus: limited.map(({ estimate, interval }) => estimate - interval.low),
              },
            },
          ]),
      ...(bare.length === 0 ? [] : [dots(bare)]),
    ],
    layout: figureLayout({
      x: axis('Cliff’s delta (above 0: the first is larger)', { range: [-1.05, 1.05] }),
      y: axis('', {
        autorange: 'reversed',
        type: 'category',
        categoryorder: 'array',
        categoryarray: names,
      }),
      height: 120 + 24 * drawn.length,
      more: {
        shapes: [
          {
            type: 'line',
            x0: 0,
            x1: 0,
            yref: 'paper',
            y0: 0,
            y1: 1,
            line: { color: GROUND.inkSoft, width: 1, dash: 'dot' },
          },
        ],
      },
    }),
    caption:
      `Cliff's delta of ${samples.attribute.label} for each pair of ${found.by} with ${printLevel(found.options.confidence)} intervals, items drawn ` +
      `again (BCa)${scored ? ', of groups wholly apart score intervals (Newcombe 2006)' : ''}${bare.length === 0 ? '' : `, without a bar where no interval could be computed (${bare.length})`}; ${countsOf(found, samples.tested)}.`,
  };
}

/** Values against their dates, spans as bars. */
function trendFigure(found: ContrastFound, { samples }: AttributeContrast, trend: Trend): Figure {
  return {
    data: samples.tested.map((group, place) => {
      const own = trend.values.filter((value) => value.group === place);
      const middle = own.map(({ from, to }) => (from + to) / 2);
      return {
        type: 'scatter',
        mode: 'markers',
        name: escapeText(`${group.label} (${own.length})`),
        x: middle,
        y: own.map(({ value }) => value),
        text: own.map(({ id }) => escapeText(id)),
        customdata: own.map(({ from, to }) => `${printYear(from)} to ${printYear(to)}`),
        error_x: {
          ...bar(0, 0, 0),
          array: own.map(({ to }, i) => to - middle[i]),
          arrayminus: own.map(({ from }, i) => middle[i] - from),
          thickness: 0.5,
        },
        marker: kindMarker(styleOf(found.marks, group.label), 7),
        hovertemplate: '%{text}, %{customdata}: %{y}<extra></extra>',
      };
    }),
    layout: figureLayout({
      x: yearAxis(
        'date',
        trend.values.flatMap(({ from, to }) => [from, to]),
      ),
      y: valueAxis(samples),
      legend: found.by,
      height: 400,
    }),
    caption:
      `${samples.attribute.label} against date: ${trend.values.length} values, ${trend.undated} without a closed span left out; bars are the spans ` +
      `of years (${trend.spans} distinct).`,
  };
}

function bar(middle: number, low: number, high: number): Readonly<Record<string, unknown>> {
  return {
    type: 'data',
    symmetric: false,
    array: [high - middle],
    arrayminus: [middle - low],
    color: GROUND.ink,
    thickness: 1,
    width: 4,
  };
}
