import type { Analysis } from '../contract.ts';
import { rankInShort } from '../likeness-rank.ts';
import { computeStanding } from './compute.ts';
import { standingFigures } from './figures.ts';
import type { StandingFound } from './found.ts';
import { type StandingOptions, standingOptions } from './options.ts';
import { standingTables } from './tables.ts';
import { ALWAYS, standingWords } from './words.ts';

export const standing: Analysis<StandingOptions, StandingFound> = {
  kind: 'standing',
  question: 'Where does this whole site sit in its region?',
  options: standingOptions,
  always: ALWAYS,
  leads: { figure: 'likeness', table: 'likeness' },
  compute: computeStanding,
  figures: standingFigures,
  tables: standingTables,
  words: standingWords,
  labels: ({ among }) => [among],
  verdict: ({ ranking: { most, least } }) => [
    rankInShort(most, 'which is most like it', 'most'),
    rankInShort(least, 'which is least like it', 'least'),
  ],
};
