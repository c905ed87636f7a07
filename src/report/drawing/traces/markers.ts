import { GROUND, KIND_COLOURS } from '../../../analyses/shared/figure/colours.ts';
import { eachNumber } from '../axes.ts';
import { colourScale, fillOf, hexOf, paint, strokeOf } from '../colours.ts';
import { linePath, type Mark } from '../marks.ts';
import { each, numberOr, type Plain, part, textOr } from '../plain.ts';
import { symbolPath } from '../symbols.ts';

export { symbolPath as markerPath } from '../symbols.ts';

/** One marker of a trace, with the settings that stand at its place in the lists. */
export function markerMark(marker: Plain, at: number, x: number, y: number, size?: number): readonly Mark[] {
  const symbol = textOr(each(marker.symbol, at), 'circle');
  const wide = size ?? eachNumber(marker.size, at, 6);
  const colour = markerColour(marker, at);
  const line = part(marker, 'line');
  const own = { color: each(line.color, at), width: each(line.width, at) };
  const opacity = eachNumber(marker.opacity, at, 1);
  const thin = symbol.endsWith('-thin');
  const open = thin || /-open|^line/.test(symbol);
  const stroke = thin
    ? strokeOf(own, GROUND.ink, 1)
    : open
      ? { stroke: paint(colour).colour, width: Math.max(1, numberOr(own.width, 1)) }
      : strokeOf(own, GROUND.ink, 0);
  const shape = /^circle(?:-open)?(?:-dot)?$/.test(symbol)
    ? { circle: [x, y, wide / 2] as const }
    : { path: symbolPath(symbol, x, y, wide) };
  const mark: Mark = {
    ...shape,
    ...(open ? {} : fillOf(colour)),
    ...stroke,
    ...(opacity === 1 ? {} : { opacity }),
  };
  if (!symbol.endsWith('-dot')) return [mark];
  return [mark, { circle: [x, y, 1.2], fill: paint(own.color ?? colour).colour }];
}

export function markerColour(marker: Plain, at: number): unknown {
  const value = each(marker.color, at);
  if (typeof value !== 'number') return value ?? KIND_COLOURS[0];
  return hexOf(
    colourScale(
      marker.colorscale,
      numberOr(marker.cmin, 0),
      numberOr(marker.cmax, 1),
      marker.reversescale,
    ).at(value),
  );
}

/** A bar from a value to its limits, with a short line across each end. */
export function limitMark(
  bars: Plain,
  ends: readonly (readonly [number, number])[],
  upright: boolean,
): readonly Mark[] {
  const half = numberOr(bars.width, 4);
  const path = ends.map(([x, y]) =>
    half === 0
      ? ''
      : upright
        ? linePath([
            [x - half, y],
            [x + half, y],
          ])
        : linePath([
            [x, y - half],
            [x, y + half],
          ]),
  );
  return [
    {
      path: linePath(ends) + path.join(''),
      stroke: paint(bars.color ?? GROUND.ink).colour,
      width: numberOr(bars.thickness, 2),
    },
  ];
}
