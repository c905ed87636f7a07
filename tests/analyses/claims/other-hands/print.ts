import { checkClaims } from '../../../../src/analyses/claims/compute.ts';
import type { ClaimsFound } from '../../../../src/analyses/claims/found.ts';
import { InputError } from '../../../../src/errors.ts';
import { createRandom } from '../../../../src/numerics/foundation/random.ts';
import { reference } from '../../../references/reference.ts';
import { claimsBytes, type Row } from '../claims.ts';
import { materialOf, type OpenSet } from '../with-data/material.ts';

/** One text or table as somebody prints it; every figure of it is right. */
export interface Case {
  readonly hand: string;
  readonly form: string;
  readonly set: string;
  readonly rows: readonly Row[];
  readonly table: string | null;
}

type Records = Pick<OpenSet, 'csv' | 'kinds' | 'measures'> & { readonly name: string };

/** Right texts and tables of one file of references, with the open records that they were computed from. */
export interface Bed {
  readonly cases: readonly Case[];
  readonly tool: string;
  /** What is found of a case; null where it was refused, aloud and in a sentence. */
  readonly checked: (one: Case, withRecords: boolean) => ClaimsFound | null;
}

function bedOf(name: string): Bed {
  const { sets, cases, tool } = reference<{
    readonly sets: readonly Records[];
    readonly cases: readonly Case[];
  }>(name);
  const materials = new Map(
    sets.map((set) => [set.name, materialOf({ ...set, data: set.name } as unknown as OpenSet)] as const),
  );
  return {
    cases,
    tool,
    checked: (one, withRecords) =>
      found(one, withRecords ? (materials.get(one.set) ?? null) : null, withRecords),
  };
}

/**
 * R, scipy, pandas and statsmodels on open data sets, printed as journals of several fields and languages print, and
 * as the programs themselves do: tests/references/scripts/printed-hands.py and .R.
 */
export const HANDS = bedOf('printed-hands');
/** Fitted models and comparisons of all pairs: tests/references/scripts/printed-models.py and .R. */
export const MODELS = bedOf('printed-models');

function found(
  { rows, table }: Case,
  material: Parameters<typeof checkClaims>[3],
  withRecords: boolean,
): ClaimsFound | null {
  const files = new Map<string, Uint8Array>();
  if (table === null)
    files.set(
      'claims.csv',
      claimsBytes(
        rows.map((row, i) => ({
          id: `c${i}`,
          ...(withRecords ? row : { quantity: row.quantity ?? '', printed: row.printed ?? '' }),
        })),
      ),
    );
  else files.set('table.txt', new TextEncoder().encode(table));
  const asked = table === null ? { file: 'claims.csv', tables: [] } : { tables: [{ file: 'table.txt' }] };
  try {
    return checkClaims(files, asked, createRandom(1), material);
  } catch (fault) {
    if (fault instanceof InputError) return null;
    throw fault;
  }
}
