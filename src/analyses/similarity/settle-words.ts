import { inSentence, printSome } from '../phrasing.ts';
import { guardNext } from '../shared/guard/words.ts';
import type { SimilarityFound } from './found.ts';

/** What would settle which are alike. */
export function whatWouldSettle(found: SimilarityFound): string[] {
  const { ranking, level, axes, distances, tooFew, guard, kindsLabel } = found;
  const worst = level.folds[0];
  const gaps = distances.some(({ answer }) => 'why' in answer) || 'why' in axes || 'why' in axes.againstDates;
  return [
    ...(worst?.because[0] === undefined
      ? []
      : [
          `${worst.label} of ${worst.because[0].label} told apart as elsewhere: ${printSome(worst.narrower, 3)}.`,
        ]),
    ...('why' in ranking.most || tooFew.length > 0 ? ['More items with a kind recorded.'] : []),
    ...(!('why' in ranking.most) && ranking.most.rivals.length > 0
      ? [
          `More items of ${printSome([...ranking.most.labels, ...ranking.most.rivals.map(({ label }) => label)], 3)}.`,
        ]
      : []),
    ...guardNext(guard, `describe ${inSentence(kindsLabel)} of`),
    ...(gaps ? ['Places and dates of the assemblages, to test whether likeness follows them.'] : []),
  ];
}
