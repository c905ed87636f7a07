import type { Figure } from '../../analyses/contract.ts';
import type { Drawing } from '../drawing/marks.ts';

/** A caption as a sentence that ends in a point; with the names that had no room in its drawing. */
export function captionFor(
  { caption }: Figure,
  { namesLeftOut = 0 }: Pick<Drawing, 'namesLeftOut'> = {},
): string {
  const text = caption.trim();
  const whole = /[.!?]$/.test(text) ? text : `${text}.`;
  if (namesLeftOut === 0) return whole;
  return `${whole} In this measure ${namesLeftOut} ${namesLeftOut === 1 ? 'name has' : 'names have'} no room.`;
}
