import { answerOf } from '../before-answers.ts';
import type { Analysis } from '../contract.ts';
import { computePlacement } from './compute.ts';
import { placementFigures } from './figures.ts';
import type { PlacementFound } from './found.ts';
import { type PlacementOptions, placementOptions } from './options.ts';
import { placementWords } from './words.ts';

export const placement: Analysis<PlacementOptions, PlacementFound> = {
  kind: 'placement',
  question: 'Where does this find belong, and how sure is that?',
  options: placementOptions,
  compute: computePlacement,
  figures: placementFigures,
  tables: ({ tables }) => tables,
  words: (found) => answerOf(placementWords(found)),
};
