import type { Analysis } from '../contract.ts';
import { computeChronology } from './compute.ts';
import { chronologyFigures } from './figures.ts';
import type { ChronologyFound } from './found.ts';
import { type ChronologyOptions, chronologyOptions } from './options.ts';
import { chronologyTables } from './tables.ts';
import { chronologyWords } from './words.ts';

export const chronology: Analysis<ChronologyOptions, ChronologyFound> = {
  kind: 'chronology',
  question: 'When were they made, and what changes through time?',
  options: chronologyOptions,
  always: [
    'What is kept of a time is not what was made in it: burial, soil and digging differ from phase to phase.',
    'A date within a span is taken to be as likely in each of its years; a phase that was lived in unevenly is not.',
  ],
  leads: { figure: 'kinds', table: 'changes' },
  compute: computeChronology,
  tables: chronologyTables,
  figures: chronologyFigures,
  words: chronologyWords,
  verdict: ({ verdict, changes }) =>
    [
      verdict,
      ...changes.flatMap((one) =>
        one.verdict === 'not told apart' || one.verdict === 'cannot be told'
          ? []
          : [`${one.label} ${one.verdict}`],
      ),
    ].join('; '),
};
