import { answerOf } from '../before-answers.ts';
import type { Analysis } from '../contract.ts';
import { computeGrouping, type GroupingFound } from './compute.ts';
import { groupingFigures } from './figures.ts';
import { type GroupingOptions, groupingOptions } from './options.ts';
import { groupingWords } from './words.ts';

export const grouping: Analysis<GroupingOptions, GroupingFound> = {
  kind: 'grouping',
  question: 'Which fragments belong together, and how far are the groups to be trusted?',
  options: groupingOptions,
  compute: computeGrouping,
  figures: groupingFigures,
  tables: ({ tables }) => tables,
  words: (found) => answerOf(groupingWords(found)),
};
