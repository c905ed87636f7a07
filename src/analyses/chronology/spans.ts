import { sharedOutQuantile } from '../../numerics/describing/shared-out.ts';
import { greatest, least } from '../../numerics/foundation/lists.ts';
import type { Entry } from './entries.ts';
import type { FindsSpan, Phase } from './found.ts';

/** When the finds of each label were made, the earliest first; a label without a dated find has no span. */
export function spansOf(
  entries: readonly Entry[],
  labels: readonly string[],
  labelOf: (entry: Entry) => string | null,
  marks: ReadonlyMap<string, number>,
): FindsSpan[] {
  return labels
    .flatMap((label): FindsSpan[] => {
      const own = entries.filter((entry) => labelOf(entry) === label);
      const [from, to] = [own.map(({ low }) => low), own.map(({ high }) => high)];
      const [q1, median, q3] = [0.25, 0.5, 0.75].map((share) => sharedOutQuantile(from, to, share));
      if (typeof q1 !== 'number' || typeof median !== 'number' || typeof q3 !== 'number') return [];
      const mark = marks.get(label) ?? null;
      return [{ label, mark, n: own.length, from: least(from), to: greatest(to), q1, median, q3 }];
    })
    .sort((a, b) => a.median - b.median || a.from - b.from);
}

/** The phases in the order of their medians, and whether their spans bear that order out. */
export function inOrder(
  spans: readonly FindsSpan[],
  entries: readonly Entry[],
  kinds: readonly string[],
): Phase[] {
  return spans.map((span, place): Phase => {
    const own = entries.filter(({ phase }) => phase === span.label);
    const before = spans[place - 1]?.label;
    // A span ends where the next begins, but a find of one year lies in that year.
    const met = entries.some(({ phase, low, high }) => phase === before && low === high && low === span.from);
    const order = place === 0 ? 'first' : span.from >= spans[place - 1].to && !met ? 'after' : 'overlaps';
    return { ...span, order, counts: kinds.map((kind) => own.filter((entry) => entry.kind === kind).length) };
  });
}
