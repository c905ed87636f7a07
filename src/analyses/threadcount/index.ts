import type { Analysis } from '../contract.ts';
import { computeThreadcount } from './compute.ts';
import { threadcountFigures } from './figures.ts';
import type { ThreadcountFound } from './found.ts';
import { type ThreadcountOptions, threadcountOptions } from './options.ts';
import { threadcountTables } from './tables.ts';
import { threadcountWords } from './words.ts';

export const threadcount: Analysis<ThreadcountOptions, ThreadcountFound> = {
  kind: 'threadcount',
  question: 'How do two counts of one fabric go together?',
  options: threadcountOptions,
  always: [
    'Charring and drying raise counts and lower diameters of both systems together, so that a relation may be of preservation.',
    'Where warp and weft were not told apart, which system is called the first is a convention of the recorder.',
  ],
  compute: computeThreadcount,
  tables: threadcountTables,
  figures: threadcountFigures,
  words: threadcountWords,
  verdict: ({ verdict }) => verdict,
};
