import type { Analysis } from '../contract.ts';
import { computeOrdination } from './compute.ts';
import { ordinationFigures } from './figures.ts';
import type { OrdinationFound } from './found.ts';
import { type OrdinationOptions, ordinationOptions } from './options.ts';
import { ordinationTables } from './tables.ts';
import { ALWAYS, ordinationWords } from './words.ts';

export const ordination: Analysis<OrdinationOptions, OrdinationFound> = {
  kind: 'ordination',
  question: 'How do the records spread out, and what spreads them?',
  options: ordinationOptions,
  always: ALWAYS,
  compute: computeOrdination,
  tables: ordinationTables,
  figures: ordinationFigures,
  words: ordinationWords,
};
