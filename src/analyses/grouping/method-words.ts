import type { GroupingMethod } from './options.ts';

/** How groups were made, within a sentence. */
export const METHODS_IN_WORDS: Readonly<Record<GroupingMethod, string>> = {
  medoids: 'around the most typical record of each (medoids)',
  kmeans: 'around means (k-means)',
  density: 'as dense regions',
  average: 'by cutting a tree of mean linkage',
  complete: 'by cutting a tree of complete linkage',
  single: 'by cutting a tree of single linkage',
  mcquitty: 'by cutting a tree of McQuitty’s linkage',
  ward: 'by cutting a tree of Ward’s linkage',
  'ward-squared': 'by cutting a tree of Ward’s linkage without squaring',
  centroid: 'by cutting a tree of centroid linkage',
  median: 'by cutting a tree of median linkage',
};

/** Methods whose heights mean something on Euclidean distances alone. */
export const EUCLIDEAN_ONLY: readonly GroupingMethod[] = ['centroid', 'median', 'ward', 'ward-squared'];
