import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type Association, association } from './contingency.ts';
import { fisherExact } from './fisher-exact.ts';

/** A chi-squared is trusted where every expected count is at least this (common practice). */
const FEWEST_EXPECTED = 5;
const TABLES = 1999;
/** Search of the exact test before it gives way to random tables: under a second, since many conditions are looked at. */
const MOST_VISITS = 50_000;

export interface AssociationTest {
  readonly association: Association | Unavailable;
  readonly p: number | Unavailable;
  readonly method: string;
}

/** Do two classifications go together? Exact or resampled where an expected count is small. */
export function testAssociation(counts: readonly (readonly number[])[], random: Random): AssociationTest {
  const found = association(counts);
  if ('why' in found) return { association: found, p: found, method: '' };
  if (found.smallestExpected >= FEWEST_EXPECTED)
    return { association: found, p: found.p, method: 'chi-squared' };
  const exact = fisherExact(counts, random, TABLES, MOST_VISITS);
  if ('why' in exact) return { association: found, p: exact, method: '' };
  const method = exact.method === 'exact' ? 'Fisher exact' : 'Fisher, resampled';
  return { association: found, p: exact.p, method };
}
