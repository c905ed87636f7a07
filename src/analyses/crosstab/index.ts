import { answerOf } from '../before-answers.ts';
import type { Analysis } from '../contract.ts';
import { type CrosstabFound, computeCrosstab } from './compute.ts';
import { crosstabFigures } from './figures.ts';
import { type CrosstabOptions, crosstabOptions } from './options.ts';
import { crosstabWords } from './words.ts';

export const crosstab: Analysis<CrosstabOptions, CrosstabFound> = {
  kind: 'crosstab',
  question: 'Which kinds go with which?',
  options: crosstabOptions,
  compute: computeCrosstab,
  figures: crosstabFigures,
  tables: ({ tables }) => tables,
  words: (found) => answerOf(crosstabWords(found)),
};
