import type { LabelVerdict } from '../../numerics/tests/conformal.ts';
import type { Figure } from '../contract.ts';
import {
  assignStyles,
  axis,
  escapeText,
  figureLayout,
  findMarker,
  GROUND,
  kindMarker,
  MOST_KINDS,
} from '../figure-style.ts';
import { printCount, printLevel } from '../phrasing.ts';
import type { PlacementFound } from './found.ts';
import type { JudgedLabel, LabelRanking } from './sets-found.ts';
import { inOrder, rightSaid } from './sets-tables.ts';

/** The find among its comparanda, its p values by label, and where its measurements stand. */
export function placementFigures(found: PlacementFound): Readonly<Record<string, Figure>> {
  if (found.unplaced !== null) return {};
  const figures: Record<string, Figure> = {};
  if (!('why' in found.position)) figures.map = mapFigure(found);
  const attributes = [...new Set(found.judged.map(({ attribute }) => attribute))];
  for (const attribute of attributes) {
    const judged = found.judged.filter((one) => one.attribute === attribute);
    figures[`typicality-${slug(attribute)}`] = typicalityFigure(found, attribute, judged);
  }
  return figures;
}

function slug(text: string): string {
  return text.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');
}

function mapFigure(found: PlacementFound): Figure {
  if ('why' in found.position) throw new RangeError('mapFigure: there is no map');
  const { places, shares, find, cloud } = found.position;
  const near = new Set(found.neighbours.map(({ id }) => id));
  const points = (name: string, chosen: typeof places, style: Readonly<Record<string, unknown>>) => ({
    type: 'scatter',
    mode: 'markers',
    name,
    x: chosen.map(({ x }) => x),
    y: chosen.map(({ y }) => y),
    text: chosen.map(({ id }) => escapeText(id)),
    hovertemplate: '%{text}<extra></extra>',
    marker: style,
  });
  const [first, second] = [...assignStyles(['comparanda', 'nearest']).values()];
  return {
    data: [
      points(
        'comparanda',
        places.filter(({ id }) => !near.has(id)),
        {
          ...kindMarker(first, 6),
          opacity: 0.45,
        },
      ),
      points(
        'nearest comparanda',
        places.filter(({ id }) => near.has(id)),
        kindMarker(second, 10),
      ),
      ...(cloud.length === 0
        ? []
        : [
            {
              type: 'scatter',
              mode: 'markers',
              name: 'the find within its ranges',
              x: cloud.map(([x]) => x),
              y: cloud.map(([, y]) => y),
              hoverinfo: 'skip',
              marker: { symbol: 'x-thin', size: 6, line: { color: GROUND.ink, width: 1 } },
            },
          ]),
      {
        type: 'scatter',
        mode: 'markers',
        name: 'the find',
        x: [find[0]],
        y: [find[1]],
        hovertemplate: 'the find<extra></extra>',
        marker: findMarker(),
      },
    ],
    layout: figureLayout({
      x: axis(`axis 1 (${(shares[0] * 100).toFixed(1)} %)`),
      y: axis(`axis 2 (${(shares[1] * 100).toFixed(1)} %)`, { scaleanchor: 'x' }),
      height: 460,
    }),
    caption:
      `Principal coordinates of ${printCount(places.length, found.unit)} with the find added after Gower 1968 (star)` +
      `${cloud.length > 0 ? `; crosses: ${cloud.length} draws of values within its ranges` : ''}. ` +
      `Squares: its ${found.neighbours.length} nearest comparanda. Compared on ${found.comparedOn.join(', ')}.`,
  };
}

function typicalityFigure(found: PlacementFound, attribute: string, judged: readonly JudgedLabel[]): Figure {
  // Drawn from below, so that the likeliest stands on top.
  const rows = [...inOrder(judged)]
    .reverse()
    .flatMap(({ label, outcome, verdict }) =>
      'why' in outcome ? [] : [{ label, verdict, p: outcome.p, n: outcome.n }],
    );
  const ranking = found.rankings.find((one) => one.attribute === attribute);
  const verdicts = VERDICTS.map(({ verdict, name }) => ({
    name,
    chosen: rows.filter((row) => row.verdict === verdict),
  }));
  const styles = assignStyles([verdicts[0].name, verdicts[1].name, '']);
  const order = rows.map(({ label, n }) => `${escapeText(label)} (${n})`);
  return {
    data: verdicts.map(({ name, chosen }, place) => ({
      type: 'scatter',
      mode: 'markers',
      name,
      x: chosen.map(({ p }) => p),
      y: chosen.map(({ label, n }) => `${escapeText(label)} (${n})`),
      hovertemplate: '%{y}: p = %{x:.3f}<extra></extra>',
      marker: kindMarker([...styles.values()][place], 10),
    })),
    layout: figureLayout({
      x: axis('p', { range: [-0.02, 1.02] }),
      y: axis('', { type: 'category', categoryorder: 'array', categoryarray: order }),
      height: 120 + 24 * Math.max(rows.length, 3),
      more: {
        shapes: [
          {
            type: 'line',
            x0: 1 - found.options.level,
            x1: 1 - found.options.level,
            y0: 0,
            y1: 1,
            yref: 'paper',
            line: { color: GROUND.ink, width: 1, dash: 'dash' },
          },
        ],
      },
    }),
    caption:
      `How typical the find is of each label of "${attribute}" (records judged by in brackets): conformal p values; ` +
      `left of the dashed line a label is excluded at ${printLevel(found.options.level)}, if it has records enough.` +
      orderSaid(ranking) +
      `${rows.length > MOST_KINDS ? ` ${rows.length} labels.` : ''}`,
  };
}

function orderSaid(ranking: LabelRanking | undefined): string {
  return ranking === undefined ? '' : ` From the top in order of likelihood: ${rightSaid(ranking)}.`;
}

const VERDICTS: readonly { readonly verdict: LabelVerdict; readonly name: string }[] = [
  { verdict: 'cannot be excluded', name: 'cannot be excluded' },
  { verdict: 'excluded', name: 'excluded' },
  { verdict: 'too few to judge', name: 'too few to exclude' },
];
