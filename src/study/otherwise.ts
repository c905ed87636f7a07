import type { Prepared } from './prepare.ts';

/**
 * The same question asked of the same finds, recorded or counted otherwise. Where the verdict turns with that, it is
 * no verdict yet, and the answer says what it hangs on.
 */
export interface WhatIf {
  /** What is taken otherwise, as a turn says it. */
  readonly what: string;
  /** Said in place of the verdict where it turns: one sentence of at most 30 words. */
  readonly hangsOn: string;
  /** What would settle it. */
  readonly next: string;
  readonly prepared: () => Prepared;
}
