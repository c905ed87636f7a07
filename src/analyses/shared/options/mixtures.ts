import { z } from 'zod';
import type { Register } from '../../../attributes/definition.ts';
import { type ByParts, byParts } from '../../../fragments/by-parts.ts';
import type { AnalysisInput } from '../../contract.ts';
import { printCount } from '../../phrasing.ts';

/** How a record of several kinds at once ("wool and silk") is counted. */
export const mixturesOption = z.enum(['whole', 'each']).default('whole').meta({
  title: 'Mixtures',
  description:
    'whole: a mixture ("wool and silk") is a kind of its own, so that every record counts once; each: it counts in each of its kinds, shares need not add up to 1, and whole items are dealt in every test',
});

/** What counting mixtures in each of their kinds did; null where they are kinds of their own. */
export type MixturesCounted = { readonly records: number } | null;

/** The input whose records of mixtures stand once for each of their kinds, where that was asked for. */
export function partedInput(
  input: AnalysisInput,
  ids: readonly string[],
  { mixtures }: { readonly mixtures: 'whole' | 'each' },
): { readonly input: AnalysisInput; readonly parts: ByParts | null; readonly counted: MixturesCounted } {
  if (mixtures === 'whole') return { input, parts: null, counted: null };
  const parts = byParts(input.records, ids, input.register);
  return { input: { ...input, records: parts.table }, parts, counted: { records: parts.mixtures } };
}

/** The records, each once, for which some rows of a parted table stand. */
export const recordsFor = (parts: ByParts | null, rows: readonly number[]): readonly number[] =>
  parts === null ? rows : [...new Set(rows.map((row) => parts.from[row]!))];

/** Whether an attribute's values may be mixtures, so that the choice matters. */
export const mayMix = (id: string, register: Register): boolean =>
  register.vocabularies.get(register.attributes.get(id)?.vocabulary ?? '')?.mixes === true;

/** "; 3 mixtures counted in each of their kinds", for the line of evidence that says n. */
export function saysMixtures(counted: MixturesCounted): string {
  if (counted === null) return '';
  return counted.records === 0
    ? '; none is a mixture'
    : `; ${printCount(counted.records, 'mixture')} counted in each of ${counted.records === 1 ? 'its' : 'their'} kinds`;
}

/** Beside shares that do not add up to 1. */
export const SHARES_OF_RECORDS =
  'A record of a mixture counts in each of its kinds: shares are of the records, and those along a row may add up to more than 100 %.';
