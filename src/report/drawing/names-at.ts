import type { Figure } from '../../analyses/contract.ts';
import { drawFigure } from './draw-figure.ts';
import { each } from './plain.ts';

/**
 * The figure with the names beside its points set for the room that it will have: a screen is narrower or wider than the
 * page that a figure was made for. Names without room are left out here and stand under the pointer; `leftOut` counts them.
 */
export function namesAt(
  figure: Figure,
  room: { readonly width: number; readonly height: number },
): { readonly data: Figure['data']; readonly leftOut: number } {
  const named = figure.data.some(({ mode }) => typeof mode === 'string' && mode.includes('markers+text'));
  if (!named) return { data: figure.data, leftOut: 0 };
  const { namePlaces = [], namesLeftOut = 0 } = drawFigure(figure, room);
  const data = figure.data.map((trace) => {
    const own = new Map(
      namePlaces.flatMap((place) => (place.trace === trace ? [[place.point, place.textposition]] : [])),
    );
    if (own.size === 0 || !Array.isArray(trace.text)) return trace;
    return {
      ...trace,
      text: trace.text.map((text, point) => (own.get(point) === null ? '' : text)),
      textposition: trace.text.map(
        (_, point) => own.get(point) ?? each(trace.textposition, point) ?? 'top center',
      ),
    };
  });
  return { data, leftOut: namesLeftOut };
}
