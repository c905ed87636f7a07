import type { Turn } from '../../analyses/contract.ts';
import { endingWith } from '../../analyses/one-sentence.ts';
import type { Answered } from '../../analyses/register.ts';
import type { Witness } from '../../fragments/items/witness.ts';
import type { Material } from '../prepare.ts';
import { type Change, changeOf } from './change-of.ts';

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
  /**
   * Instead of that, where what was taken is far likelier than what is tried: the verdict stands under this clause,
   * the fullest wording first.
   */
  readonly onlyIf?: readonly string[];
  /** What would settle it. */
  readonly next: string;
  /** The name by which the first answer calls what this one calls so. */
  readonly calls?: (name: string) => string;
  readonly prepared: () => Material;
}

export interface Tried {
  readonly whatIf: WhatIf;
  readonly other: Answered;
}

interface TriedChange extends Tried {
  readonly change: Change;
}

const UNCHANGED: Change = { how: 'the same', which: '' };
const leavesItOpen = ({ change: { how } }: TriedChange) => how === 'moved' || how === 'turned';

/**
 * The answer with what was tried otherwise: where a verdict turns, that is the answer; where it stands but leaves more
 * or less open, or under a clause, the answer says on what it hangs. A verdict that counts fragments, since nobody has said
 * what an object is, says so.
 */
export function withTurns(answered: Answered, witness: Witness, tried: readonly Tried[]): Answered {
  const { verdict, words } = answered;
  if (verdict === null) return describedOtherwise(answered, tried);
  const changes = tried.map(
    (one): TriedChange => ({
      ...one,
      change: one.other.verdict === null ? UNCHANGED : changeOf(verdict, one.other.verdict, one.whatIf.calls),
    }),
  );
  const turns = changes.map(
    (one): Turn => ({
      what: one.whatIf.what,
      size: one.change.how === 'the same' ? 'the answer is the same' : startingSmall(one.other.words.answer),
      overturns: leavesItOpen(one),
    }),
  );
  // What was tried and changes nothing comes last.
  const unless = [
    ...turns.filter(({ overturns }) => overturns),
    ...words.unless,
    ...turns.filter(({ overturns }) => !overturns),
  ].sort((a, b) => Number(b.overturns) - Number(a.overturns));
  const changed = changes.filter(leavesItOpen);
  const next = [...changed.map(({ whatIf }) => whatIf.next), ...(words.next ?? [])];
  const settle = next.length === 0 ? {} : { next };
  const worst = changed.find(({ change, whatIf }) => change.how === 'turned' && whatIf.onlyIf === undefined);
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
  const [names, ...others] = clauses(witness, changed);
  // Whether names are one is the first line of what would turn it, where there is no room to say so.
  const said = endingWith(words.answer, together([names, ...others]), together(others), labelsOf(answered));
  // What had to give way is evidence still.
  const whole = said.startsWith(words.answer.replace(/\.$/, ''));
  return {
    ...answered,
    words: {
      answer: said,
      because: whole ? words.because : [words.answer, ...words.because].slice(0, MOST_REASONS),
      unless,
      ...settle,
    },
  };
}

/** The texts in the cells and the heads of the tables: the names that the answer may call. */
function labelsOf({ tables }: Answered): readonly string[] {
  const texts = Object.values(tables).flatMap(({ columns, rows }) => [
    ...columns.map(({ label }) => label),
    ...rows.flat().filter((cell) => typeof cell === 'string'),
  ]);
  return [...new Set(texts)];
}

/** What has to be said of a verdict that stands, each with its shorter wordings; that of names comes first. */
function clauses(witness: Witness, changed: readonly TriedChange[]): readonly (readonly string[])[] {
  const [conditional] = changed.flatMap(({ whatIf }) => (whatIf.onlyIf === undefined ? [] : [whatIf.onlyIf]));
  const moved = changed.find(({ change, whatIf }) => change.how === 'moved' && whatIf.onlyIf === undefined);
  return [
    conditional ?? [''],
    ...(witness.status === 'confirmed'
      ? []
      : [[', if each fragment is a find of its own', ', counted by fragments']]),
    ...(moved === undefined
      ? []
      : [[`; ${moved.change.which} hangs on ${moved.whatIf.open}`, `; it hangs on ${moved.whatIf.open}`]]),
  ];
}

/** All clauses one after another, in every combination of their wordings, the longest first. */
function together(parts: readonly (readonly string[])[]): readonly string[] {
  return parts
    .reduce<readonly string[]>((all, part) => all.flatMap((said) => part.map((next) => said + next)), [''])
    .toSorted((a, b) => b.length - a.length);
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

/** Lines of evidence that an answer may have. */
const MOST_REASONS = 4;

/** A sentence to stand after a colon; names keep their capital. */
function startingSmall(sentence: string): string {
  const plain = sentence.replace(/\.$/, '');
  return /^(?:The|A|An|Of|In|No|Row|All|Both|None|Cannot|It|They|This|By|Commonest|Most)\b/.test(plain)
    ? plain.charAt(0).toLowerCase() + plain.slice(1)
    : plain;
}
