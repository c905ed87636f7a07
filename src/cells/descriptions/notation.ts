import type { Sense } from './lexicon.ts';

/**
 * Weaves in the notation of ISO 9354:1989 (from memory): kind of weave (10 plain, 20 twill, 30 satin), ends
 * over and under in one course, ends bound alike side by side, and the step to the next pick. A code of four
 * groups; a tabby is 10-01 01-01-00.
 */
const CODES: readonly (readonly [code: string, sets: Readonly<Record<string, string>>])[] = [
  ['10-01 01-01-00', { structure: 'tabby', elementGrouping: 'single' }],
  ['10-01 01-02-00', { structure: 'tabby', elementGrouping: 'pairedOne' }],
  ['10-02 02-01-00', { structure: 'tabby', elementGrouping: 'pairedOne' }],
  ['10-02 02-02-00', { structure: 'tabby', elementGrouping: 'pairedBoth' }],
  ['20-02 01-01-01', { structure: 'twill21' }],
  ['20-01 02-01-01', { structure: 'twill21' }],
  ['20-02 02-01-01', { structure: 'twill22' }],
  ['20-03 01-01-01', { structure: 'twill31' }],
  ['20-01 03-01-01', { structure: 'twill31' }],
  ['20-03 03-01-01', { structure: 'twill33' }],
  ['20-04 01-01-01', { structure: 'twill41' }],
  ['20-01 04-01-01', { structure: 'twill41' }],
  ['20-04 04-01-01', { structure: 'twill44' }],
  ['30-04 01-01-02', { structure: 'satin5' }],
  ['30-01 04-01-02', { structure: 'satin5' }],
  ['30-07 01-01-03', { structure: 'satin8' }],
  ['30-01 07-01-03', { structure: 'satin8' }],
];

/**
 * What a code says of a structure; null for one that is none. A code that is not in the list says its kind of weave,
 * and a twill or satin of an order that has no term of its own is read no further than that.
 */
export function readNotation(text: string): readonly Sense[] | null {
  const digits = text.replace(/\D/g, '');
  const met = CODES.find(([code]) => code.replace(/\D/g, '').startsWith(digits) && digits.length >= 8);
  const sense = (sets: Readonly<Record<string, string>>, via: string): readonly Sense[] => [
    { sets: new Map(Object.entries(sets)), alone: false, weak: false, via },
  ];
  if (met !== undefined) return sense(met[1], met[0]);
  const kind = KINDS[digits.slice(0, 2)];
  return kind === undefined || digits.length < 8 ? null : sense({ structure: kind }, text);
}

const KINDS: Readonly<Record<string, string>> = { '10': 'tabby', '20': 'twill', '30': 'satin' };

/** The code of a structure and of how its elements are grouped; null where the notation has none. */
export function weaveNotation(structure: string, grouping: string | null = null): string | null {
  const met = CODES.find(
    ([, sets]) =>
      sets.structure === structure &&
      (sets.elementGrouping ?? grouping) === (grouping ?? sets.elementGrouping),
  );
  return met?.[0] ?? null;
}
