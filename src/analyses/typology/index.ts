import type { Analysis } from '../contract.ts';
import { computeTypology } from './compute.ts';
import { typologyFigures } from './figures.ts';
import type { TypologyFound } from './found.ts';
import { type TypologyOptions, typologyOptions } from './options.ts';
import { typologyTables } from './tables.ts';
import { typologyWords } from './words.ts';

export const typology: Analysis<TypologyOptions, TypologyFound> = {
  kind: 'typology',
  question: 'Do these types hold?',
  options: typologyOptions,
  always: [
    'Limits of types are hypotheses; no number makes a type a thing that its makers knew.',
    'What types go with is for looking: the adjusted p allows for the attributes asked, not for having looked first.',
  ],
  leads: { figure: 'density', table: 'apart' },
  compute: computeTypology,
  tables: typologyTables,
  figures: typologyFigures,
  words: typologyWords,
  verdict: ({ verdict }) => verdict,
};
