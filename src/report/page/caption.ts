import type { Figure } from '../../analyses/contract.ts';

/** A caption as a sentence that ends in a point. */
export function captionFor({ caption }: Figure): string {
  const text = caption.trim();
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
