import { isUnavailable } from '../../numerics/unavailable.ts';
import type { Words } from '../contract.ts';
import { printCount, printList, printNumber, printP, printQuantity } from '../phrasing.ts';
import { NO_TYPE } from './assign.ts';
import type { TypologyFound } from './compute.ts';
import type { Split } from './split.ts';

const LEVEL = 0.05;

/** Is the data divided where the rules divide it? */
export function splitSupported(split: Split): boolean | undefined {
  if (isUnavailable(split.dip) || isUnavailable(split.best) || isUnavailable(split.threshold))
    return undefined;
  const { low, high } = split.threshold;
  const heaps = split.dip.p < LEVEL && split.best.parts.length >= 2;
  return heaps && split.cuts.some((cut) => cut >= low && cut <= high);
}

/** The verdict with its conditions, and what would make it doubtful. */
export function typologyWords(found: TypologyFound): Words {
  return {
    sentence: [coverage(found), ...found.splits.map(splitWords), apartWords(found), verdict(found)].join(' '),
    cautions: cautionsOf(found),
  };
}

function coverage({ assignment, typology, unit }: TypologyFound): string {
  const typed = assignment.type.filter((type) => type >= 0).length;
  const undecided = assignment.type.filter((type) => type === NO_TYPE.undecided).length;
  const rest = undecided === 0 ? '' : `; of ${undecided} it cannot be said`;
  return `"${typology.title}" gives a type to ${typed} of ${printCount(assignment.rows.length, unit)}${rest}.`;
}

function splitWords(split: Split): string {
  const cut = `cut at ${split.cuts.map((at) => printQuantity(at, split.unit)).join(' and ')}`;
  if (isUnavailable(split.dip) || isUnavailable(split.threshold) || isUnavailable(split.best))
    return `${split.label} (${cut}): whether there is a split cannot be said.`;
  const { dip, threshold, best } = split;
  const dipText = `dip ${printNumber(dip.statistic)}, ${printP(dip.p)}, n = ${dip.n}`;
  if (dip.p >= LEVEL)
    return `${split.label} (${cut}): one continuous range cannot be excluded (${dipText}; ${printCount(best.parts.length, 'part')} preferred by BIC).`;
  const within = split.cuts.some((at) => at >= threshold.low && at <= threshold.high);
  const interval = `${printNumber(threshold.low)} to ${printQuantity(threshold.high, split.unit)}`;
  return `${split.label} (${cut}) falls into more than one heap (${dipText}); two parts cross at ${printQuantity(threshold.estimate, split.unit)} (95 % interval ${interval}), ${
    within ? 'and the cut of the rules lies within it' : 'and the cut of the rules lies outside it'
  }.`;
}

function apartWords({ apart }: TypologyFound): string {
  if ('why' in apart) return `Whether the types are apart otherwise cannot be tested: ${apart.why}.`;
  const { difference, prediction } = apart;
  const parts = [
    isUnavailable(difference)
      ? `difference: ${difference.why}`
      : `pseudo-F ${printNumber(difference.statistic)}, ${printP(difference.p)}, ${Math.round(100 * difference.rSquared)} % of the variation`,
    isUnavailable(prediction)
      ? `prediction: ${prediction.why}`
      : `${Math.round(100 * prediction.balanced)} % predicted rightly for what was left out, ${Math.round(100 * prediction.chance)} % by chance, ${printP(prediction.p)}`,
  ];
  return `In ${apart.compared.length} attributes that did not define them: ${parts.join('; ')}.`;
}

function verdict(found: TypologyFound): string {
  const { apart, splits, assemblages } = found;
  const where =
    assemblages.length === 0 ? '' : ` (records of ${printCount(assemblages.length, 'assemblage')})`;
  if ('why' in apart)
    return `Verdict: not testable${where}; as it stands the claim is circular or lacks records.`;
  const answers = splits.map(splitSupported);
  const difference = isUnavailable(apart.difference) ? undefined : apart.difference.p < LEVEL;
  const predicted = isUnavailable(apart.prediction) ? undefined : apart.prediction.p < LEVEL;
  if (answers.includes(false)) {
    return `Verdict: not supported as a split${where}; ${difference ? 'the types differ otherwise, as two ends of one range may' : 'nor are the types apart otherwise'}.`;
  }
  if (difference === false && predicted !== true)
    return `Verdict: not supported${where}; the types are not distinguishable in anything but what defines them.`;
  if (difference && predicted !== false && !answers.includes(undefined)) return `Verdict: supported${where}.`;
  return `Verdict: open${where}; the tests do not agree or could not all be made.`;
}

function cautionsOf(found: TypologyFound): string[] {
  const { apart, assignment, typology, splits, visible, meaning } = found;
  const cautions: string[] = [];
  const small = typology.types.filter(
    (_, place) => assignment.type.filter((type) => type === place).length < 5,
  );
  if (small.length > 0)
    cautions.push(
      `Fewer than 5 records in ${printList(small.map((type) => type.label))}: nothing can be said of so few.`,
    );
  for (const { first, second, records } of assignment.overlaps)
    cautions.push(
      `The rules of ${typology.types[first].label} and ${typology.types[second].label} overlap: ${printCount(records, 'record')} fit both.`,
    );
  if (!('why' in apart)) {
    if (apart.usedTwice.length > 0)
      cautions.push(
        `Circular: ${printList(apart.usedTwice.map((id) => found.labelOf.get(id) ?? id))} would define the types and test them; left out of the tests.`,
      );
    if (!isUnavailable(apart.dispersion) && apart.dispersion.p < LEVEL)
      cautions.push('The types differ in spread, which can pass for a difference of place.');
  }
  splits.forEach((split, place) => {
    const smallest = visible[place];
    if (!isUnavailable(split.dip) && split.dip.p >= LEVEL)
      cautions.push(
        isUnavailable(smallest)
          ? `${split.label}: ${smallest.why}.`
          : `${split.label}: with ${split.values.length} readings only heaps at least ${printNumber(smallest)} standard deviations apart would be found in 8 cases of 10.`,
      );
  });
  const preservation = meaning.find(({ attribute }) => attribute === 'preservation');
  if (preservation !== undefined && !isUnavailable(preservation.p) && preservation.p < LEVEL)
    cautions.push(
      `The types go with the preservation (${printP(preservation.p)}); compare within one mode before anything is made of them.`,
    );
  if (meaning.length > 1)
    cautions.push(
      `${meaning.length} attributes were set against the types; the p values are not adjusted for that.`,
    );
  cautions.push('Limits of types are hypotheses; no number here makes a type a thing that its makers knew.');
  return cautions;
}
