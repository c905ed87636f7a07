import { answerOf } from '../before-answers.ts';
import type { Analysis } from '../contract.ts';
import { computeSummary, type SummaryFound } from './compute.ts';
import { summaryFigures } from './figures.ts';
import { type SummaryOptions, summaryOptions } from './options.ts';
import { summaryWords } from './words.ts';

export const summary: Analysis<SummaryOptions, SummaryFound> = {
  kind: 'summary',
  question: 'What is there, and how much of it?',
  options: summaryOptions,
  compute: computeSummary,
  figures: summaryFigures,
  tables: ({ tables }) => tables,
  words: (found) => answerOf(summaryWords(found)),
};
