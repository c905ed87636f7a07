import type { Analysis } from '../contract.ts';
import { computeMap } from './compute.ts';
import { mapFigures } from './figures.ts';
import type { MapFound } from './found.ts';
import { type MapOptions, mapOptions } from './options.ts';
import { mapTables } from './tables.ts';
import { mapWords } from './words.ts';

export const map: Analysis<MapOptions, MapFound> = {
  kind: 'map',
  question: 'Where are the places, and which of them lean the same way?',
  options: mapOptions,
  always: [
    'A line between two places says that both have more of the same kinds than the places together; it says nothing of contact, trade or people.',
    'A map shows where things were found and recorded, which is not where they were made or used.',
  ],
  compute: computeMap,
  tables: mapTables,
  figures: mapFigures,
  words: mapWords,
  verdict: ({ verdict }) => verdict,
};
