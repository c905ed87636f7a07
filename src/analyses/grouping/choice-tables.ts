import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { ResultTable, TableCell, Unavailable } from '../contract.ts';
import type { GroupingFound } from './found.ts';
import type { Reference, Trust } from './trust-found.ts';

/** Every number of groups tried, with all that speaks for or against it. */
export function choiceTable(found: GroupingFound): ResultTable {
  const { tried, trust } = found;
  const widthsAt = (reference: Reference | Unavailable, count: number): TableCell[] => {
    if (isUnavailable(reference)) return [reference, reference];
    const entry = reference.byCount.find((line) => line.k === count);
    return entry === undefined ? [NOT_REACHED, NOT_REACHED] : [entry.median, entry.high];
  };
  return {
    title: 'Number of groups',
    columns: [
      { id: 'k', label: 'groups' },
      { id: 'silhouette', label: 'mean silhouette width' },
      { id: 'shuffledMedian', label: 'shuffled tables, median' },
      { id: 'shuffledHigh', label: 'shuffled tables, 95 % quantile' },
      { id: 'evenMedian', label: 'even clouds, median' },
      { id: 'evenHigh', label: 'even clouds, 95 % quantile' },
      { id: 'heapMedian', label: 'single heaps, median' },
      { id: 'heapHigh', label: 'single heaps, 95 % quantile' },
      { id: 'gap', label: 'gap statistic' },
      { id: 'gapError', label: 'its error' },
      { id: 'predictionStrength', label: 'prediction strength' },
      { id: 'calinskiHarabasz', label: 'Calinski-Harabasz' },
      { id: 'daviesBouldin', label: 'Davies-Bouldin' },
      { id: 'dunn', label: 'Dunn' },
      { id: 'smallest', label: 'smallest group' },
      { id: 'chosen', label: 'chosen' },
    ],
    rows: tried.map((partition) => {
      const indices = partition.validity;
      return [
        partition.k,
        partition.meanSilhouette ?? { why: 'fewer than two groups' },
        ...widthsAt(trust.shuffled, partition.k),
        ...widthsAt(trust.even, partition.k),
        ...widthsAt(trust.heap, partition.k),
        ...gapAt(trust, partition.k),
        strengthAt(trust, partition.k),
        indices.calinskiHarabasz,
        indices.daviesBouldin,
        indices.dunn,
        partition.k === 0 ? { why: 'no group was found' } : partition.smallest,
        partition.chosen,
      ];
    }),
    note:
      'Chosen by the greatest mean silhouette width. Shuffled tables: every attribute dealt out anew on its own; ' +
      'even clouds and single heaps: the same principal axes, filled evenly, or as they are but smoothed until one ' +
      'heap is left. Gap: Tibshirani, Walther & Hastie 2001, from the even clouds (spread of the axes kept); prediction strength: Tibshirani & ' +
      'Walther 2005, 0.8 is usually asked for. ' +
      'Davies-Bouldin is better when small, the other indices when large.' +
      (found.sampled ? ' Measured on a sample of the table.' : ''),
  };
}

const NOT_REACHED = { why: 'no reference table came to this number of groups' };

function gapAt({ gaps }: Trust, k: number): TableCell[] {
  if (isUnavailable(gaps)) return [gaps, gaps];
  const found = gaps.find((entry) => entry.k === k);
  return found === undefined ? [NOT_REACHED, NOT_REACHED] : [found.gap, found.error];
}

function strengthAt({ predictionStrength }: Trust, k: number): TableCell {
  if (isUnavailable(predictionStrength)) return predictionStrength;
  const mean = predictionStrength.find((entry) => entry.k === k)?.mean ?? Number.NaN;
  return Number.isNaN(mean) ? { why: 'a half of the items has fewer records than groups' } : mean;
}

export function referencesTable({ trust }: GroupingFound): ResultTable {
  const line = (name: string, reference: Reference | Unavailable): TableCell[] =>
    isUnavailable(reference)
      ? [name, reference, reference, reference, reference, reference]
      : [name, reference.observed, reference.median, reference.high, reference.p, reference.tables];
  return {
    title: 'Groups against tables without groups',
    columns: [
      { id: 'reference', label: 'tables' },
      { id: 'observed', label: 'best mean silhouette width here' },
      { id: 'median', label: 'median there' },
      { id: 'high', label: '95 % quantile there' },
      { id: 'p', label: 'p' },
      { id: 'tables', label: 'tables' },
    ],
    rows: [
      line('every attribute shuffled on its own', trust.shuffled),
      line('one even cloud over the same axes', trust.even),
      line('a single heap of the same spread', trust.heap),
    ],
    note:
      'p is the share of tables, this one included, whose best groups are as good: (b + 1)/(m + 1). ' +
      `Judged on ${trust.records} records.`,
  };
}
