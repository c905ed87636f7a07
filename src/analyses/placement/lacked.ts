import { isKnown } from '../../fragments/comparison/find.ts';
import { applies, structureAt } from '../../fragments/kinds/facets.ts';
import { valueAt } from '../../numerics/dissimilarity/variables.ts';
import type { AnalysisInput } from '../contract.ts';
import type { Lacked } from './found.ts';
import type { Comparanda } from './prepare.ts';

/**
 * What these records lack of the attributes at these places, where their structure could have it: a net lacks no pile.
 * Kept, since the next key stroke asks the same.
 */
export function lackedOf(
  { comparison, lacked }: Comparanda,
  known: readonly number[],
  rows: ArrayLike<number>,
  { records: table, register }: Pick<AnalysisInput, 'records' | 'register'>,
): Lacked {
  const key = known.join();
  const before = lacked.get(key);
  if (before !== undefined) return before;
  const counts = known.map(() => 0);
  let records = 0;
  for (let at = 0; at < rows.length; at++) {
    const structure = structureAt(table, rows[at]);
    const gaps = known.map(
      (place) =>
        !isKnown(valueAt(comparison.spec.variables[place], rows[at])) &&
        (structure === null || applies(comparison.attributes[place].attribute, structure, register)),
    );
    if (gaps.includes(true)) records++;
    gaps.forEach((gap, place) => {
      if (gap) counts[place]++;
    });
  }
  const made: Lacked = {
    records,
    of: rows.length,
    attributes: known
      .map((place, at) => ({ label: comparison.attributes[place].attribute.label, records: counts[at] }))
      .filter(({ records: few }) => few > 0)
      .sort((a, b) => b.records - a.records),
  };
  lacked.set(key, made);
  return made;
}
