import type { UnitKind } from '../header.ts';

/**
 * Wordings that mean more than one thing. They are never taken: the first candidate is suggested,
 * with the reason, and a person decides. With no candidate nothing is suggested, only explained.
 */
export interface AmbiguousWords {
  readonly words: readonly string[];
  /** Ids that the words may stand for, the safest first. */
  readonly candidates: readonly string[];
  /** Completes "… is ambiguous:". */
  readonly why: string;
  /** Spellings whose accent settles the matter: wording in lower case -> id. */
  readonly accented?: Readonly<Record<string, string>>;
  /** What a unit beside the words settles: what it measures -> id. */
  readonly byUnit?: Readonly<Partial<Record<UnitKind, string>>>;
}
