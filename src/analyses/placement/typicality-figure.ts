import type { LabelVerdict } from '../../numerics/tests/conformal.ts';
import type { Figure } from '../contract.ts';
import { printLevel } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { type KindStyle, MOST_KINDS } from '../shared/figure/kinds.ts';
import { styleOf } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import type { PlacementFound } from './found.ts';
import type { JudgedLabel, LabelRanking } from './sets-found.ts';
import { inOrder, rightSaid } from './sets-tables.ts';

/** How typical the find is of each label of one attribute, each in its own symbol. */
export function typicalityFigure(
  found: PlacementFound,
  attribute: string,
  judged: readonly JudgedLabel[],
): Figure {
  // Drawn from below, so that the likeliest stands on top.
  const rows = [...inOrder(judged)]
    .reverse()
    .flatMap(({ label, outcome, verdict }) =>
      'why' in outcome ? [] : [{ label, verdict, p: outcome.p, n: outcome.n }],
    );
  const ranking = found.rankings.find((one) => one.attribute === attribute);
  const marks = found.marks.get(attribute) ?? new Map();
  const order = rows.map(({ label, n }) => `${escapeText(label)} (${n})`);
  const verdicts = VERDICTS.map((one) => ({
    ...one,
    chosen: rows.filter(({ verdict }) => verdict === one.verdict),
  }));
  return {
    data: [
      // The legend tells how marks are filled; what their shapes are is written beside them.
      ...verdicts.map(({ name, look }) => ({
        type: 'scatter',
        mode: 'markers',
        name,
        x: [null],
        y: [order[0]],
        marker: filled({ colour: GROUND.ink, symbol: 'circle' }, look),
        hoverinfo: 'skip',
      })),
      ...verdicts.flatMap(({ chosen, look }) =>
        chosen.map(({ label, n, p }) => ({
          type: 'scatter',
          mode: 'markers',
          x: [p],
          y: [`${escapeText(label)} (${n})`],
          hovertemplate: '%{y}: p = %{x:.3f}<extra></extra>',
          marker: filled(styleOf(marks, label), look),
          showlegend: false,
        })),
      ),
    ],
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

type Look = 'filled' | 'hollow' | 'dotted';

/** The symbol and colour of a label, filled by what is said of it. */
function filled(
  { colour, symbol }: Pick<KindStyle, 'colour' | 'symbol'>,
  look: Look,
): Readonly<Record<string, unknown>> {
  const shape = symbol.replace('-open', '');
  if (look === 'filled')
    return { symbol: shape, color: colour, size: 10, line: { color: GROUND.ink, width: 0.7 } };
  return {
    symbol: `${shape}-open${look === 'dotted' ? '-dot' : ''}`,
    color: colour,
    size: 10,
    line: { color: colour, width: 1.5 },
  };
}

const VERDICTS: readonly { readonly verdict: LabelVerdict; readonly name: string; readonly look: Look }[] = [
  { verdict: 'cannot be excluded', name: 'cannot be excluded', look: 'filled' },
  { verdict: 'excluded', name: 'excluded', look: 'hollow' },
  { verdict: 'too few to judge', name: 'too few to exclude', look: 'dotted' },
];
