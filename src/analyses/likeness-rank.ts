import type { First } from '../numerics/assemblages/ranking.ts';
import type { SameSource } from '../numerics/assemblages/same-source.ts';
import { mostAlike, type SimilarityCoefficient } from '../numerics/assemblages/similarity.ts';
import type { Unavailable } from '../numerics/foundation/unavailable.ts';
import type { FirstOf } from './contract.ts';
import { printList, printNumber, printSmall, printSome } from './phrasing.ts';
import { NAMED } from './shared/options/coefficient.ts';
import { type Told, toldAt } from './verdicts.ts';

/** Who is the most alike, for every analysis that ranks assemblages by likeness. */
export interface Rank {
  /** The first; several where they tie. */
  readonly labels: readonly string[];
  readonly value: number;
  /** Share of the draws of items in which one of them comes first. */
  readonly share: number;
  /** Others that come first in too many draws to be ruled out, the likeliest first. */
  readonly rivals: readonly { readonly label: string; readonly share: number }[];
}

/** Fewest items of an assemblage that is ranked: of fewer nothing is typical. */
export const LEAST_RANKED = 5;

/** An assemblage with too few items to be ranked. */
export interface TooFew {
  readonly label: string;
  readonly items: number;
}

/** Coefficients of shares: those by which a ranking is tried once more. The others rest on size or presence alone. */
export const OF_SHARES: readonly SimilarityCoefficient[] = [
  'brainerd-robinson',
  'morisita-horn',
  'chi-square',
];

/** The same with the labels of the places. */
export function rankOf(first: First, labels: readonly string[]): Rank {
  return {
    labels: first.leaders.map((place) => labels[place]),
    value: first.value,
    share: first.share,
    rivals: first.rivals.map(({ place, share }) => ({ label: labels[place], share })),
  };
}

/** Whether two rankings have no leader in common. */
export function isOther(rank: Pick<Rank, 'labels'>, other: Pick<Rank, 'labels'>): boolean {
  return !other.labels.some((label) => rank.labels.includes(label));
}

/** "most like A", "equally like A and B, a tie of two", "most like A, though B cannot be ruled out". */
export function sayRank({ labels, rivals }: Rank, how: 'most' | 'least'): string {
  const near =
    rivals.length > 2 ? `${printSmall(rivals.length)} others` : printList(rivals.map(({ label }) => label));
  const others = rivals.length === 0 ? '' : `, though ${near} cannot be ruled out`;
  if (labels.length === 1) return `${how} like ${labels[0]}${others}`;
  const equally = how === 'most' ? 'equally like' : 'equally unlike';
  return `${equally} ${printSome(labels, 3)}, a tie of ${printSmall(labels.length)}${others}`;
}

/** "123 of 200"; the number alone for a distance. */
export function sayLikeness(value: number, coefficient: SimilarityCoefficient): string {
  const most = mostAlike(coefficient);
  return most === 0 ? printNumber(value) : `${printNumber(value)} of ${most}`;
}

/**
 * Whether two assemblages are told apart; where p, adjusted over many pairs, could not be small enough by so few random
 * ways to deal, that cannot be told.
 */
export function toldSource({ isLeast }: SameSource, adjusted: number, confidence: number): Told {
  const told = toldAt(adjusted, confidence);
  return told === 'not told apart' && isLeast ? 'cannot be told' : told;
}

/** By which ways a p was found: "1999 random ways to deal the items". */
export function sayDealt({ method, ways }: SameSource): string {
  if (method === 'exact')
    return `exact, all ${Number.isFinite(ways) ? `${ways} ` : ''}ways to deal the items`;
  const random = `${ways} random ways to deal the items`;
  return method === 'fitted' ? `gamma curve through ${random}, none of them as unlike` : random;
}

/** "Brainerd-Robinson". */
export function coefficientName(coefficient: SimilarityCoefficient): string {
  return NAMED[coefficient];
}

/** A ranking as a verdict in short. */
export function rankInShort(rank: Rank | Unavailable, which: string, end: FirstOf['rank']): FirstOf {
  return 'why' in rank
    ? { rank: end, which, first: [], open: [] }
    : { rank: end, which, first: rank.labels, open: rank.rivals.map(({ label }) => label) };
}
