import type { Analysis } from '../contract.ts';
import { computePlacement } from './compute.ts';
import { placementFigures } from './figures.ts';
import type { PlacementFound } from './found.ts';
import { labelAttributes, USES } from './labels.ts';
import { type PlacementOptions, placementOptions } from './options.ts';
import { placementTables } from './tables.ts';
import { placementWords } from './words.ts';

export const placement: Analysis<PlacementOptions, PlacementFound> = {
  kind: 'placement',
  question: 'Where does this find belong, and how sure is that?',
  options: placementOptions,
  always: [
    'A label that cannot be excluded is no origin: a find may come from a place that is not among those compared.',
    'Likeness of fabric does not carry a use over from one find to another.',
  ],
  leads: { figure: 'map', table: 'sets' },
  compute: computePlacement,
  tables: placementTables,
  figures: placementFigures,
  words: placementWords,
  verdict: ({ unplaced, sets }) =>
    unplaced === null
      ? sets
          .filter(({ asked }) => asked)
          .map(({ attribute, kept, tooFew }) => ({ attribute, labels: [...kept, ...tooFew] }))
      : 'cannot be told',
  verdictAlone: (options) => ({ ...options, moves: false, next: false, map: false, draws: 0 }),
  labels: (options, { records, register }) =>
    labelAttributes(records, register, options)
      .map(({ id }) => id)
      .filter((id) => !USES.has(id)),
};
