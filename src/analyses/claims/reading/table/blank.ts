/** Cells that hold nothing, and cells that hold a number. */
const EMPTY = new Set(['', '-', '–', '—', '.', '·', 'n/a', 'na', 'n.d.', '…', '..', 'nd', '/']);

export function isBlank(text: string): boolean {
  return EMPTY.has(text.trim().toLowerCase());
}

export const isNumber = (text: string) => /^[<>≤≥~(]?\s?[-+−–]?[\d.,]*\d/.test(text.trim());

const P_VALUE =
  /^(?:p(?:-?value)?\s*)?(?:[<>=≤≥]{0,2}\s?(?:[01]?[.,]\d+|\d(?:[.,]\d+)?(?:e[-−–]\d+|\s?[x×·*]\s?10\s?\^?[-−–⁻]?[\d⁰¹²³⁴-⁹]+)|[01])(?:\s?[*†‡§a-e]+)?|n\.?\s?s\.?|not significant|\*+)$/iu;

/** ".03", "< 0.001", "n.s.", "**": what can stand under p. */
export function isPValue(text: string): boolean {
  return P_VALUE.test(text.trim());
}
