import type { Answer } from '../contract.ts';
import { inSentence, printCount, printList } from '../phrasing.ts';
import { apartWords, withinWords } from './apart-words.ts';
import { NO_TYPE, type TypologyFound } from './found.ts';
import type { HeapSplit } from './split-found.ts';
import { splitWords } from './split-words.ts';
import { turnsOf } from './turn-words.ts';

/** The verdict, what it rests on, what would change it, what would settle it. */
export function typologyWords(found: TypologyFound): Answer {
  const next = nextOf(found);
  return {
    answer: answerOf(found),
    because: [coverage(found), splitsWords(found), apartWords(found), withinWords(found)].filter(
      (line) => line !== '',
    ),
    unless: turnsOf(found),
    ...(next.length === 0 ? {} : { next }),
  };
}

function answerOf(found: TypologyFound): string {
  const { apart, splits } = found;
  const named = (verdict: string) =>
    printList(splits.filter((split) => split.verdict === verdict).map(({ label }) => inSentence(label)));
  const others = 'why' in apart ? '' : printCount(apart.compared.length, 'attribute');
  switch (found.verdict) {
    case 'circular':
      return 'Cannot be told: everything that could test the types also defines them, so that any test would be circular.';
    case 'not testable':
      return 'Cannot be told: the types have too little recorded besides what defines them to be tested.';
    case 'one range':
      return differOtherwise(found)
        ? `Not supported: one continuous range of ${named('one range')} cannot be excluded, of which the types may be two ends.`
        : `Not supported: one continuous range of ${named('one range')} cannot be excluded, and the types are not told apart otherwise.`;
    case 'divided elsewhere':
      return `Not supported as cut: the readings of ${named('divided elsewhere')} are divided, but not where the rules divide them.`;
    case 'not distinguishable':
      return 'Not supported: the types are not told apart in anything but what defines them.';
    case 'may be a condition':
      return `Supported only if ${printList(doubtful(found))} did not make the types: they go together, and within one kind of it they are not told apart.`;
    case 'supported':
      return splits.length === 0
        ? `Supported: the types are told apart in ${others} that did not define them.`
        : `Supported: readings of ${named('divided at the cut')} are divided where the rules cut, and the types differ in ${others} that did not define them.`;
    case 'open':
      return `Cannot be told: ${openWhy(found)}.`;
  }
}

const TESTS: Readonly<Record<NonNullable<HeapSplit['against']>, string>> = {
  bandwidth: 'one mode by bandwidth',
  parts: 'the number of parts by BIC',
};

const doubtful = ({ apart }: TypologyFound) =>
  'why' in apart
    ? []
    : apart.conditions
        .filter(({ verdict }) => verdict === 'may explain them' || verdict === 'not told within it')
        .map(({ label }) => inSentence(label));

const differOtherwise = ({ apart }: TypologyFound) => !('why' in apart) && apart.differ === 'told apart';

function openWhy({ apart, splits }: TypologyFound): string {
  const unknown = splits.filter(({ verdict }) => verdict === 'cannot be told');
  const [torn] = unknown;
  if (torn !== undefined && torn.against !== null)
    return `two tests find the readings of ${inSentence(torn.label)} divided, the third, ${TESTS[torn.against]}, does not`;
  if (unknown.length > 0)
    return `readings of ${printList(unknown.map(({ label }) => inSentence(label)))} do not say whether they are divided`;
  if ('why' in apart) return apart.why;
  if (apart.differ === 'told apart') return 'the types differ, but are not predicted for what was left out';
  if (apart.predicted === 'told apart')
    return 'the types are predicted for what was left out, but do not differ on the whole';
  return 'whether the types differ in what did not define them could not be tested';
}

function coverage({ assignment, typology, unit, apart, assemblages }: TypologyFound): string {
  const typed = assignment.type.filter((type) => type >= 0).length;
  const undecided = assignment.type.filter((type) => type === NO_TYPE.undecided).length;
  const rest = undecided === 0 ? '' : `; of ${undecided} it cannot be said`;
  const where = assemblages.length === 0 ? '' : `, from ${printCount(assemblages.length, 'assemblage')}`;
  const overlaps = assignment.overlaps.map(
    ({ first, second, records }) =>
      `; ${records} fit both ${typology.types[first].label} and ${typology.types[second].label}`,
  );
  const tested =
    'why' in apart || apart.places.length === typed
      ? ''
      : apart.drawnFrom === null
        ? `, ${apart.places.length} of them comparable`
        : `, ${apart.places.length} of them compared, drawn by chance`;
  return `${typed} of ${printCount(assignment.rows.length, unit)} have a type${tested}${rest}${overlaps.join('')}${where}.`;
}

/** Attributes whose division is told in full; the table has them all. */
const MOST_SPLITS = 2;

function splitsWords({ splits, confidence }: TypologyFound): string {
  const told = splits.slice(0, MOST_SPLITS).map((split) => splitWords(split, confidence));
  const more = splits.length > told.length ? ` ${splits.length - told.length} more are in the table.` : '';
  return `${told.join(' ')}${more}`;
}

function nextOf(found: TypologyFound): string[] {
  const { apart, splits, assignment, labelOf, verdict } = found;
  const next: string[] = [];
  const few = splits.filter(({ verdict: own }) => own === 'cannot be told');
  if (few.length > 0) next.push(`More readings of ${printList(few.map(({ label }) => inSentence(label)))}.`);
  for (const split of splits)
    if (split.verdict === 'one range')
      next.push(
        `${split.coarse ? 'More and finer' : 'More'} readings of ${inSentence(split.label)}, for heaps nearer to each other to show.`,
      );
  if (!('why' in apart))
    for (const { label, verdict: own, untested } of apart.conditions)
      if (untested.length > 0 && own !== 'does not go with them')
        next.push(`More records of both types of one ${inSentence(label)}: ${untested.join(' or ')}.`);
  if (verdict === 'circular' || verdict === 'not testable')
    next.push('Attributes that neither define the types nor are computed from what does.');
  const blamed = [...new Set(assignment.blame.filter((id) => id !== null))];
  if (blamed.length > 0)
    next.push(
      `${printList(blamed.map((id) => labelOf.get(id) ?? id))} of the ${assignment.blame.filter((id) => id !== null).length} that cannot be typed.`,
    );
  return next;
}
