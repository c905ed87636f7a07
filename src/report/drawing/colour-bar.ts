import { GROUND } from '../../analyses/figure-style.ts';
import { type ColourScale, colourScale } from './colours.ts';
import { LINE_HEIGHT, lettering, MIDDLE, widest } from './lettering.ts';
import { type Box, linePath, type Mark } from './marks.ts';
import { numberOr, type Plain, part, textOr } from './plain.ts';
import { ticksOf } from './scale.ts';
import { heatScale } from './traces/heatmap.ts';

/** The scale of colours beside the plot. */
export interface ColourBar {
  readonly settings: Plain;
  readonly scale: ColourScale;
  /** Pixels to the right of the plot, text included. */
  readonly width: number;
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
  const words = widest(
    barTicks(settings, scale, height).map(({ text }) => text),
    SIZE,
  );
  const { lines } = titleOfBar(settings);
  const beside = titleSide(settings) === 'right' ? lines.length * SIZE * LINE_HEIGHT + 6 : 0;
  const above = titleSide(settings) === 'right' ? 0 : widest(lines, SIZE) - 4;
  const wide = numberOr(settings.xpad, 10) + numberOr(settings.thickness, 30) + 6;
  return { settings, scale, width: Math.max(wide + words + beside, 10 + above) + 4 };
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
