import type { Analysis } from '../contract.ts';
import { computeGrouping } from './compute.ts';
import { groupingFigures } from './figures.ts';
import type { GroupingFound } from './found.ts';
import { type GroupingOptions, groupingOptions } from './options.ts';
import { groupingTables } from './tables.ts';
import { groupingWords } from './words.ts';

export const grouping: Analysis<GroupingOptions, GroupingFound> = {
  kind: 'grouping',
  question: 'Which fragments belong together, and how far are the groups to be trusted?',
  options: groupingOptions,
  always: [
    'A method of grouping always returns groups; whether they were ever a distinction to anybody is another question.',
  ],
  compute: computeGrouping,
  tables: groupingTables,
  figures: groupingFigures,
  words: groupingWords,
  verdict: ({ verdict }) => verdict,
};
