import { checkClaims } from '../../../src/analyses/claims/compute.ts';
import type { ClaimsFound, JudgedFigure } from '../../../src/analyses/claims/found.ts';
import { CLAIM_COLUMNS } from '../../../src/analyses/claims/reading/claim.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { writeCsv } from '../../../src/sources/formats/safe-csv.ts';

export type Row = Partial<Record<(typeof CLAIM_COLUMNS)[number], string>>;

export function claimsBytes(rows: readonly Row[]): Uint8Array {
  const cells = rows.map((row) => CLAIM_COLUMNS.map((column) => row[column] ?? ''));
  return new TextEncoder().encode(writeCsv([[...CLAIM_COLUMNS], ...cells]));
}

/** Claims held against each other; tables as CSV text by file name. */
export function check(rows: readonly Row[], tables: Readonly<Record<string, string>> = {}): ClaimsFound {
  const files = new Map([['claims.csv', claimsBytes(rows)]]);
  for (const [name, text] of Object.entries(tables)) files.set(name, new TextEncoder().encode(text));
  const options = { file: 'claims.csv', tables: Object.keys(tables).map((file) => ({ file })) };
  return checkClaims(files, options, createRandom(1));
}

export function verdictOf(found: ClaimsFound, id: string): JudgedFigure {
  const one = found.judged.find(({ figure }) => figure.id === id);
  if (one === undefined) throw new Error(`no figure "${id}"`);
  return one;
}
