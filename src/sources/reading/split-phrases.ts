import type { SplitTarget } from '../profile/profile.ts';
import type { SplitParts } from './split-parts.ts';

const NUMBER_BEFORE =
  /((?:c\.|ca\.?|about|approx\.?|[~≈<>])?\s*\d+(?:[.,]\d+)?(?:\s*[½¼¾])?(?:\s*\d+\/\d+)?(?:\s*(?:[-–−/]|to|or)\s*\d+(?:[.,]\d+)?(?:\s*[½¼¾])?)?)\s*$/iu;
const NUMBER_AFTER =
  /^\s*:?\s*((?:c\.|ca\.?|[~≈<>])?\s*\d+(?:[.,]\d+)?(?:\s*(?:[-–−/]|to|or)\s*\d+(?:[.,]\d+)?)?)/iu;
const REACH = 60;

/** Finds numbers in running text by the words that follow or stand before them. */
export function byPhrases(text: string, targets: readonly SplitTarget[]): SplitParts {
  const lower = text.toLowerCase();
  const parts = targets.map((target) => {
    for (const phrase of target.before ?? []) {
      const wanted = phrase.toLowerCase();
      for (let at = lower.indexOf(wanted); at >= 0; at = lower.indexOf(wanted, at + 1)) {
        const found = NUMBER_BEFORE.exec(text.slice(Math.max(0, at - REACH), at));
        if (found !== null) return found[1]!.trim();
      }
    }
    for (const phrase of target.after ?? []) {
      const wanted = phrase.toLowerCase();
      for (let at = lower.indexOf(wanted); at >= 0; at = lower.indexOf(wanted, at + 1)) {
        const found = NUMBER_AFTER.exec(text.slice(at + wanted.length, at + wanted.length + REACH));
        if (found !== null) return found[1]!.trim();
      }
    }
    return '';
  });
  const found = parts.filter((part) => part !== '').length;
  return {
    parts,
    rest: text,
    why:
      found === 0 ? 'None of the phrases was met.' : `${found} numbers were found by the words beside them.`,
    level: 'read',
  };
}
