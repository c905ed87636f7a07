import type { RecordsCondition } from '../../../fragments/conditions.ts';
import type { Random } from '../../../numerics/foundation/random.ts';
import {
  type StratifiedTest,
  stratifiedPermutation,
  stratifiedTest,
} from '../../../numerics/tests/stratified.ts';
import type { Unavailable } from '../../contract.ts';
import type { SharedEffect, Tied } from './found.ts';
import type { GuardRequest } from './request.ts';

/** Records from which labels need not be dealt again. */
const MANY = 500;

/** Whether no two labels share a kind of the condition. */
export function isOneEach({ of, kinds }: RecordsCondition, labels: Int32Array): boolean {
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

/** Whether each label has one kind of the condition only. */
export function isOfLabels({ of }: RecordsCondition, labels: Int32Array): boolean {
  const kindOf = new Map<number, number>();
  for (let row = 0; row < labels.length; row++) {
    if (of[row] < 0) continue;
    if ((kindOf.get(labels[row]) ?? of[row]) !== of[row]) return false;
    kindOf.set(labels[row], of[row]);
  }
  return true;
}

/** Labels that can be compared with each other through kinds that they share: one number for all of a set. */
export function bridges({ of }: RecordsCondition, labels: Int32Array, labelCount: number): Int32Array {
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
export function isBridged(condition: RecordsCondition, { labels, labelCount, named }: GuardRequest): boolean {
  const [one, ...others] = named;
  if (one === undefined) return true;
  const set = bridges(condition, labels, labelCount);
  return others.length > 0
    ? others.every((other) => set[other] === set[one])
    : set.some((own, label) => label !== one && own === set[one]);
}

export function sharedEffect(
  request: GuardRequest,
  { of }: RecordsCondition,
  random: Random,
): SharedEffect | Unavailable {
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
  const many = rows.length >= MANY && new Set(taken.items).size === rows.length;
  // So many records of one reading each that the distribution of the statistic is known.
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

/** Pairs of conditions of which each kind of one is of one kind of the other, records that have both looked at. */
export function tiedAmong(conditions: readonly RecordsCondition[]): readonly Tied[] {
  return conditions.flatMap((first, at) =>
    conditions.slice(at + 1).flatMap((second): Tied[] => {
      const [within, without] = [isWithinOne(first, second), isWithinOne(second, first)];
      if (!within && !without) return [];
      const [inner, outer] = within ? [first, second] : [second, first];
      return [{ inner: inner.label, outer: outer.label, mutual: within && without }];
    }),
  );
}

function isWithinOne(inner: RecordsCondition, outer: RecordsCondition): boolean {
  const owner = new Map<number, number>();
  for (let row = 0; row < inner.of.length; row++) {
    const [kind, own] = [inner.of[row], outer.of[row]];
    if (kind < 0 || own < 0) continue;
    const before = owner.get(kind);
    if (before !== undefined && before !== own) return false;
    owner.set(kind, own);
  }
  return owner.size > 1;
}

/** Names of the labels that share a kind of the condition with another, in their order. */
export function namesThatShare(
  { of }: RecordsCondition,
  labels: Int32Array,
  names: readonly string[],
): string[] {
  const shared = new Set(inSharedStrata(labels, of).map((row) => labels[row]));
  return names.filter((_, label) => shared.has(label));
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
