/**
 * From which share of the records something that was not tried stands among what could change an answer. Conventions
 * of this workbench, no source: they move what is said, and no verdict.
 */
export const MENTIONED_FROM = {
  /** Readings that equal another one: the tests correct for ties, but lose power by them. */
  ties: 0.25,
  /** Records without a value. */
  gaps: 0.25,
  /** Fragments that could not be counted, of those that were. */
  setAside: 0.1,
} as const;

/** Whether a share is mentioned: judged as it is printed, in whole per cent, so that "25 %" is never left out. */
export const isMentioned = (share: number, about: keyof typeof MENTIONED_FROM): boolean =>
  Math.round(share * 100) >= MENTIONED_FROM[about] * 100;
