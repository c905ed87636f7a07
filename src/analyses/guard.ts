import type { Condition } from '../fragments/conditions.ts';
import type { Random } from '../numerics/foundation/random.ts';
import { adjustKnown } from '../numerics/tests/adjust.ts';
import { testAssociation } from '../numerics/tests/association-test.ts';
import { withoutEmptyLines } from '../numerics/tests/contingency.ts';
import { type StratifiedTest, stratifiedPermutation, stratifiedTest } from '../numerics/tests/stratified.ts';
import type { Unavailable } from './contract.ts';
import type { AdjustedEffect, Guard, GuardVerdict, LookedAt, SharedEffect } from './guard-found.ts';
import { type Told, toldAt } from './verdicts.ts';

/** What the guard is given: labels of the records compared, and what is compared. */
export interface GuardRequest {
  /** Label of the attribute whose groups are compared. */
  readonly by: string;
  readonly labels: Int32Array;
  readonly labelCount: number;
  readonly items: readonly string[];
  readonly conditions: readonly Condition[];
  /** What is compared, as columns of ranks or of kinds, made within strata; the stratum of each record is given. */
  readonly scores: (strata: ArrayLike<number>, rows: readonly number[]) => readonly ArrayLike<number>[];
  /** Whether the labels are told apart with no condition taken into account. */
  readonly told: Told;
  /** Labels that the answer names; none where it names none. */
  readonly named: readonly number[];
  /** The effect with and without a condition, where there is a model of it. */
  readonly adjust?: (condition: Condition) => AdjustedEffect | Unavailable;
  readonly confidence: number;
  readonly relabellings: number;
  readonly random: Random;
}

/** An effect within a condition of less than this share of the plain one has gone. */
const GONE = 0.5;
/** Records from which labels need not be dealt again. */
const MANY = 500;

/**
 * Is the difference between labels one between conditions? Each condition is tested for association with the labels
 * (Holm over those looked at); where it goes with them, the labels are compared among records that share it, by
 * dealing labels within it again, and beside that the same records with the condition left out of account.
 */
export function guardAgainst(request: GuardRequest): Guard {
  const { conditions, labels, confidence, random, told } = request;
  const tests = conditions.map((condition) =>
    condition.state === 'looked at'
      ? associationWith(request, condition)
      : { p: { why: NOT_LOOKED[condition.state] }, v: { why: NOT_LOOKED[condition.state] } },
  );
  const p = adjustKnown(
    tests.map((test) => test.p),
    'holm',
  );
  const goes = conditions.map((_, at) => toldAt(p[at], confidence) === 'told apart');
  const parts = conditions.map((condition, at) => {
    const state = condition.state === 'looked at';
    const oneEach = state && isOneEach(condition, labels);
    const shared: SharedEffect | Unavailable = !state
      ? { why: NOT_LOOKED[condition.state] }
      : oneEach
        ? { why: 'no two groups share a kind of it' }
        : goes[at]
          ? sharedEffect(request, condition, random.stream(condition.id))
          : { why: 'it does not go with the groups' };
    return { condition, oneEach, shared, bridged: state && isBridged(condition, request) };
  });
  // That a difference appears within a condition is asked of several: these p are adjusted together.
  const appearing = adjustKnown(
    parts.map(({ shared }) => ('why' in shared ? shared : shared.p)),
    'holm',
  );
  const looked = parts.map(({ condition, oneEach, shared, bridged }, at): LookedAt => {
    const verdict = verdictOf(
      condition.state,
      { oneEach, goes: goes[at], bridged },
      told,
      shared,
      appearing[at],
      confidence,
    );
    return {
      id: condition.id,
      label: condition.label,
      known: condition.known,
      kinds: condition.kinds.length,
      verdict,
      p: p[at],
      v: tests[at].v,
      shared,
      adjusted: goes[at] && !oneEach && request.adjust !== undefined ? request.adjust(condition) : null,
      oneEach,
      bridged,
    };
  });
  return { by: request.by, n: labels.length, conditions: looked, ...sorted(looked) };
}

const NOT_LOOKED = {
  unknown: 'not recorded',
  scarce: 'known of too few',
  one: 'the same for all',
  'looked at': '',
} as const;

/** Items, not fragments: an item of one label and kind counts once. */
function associationWith({ labels, labelCount, items, random }: GuardRequest, { id, of, kinds }: Condition) {
  const seen = new Set<string>();
  const counts = Array.from({ length: labelCount }, () => new Array<number>(kinds.length).fill(0));
  labels.forEach((label, row) => {
    const key = `${label} ${of[row]} ${items[row]}`;
    if (of[row] < 0 || seen.has(key)) return;
    seen.add(key);
    counts[label][of[row]]++;
  });
  const found = testAssociation(withoutEmptyLines(counts).table, random.stream(`${id} and labels`));
  return {
    p: found.p,
    v: 'why' in found.association ? found.association : found.association.cramersVCorrected,
  };
}

/** Whether no two labels share a kind of the condition. */
function isOneEach({ of, kinds }: Condition, labels: Int32Array): boolean {
  const owner = new Int32Array(kinds.length).fill(-1);
  let several = 0;
  const seen = new Set<number>();
  for (let row = 0; row < labels.length; row++) {
    if (of[row] < 0) continue;
    seen.add(labels[row]);
    if (owner[of[row]] >= 0 && owner[of[row]] !== labels[row]) several++;
    owner[of[row]] = labels[row];
  }
  return several === 0 && seen.size > 1;
}

/** Labels that can be compared with each other through kinds that they share: one number for all of a set. */
export function bridges({ of }: Condition, labels: Int32Array, labelCount: number): Int32Array {
  const lead = Int32Array.from({ length: labelCount }, (_, label) => label);
  const root = (label: number): number => (lead[label] === label ? label : root(lead[label]));
  const first = new Map<number, number>();
  of.forEach((kind, row) => {
    if (kind < 0) return;
    const own = first.get(kind);
    if (own === undefined) first.set(kind, labels[row]);
    else lead[root(labels[row])] = root(own);
  });
  return lead.map((_, label) => root(label));
}

/** Whether the named labels can be compared; one alone with any other. */
function isBridged(condition: Condition, { labels, labelCount, named }: GuardRequest): boolean {
  const [one, ...others] = named;
  if (one === undefined) return true;
  const set = bridges(condition, labels, labelCount);
  return others.length > 0
    ? others.every((other) => set[other] === set[one])
    : set.some((own, label) => label !== one && own === set[one]);
}

function sharedEffect(request: GuardRequest, { of }: Condition, random: Random): SharedEffect | Unavailable {
  const { labels, labelCount, items, scores, relabellings } = request;
  const rows = inSharedStrata(labels, of);
  const strata = Int32Array.from(rows, (row) => of[row]);
  const taken = {
    labels: Int32Array.from(rows, (row) => labels[row]),
    labelCount,
    items: rows.map((row) => items[row]),
  };
  const within = { ...taken, strata, scores: scores(strata, rows) };
  const found = stratifiedTest(within);
  if ('why' in found) return found;
  const none = new Int32Array(rows.length);
  const plain = stratifiedTest({ ...taken, strata: none, scores: scores(none, rows) });
  if ('why' in plain) return plain;
  // So many records of one reading each that the distribution of the statistic is known.
  const many = rows.length >= MANY && new Set(taken.items).size === rows.length;
  const dealt = many ? null : stratifiedPermutation(within, { random, relabellings });
  return {
    n: rows.length,
    strata: found.strata,
    plain: plain.strength,
    within: found.strength,
    statistic: found.statistic,
    df: found.df,
    p: dealt === null ? found.pAsymptotic : 'why' in dealt ? dealt : dealt.p,
    method:
      dealt === null
        ? 'chi-squared'
        : 'why' in dealt
          ? ''
          : dealt.method === 'exact'
            ? `exact, all ${dealt.relabellings} ways to deal the labels within it`
            : `${dealt.relabellings} random ways to deal the labels within it`,
    sameWay: common(plain, found) > 0,
  };
}

function inSharedStrata(labels: Int32Array, of: Int32Array): number[] {
  const seen = new Map<number, Set<number>>();
  of.forEach((kind, row) => {
    if (kind < 0) return;
    const own = seen.get(kind);
    if (own === undefined) seen.set(kind, new Set([labels[row]]));
    else own.add(labels[row]);
  });
  return Array.from(of.keys()).filter((row) => (seen.get(of[row])?.size ?? 0) > 1);
}

/** What two sets of excesses have in common: positive where the labels stand out the same way. */
function common(a: StratifiedTest, b: StratifiedTest): number {
  return a.standardised.reduce(
    (sum, line, label) =>
      sum + line.reduce((total, value, column) => total + value * b.standardised[label][column], 0),
    0,
  );
}

function verdictOf(
  state: Condition['state'],
  { oneEach, goes, bridged }: { oneEach: boolean; goes: boolean; bridged: boolean },
  told: Told,
  shared: SharedEffect | Unavailable,
  appearing: number | Unavailable,
  confidence: number,
): GuardVerdict {
  if (state !== 'looked at') return state;
  if (told === 'cannot be told') return goes ? 'none within it' : 'does not go with them';
  const apart = told === 'told apart';
  if (oneEach) return apart ? 'cannot be told apart' : 'none within it';
  if (!goes) return 'does not go with them';
  if ('why' in shared || !bridged) return apart ? 'cannot be told apart' : 'none within it';
  if (!apart) return toldAt(appearing, confidence) === 'told apart' ? 'appears within it' : 'none within it';
  if (toldAt(shared.p, confidence) === 'told apart')
    return shared.sameWay ? 'holds within it' : 'reversed within it';
  return shared.plain > 0 && shared.within < GONE * shared.plain
    ? 'vanishes within it'
    : 'cannot be told apart';
}

const WORST: readonly GuardVerdict[] = [
  'reversed within it',
  'vanishes within it',
  'appears within it',
  'cannot be told apart',
];

function sorted(looked: readonly LookedAt[]): Pick<Guard, 'changes' | 'unseen' | 'withstood'> {
  const by = (verdict: GuardVerdict) => looked.filter((one) => one.verdict === verdict);
  // Where the recorders are known and withstood, that each label has a table of its own says no more.
  const recorder = looked.find(({ id }) => id === 'recorder')?.verdict;
  const settled =
    recorder === 'holds within it' || recorder === 'does not go with them' || recorder === 'one';
  const harmless = (one: LookedAt) =>
    one.id === 'source' && settled && one.verdict === 'cannot be told apart';
  return {
    changes: WORST.flatMap(by).filter((one) => !harmless(one)),
    unseen: looked.filter(({ verdict }) => verdict === 'unknown' || verdict === 'scarce'),
    withstood: by('holds within it'),
  };
}
