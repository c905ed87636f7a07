import type { ShortVerdict, Turn } from '../analyses/contract.ts';
import { endingWith, oneSentence } from '../analyses/one-sentence.ts';
import type { Answered } from '../analyses/register.ts';
import type { Witness } from '../fragments/witness.ts';
import type { Prepared } from './prepare.ts';

/**
 * The same question asked of the same finds, recorded or counted otherwise. Where the verdict turns with that, it is
 * no verdict yet, and the answer says what it hangs on.
 */
export interface WhatIf {
  /** What is taken otherwise, as a turn says it. */
  readonly what: string;
  /** What is open, in a few words: "doubtful attributions". */
  readonly open: string;
  /** Said in place of the verdict where it turns: one sentence of at most 30 words. */
  readonly hangsOn: string;
  /** What would settle it. */
  readonly next: string;
  readonly prepared: () => Prepared;
}

export interface Tried {
  readonly whatIf: WhatIf;
  readonly other: Answered;
}

/**
 * The answer with what was tried otherwise: where a verdict turns, that is the answer; where a set of labels only
 * grows, shrinks or overlaps, the answer says on what it hangs. A verdict that counts fragments, since nobody has said
 * what an object is, says so.
 */
export function withTurns(answered: Answered, witness: Witness, tried: readonly Tried[]): Answered {
  const { verdict, words } = answered;
  if (verdict === null) return describedOtherwise(answered, tried);
  const changes = tried.map(({ whatIf, other }) => ({
    whatIf,
    other,
    change: other.verdict === null ? 'the same' : changeOf(verdict, other.verdict),
  }));
  const turns = changes.map(
    ({ whatIf, other, change }): Turn => ({
      what: whatIf.what,
      size: change === 'the same' ? 'the answer is the same' : startingSmall(other.words.answer),
      overturns: change !== 'the same',
    }),
  );
  // What was tried and changes nothing comes last.
  const unless = [
    ...turns.filter(({ overturns }) => overturns),
    ...words.unless,
    ...turns.filter(({ overturns }) => !overturns),
  ].sort((a, b) => Number(b.overturns) - Number(a.overturns));
  const changed = changes.filter(({ change }) => change !== 'the same');
  const next = [...changed.map(({ whatIf }) => whatIf.next), ...(words.next ?? [])];
  const settle = next.length === 0 ? {} : { next };
  const worst = changes.find(({ change }) => change === 'turned');
  if (worst !== undefined)
    return {
      ...answered,
      words: {
        answer: worst.whatIf.hangsOn,
        because: [words.answer, ...words.because].slice(0, MOST_REASONS),
        unless,
        ...settle,
      },
    };
  const [moved] = changed;
  const said =
    witness.status === 'confirmed'
      ? words.answer
      : endingWith(words.answer, [', if each fragment is a find of its own', ', counted by fragments']);
  // What had to give way is evidence still.
  const whole = said.startsWith(words.answer.replace(/\.$/, ''));
  return {
    ...answered,
    words: {
      answer: oneSentence(
        [said.replace(/\.$/, '')],
        moved === undefined ? [] : [`; which stay hangs on ${moved.whatIf.open}`],
      ),
      because: whole ? words.because : [words.answer, ...words.because].slice(0, MOST_REASONS),
      unless,
      ...settle,
    },
  };
}

/** A description has no verdict that could turn: what it says otherwise stands beside it. */
function describedOtherwise(answered: Answered, tried: readonly Tried[]): Answered {
  if (tried.length === 0) return answered;
  const { words } = answered;
  const turns = tried.map(({ whatIf, other }) => ({
    what: whatIf.what,
    size:
      other.words.answer === words.answer
        ? 'the answer is the same'
        : startingSmall([other.words.answer, ...other.words.because.slice(0, 1)].join(' ')),
    overturns: false,
  }));
  return { ...answered, words: { ...words, unless: [...words.unless, ...turns] } };
}

/** Sets of labels turn only where they share none; where they share some but not all, they move. */
export function changeOf(here: ShortVerdict, there: ShortVerdict): 'the same' | 'moved' | 'turned' {
  if (typeof here === 'string' || typeof there === 'string') return here === there ? 'the same' : 'turned';
  const pairs = here.flatMap(({ attribute, labels }) => {
    const other = there.find((one) => one.attribute === attribute);
    return other === undefined ? [] : [[new Set(labels), new Set(other.labels)] as const];
  });
  const shared = pairs.map(([one, other]) => [...one].filter((label) => other.has(label)).length);
  const alike = pairs.map(([one, other], at) => one.size === other.size && one.size === shared[at]);
  if (pairs.length === here.length && here.length === there.length && alike.every(Boolean)) return 'the same';
  return pairs.some((_, at) => !alike[at] && shared[at] === 0) ? 'turned' : 'moved';
}

/** Lines of evidence that an answer may have. */
const MOST_REASONS = 4;

/** A sentence to stand after a colon; names keep their capital. */
function startingSmall(sentence: string): string {
  const plain = sentence.replace(/\.$/, '');
  return /^(?:The|A|An|Of|In|No|Row|All|Both|None|Cannot|It|They|This|By|Commonest|Most)\b/.test(plain)
    ? plain.charAt(0).toLowerCase() + plain.slice(1)
    : plain;
}
