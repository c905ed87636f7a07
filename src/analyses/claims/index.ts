import { answerOf } from '../before-answers.ts';
import type { Analysis } from '../contract.ts';
import { type ClaimsFound, computeClaims } from './compute.ts';
import { claimsFigures } from './figures.ts';
import { type ClaimsOptions, claimsOptions } from './options.ts';
import { claimsWords } from './words.ts';

export const claims: Analysis<ClaimsOptions, ClaimsFound> = {
  kind: 'claims',
  question: 'Which printed figures agree, which cannot be, and which cannot be checked?',
  options: claimsOptions,
  compute: computeClaims,
  figures: claimsFigures,
  tables: ({ tables }) => tables,
  words: (found) => answerOf(claimsWords(found)),
};
