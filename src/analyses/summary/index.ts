import type { Analysis } from '../contract.ts';
import { computeSummary } from './compute.ts';
import { summaryFigures } from './figures.ts';
import type { SummaryFound } from './found.ts';
import { type SummaryOptions, summaryOptions } from './options.ts';
import { summaryTables } from './tables.ts';
import { summaryWords } from './words.ts';

export const summary: Analysis<SummaryOptions, SummaryFound> = {
  kind: 'summary',
  question: 'What is there, and how much of it?',
  options: summaryOptions,
  always: [
    'What was found depends on what was preserved, excavated, kept and recorded; a gap is no absence.',
  ],
  leads: { table: 'numbers' },
  compute: computeSummary,
  tables: summaryTables,
  figures: summaryFigures,
  words: summaryWords,
};
