import type { Limits } from '../../numerics/foundation/limits.ts';
import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import {
  inSentence,
  printCount,
  printLevel,
  printList,
  printNumber,
  printP,
  printQuantity,
} from '../phrasing.ts';
import type { CutAnswer, HeapSplit, Threshold } from './split-found.ts';

/** How the readings were taken, as far as it bears on a division. */
function stepWords({ steps, scaleBy, logarithm, unit }: HeapSplit): string {
  const { least, most } = steps;
  const range = least === most ? '' : least === 0 ? 'up to ' : `${printNumber(least)} to `;
  const step = most === 0 ? '' : ` in steps of ${range}${printQuantity(most, unit)}`;
  const scale =
    scaleBy === 'fit'
      ? `, ${logarithm ? 'on logarithms' : 'as measured'}, which fits them better`
      : logarithm
        ? ', on logarithms'
        : '';
  return `${step}${scale}`;
}

/** What was measured of the division of one attribute. */
export function splitWords(split: HeapSplit, confidence: number): string {
  const { dip, bandwidth, threshold, best, values } = split;
  const drawn = split.drawnFrom === null ? '' : ` drawn by chance from ${split.drawnFrom}`;
  const start = `${split.label}, ${printCount(values.length, 'reading')}${drawn}${stepWords(split)}`;
  if (isUnavailable(dip) || isUnavailable(bandwidth) || isUnavailable(best)) {
    const gap = [dip, bandwidth, best].find(isUnavailable);
    return `${start}: ${gap?.why ?? 'no division could be looked for'}.`;
  }
  const tests = `dip ${printNumber(dip.statistic)}, ${printP(dip.p)}; one mode by bandwidth, ${printP(bandwidth.p)}; ${printCount(best.parts.length, 'part')} preferred by BIC`;
  if (isUnavailable(threshold)) return `${start}: ${tests}.`;
  return `${start}: ${tests}; ${thresholdWords(split, threshold, confidence)}.`;
}

function thresholdWords(split: HeapSplit, threshold: Threshold, confidence: number): string {
  const { unit } = split;
  const { gap, second } = threshold;
  if (gap !== null)
    return `no reading lies between ${printNumber(gap.low)} and ${printQuantity(gap.high, unit)}, so that any cut there parts the same finds${outside(split)}`;
  const limits = ({ low, high }: Limits) =>
    `${printLevel(confidence)} ${printNumber(low)} to ${printQuantity(high, unit)}`;
  const twice =
    second === null
      ? ''
      : ` and again at ${printQuantity(second.estimate, unit)} (${limits(second)}), where the wider part reaches round the other`;
  const answers = split.answers.map((answer) => cutWords(split, answer));
  return `two parts ${threshold.spread === 'own' ? 'of different spread' : 'of one spread'} cross at ${printQuantity(threshold.estimate, unit)} (${limits(threshold)})${twice}; ${printList(answers)}`;
}

/** Cuts that lie outside the stretch without readings. */
function outside({ answers, unit }: HeapSplit): string {
  const far = answers.filter(({ between }) => between > 0);
  return far
    .map(
      ({ cut, between, n }) =>
        `; the cut at ${printQuantity(cut, unit)} leaves ${between} of ${printCount(n, 'reading')} on the other side`,
    )
    .join('');
}

function cutWords({ unit, label }: HeapSplit, { cut, within, between, n }: CutAnswer): string {
  const at = `the cut at ${printQuantity(cut, unit)}`;
  if (within) return `${at} lies within that interval`;
  return between === 0
    ? `no reading of ${inSentence(label)} lies between ${at} and there`
    : `${between} of ${printCount(n, 'reading')} ${between === 1 ? 'lies' : 'lie'} between ${at} and there`;
}
