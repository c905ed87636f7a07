import { existsSync, readFileSync } from 'node:fs';
import type { Register } from '../../src/attributes/definition.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import type { NumericColumn, TermColumn, TextColumn } from '../../src/fragments/table.ts';
import { isBlank } from '../../src/sources/layout/cell-shapes.ts';
import type { ProfileInput } from '../../src/sources/profile/profile.ts';
import { readSource } from '../../src/sources/read-source.ts';
import type { SourceReading } from '../../src/sources/source-reading.ts';

/** What the tests of this folder share. */

export const register = defaultRegister();

export function bytes(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

export function read(
  text: string,
  profile?: ProfileInput,
  more: { register?: Register; accept?: boolean } = {},
): SourceReading {
  return readSource(bytes(text), {
    name: 'finds.csv',
    register: more.register ?? register,
    ...(profile === undefined ? {} : { profile }),
    acceptSuggestions: more.accept === true,
  });
}

export function numbers(reading: Pick<SourceReading, 'table'>, id: string): NumericColumn {
  const column = reading.table.columns.get(id);
  if (column?.kind !== 'numeric') throw new Error(`no numbers in ${id}`);
  return column;
}

export function termsOf(reading: Pick<SourceReading, 'table'>, id: string): (string | null)[] {
  const column = reading.table.columns.get(id) as TermColumn;
  if (column?.kind !== 'term') throw new Error(`no terms in ${id}`);
  return [...column.codes].map((code) => (code < 0 ? null : column.levels[code]));
}

export function textsOf(reading: Pick<SourceReading, 'table'>, id: string): readonly string[] {
  return (reading.table.columns.get(id) as TextColumn).raw;
}

/** Non-empty cells below and above the header that stand neither in the table nor in the ledger. */
export function lostCells(reading: SourceReading): string[] {
  const { grid, headerRow, table, ledger, profile } = reading;
  const byRow = new Map<number, string[]>();
  const put = (row: number, text: string): void => {
    const list = byRow.get(row);
    if (list === undefined) byRow.set(row, [text]);
    else list.push(text);
  };
  for (const column of table.columns.values()) {
    for (const [at, raw] of column.raw.entries()) if (!isBlank(raw)) put(table.origin[at].row, raw);
  }
  for (const entry of ledger) if (entry.row > 0) put(entry.row, entry.raw);
  const headerRows = headerRow === 0 ? 0 : (profile.layout.headerRows ?? 1);
  const lost: string[] = [];
  for (const [at, row] of grid.entries()) {
    if (at < headerRow && at >= headerRow - headerRows) continue;
    const known = byRow.get(at + 1) ?? [];
    for (const text of row) {
      if (!isBlank(text) && !known.some((raw) => raw === text || raw.includes(text.trim())))
        lost.push(`${at + 1}: ${text}`);
    }
  }
  return lost;
}

const REAL = new URL('../../../shared/real/', import.meta.url);
export const realTablesMissing = !existsSync(REAL);

export function readReal(path: string, profile?: ProfileInput, with_: Register = register): SourceReading {
  return readSource(new Uint8Array(readFileSync(new URL(path, REAL))), {
    name: path.split('/').at(-1) ?? path,
    register: with_,
    ...(profile === undefined ? {} : { profile }),
  });
}

export function savedProfile(name: string): ProfileInput {
  return JSON.parse(
    readFileSync(new URL(`profiles/${name}.profile.json`, import.meta.url), 'utf8'),
  ) as ProfileInput;
}
