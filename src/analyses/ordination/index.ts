import { answerOf } from '../before-answers.ts';
import type { Analysis } from '../contract.ts';
import { computeOrdination, type OrdinationFound } from './compute.ts';
import { ordinationFigures } from './figures.ts';
import { type OrdinationOptions, ordinationOptions } from './options.ts';
import { ordinationWords } from './words.ts';

export const ordination: Analysis<OrdinationOptions, OrdinationFound> = {
  kind: 'ordination',
  question: 'How do the records spread out, and what spreads them?',
  options: ordinationOptions,
  compute: computeOrdination,
  figures: ordinationFigures,
  tables: ({ tables }) => tables,
  words: (found) => answerOf(ordinationWords(found)),
};
