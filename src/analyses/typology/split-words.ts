import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import { inSentence, printCount, printList, printNumber, printP, printQuantity } from '../phrasing.ts';
import type { CutAnswer, Split } from './found.ts';

/** What was measured of the division of one attribute. */
export function splitWords(split: Split, confidence: number): string {
  const { dip, bandwidth, threshold, best, unit, values } = split;
  const start = `${split.label}, ${printCount(values.length, 'reading')}`;
  if (isUnavailable(dip) || isUnavailable(bandwidth) || isUnavailable(threshold) || isUnavailable(best)) {
    const gap = [dip, bandwidth, best, threshold].find(isUnavailable);
    return `${start}: ${gap?.why ?? 'no division could be looked for'}.`;
  }
  const tests = `dip ${printNumber(dip.statistic)}, ${printP(dip.p)}; one mode by bandwidth, ${printP(bandwidth.p)}; ${printCount(best.parts.length, 'part')} preferred by BIC`;
  if (split.verdict === 'one range') return `${start}: ${tests}.`;
  const interval = `${printNumber(100 * confidence)} % ${printNumber(threshold.low)} to ${printQuantity(threshold.high, unit)}`;
  const answers = split.answers.map((answer) => cutWords(split, answer));
  return `${start}: ${tests}; two parts cross at ${printQuantity(threshold.estimate, unit)} (${interval}); ${printList(answers)}.`;
}

function cutWords({ unit, label }: Split, { cut, within, between, n }: CutAnswer): string {
  const at = `the cut at ${printQuantity(cut, unit)}`;
  if (within) return `${at} lies within that interval`;
  return between === 0
    ? `no reading of ${inSentence(label)} lies between ${at} and there`
    : `${between} of ${printCount(n, 'reading')} ${between === 1 ? 'lies' : 'lie'} between ${at} and there`;
}
