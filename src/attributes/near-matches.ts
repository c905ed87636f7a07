import { editDistance } from './likeness.ts';
import { foldText } from './matching.ts';

/** Up to `most` known names that look like the one given, the nearest first; empty where none does. */
export function nearMatches(name: string, known: Iterable<string>, most = 3): string[] {
  const wanted = compact(name);
  const scored = [...known].map((candidate) => {
    const other = compact(candidate);
    const holds =
      wanted.length >= 3 && (other.includes(wanted) || (other.length >= 4 && wanted.includes(other)));
    return { candidate, slips: holds ? 1 : editDistance(wanted, other), length: other.length };
  });
  return scored
    .filter(({ slips, length }) => slips <= Math.max(1, Math.floor(Math.min(wanted.length, length) / 3)))
    .sort((a, b) => a.slips - b.slips || (a.candidate < b.candidate ? -1 : 1))
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

/** "did you mean "a" or "b"?"-part of a remedy; the fallback where nothing looks alike. */
export function suggest(name: string, known: Iterable<string>, fallback: string): string {
  const near = nearMatches(name, known).map((candidate) => `"${candidate}"`);
  if (near.length === 0) return fallback;
  return `write ${near.length === 1 ? near[0] : `${near.slice(0, -1).join(', ')} or ${near.at(-1)}`} if that is meant`;
}

function compact(text: string): string {
  return foldText(text).replaceAll(' ', '');
}
