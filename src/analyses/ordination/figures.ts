import type { Figure } from '../contract.ts';
import { labelled, namesOrNumbers, placeLabels } from '../label-places.ts';
import { printCount, printLevel } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { assignStyles, kindMarker, kindStyle, passiveMarker } from '../shared/figure/kinds.ts';
import { styleOf } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import type { Axes, OrdinationFound } from './found.ts';
import { methodName } from './options.ts';
import { axisName } from './tables.ts';

/** The records on the first two axes; and, where the method has them, attributes or columns. */
export function ordinationFigures(found: OrdinationFound): Readonly<Record<string, Figure>> {
  const { axes } = found;
  if ('why' in axes || axes.eigenvalues.length < 2) return {};
  const figures: Record<string, Figure> = { map: mapFigure(found, axes) };
  if (axes.rows.length > 0 && axes.variables.some(({ at }) => at.length > 1)) {
    figures.variables = variablesFigure(found, axes);
  }
  return figures;
}

const HEIGHT = 480;
const named = ({ label, at }: { readonly label: string; readonly at: ArrayLike<number> }) => ({
  x: at[0],
  y: at[1],
  name: label,
});

function mapFigure(found: OrdinationFound, axes: Axes): Figure {
  const records = axes.rows.length > 0;
  const data = records
    ? [...recordTraces(found, axes), ...supplementaryTraces(found, axes)]
    : tableTraces(axes);
  const what = records ? printCount(axes.records.length, found.unit) : 'rows and columns';
  const hulls = found.centres.some(({ hull }) => hull.length > 0);
  const ellipses = found.centres.some(({ ellipse }) => ellipse.length > 0);
  return {
    data,
    layout: figureLayout({
      x: axis(axisName(axes, 0)),
      y: axis(axisName(axes, 1), { scaleanchor: 'x' }),
      ...(found.by === '' ? {} : { legend: found.by }),
      height: HEIGHT,
    }),
    caption:
      `${what} on the first two axes (${methodName(found.options.method)}), n = ${printCount(found.n.fragments, 'fragment')} of ${printCount(found.n.items, 'item')}. ` +
      (hulls ? 'Thin outlines: convex hulls of labels with five records or more. ' : '') +
      (ellipses ? `Dotted: ${printLevel(found.options.confidence)} ellipses of resampled centres. ` : '') +
      (axes.passive.length > 0
        ? `Hollow: ${printCount(axes.passive.length, `supplementary ${found.unit}`)}, placed without a say in the axes. `
        : '') +
      supplementaryCaption(found) +
      'Directions of the axes are arbitrary.',
  };
}

function supplementaryCaption({ supplementary }: OrdinationFound): string {
  const kinds = supplementary.some(({ role }) => role === 'kind');
  const numbers = supplementary.some(({ role }) => role === 'number');
  return (
    (kinds ? 'Open diamonds: centres of supplementary kinds. ' : '') +
    (numbers
      ? 'Dashed: directions in which supplementary numbers grow, as long as their correlation (1 = the farthest point). '
      : '')
  );
}

/** Mark of hulls and ellipses; their label is the `legendgroup`. */
export const OUTLINE = 'outline';

/** Mark of the traces that lie over the records of a map. */
export const SUPPLEMENTARY = 'supplementary';

/** Attributes that had no say: centres of kinds, directions of numbers. */
function supplementaryTraces({ supplementary }: OrdinationFound, axes: Axes) {
  const reach = Math.sqrt(
    axes.records.reduce((far, { at }) => Math.max(far, at[0] * at[0] + at[1] * at[1]), 0),
  );
  const text = {
    text: [] as string[],
    textposition: 'top center',
    showlegend: false,
    // By this the workbench finds what lies over the map.
    meta: SUPPLEMENTARY,
    hovertemplate: '%{text}<extra>supplementary</extra>',
    type: 'scatter',
  };
  const numbers = supplementary.filter(({ role, at }) => role === 'number' && at.every(Number.isFinite));
  const kinds = supplementary.filter(({ role }) => role === 'kind');
  const lines = numbers.map(({ label, at }) => ({
    ...text,
    mode: 'lines+text',
    text: ['', escapeText(label)],
    x: [0, at[0] * reach],
    y: [0, at[1] * reach],
    line: { color: GROUND.ink, width: 1.2, dash: 'dash' },
  }));
  if (kinds.length === 0) return lines;
  const marker = {
    symbol: 'diamond-open',
    size: 10,
    color: GROUND.ink,
    line: { color: GROUND.ink, width: 1.5 },
  };
  return [
    ...lines,
    {
      ...text,
      mode: 'markers+text',
      text: kinds.map(({ label }) => escapeText(label)),
      x: kinds.map(({ at }) => at[0]),
      y: kinds.map(({ at }) => at[1]),
      marker,
    },
  ];
}

function recordTraces(found: OrdinationFound, axes: Axes) {
  const names =
    found.by === ''
      ? [`${found.unit}s`]
      : [...new Set([...found.labels, ...found.passiveLabels])].sort(
          (a, b) => Number(a === '') - Number(b === ''),
        );
  const ordered = [...new Set(found.centres.map(({ label }) => label))].filter((name) =>
    names.includes(name),
  );
  const all = [...ordered, ...names.filter((name) => !ordered.includes(name))];
  const styleFor = (name: string) =>
    found.by === '' || name === '' ? kindStyle(0) : styleOf(found.marks, name);
  const points = [false, true].flatMap((passive) =>
    all.flatMap((name) => {
      const labels = passive ? found.passiveLabels : found.labels;
      const chosen = (passive ? axes.passive : axes.records).filter(
        (_, i) => found.by === '' || labels[i] === name,
      );
      const style = styleFor(name);
      if (chosen.length === 0) return [];
      const said = name === '' ? 'not recorded' : escapeText(name);
      return [
        {
          type: 'scatter',
          mode: 'markers',
          name: passive ? `${said}, supplementary` : said,
          legendgroup: passive ? `${name}, supplementary` : name,
          x: chosen.map(({ at }) => at[0]),
          y: chosen.map(({ at }) => at[1]),
          text: chosen.map(({ label }) => escapeText(label)),
          hovertemplate: '%{text}<extra>%{fullData.name}</extra>',
          marker: passive ? passiveMarker(style, 7) : kindMarker(style, 7),
        },
      ];
    }),
  );
  const outline = (name: string, corners: readonly (readonly [number, number])[], line: object) => ({
    type: 'scatter',
    mode: 'lines',
    legendgroup: name,
    // By this the workbench finds what goes around the marks of a label.
    meta: OUTLINE,
    showlegend: false,
    hoverinfo: 'skip',
    x: corners.map(([x]) => x),
    y: corners.map(([, y]) => y),
    line,
  });
  const outlines = found.centres.flatMap(({ label: own, passive, hull, ellipse }) => {
    const label = passive ? `${own}, supplementary` : own;
    const color = passive ? GROUND.ink : own === '' ? GROUND.neutral : styleFor(own).colour;
    return [
      ...(hull.length > 0 ? [outline(label, [...hull, hull[0]], { color, width: 0.8 })] : []),
      ...(ellipse.length > 0 ? [outline(label, ellipse, { color, width: 1.2, dash: 'dot' })] : []),
    ];
  });
  return [...outlines, ...points];
}

function tableTraces(axes: Axes) {
  const styles = [...assignStyles(['rows', 'columns']).values()];
  const all = [...axes.records, ...axes.variables];
  const labels = placeLabels(all.map(named), { height: HEIGHT, equal: true });
  return [axes.records, axes.variables].flatMap((side, place) =>
    [false, true].flatMap((passive) => {
      const chosen = side.filter(({ role }) => role.startsWith('supplementary') === passive);
      if (chosen.length === 0) return [];
      const marker = kindMarker(styles[place], 9);
      return [
        {
          type: 'scatter',
          mode: 'markers+text',
          name: `${passive ? 'supplementary ' : ''}${place === 0 ? 'rows' : 'columns'}`,
          x: chosen.map(({ at }) => at[0]),
          y: chosen.map(({ at }) => at[1]),
          ...labelled(
            chosen.map((one) => labels[all.indexOf(one)]),
            chosen.map(named),
          ),
          marker: passive
            ? { ...marker, color: GROUND.sheet, line: { color: styles[place].colour, width: 1.5 } }
            : marker,
        },
      ];
    }),
  );
}

function variablesFigure(found: OrdinationFound, axes: Axes): Figure {
  const placed = axes.variables.filter(({ at }) => at.length > 1);
  const [style] = [...assignStyles(['attributes']).values()];
  const { labels, said: names } = namesOrNumbers(placed.map(named), { height: HEIGHT, equal: true });
  return {
    data: [
      ...placed.map(({ at }) => ({
        type: 'scatter',
        mode: 'lines',
        showlegend: false,
        hoverinfo: 'skip',
        x: [0, at[0]],
        y: [0, at[1]],
        line: { color: GROUND.neutral, width: 1 },
      })),
      {
        type: 'scatter',
        mode: 'markers+text',
        showlegend: false,
        x: placed.map(({ at }) => at[0]),
        y: placed.map(({ at }) => at[1]),
        ...labelled(labels, placed.map(named)),
        marker: kindMarker(style, 6),
      },
    ],
    layout: figureLayout({
      x: axis(axisName(axes, 0)),
      y: axis(axisName(axes, 1), { scaleanchor: 'x' }),
      height: HEIGHT,
    }),
    caption:
      `What the axes are made of (${methodName(found.options.method)}): ${found.options.method === 'pca' ? 'loadings of the attributes' : 'places of attributes and categories'}, ` +
      `n = ${printCount(axes.records.length, found.unit)}.${names}`,
  };
}
