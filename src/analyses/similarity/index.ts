import { answerOf } from '../before-answers.ts';
import type { Analysis } from '../contract.ts';
import { computeSimilarity, type SimilarityFound } from './compute.ts';
import { similarityFigures } from './figures.ts';
import { type SimilarityOptions, similarityOptions } from './options.ts';
import { similarityWords } from './words.ts';

export const similarity: Analysis<SimilarityOptions, SimilarityFound> = {
  kind: 'similarity',
  question: 'Which assemblages are alike?',
  options: similarityOptions,
  compute: computeSimilarity,
  figures: similarityFigures,
  tables: ({ tables }) => tables,
  words: (found) => answerOf(similarityWords(found)),
};
