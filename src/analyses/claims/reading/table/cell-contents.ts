import { type DecimalMark, NUMBER } from '../numbers.ts';
import { isBlank } from './blank.ts';

/** What the cells of a column look like, whatever its head says. */
export type Content = 'whole' | 'decimal' | 'per cent' | 'count with share' | 'mean with spread' | 'other';

const ONE_NUMBER = new RegExp(`^[<>≤≥~]?\\s?${NUMBER}$`, 'u');

export function contentOf(cells: readonly string[], mark: DecimalMark): Content {
  const filled = cells.filter((cell) => !isBlank(cell)).map((cell) => cell.replace(/\s?[*†‡§ᵃᵇᶜ]+$/u, ''));
  if (filled.length === 0) return 'other';
  const share = (pattern: RegExp) => filled.filter((cell) => pattern.test(cell)).length * 2 > filled.length;
  if (share(/±|\+\/-/)) return 'mean with spread';
  if (
    share(/^\d[\d ,.]*\s*(?:\/\s*\d+\s*)?[([]\s*[\d.,]+\s*%?\s*[)\]]$/) &&
    !filled.some((cell) => /^[-−–]?(?:0?[.,]\d|\d+[.,]\d{1,2}(?!\d))/u.test(cell))
  )
    return 'count with share';
  if (filled.some((cell) => /%$/.test(cell)) && share(/^[<~]?\s?[\d.,]+\s*%?$/)) return 'per cent';
  if (
    share(
      mark === '.'
        ? /^\(?[1-9]\d{0,2}(?:[ ,'’]\d{3})+\)?$|^\(?\d+\)?$/
        : /^\(?[1-9]\d{0,2}(?:[ ,.'’]\d{3})+\)?$|^\(?\d+\)?$/,
    ) &&
    !filled.some((cell) => /^\d+[.,]\d{1,2}$|^[.,]\d|^0[.,]\d/.test(cell))
  )
    return 'whole';
  if (filled.every((cell) => ONE_NUMBER.test(bracketed(cell)))) return 'decimal';
  return 'other';
}

/** "(12.5)" below or beside a count is the number alone. */
export function bracketed(text: string): string {
  const match = /^\(\s*([^()]+?)\s*\)$/.exec(text.trim());
  return match === null ? text.trim() : match[1];
}
