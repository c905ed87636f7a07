import { answerOf } from '../before-answers.ts';
import type { Analysis } from '../contract.ts';
import { type ContrastFound, computeContrast } from './compute.ts';
import { contrastFigures } from './figures.ts';
import { type ContrastOptions, contrastOptions } from './options.ts';
import { contrastWords } from './words.ts';

export const contrast: Analysis<ContrastOptions, ContrastFound> = {
  kind: 'contrast',
  question: 'Do these groups differ?',
  options: contrastOptions,
  compute: computeContrast,
  figures: contrastFigures,
  tables: ({ tables }) => tables,
  words: (found) => answerOf(contrastWords(found)),
};
