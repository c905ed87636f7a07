import { InputError } from '../../errors.ts';
import type { Condensed } from '../../numerics/dissimilarity/condensed.ts';
import { printCount } from '../phrasing.ts';
import type { GroupingOptions } from './options.ts';

/** Fewest records among which groups can be looked for: two groups of two. */
const FEWEST = 4;

/** Any groups of records that are all alike would be made up. */
export function requireDifferences({ values }: Condensed, n: number): void {
  if (values.length === 0 || values.some((value) => value > 0)) return;
  throw new InputError(
    `all ${n} records are alike in the chosen attributes, so that there is nothing to group them by`,
    { path: 'of' },
    'name attributes in which they differ',
  );
}

export function countsToTry(options: GroupingOptions, records: number): [least: number, most: number] {
  if (records < FEWEST) {
    throw new InputError(
      `only ${printCount(records, 'record')} can be compared with each other, and grouping needs ${FEWEST}`,
      {},
      'choose attributes that more records have, lower "minimumOverlap", or select more fragments',
    );
  }
  if (options.k === 'choose') return [2, Math.min(options.mostGroups, records - 1)];
  if (options.method === 'density') {
    throw new InputError(
      `"density" finds the number of groups itself, and "k" asks for ${options.k}`,
      { path: 'k' },
      'leave "k" out, or choose another method',
    );
  }
  if (options.k < records) return [options.k, options.k];
  throw new InputError(
    `${options.k} groups are asked for among ${records} records`,
    { path: 'k' },
    `ask for fewer than ${records}`,
  );
}
