import { answerOf } from '../before-answers.ts';
import type { Analysis } from '../contract.ts';
import { computeTypology, type TypologyFound } from './compute.ts';
import { typologyFigures } from './figures.ts';
import { type TypologyOptions, typologyOptions } from './options.ts';
import { typologyWords } from './words.ts';

export const typology: Analysis<TypologyOptions, TypologyFound> = {
  kind: 'typology',
  question: 'Do these types hold?',
  options: typologyOptions,
  compute: computeTypology,
  figures: typologyFigures,
  tables: ({ tables }) => tables,
  words: (found) => answerOf(typologyWords(found)),
};
