import type { Note } from '../reading.ts';
import type { WordKind } from './words.ts';

export type Token =
  | {
      readonly kind: 'number';
      readonly value: number;
      readonly step: number;
      readonly notes: readonly Note[];
    }
  | { readonly kind: 'unit'; readonly unit: string; readonly square: boolean }
  | { readonly kind: 'word'; readonly word: WordKind }
  | { readonly kind: 'counted'; readonly noun: string }
  | { readonly kind: 'n'; readonly count: number }
  | { readonly kind: 'sign'; readonly sign: Sign; readonly tight: boolean }
  | { readonly kind: 'other'; readonly text: string; readonly tight: boolean };

/** `<` and `>` stand for their "or equal" forms too: a closed end is all a reading can hold. */
export type Sign =
  | '-'
  | '--'
  | '/'
  | 'x'
  | ':'
  | '+-'
  | '<'
  | '>'
  | '~'
  | '+'
  | '('
  | ')'
  | ','
  | ';'
  | '?'
  | '='
  | '&'
  | '†';

/** Tokens made at one place, and how many characters they took. */
export interface Found {
  readonly tokens: readonly Token[];
  readonly length: number;
}

/** Runs a sticky pattern at the current place. */
export type Match = (pattern: RegExp) => RegExpExecArray | null;
