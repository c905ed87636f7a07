import type { Register } from '../../attributes/definition.ts';
import { headerKey } from '../../attributes/wording-index.ts';
import type { LongForm } from '../profile/layout-rules.ts';
import { countKnown, isBlank } from './cell-shapes.ts';

/** Several rows a fragment, one reading a row: found, and gathered into one row a fragment. */

const ATTRIBUTE_WORDS = keys(
  'attribute, measurement, measure, variable, parameter, property, trait, character, merkmal, messung, variable, attribut, eigenschaft, caractère, attribut, mesure, paramètre, attributo, misura, variabile, carattere, atributo, medida, variable, parámetro, egenskab, måling, variabel',
);
const VALUE_WORDS = keys(
  'value, reading, result, observation, wert, messwert, ergebnis, valeur, résultat, lecture, valore, risultato, lettura, valor, resultado, lectura, værdi, aflæsning',
);
const UNIT_WORDS = keys('unit, units, einheit, unité, unità, unidad, enhed');

function keys(list: string): ReadonlySet<string> {
  return new Set(list.split(',').map((word) => headerKey(word)));
}

const MOST_COLUMNS = 500;

/** The text that parts several readings of one attribute in a gathered cell. */
export const READING_JOINT = '; ';

/**
 * Is the table in long form? It has a column headed like "measurement" and one headed like "value", and
 * most of what the first holds are attributes that the register knows. Null otherwise.
 */
export function findLongForm(
  headers: readonly string[],
  body: readonly (readonly string[])[],
  register: Register,
): LongForm | null {
  // What is in long form is narrow: names of the finds, an attribute, its value and what goes with them.
  if (headers.length > MOST_COLUMNS) return null;
  const attribute = headers.findIndex((header) => ATTRIBUTE_WORDS.has(headerKey(header)));
  const value = headers.findIndex((header) => VALUE_WORDS.has(headerKey(header)));
  if (attribute < 0 || value < 0) return null;
  const named = [...new Set(body.map((row) => (row[attribute] ?? '').trim()))].filter((text) => text !== '');
  if (named.length === 0 || countKnown(named, register) < 0.5 * named.length) return null;
  const unit = headers.findIndex((header) => UNIT_WORDS.has(headerKey(header)));
  return {
    attribute: headers[attribute]!,
    value: headers[value]!,
    ...(unit < 0 ? {} : { unit: headers[unit]! }),
  };
}

export interface Gathered {
  readonly headers: readonly string[];
  readonly body: readonly (readonly string[])[];
  readonly origins: readonly number[];
  /** One entry a cell that moved: its own row and column, the text, and where it went. */
  readonly moves: readonly Move[];
  /** Columns in which cells may hold several readings, joined. */
  readonly gathered: ReadonlySet<number>;
}

export interface Move {
  readonly row: number;
  readonly column: string;
  readonly raw: string;
  readonly readAs: string;
  readonly rule: 'gathered' | 'contradiction' | 'key-value' | 'counted';
}

/** One row a fragment: the readings of each attribute side by side, several of one joined. */
export function gatherLongForm(
  headers: readonly string[],
  body: readonly (readonly string[])[],
  origins: readonly number[],
  form: LongForm,
): Gathered {
  const attributeAt = headers.indexOf(form.attribute);
  const valueAt = headers.indexOf(form.value);
  const unitAt = form.unit === undefined ? -1 : headers.indexOf(form.unit);
  const kept = headers.map((_, i) => i).filter((i) => i !== attributeAt && i !== valueAt && i !== unitAt);
  const by = form.by === undefined ? kept : form.by.map((header) => headers.indexOf(header));
  const named = new Map<string, number>();
  const newHeaders = kept.map((i) => headers[i]!);
  const records = new Map<string, { origin: number; cells: string[] }>();
  const moves: Move[] = [];
  for (const [at, row] of body.entries()) {
    const key = JSON.stringify(by.map((i) => (row[i] ?? '').trim()));
    let record = records.get(key);
    if (record === undefined) {
      record = { origin: origins[at]!, cells: kept.map((i) => row[i] ?? '') };
      records.set(key, record);
    } else mergeContext(record.cells, kept, headers, row, origins[at]!, moves);
    const attribute = (row[attributeAt] ?? '').trim();
    const value = (row[valueAt] ?? '').trim();
    if (attribute === '' && value === '') continue;
    let place = named.get(attribute);
    if (place === undefined) {
      place = newHeaders.length;
      named.set(attribute, place);
      newHeaders.push(attribute);
    }
    const unit = unitAt < 0 ? '' : (row[unitAt] ?? '').trim();
    const reading = value !== '' && unit !== '' ? `${value} ${unit}` : value;
    const before = record.cells[place] ?? '';
    record.cells[place] =
      before === '' ? reading : reading === '' ? before : `${before}${READING_JOINT}${reading}`;
    const readAs = `a reading of "${attribute}" of the fragment that begins in row ${record.origin}`;
    for (const i of [attributeAt, valueAt, unitAt]) {
      if (i < 0 || isBlank(row[i])) continue;
      moves.push({ row: origins[at]!, column: headers[i]!, raw: row[i]!, readAs, rule: 'gathered' });
    }
  }
  const all = [...records.values()];
  return {
    headers: newHeaders,
    body: all.map(({ cells }) => newHeaders.map((_, i) => cells[i] ?? '')),
    origins: all.map(({ origin }) => origin),
    moves,
    gathered: new Set(named.values()),
  };
}

/** Gathers rows that share the cells of `by`: unlike texts of one column are joined as readings. */
export function gatherRows(
  headers: readonly string[],
  body: readonly (readonly string[])[],
  origins: readonly number[],
  by: readonly number[],
): Gathered {
  const records = new Map<string, { origin: number; cells: string[] }>();
  const moves: Move[] = [];
  const gathered = new Set<number>();
  for (const [at, row] of body.entries()) {
    const texts = by.map((i) => (row[i] ?? '').trim());
    const key = texts.every((text) => text === '') ? `row ${origins[at]}` : JSON.stringify(texts);
    const record = records.get(key);
    if (record === undefined) {
      records.set(key, { origin: origins[at]!, cells: headers.map((_, i) => row[i] ?? '') });
      continue;
    }
    for (let i = 0; i < headers.length; i++) {
      if (isBlank(row[i])) continue;
      const text = row[i]!.trim();
      const before = record.cells[i]!;
      const readAs = `a reading of the fragment that begins in row ${record.origin}`;
      moves.push({ row: origins[at]!, column: headers[i]!, raw: row[i]!, readAs, rule: 'gathered' });
      if (by.includes(i)) continue;
      // Equal numbers are two readings; the same word said again is one.
      if (before.trim() === text && !/\d/.test(text)) continue;
      record.cells[i] = isBlank(before) ? text : `${before}${READING_JOINT}${text}`;
      if (!isBlank(before)) gathered.add(i);
    }
  }
  const all = [...records.values()];
  return {
    headers,
    body: all.map(({ cells }) => cells),
    origins: all.map(({ origin }) => origin),
    moves,
    gathered,
  };
}

/** Other columns of a further row: blanks are filled, a text that differs is kept in the ledger. */
function mergeContext(
  cells: string[],
  kept: readonly number[],
  headers: readonly string[],
  row: readonly string[],
  origin: number,
  moves: Move[],
): void {
  for (const [place, i] of kept.entries()) {
    const text = row[i] ?? '';
    if (isBlank(text)) continue;
    const same = cells[place]!.trim() === text.trim();
    const filled = isBlank(cells[place]);
    if (filled) cells[place] = text;
    moves.push({
      row: origin,
      column: headers[i]!,
      raw: text,
      readAs: same ? 'as in the first row of the fragment' : filled ? text.trim() : '',
      rule: same || filled ? 'gathered' : 'contradiction',
    });
  }
}
