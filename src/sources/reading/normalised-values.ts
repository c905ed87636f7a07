import { InputError } from '../../errors.ts';

type Cells = readonly string[];

/** The codes and numbers of a normalised table, each of which must be one. */

export function codes(
  texts: Cells | undefined,
  known: readonly string[],
  rows: number,
  file: string,
  column: string,
): Uint8Array {
  const found = new Uint8Array(rows);
  for (const [row, text] of (texts ?? []).entries()) {
    const code = text === '' ? 0 : known.indexOf(text);
    if (code < 0) {
      throw new InputError(
        `"${text}" is none of ${known.join(', ')}`,
        { file, row: row + 2, column },
        'write the table again',
      );
    }
    found[row] = code;
  }
  return found;
}

export function numbers(texts: Cells, file: string, column: string): Float64Array {
  return Float64Array.from(texts, (text, row) =>
    text === '' ? Number.NaN : toNumber(text, file, row, column),
  );
}

export function toNumber(text: string, file: string, row: number, column: string): number {
  if (text === 'INF') return Number.POSITIVE_INFINITY;
  if (text === '-INF') return Number.NEGATIVE_INFINITY;
  const value = Number(text);
  if (text.trim() === '' || Number.isNaN(value)) {
    throw new InputError(
      `"${text}" is not a number`,
      { file, row: row + 2, column },
      'write the table again',
    );
  }
  return value;
}
