import type { Analysis } from '../contract.ts';
import { rankInShort } from '../likeness-rank.ts';
import { computeSimilarity } from './compute.ts';
import { similarityFigures } from './figures.ts';
import type { SimilarityFound } from './found.ts';
import { type SimilarityOptions, similarityOptions } from './options.ts';
import { similarityTables } from './tables.ts';
import { ALWAYS, similarityWords } from './words.ts';

export const similarity: Analysis<SimilarityOptions, SimilarityFound> = {
  kind: 'similarity',
  question: 'Which assemblages are alike?',
  options: similarityOptions,
  always: ALWAYS,
  leads: { figure: 'matrix', table: 'pairs' },
  compute: computeSimilarity,
  figures: similarityFigures,
  tables: similarityTables,
  words: similarityWords,
  labels: ({ assemblages }) => [assemblages],
  verdict: ({ ranking: { most, least } }) => [
    rankInShort(most, 'which are most alike', 'most'),
    rankInShort(least, 'which are least alike', 'least'),
  ],
};
