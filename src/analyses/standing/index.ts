import { answerOf } from '../before-answers.ts';
import type { Analysis } from '../contract.ts';
import { computeStanding } from './compute.ts';
import { standingFigures } from './figures.ts';
import type { StandingFound } from './found.ts';
import { type StandingOptions, standingOptions } from './options.ts';
import { standingWords } from './words.ts';

export const standing: Analysis<StandingOptions, StandingFound> = {
  kind: 'standing',
  question: 'Where does this whole site sit in its region?',
  options: standingOptions,
  compute: computeStanding,
  figures: standingFigures,
  tables: ({ tables }) => tables,
  words: (found) => answerOf(standingWords(found)),
};
