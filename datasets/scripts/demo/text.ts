/** Turning cells into the bytes of a CSV file, in the manner of the program that is supposed to have written it. */

export type Grid = readonly (readonly string[])[];

export interface FileForm {
  readonly delimiter: ',' | ';' | '\t';
  readonly encoding: 'utf-8' | 'utf-8-bom' | 'windows-1252';
  readonly lineEnd: '\n' | '\r\n';
}

export function csvBytes(grid: Grid, form: FileForm): Uint8Array {
  const text = grid
    .map((row) => row.map((cell) => quoted(cell, form.delimiter)).join(form.delimiter))
    .join(form.lineEnd);
  const whole = text + form.lineEnd;
  if (form.encoding === 'windows-1252') return windows1252(whole);
  return new TextEncoder().encode(form.encoding === 'utf-8-bom' ? `\uFEFF${whole}` : whole);
}

function quoted(cell: string, delimiter: string): string {
  const needs = cell.includes(delimiter) || cell.includes('"') || cell.includes('\n');
  return needs ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** The places of Windows-1252 that differ from the first 256 code points, as far as the demo uses them. */
const WINDOWS_1252: ReadonlyMap<string, number> = new Map([
  ['€', 0x80],
  ['„', 0x84],
  ['“', 0x93],
  ['”', 0x94],
  ['–', 0x96],
]);

function windows1252(text: string): Uint8Array {
  return Uint8Array.from(text, (letter) => {
    const code = WINDOWS_1252.get(letter) ?? letter.codePointAt(0)!;
    if (code > 0xff) throw new Error(`Windows-1252 has no letter "${letter}"`);
    return code;
  });
}

/** A number to `digits` decimals with the decimal mark of the file. */
export function written(value: number, digits: number, mark: ',' | '.' = '.'): string {
  const text = value.toFixed(digits);
  return mark === ',' ? text.replace('.', ',') : text;
}

/** To the nearest half, the habit of counting at a lens: 2, 2.5, 3. */
export function toHalf(value: number): number {
  return Math.max(Math.round(value * 2) / 2, 0.5);
}
