import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { ResultTable } from '../contract.ts';
import type { TypeMap } from './apart-found.ts';
import type { TypologyFound } from './found.ts';
import { column, orWhy } from './table-parts.ts';

/** Would each type be found again, and do its records sit well in it? */
export function stabilityTable({ apart, typology }: TypologyFound): ResultTable {
  const groups = 'why' in apart || isUnavailable(apart.freeGroups) ? undefined : apart.freeGroups;
  const why = 'why' in apart ? apart : isUnavailable(apart.freeGroups) ? apart.freeGroups : undefined;
  const labels = 'why' in apart ? new Int32Array() : apart.labels;
  return {
    title: 'Stability of the types',
    columns: [
      column('type', 'Type'),
      column('n', 'n'),
      column('jaccard', 'found again, mean Jaccard'),
      column('recovered', 'found again in'),
      column('dissolved', 'dissolved in'),
      column('resamples', 'of'),
      column('silhouette', 'mean silhouette width'),
    ],
    rows: typology.types.map(({ label }, place) => {
      const n = labels.filter((type) => type === place).length;
      const stability = n === 0 ? undefined : groups?.stability[place];
      const none = n === 0 ? { why: 'the type has no record to compare' } : (why ?? null);
      const counted = stability !== undefined && stability.resamples > 0;
      return [
        label,
        n,
        counted ? stability.mean : none,
        counted ? stability.recovered : null,
        counted ? stability.dissolved : null,
        counted ? stability.resamples : null,
        'why' in apart ? null : (apart.silhouettes[place] ?? null),
      ];
    }),
    note: 'Items are drawn again and grouped anew, without the rules, in attributes that did not define the types; each type is held against the nearest group (Hennig 2007): found again at a Jaccard coefficient of 0.75 or more, dissolved at 0.5 or less, below 0.6 not to be trusted.',
  };
}

/** Where each record lies on the map of the types. */
export function mapTable({ apart, typology, ids, assignment }: TypologyFound, map: TypeMap): ResultTable {
  const typed = Array.from(assignment.type).flatMap((type, place) => (type >= 0 ? [place] : []));
  const places = 'why' in apart ? new Int32Array() : apart.places;
  const labels = 'why' in apart ? new Int32Array() : apart.labels;
  const prediction = 'why' in apart ? { why: '' } : apart.prediction;
  return {
    title: 'The map in numbers',
    columns: [
      column('id', 'Record'),
      column('type', 'Type by the rules'),
      column('predicted', 'predicted'),
      column('axis1', `axis 1 (${(100 * map.shares[0]).toFixed(1)} %)`),
      column('axis2', `axis 2 (${(100 * map.shares[1]).toFixed(1)} %)`),
    ],
    rows: Array.from(places, (place, at) => [
      ids[typed[place]],
      typology.types[labels[at]].label,
      orWhy(prediction, (one) => typology.types[one.predicted[at]]?.label ?? null),
      map.x[at],
      map.y[at],
    ]),
    note: 'Principal coordinates of the dissimilarity in attributes that did not define the types; directions of the axes are arbitrary.',
  };
}
