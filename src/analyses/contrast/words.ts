import type { Answer, Unavailable } from '../contract.ts';
import { firstShort, inSentence, printList, printSmall } from '../phrasing.ts';
import {
  guardClauses,
  guardLead,
  guardNext,
  type Remeasured,
  sharedGuardClause,
  unseenNext,
} from '../shared/guard/words.ts';
import { evidence, togetherEvidence } from './evidence-words.ts';
import type { AskedOtherwise, AttributeContrast, ContrastFound, JudgedPair } from './found.ts';
import { strongestOf } from './strongest.ts';
import type { Together } from './together-found.ts';
import { turnsOf } from './turn-words.ts';

/** Whether the groups differ, which way and how surely, and on what that hangs. */
export function contrastWords(found: ContrastFound): Answer {
  const { attributes } = found;
  const joint = togetherEvidence(found);
  const lines =
    attributes.length === 1
      ? evidence(found, attributes[0], 4 - joint.length)
      : attributes.slice(0, 4 - joint.length).flatMap((one) => evidence(found, one, 1));
  return {
    answer: answerOf(found),
    because: [...lines, ...joint],
    unless: turnsOf(found),
    next: next(found),
  };
}

const name = ({ samples }: AttributeContrast) => inSentence(samples.attribute.label);

function answerOf(found: ContrastFound): string {
  const { attributes } = found;
  if (attributes.length === 1 && found.together === null) return oneAnswer(found, attributes[0]);
  return manyAnswer(found);
}

function oneAnswer(found: ContrastFound, contrast: AttributeContrast): string {
  const { place, told, hangsOn } = contrast;
  if ('why' in place)
    return firstShort([
      `whether ${name(contrast)} differs by ${inSentence(found.by)} cannot be told: ${place.why}.`,
      `whether ${name(contrast)} differs by ${inSentence(found.by)} cannot be told.`,
    ]);
  const trend = trendClause(contrast);
  const said = told === 'told apart' ? differing(found, contrast) : undiffering(found, contrast);
  // What turns or empties the verdict leaves no room for what it hangs on besides.
  const guard = guardClauses(contrast.guard);
  const worst = guard.length > 0 ? guard : [told === 'told apart' ? condition(hangsOn) : ''];
  // A count of pairs, or that they are alike, would part the clause from what it qualifies.
  const plain =
    guard.length > 0 && said.length > 1 ? said.slice(told === 'told apart' ? said.length - 2 : 1) : said;
  return firstShort([
    ...guardLead(contrast.guard, name(contrast)),
    ...plain.flatMap((clause) => worst.flatMap((turn) => [`${clause}${turn}${trend}.`, `${clause}${turn}.`])),
    `${said[said.length - 1]}${worst[worst.length - 1]}.`,
  ]);
}

/** What a difference hangs on, first the worst. */
function condition(hangsOn: readonly AskedOtherwise[]): string {
  const [worst] = hangsOn;
  if (worst === undefined) return '';
  switch (worst.change) {
    case 'ends of the readings':
      return ', unless ranges are read at other ends';
    case 'spreads may differ':
      return ', unless the unequal spreads alone make it';
    case 'a group left out':
      return `, as long as ${worst.what} is counted`;
    case 'small groups left out':
      return ', as long as groups of few items are counted';
  }
}

/** Longest first. */
function differing(found: ContrastFound, contrast: AttributeContrast): string[] {
  const { samples, pairs } = contrast;
  const [only] = pairs;
  if (pairs.length === 1 && only.larger !== null)
    return [`${name(contrast)} tends to be ${largerIn(contrast, only)}`];
  const apart = pairs.filter(({ told }) => told === 'told apart');
  const start = `${name(contrast)} differs between ${printSmall(samples.tested.length)} groups by ${inSentence(found.by)}`;
  const strongest = strongestOf(apart);
  const count = `${printSmall(apart.length)} of ${printSmall(pairs.length)} pairs told apart`;
  return strongest === undefined
    ? [`${start}, ${apart.length === 0 ? 'though no single pair is told apart' : count}`, start]
    : [
        `${start}, most ${setApart(contrast, strongest)}, ${count}`,
        `${start}, most ${setApart(contrast, strongest)}`,
        start,
      ];
}

const labels = ({ samples }: AttributeContrast, pair: JudgedPair) => {
  const [first, second] = [samples.tested[pair.first].label, samples.tested[pair.second].label];
  return pair.larger === 'first' ? { larger: first, smaller: second } : { larger: second, smaller: first };
};

function largerIn(contrast: AttributeContrast, pair: JudgedPair): string {
  const { larger, smaller } = labels(contrast, pair);
  const word = contrast.samples.graded ? 'higher' : 'larger';
  return `${word} in ${larger} than in ${smaller}`;
}

function setApart(contrast: AttributeContrast, pair: JudgedPair): string {
  const { larger, smaller } = labels(contrast, pair);
  return `from ${smaller} to ${larger}`;
}

function undiffering(found: ContrastFound, contrast: AttributeContrast): string[] {
  const { samples, pairs, leastP } = contrast;
  const groups =
    samples.tested.length === 2
      ? printList(samples.tested.map(({ label }) => label))
      : `${printSmall(samples.tested.length)} groups by ${inSentence(found.by)}`;
  const alike =
    pairs.length === 1 && pairs[0].alike === 'told apart'
      ? `, and alike within ${Number((found.options.within * 100).toPrecision(6))} %`
      : '';
  const few = leastP === null ? '' : ', and could not be with so few items';
  const clause = `${name(contrast)} could not be shown to differ between ${groups}`;
  return [`${clause}${alike}${few}`, clause];
}

function trendClause({ trend }: AttributeContrast): string {
  if (trend === null) return '';
  if ('why' in trend) return '; whether it changes with time cannot be told';
  const [rho] = trend.tests;
  if ('why' in rho) return '; whether it changes with time cannot be told';
  return rho.told === 'told apart'
    ? `; it ${rho.direction} with time`
    : '; no trend over time could be shown';
}

function manyAnswer(found: ContrastFound): string {
  const { attributes, together } = found;
  const by = inSentence(found.by);
  const apart = attributes.filter(({ told }) => told === 'told apart');
  const unsure = apart.filter(({ hangsOn, guard }) => hangsOn.length > 0 || guard.changes.length > 0);
  const common = sharedGuardClause(apart.map(({ guard }) => guard));
  const hanging =
    unsure.length === 0 || common !== ''
      ? ''
      : `, ${unsure.length === apart.length ? '' : `${printSmall(unsure.length)} of them `}only as recorded and counted here`;
  const start =
    attributes.length === 0
      ? ''
      : apart.length === 0
        ? attributes.length === 1
          ? `${name(attributes[0])} could not be shown to differ by ${by}`
          : `none of ${printSmall(attributes.length)} attributes could be shown to differ by ${by}`
        : `${printSmall(apart.length)} of ${printSmall(attributes.length)} attributes ${apart.length === 1 ? 'differs' : 'differ'} by ${by}${hanging}`;
  const names = apart.length === 0 ? '' : ` (${printList(apart.map(name))})`;
  const joint = together === null ? '' : jointClause(together, common);
  const clause = (listed: string) =>
    [`${start}${listed}${common}`, joint].filter((part) => part !== '').join('; ');
  return firstShort([`${clause(names)}.`, `${clause('')}.`, `${start}${common}.`]);
}

/** @param common what one condition makes of all attributes one by one, which is not said twice. */
function jointClause(together: Together | Unavailable, common: string): string {
  if ('why' in together || together.told === 'cannot be told') return 'all together cannot be tested';
  const { told, spreadTold, asRecorded, guard } = together;
  const recorded =
    asRecorded === null || asRecorded === told
      ? ''
      : asRecorded === 'told apart'
        ? ', but would be by the words as recorded'
        : ', but not by the words as recorded';
  const [clause = ''] = guard === null || recorded !== '' ? [] : guardClauses(guard, 'are');
  if (told === 'not told apart') return `together the groups are not told apart${recorded}${clause}`;
  const how = spreadTold === 'told apart' ? ', in place or in spread' : '';
  if (clause !== '') return `together they differ${clause === common ? ' likewise' : clause}`;
  return `together they differ${how}${recorded}`;
}

function next({ attributes }: ContrastFound): string[] {
  const small = [
    ...new Set(
      attributes.flatMap(({ samples }) =>
        samples.groups.filter(({ quotable }) => !quotable).map(({ label }) => label),
      ),
    ),
  ];
  const apart = attributes.filter(({ told }) => told === 'told apart');
  const unseen = new Map(apart.flatMap(({ guard }) => guard.unseen.map((one) => [one.id, one] as const)));
  return [
    ...new Set(
      apart.flatMap((contrast) =>
        guardNext({ ...contrast.guard, unseen: [] }, 'measure', remeasured(contrast)),
      ),
    ),
    ...unseenNext([...unseen.values()]),
    ...(small.length > 0 ? [`More items of ${printList(small.slice(0, 6))}.`] : []),
  ];
}

/** The two furthest apart, and how many finds of each one person would have to measure. */
function remeasured({ pairs, samples }: AttributeContrast): Remeasured | undefined {
  const pair = strongestOf(pairs.filter(({ told }) => told === 'told apart'));
  if (pair === undefined) return undefined;
  const { first, second, findsNeeded: finds } = pair;
  return { names: [samples.tested[first].label, samples.tested[second].label], finds };
}
