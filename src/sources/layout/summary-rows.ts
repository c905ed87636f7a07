import { lookupKey } from '../../attributes/folding.ts';
import { greatest, least } from '../../numerics/foundation/lists.ts';
import { filledCells, isNumberLike } from './cell-shapes.ts';
import type { Grid } from './grid.ts';

/** Rows that sum up others: totals, means, deviations. */

const SUMMARY_WORDS = new Set(
  (
    'total|totals|grand total|sum|subtotal|mean|average|avg|median|sd|s.d|std|stdev|st dev|std dev|standard deviation|min|max|range|n|count|' +
    'cv|se|sem|variance|minimum|maximum|' +
    'summe|summen|gesamt|gesamtsumme|insgesamt|insg|ges|zwischensumme|mittelwert|mittel|mw|durchschnitt|anzahl gesamt|' +
    'stabw|stdabw|standardabweichung|standardabw|varianz|spannweite|' +
    'somme|totaux|total général|sous-total|moyenne|moy|médiane|écart-type|écart type|ec type|étendue|' +
    'totale|totali|totale generale|subtotale|somma|media|mediana|deviazione standard|dev standard|dev st|dev std|' +
    'suma|total general|totales|promedio|desviación típica|desviación estándar|desv est|desv típica|sum total|i alt|ialt|total i alt|' +
    'gennemsnit|gjennomsnitt|snitt|totalt|standardafvigelse|standardavvik'
  )
    .split('|')
    .map(lookupKey),
);

/** Identifiers hold a digit as a rule; only a short text without one is worth folding. */
export function isSummaryWord(text: string): boolean {
  return text.length < 25 && !/\d/.test(text) && SUMMARY_WORDS.has(lookupKey(text));
}

/** "Total: 5 fragmentos", "Summe 12", "n = 45": a word for a total and what it comes to in one cell. */
export function isSummaryPhrase(text: string): boolean {
  const found = /^(\p{L}[\p{L} .-]{0,23}?)\s*(?:[:=]|\s(?=[\d(]))\s*(.*)$/u.exec(text.trim());
  return found !== null && SUMMARY_WORDS.has(lookupKey(found[1]!)) && /^[(\d~≈]/.test(found[2]!);
}

/**
 * Rows from `start` to before `end` that are headed by a word for a total, mean or deviation over numbers only. Where
 * the rows have short codes for names ("SA", "SB", "SC"; "K", "L", "M"), one that is such a word by chance ("SD", "N") is
 * a row like the others, unless its numbers are what it says of theirs.
 */
export function summaryRows(grid: Grid, start: number, end: number): ReadonlySet<number> {
  const found = new Set<number>();
  const codes = new Map<number, boolean>();
  for (let at = start; at < Math.min(end, grid.length); at++) {
    const row = grid[at]!;
    const place = headedAt(row);
    if (place === null) continue;
    if (row[place]!.trim().length <= LONGEST_CODE) {
      if (!codes.has(place)) codes.set(place, hasCodes(grid, start, end, place));
      if (codes.get(place) === true && !sumsUp(grid, start, at, place)) continue;
    }
    found.add(at);
  }
  return found;
}

/** Where the word stands: in one of the first three filled cells, with numbers alone to its right. */
function headedAt(row: readonly string[]): number | null {
  const filled = filledCells(row);
  const word = filled.slice(0, 3).findIndex((i) => isSummaryWord(row[i]!));
  if (word < 0) return null;
  if (word === filled.length - 1)
    return word === 0 && row.length > 2 && row[filled[0]!]!.trim().length > LONGEST_CODE ? filled[0]! : null;
  return filled.slice(word + 1).every((i) => isNumberLike(row[i]!)) ? filled[word]! : null;
}

const LONGEST_CODE = 3;
const LOOKED_AT = 500;

/** Most names of the column are short letters: a catalogue's codes, states, types. */
function hasCodes(grid: Grid, start: number, end: number, column: number): boolean {
  let others = 0;
  let codes = 0;
  for (let at = start; at < Math.min(end, grid.length, start + LOOKED_AT); at++) {
    const text = (grid[at]![column] ?? '').trim();
    if (text === '' || isSummaryWord(text)) continue;
    others++;
    if (/^\p{L}{1,3}$/u.test(text)) codes++;
  }
  return others > 0 && codes >= 0.5 * others;
}

/** Whether most numbers of a row are the sum, mean, deviation or number of those above. */
function sumsUp(grid: Grid, start: number, at: number, place: number): boolean {
  let said = 0;
  let agree = 0;
  for (const i of filledCells(grid[at]!)) {
    if (i <= place) continue;
    const value = plainNumber(grid[at]![i]!);
    const above: number[] = [];
    for (let row = start; row < at; row++) {
      if (headedAt(grid[row]!) !== null) continue;
      const other = plainNumber(grid[row]![i] ?? '');
      if (!Number.isNaN(other)) above.push(other);
    }
    if (Number.isNaN(value) || above.length < 2) continue;
    said++;
    const printed = grid[at]![i]!.trim().replace(',', '.');
    const step = Number(`1e-${printed.split('.')[1]?.length ?? 0}`);
    if (
      summariesNamed(lookupKey(grid[at]![place]!), above).some((one) => Math.abs(one - value) <= 0.51 * step)
    )
      agree++;
  }
  return said > 0 && agree > 0.5 * said;
}

/** What a short word may stand for: a deviation, an end, or a sum, a number or a mean. */
function summariesNamed(word: string, values: readonly number[]): readonly number[] {
  const n = values.length;
  const sum = values.reduce((all, value) => all + value, 0);
  const mean = sum / n;
  if (word === 'min') return [least(values)];
  if (word === 'max') return [greatest(values)];
  if (/^(?:s ?d|std|se|sem|cv)$/.test(word)) {
    const squares = values.reduce((all, value) => all + (value - mean) ** 2, 0);
    const sd = Math.sqrt(squares / (n - 1));
    return [sd, Math.sqrt(squares / n), sd / Math.sqrt(n), (100 * sd) / mean, sd / mean];
  }
  return word === 'n' ? [sum, n] : [sum, n, mean];
}

function plainNumber(text: string): number {
  const bare = text.trim().replace(',', '.').replace('−', '-');
  return bare === '' ? Number.NaN : Number(bare);
}
