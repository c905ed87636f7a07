import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { Words } from '../before-answers.ts';
import { printCount, printList, printNumber, printP, printQuantity } from '../phrasing.ts';
import type { Apart } from './apart.ts';
import { NO_TYPE } from './assign.ts';
import type { TypologyFound } from './compute.ts';
import { STRONG } from './finer-coarser.ts';
import { fallsApart, type Split, splitSupported } from './split.ts';
import type { CutAnswer } from './threshold.ts';
import type { Within } from './within.ts';

const LEVEL = 0.05;
/** Below it a group is not to be trusted (Hennig 2007). */
const SHAKY = 0.6;

/** The verdict with its conditions, and what would make it doubtful. */
export function typologyWords(found: TypologyFound): Words {
  return {
    // The verdict first: a tired reader may read no further.
    sentence: [verdict(found), coverage(found), ...found.splits.map(splitWords), apartWords(found)].join(' '),
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
  if (
    isUnavailable(split.dip) ||
    isUnavailable(split.bandwidth) ||
    isUnavailable(split.threshold) ||
    isUnavailable(split.best)
  )
    return `${split.label} (${cut}): whether there is a split cannot be said.`;
  const { dip, bandwidth, threshold, best } = split;
  const dipText = `dip ${printNumber(dip.statistic)}, ${printP(dip.p)}; one mode by bandwidth, ${printP(bandwidth.p)}; n = ${dip.n}`;
  if (!fallsApart(split))
    return `${split.label} (${cut}): one continuous range cannot be excluded (${dipText}; ${printCount(best.parts.length, 'part')} preferred by BIC).`;
  const interval = `${printNumber(threshold.low)} to ${printQuantity(threshold.high, split.unit)}`;
  const answers = split.answers.map((answer) => cutWords(split, answer, threshold.estimate));
  return `${split.label} (${cut}) falls into more than one heap (${dipText}); two parts cross at ${printQuantity(threshold.estimate, split.unit)} (95 % interval ${interval}); ${printList(answers)}.`;
}

function cutWords({ unit }: Split, { cut, within, between, n, agrees }: CutAnswer, estimate: number): string {
  const at = `the cut at ${printQuantity(cut, unit)}`;
  if (within) return `${at} lies within that interval`;
  const count = `between ${at} and the crossing at ${printQuantity(estimate, unit)} ${between === 1 ? 'lies' : 'lie'} ${between} of ${n} readings`;
  return agrees
    ? between === 0
      ? `${count}, so both part the same records`
      : `${count}, so both part nearly the same records`
    : `${at} lies outside it, and ${count}`;
}

function apartWords({ apart }: TypologyFound): string {
  if ('why' in apart)
    return apart.circular
      ? `A test of whether the types are apart would be circular: ${apart.why}.`
      : `Whether the types are apart otherwise cannot be tested: ${apart.why}.`;
  const { difference, prediction } = apart;
  const parts = [
    isUnavailable(difference)
      ? `difference: ${difference.why}`
      : `pseudo-F ${isUnavailable(difference.statistic) ? `without a value (${difference.statistic.why})` : printNumber(difference.statistic)}, ${printP(difference.p)}, ${shareOfVariation(difference.rSquared)}`,
    isUnavailable(prediction)
      ? `prediction: ${prediction.why}`
      : `${Math.round(100 * prediction.balanced)} % predicted rightly for what was left out, ${Math.round(100 * prediction.chance)} % by guessing, ${printP(prediction.p)}`,
  ];
  return `In ${printCount(apart.compared.length, 'attribute')} that did not define them: ${parts.join('; ')}.`;
}

export type Verdict =
  | 'supported'
  | 'not a split'
  | 'not distinguishable'
  | 'circular'
  | 'not testable'
  | 'open';

/** What the tests together say. Every word of the verdict hangs on this. */
function verdictOf({ apart, splits }: Pick<TypologyFound, 'apart' | 'splits'>): Verdict {
  if ('why' in apart) return apart.circular ? 'circular' : 'not testable';
  const answers = splits.map(splitSupported);
  const difference = isUnavailable(apart.difference) ? undefined : apart.difference.p < LEVEL;
  const predicted = isUnavailable(apart.prediction) ? undefined : apart.prediction.p < LEVEL;
  if (answers.includes(false)) return 'not a split';
  if (difference === false && predicted !== true) return 'not distinguishable';
  if (difference && predicted !== false && !answers.includes(undefined)) return 'supported';
  return 'open';
}

function verdict(found: TypologyFound): string {
  const { apart, assemblages } = found;
  const where = assemblages.length === 0 ? '' : ` on ${printCount(assemblages.length, 'assemblage')}`;
  switch (verdictOf(found)) {
    case 'circular':
      return `Verdict: circular${where}; what defines the types cannot also test them.`;
    case 'not testable':
      return `Verdict: not testable${where}.`;
    case 'not a split': {
      const differ = !('why' in apart) && !isUnavailable(apart.difference) && apart.difference.p < LEVEL;
      return `Verdict: not supported as a split${where}; ${differ ? 'the types differ otherwise, as two ends of one range may' : 'nor are the types distinguishable otherwise'}.`;
    }
    case 'not distinguishable':
      return `Verdict: not supported${where}; the types are not distinguishable in anything but what defines them.`;
    case 'supported':
      return `Verdict: supported${where}${conditions(apart)}.`;
    case 'open':
      return `Verdict: open${where}; the tests do not agree or could not all be made.`;
  }
}

/** Among which records the support holds, and where it could not be tested. */
function conditions(apart: TypologyFound['apart']): string {
  if ('why' in apart || apart.within.length === 0) return '';
  const named = (kept: readonly Within[]) => printList(kept.map(({ kind, n }) => `${kind} (n = ${n})`));
  const holds = apart.within.filter(({ pAdjusted: p }) => !isUnavailable(p) && p < LEVEL);
  const not = apart.within.filter(({ pAdjusted: p }) => !isUnavailable(p) && p >= LEVEL);
  const untested = apart.within.filter(({ pAdjusted }) => isUnavailable(pAdjusted));
  return [
    holds.length === 0 ? '' : `; also among ${named(holds)} alone`,
    not.length === 0 ? '' : `; not distinguishable among ${named(not)} alone`,
    untested.length === 0 ? '' : `; not testable among ${named(untested)} alone`,
  ].join('');
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
    const kinds = new Set(split.values).size;
    if (fallsApart(split) && !isUnavailable(split.best) && split.best.spread === 'own')
      cautions.push(
        `${split.label}: the parts have spreads of their own, while the threshold is reckoned with one; it may lie off the true crossing by more than its interval says.`,
      );
    if (kinds * 2 < split.values.length)
      cautions.push(
        `${split.label}: ${split.values.length} readings take only ${kinds} different values; rounding can pass for heaps.`,
      );
    const { halves, ratio } = visible[place];
    if (fallsApart(split) === false)
      cautions.push(
        isUnavailable(halves)
          ? `${split.label}: ${halves.why}.`
          : `${split.label}: with ${split.values.length} readings only heaps at least ${printNumber(halves)} standard deviations apart would be found by the dip in 8 cases of 10${
              isUnavailable(ratio)
                ? ''
                : `, and heaps as the rules part them by the likelihood ratio from ${printNumber(ratio)} on`
            }.`,
      );
  });
  if (!('why' in apart)) cautions.push(...finerCautions(found, apart));
  const preservation = meaning.find(({ attribute }) => attribute === 'preservation');
  if (preservation !== undefined && !isUnavailable(preservation.p) && preservation.p < LEVEL)
    cautions.push(
      `The types go with the preservation (${printP(preservation.p)})${
        'why' in apart
          ? '; compare within one mode before anything is made of them'
          : apart.within.every(({ pAdjusted }) => isUnavailable(pAdjusted))
            ? ', and within no single mode can they be compared: preservation alone may explain them'
            : '; the comparisons within one mode are the ones to trust'
      }.`,
    );
  if (meaning.length > 1)
    cautions.push(
      `${meaning.length} attributes were set against the types; the adjusted p allows for that, the plain p does not.`,
    );
  cautions.push('Limits of types are hypotheses; no number here makes a type a thing that its makers knew.');
  return cautions;
}

function finerCautions(found: TypologyFound, { finerCoarser, freeGroups, labels }: Apart): string[] {
  const { merged, divided } = finerCoarser;
  const name = (type: number) => found.typology.types[type].label;
  const cautions: string[] = [];
  if (!isUnavailable(merged) && !isUnavailable(merged.difference) && merged.difference.p >= LEVEL)
    cautions.push(
      `${name(merged.first)} and ${name(merged.second)} are not distinguishable in what did not define them (${printP(merged.difference.p)}); they may be one type.`,
    );
  if (!isUnavailable(divided) && divided.strength >= STRONG)
    cautions.push(
      `${name(divided.type)} may be two types: halves of it predict one another (strength ${printNumber(divided.strength)}, groups of ${printList(divided.sizes.map(String))}).`,
    );
  if (!isUnavailable(freeGroups)) {
    const shaky = freeGroups.stability.flatMap(({ mean }, type) =>
      labels.includes(type) && mean < SHAKY ? [`${name(type)} (${printNumber(mean)})`] : [],
    );
    if (shaky.length > 0)
      cautions.push(
        `Groups made without the rules do not find ${printList(shaky)} again (mean Jaccard coefficient below ${SHAKY}).`,
      );
  }
  return cautions;
}

/** Dissimilarities that fit no flat picture can give a share below 0: less than nothing lies between the types. */
function shareOfVariation(share: number): string {
  return share < 0 ? 'nothing of the variation' : `${Math.round(100 * share)} % of the variation`;
}
