import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import { inSentence, printCount, printList, printNumber, printP } from '../phrasing.ts';
import type { Within } from './apart-found.ts';
import type { TypologyFound } from './found.ts';

/** How the types stand in what did not define them. */
export function apartWords({ apart, labelOf }: TypologyFound): string {
  if ('why' in apart) return `No test of the types: ${apart.why}.`;
  const { difference, prediction, usedTwice, computed, compared } = apart;
  const name = (id: string) => inSentence(labelOf.get(id) ?? id);
  const made = computed.map(
    ({ id, from, correlation }) =>
      `; ${name(id)} left out: it goes with ${printList(from.map(name))} (rank correlation ${printNumber(correlation)}), which defines them`,
  );
  const twice =
    usedTwice.length === 0
      ? ''
      : ` (${printList(usedTwice.map(name))} left out: it would define the types and test them)`;
  const parts = [
    isUnavailable(difference)
      ? `no difference could be tested: ${difference.why}`
      : `${shareOfVariation(difference.rSquared)} lies between the types (pseudo-F ${
          isUnavailable(difference.statistic)
            ? `without a value: ${difference.statistic.why}`
            : printNumber(difference.statistic)
        }, ${printP(difference.p)})`,
    isUnavailable(prediction)
      ? `nothing could be predicted: ${prediction.why}`
      : `${Math.round(100 * prediction.balanced)} % are predicted rightly for assemblages left out, ${Math.round(100 * prediction.chance)} % by guessing (${printP(prediction.p)})`,
  ];
  return `In ${printCount(compared.length, 'attribute')} that did not define them${twice}: ${parts.join('; ')}${made.join('')}.`;
}

/** Dissimilarities that fit no flat picture can give a share below 0: less than nothing lies between the types. */
function shareOfVariation(share: number): string {
  return share < 0 ? 'nothing of the variation' : `${Math.round(100 * share)} % of the variation`;
}

/** Among which records of one condition the types hold; nothing to say where all share one condition. */
export function withinWords({ apart }: TypologyFound): string {
  if ('why' in apart || apart.within.length < 2) return '';
  const of = (told: Within['told']) => {
    const kinds = apart.within.filter((one) => one.told === told);
    return kinds.length === 0 ? null : printList(kinds.map(({ kind, n }) => `${kind} (${n})`));
  };
  const [holds, not, untested] = [of('told apart'), of('not told apart'), of('cannot be told')];
  const parts = [
    ...(holds === null ? [] : [`told apart also among ${holds} alone`]),
    ...(not === null ? [] : [`not told apart among ${not} alone`]),
    ...(untested === null ? [] : [`too few among ${untested} alone`]),
  ];
  return `Like with like: ${parts.join('; ')}.`;
}
