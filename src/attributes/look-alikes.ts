import type { Vocabulary } from './definition.ts';
import { isWithin } from './tree.ts';

/** One side of a pair: an attribute and the terms of it, each with all that is narrower. */
export interface LookSide {
  readonly attribute: string;
  readonly terms: readonly string[];
}

/** Two things that a piece may show alike, so that one was often written for the other. */
export interface LookAlike {
  /** Short stable name. */
  readonly id: string;
  readonly sides: readonly [LookSide, LookSide];
  /** The pair, in words. */
  readonly pair: string;
  /** What tells them apart, and when nothing does. */
  readonly tells: string;
  readonly source: string;
  /** The second side is too common to be cautioned about where the first is not met. */
  readonly secondIsCommon?: true;
  /** Only met in these kinds of preservation; absent = in any. */
  readonly preservation?: readonly string[];
}

const of = (attribute: string, ...terms: readonly string[]): LookSide => ({ attribute, terms });
const PRACTICE = 'common practice, no source';

export const LOOK_ALIKES: readonly LookAlike[] = [
  {
    id: 'linking-sprang',
    sides: [of('structure', 'linked'), of('structure', 'sprang')],
    pair: 'linking and sprang',
    tells: 'the meeting line in the middle and the fixed ends of sprang; without them the two are identical',
    source: 'Mazăre 2011, Marisia 31',
  },
  {
    id: 'cross-knit-knitting',
    sides: [of('structure', 'crossKnit'), of('structure', 'knitted')],
    pair: 'cross-knit looping and knitting',
    tells:
      'the end of the working thread: looping passes it whole and cannot be unravelled from there; faces are alike',
    source: PRACTICE,
  },
  {
    id: 'looping-purl',
    sides: [of('structure', 'simpleLooping'), of('structure', 'knitted')],
    pair: 'simple looping and the purl side of knitting',
    tells: 'the course of one thread through a whole loop, or the other face',
    source: 'conference note of 2021, as the trade cites it',
  },
  {
    id: 'spliced-spun',
    sides: [of('processing', 'spliced'), of('processing', 'draftSpun')],
    pair: 'spliced and draft-spun yarn',
    tells:
      'joins and strips that lie parallel in the single, seen along a length at a low power; a short piece may show none',
    source: 'Archaeological and Anthropological Sciences 11 (2019), 2329 (review)',
  },
  {
    id: 'weft-warp-twining',
    sides: [of('activeSystem', 'weftActive'), of('activeSystem', 'warpActive')],
    pair: 'weft-twining and warp-twining',
    tells: 'an edge at which the active elements turn, or the shape; a piece without edges shows neither',
    source: PRACTICE,
  },
  {
    id: 'basket-twill',
    secondIsCommon: true,
    sides: [of('elementGrouping', 'pairedBoth'), of('structure', 'twill22')],
    pair: 'basket weave and 2/2 twill, both of which are written 2/2',
    tells: 'whether the floats shift by one thread from row to row: a notation alone does not say',
    source: PRACTICE,
  },
  {
    id: 'braid-tabby',
    secondIsCommon: true,
    sides: [of('structure', 'braid', 'checkerPlaiting', 'obliqueInterlacing'), of('structure', 'tabby')],
    pair: 'a flat braid and a narrow tabby',
    tells:
      'whether the elements of one system turn over at the edge and become the other; a piece without edges may be either',
    source: PRACTICE,
  },
  {
    id: 'repp-twining',
    secondIsCommon: true,
    sides: [of('face', 'faced'), of('structure', 'twined')],
    pair: 'repp and close twining',
    tells: 'whether pairs of the hiding system turn about each other; corrosion hides it',
    source: PRACTICE,
    preservation: ['mineralised', 'impression'],
  },
];

/** Whether a term is of a side. */
export function isOfSide(
  { attribute, terms }: LookSide,
  of: string,
  term: string,
  vocabulary: Vocabulary,
): boolean {
  return attribute === of && terms.some((one) => isWithin(vocabulary, term, one));
}
