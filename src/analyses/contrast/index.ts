import type { Analysis } from '../contract.ts';
import { computeContrast } from './compute.ts';
import { contrastFigures } from './figures.ts';
import type { ContrastFound } from './found.ts';
import { type ContrastOptions, contrastOptions } from './options.ts';
import { contrastTables } from './tables.ts';
import { contrastWords } from './words.ts';

export const contrast: Analysis<ContrastOptions, ContrastFound> = {
  kind: 'contrast',
  question: 'Do these groups differ?',
  options: contrastOptions,
  always: [
    'Of many tests some pass by chance: adjusted p values allow for the others of their family, and what was looked at after the fact is exploration.',
  ],
  compute: computeContrast,
  tables: contrastTables,
  figures: contrastFigures,
  words: contrastWords,
  labels: ({ by }) => [by],
};
