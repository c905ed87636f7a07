import { COMPARED_BLOCKS } from '../../fragments/comparison/comparison.ts';
import {
  type DissimilaritySpec,
  quantityValue,
  type RecordValue,
} from '../../numerics/dissimilarity/variables.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { verdictAt } from '../../numerics/tests/conformal.ts';
import type { Unavailable } from '../contract.ts';
import type { Move } from './found.ts';
import { type Bag, typicality, typicalityWithout } from './typicality.ts';

/** Changes that turn a verdict in at least this share of those tried make it fragile. */
const FRAGILE = 0.1;

interface Judged {
  readonly what: string;
  readonly outcome: { readonly p: number; readonly n: number } | Unavailable;
}

/** The find with a value drawn evenly from each of its ranges. */
export function drawWithin(record: readonly RecordValue[], random: Random): readonly RecordValue[] {
  return record.map((value) => {
    if (!(value.high > value.low)) return value;
    const drawn = value.low + random.next() * (value.high - value.low);
    return quantityValue(drawn);
  });
}

/** Whether any value of the find is a range. */
export function hasRanges(record: readonly RecordValue[]): boolean {
  return record.some((value) => value.high > value.low);
}

/** Does a label stay in or out when the find's values move within their ranges? */
export function movesWithinRanges(
  bags: readonly Bag[],
  draws: readonly (readonly RecordValue[])[],
  record: readonly RecordValue[],
  level: number,
): readonly Move[] {
  if (draws.length === 0) return [];
  return bags.flatMap((bag) =>
    moveOf(
      bag,
      'its own ranges',
      typicality(bag, record),
      draws.map((draw) => ({ what: '', outcome: typicality(bag, draw) })),
      level,
    ),
  );
}

/** The same with every broad term read by another rule: as near or as far as its kinds allow. */
export function movesByBroadTerms(
  bags: readonly Bag[],
  record: readonly RecordValue[],
  level: number,
  others: readonly {
    readonly what: string;
    readonly bags: readonly Bag[];
    readonly record: readonly RecordValue[];
  }[],
): readonly Move[] {
  return bags.flatMap((bag, place) =>
    moveOf(
      bag,
      'broad terms',
      typicality(bag, record),
      others.map(({ what, bags: again, record: own }) => ({ what, outcome: typicality(again[place], own) })),
      level,
    ),
  );
}

/** The same when each block in turn counts double or nothing. `bagsWith` makes the bags in the order of `bags`. */
export function movesUnderWeights(
  bags: readonly Bag[],
  spec: DissimilaritySpec,
  record: readonly RecordValue[],
  level: number,
  bagsWith: (spec: DissimilaritySpec, what: string) => readonly Bag[],
): readonly Move[] {
  const used = [...new Set(spec.variables.map((variable) => variable.block))].filter(
    (block) => spec.blockWeights[block] > 0,
  );
  if (spec.mode === 'plain' || used.length < 2) return [];
  const variants = used.flatMap((block) =>
    [2, 0].map((factor) => ({
      what: factor === 2 ? `${COMPARED_BLOCKS[block]} doubled` : `${COMPARED_BLOCKS[block]} left out`,
      spec: {
        ...spec,
        blockWeights: spec.blockWeights.map((weight, at) => (at === block ? weight * factor : weight)),
      },
    })),
  );
  const again = variants.map((variant) => ({ ...variant, bags: bagsWith(variant.spec, variant.what) }));
  return bags.flatMap((bag, place) => {
    const judged = again.map((variant) => ({
      what: variant.what,
      outcome: typicality(variant.bags[place], record),
    }));
    return moveOf(bag, 'other weights', typicality(bag, record), judged, level);
  });
}

/** The same when each assemblage in turn is left out. */
export function movesWithoutAssemblages(
  bags: readonly Bag[],
  assemblages: ReadonlyMap<string, ReadonlySet<number>>,
  record: readonly RecordValue[],
  level: number,
): readonly Move[] {
  return bags.flatMap((bag) => {
    const judged = [...assemblages].flatMap(([what, rows]): Judged[] => {
      const outcome = typicalityWithout(bag, record, rows);
      return outcome === null ? [] : [{ what, outcome }];
    });
    return moveOf(bag, 'an assemblage left out', typicality(bag, record), judged, level);
  });
}

/** The same by the records alone that lack nothing of what the find has, where they are enough. */
export function movesByComplete(
  bags: readonly Bag[],
  record: readonly RecordValue[],
  level: number,
): readonly Move[] {
  return bags.flatMap((bag) => {
    const short = bag.lacking.flatMap(({ members, places }) =>
      places.length === record.length ? [] : members.map((place) => bag.rows[place]),
    );
    const outcome = typicalityWithout(bag, record, new Set(short));
    if (outcome === null || 'why' in outcome || verdictAt(level, outcome) === 'too few to judge') return [];
    return moveOf(bag, 'complete records alone', typicality(bag, record), [{ what: '', outcome }], level);
  });
}

function moveOf(
  bag: Bag,
  change: Move['change'],
  plain: Judged['outcome'],
  judged: readonly Judged[],
  level: number,
): Move[] {
  if ('why' in plain || judged.length === 0) return [];
  const verdict = verdictAt(level, plain);
  const ps = judged.flatMap(({ outcome }) => ('why' in outcome ? [] : [outcome.p]));
  const turned = judged.filter(({ outcome }) => 'why' in outcome || verdictAt(level, outcome) !== verdict);
  if (ps.length === 0) return [];
  return [
    {
      attribute: bag.attribute.label,
      label: bag.label,
      change,
      lowest: ps.reduce((a, b) => Math.min(a, b)),
      highest: ps.reduce((a, b) => Math.max(a, b)),
      verdict,
      turned: turned.length,
      tried: judged.length,
      fragile: turned.length > 0 && turned.length >= FRAGILE * judged.length,
      by: turned.map(({ what }) => what).filter((what) => what !== ''),
    },
  ];
}
