import { GROUND } from '../../analyses/shared/figure/colours.ts';
import { type ColourScale, colourScale } from './colours.ts';
import { LINE_HEIGHT, lettering, MIDDLE, widest } from './lettering.ts';
import { type Box, boxPath, linePath, type Mark } from './marks.ts';
import { numberOr, type Plain, part, textOr } from './plain.ts';
import { ticksOf } from './scale.ts';
import { heatScale } from './traces/heatmap.ts';

/** The scale of colours, beside the plot or lying above it. */
export interface ColourBar {
  readonly settings: Plain;
  readonly scale: ColourScale;
  /** Pixels to the right of the plot, text included; 0 where it lies above. */
  readonly width: number;
  /** Pixels above the plot, text included; 0 where it stands beside. */
  readonly above: number;
}

const SIZE = 10;
const STEPS = 64;

/** The first trace that shows its scale has one. */
export function colourBarOf(traces: readonly Plain[], plotHeight: number): ColourBar | null {
  for (const trace of traces) {
    const marker = part(trace, 'marker');
    if ((trace.type === 'heatmap' || trace.type === 'contour') && trace.showscale !== false)
      return measured(part(trace, 'colorbar'), heatScale(trace), plotHeight);
    if (marker.showscale === true)
      return measured(
        part(marker, 'colorbar'),
        colourScale(
          marker.colorscale,
          numberOr(marker.cmin, 0),
          numberOr(marker.cmax, 1),
          marker.reversescale,
        ),
        plotHeight,
      );
  }
  return null;
}

function measured(settings: Plain, scale: ColourScale, height: number): ColourBar {
  if (settings.orientation === 'h') return { settings, scale, width: 0, above: levelHigh(settings) };
  const words = widest(
    barTicks(settings, scale, height).map(({ text }) => text),
    SIZE,
  );
  const { lines } = titleOfBar(settings);
  const beside = titleSide(settings) === 'right' ? lines.length * SIZE * LINE_HEIGHT + 6 : 0;
  const above = titleSide(settings) === 'right' ? 0 : widest(lines, SIZE) - 4;
  const wide = numberOr(settings.xpad, 10) + numberOr(settings.thickness, 30) + 6;
  return { settings, scale, width: Math.max(wide + words + beside, 10 + above) + 4, above: 0 };
}

function titleOfBar(settings: Plain) {
  return lettering(textOr(settings.title, textOr(part(settings, 'title').text, '')));
}

function titleSide(settings: Plain): string {
  return textOr(part(settings, 'title').side, 'top');
}

function barTicks(settings: Plain, { low, high }: ColourScale, height: number) {
  return ticksOf(settings, { kind: 'linear', categories: [], range: [low, high], ends: [0, 1] }, height / 45);
}

export function drawColourBar({ settings, scale }: ColourBar, plot: Box): readonly Mark[] {
  if (settings.orientation === 'h') return drawLevelBar({ settings, scale }, plot);
  const share = numberOr(settings.len, 1);
  const { lines } = titleOfBar(settings);
  const above = titleSide(settings) !== 'right' && lines.some((line) => line !== '');
  const height = plot.height * share - (above ? SIZE * LINE_HEIGHT + 4 : 0);
  const centre = plot.y + plot.height * (1 - numberOr(settings.y, 0.5));
  const bottom = centre + (plot.height * share) / 2;
  const x = plot.x + plot.width + numberOr(settings.xpad, 10);
  const thick = numberOr(settings.thickness, 30);
  const yOf = (value: number) => bottom - ((value - scale.low) / (scale.high - scale.low)) * height;
  const column = Array.from({ length: STEPS }, (_, step) => [
    scale.at(scale.high - ((step + 0.5) / STEPS) * (scale.high - scale.low)),
  ]);
  const fill = GROUND.ink;
  const ticks = barTicks(settings, scale, height);
  const right = x + thick;
  const words = widest(
    ticks.map(({ text }) => text),
    SIZE,
  );
  const title: readonly Mark[] = above
    ? lines.map((text, at) => ({
        text,
        x: x - 2,
        y: bottom - height - 6 - (lines.length - 1 - at) * SIZE * LINE_HEIGHT,
        size: SIZE,
        anchor: 'start' as const,
        fill,
      }))
    : lines.map((text, at) => ({
        text,
        x: right + 6 + words + 6 + (lines.length - at - 1) * SIZE * LINE_HEIGHT,
        y: bottom - height / 2,
        size: SIZE,
        anchor: 'middle' as const,
        fill,
        turn: 90,
      }));
  return [
    { dots: column, x, y: bottom - height, width: thick, height },
    {
      path: ticks
        .map(({ own }) =>
          linePath([
            [right, yOf(own)],
            [right + 3, yOf(own)],
          ]),
        )
        .join(''),
      stroke: GROUND.ink,
      width: 1,
    },
    ...ticks.map(
      ({ own, text }): Mark => ({
        text,
        x: right + 6,
        y: yOf(own) + SIZE * MIDDLE,
        size: SIZE,
        anchor: 'start',
        fill,
      }),
    ),
    ...title,
  ];
}

const TICK = 3;
/** Between ticks and their numbers, and between bar, title and plot. */
const GAP = 3;

function levelHigh(settings: Plain): number {
  const title = titleOfBar(settings).lines.length * SIZE * LINE_HEIGHT;
  return title + numberOr(settings.thickness, 30) + TICK + SIZE * LINE_HEIGHT + 3 * GAP;
}

/** Lying above the plot from its left edge: the title over the bar, its numbers beneath. */
function drawLevelBar(
  { settings, scale }: Pick<ColourBar, 'settings' | 'scale'>,
  plot: Box,
): readonly Mark[] {
  const { lines } = titleOfBar(settings);
  const wide = plot.width * numberOr(settings.len, 1);
  const thick = numberOr(settings.thickness, 30);
  const first = plot.y - levelHigh(settings);
  const top = first + lines.length * SIZE * LINE_HEIGHT + GAP;
  const foot = top + thick;
  const xOf = (value: number) => plot.x + ((value - scale.low) / (scale.high - scale.low)) * wide;
  const ticks = barTicks(settings, scale, wide);
  const row = Array.from({ length: STEPS }, (_, step) =>
    scale.at(scale.low + ((step + 0.5) / STEPS) * (scale.high - scale.low)),
  );
  const text = (words: string, x: number, y: number, anchor: 'start' | 'middle'): Mark => ({
    text: words,
    x,
    y,
    size: SIZE,
    anchor,
    fill: GROUND.ink,
  });
  return [
    { dots: [row], x: plot.x, y: top, width: wide, height: thick },
    { path: boxPath({ x: plot.x, y: top, width: wide, height: thick }), stroke: GROUND.ink, width: 0.5 },
    {
      path: ticks
        .map(({ own }) =>
          linePath([
            [xOf(own), foot],
            [xOf(own), foot + TICK],
          ]),
        )
        .join(''),
      stroke: GROUND.ink,
      width: 1,
    },
    ...ticks.map(({ own, text: words }) => text(words, xOf(own), foot + TICK + GAP + SIZE * 0.8, 'middle')),
    ...lines.map((words, at) => text(words, plot.x, first + SIZE + at * SIZE * LINE_HEIGHT, 'start')),
  ];
}
