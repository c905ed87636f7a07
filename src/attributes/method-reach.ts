import type { Vocabulary } from './definition.ts';
import { partsOf } from './mixtures.ts';
import { ancestors } from './tree.ts';

/**
 * How sure a fibre can be by one method at best: `cannot` where the method does not see it at all (no protein is
 * left to tell of a plant).
 */
export type Reach = 'certain' | 'probable' | 'possible' | 'cannot';

/** What one method can tell of one branch of the fibres: of the term itself, and of any narrower one. */
export interface BranchReach {
  readonly itself: Reach;
  readonly narrower: Reach;
}

export interface MethodReach {
  /** Term of the vocabulary of methods. */
  readonly method: string;
  /** Terms of the vocabulary of fibre; the nearest broader one that is named holds. */
  readonly fibres: Readonly<Record<string, BranchReach>>;
  readonly why: string;
  readonly source: string;
}

const all = (reach: Reach): BranchReach => ({ itself: reach, narrower: reach });
const only = (itself: Reach, narrower: Reach): BranchReach => ({ itself, narrower });

const PRACTICE = 'common practice, no source';
const LOOKALIKES =
  'Haugan & Holst 2014, Archaeometry (flax, nettle and hemp); the rest common practice, no source';

/** What shows without a lens: whole feathers, skins, sheets of bark, split wood and metal. */
const PLAIN_TO_SEE = {
  metalThread: all('certain'),
  feather: all('certain'),
  hideStrip: only('probable', 'possible'),
  barkSheet: only('probable', 'possible'),
  woodSplint: only('probable', 'possible'),
} as const;

const LOW_POWER = {
  ...PLAIN_TO_SEE,
  plantFibre: only('certain', 'possible'),
  bastFibre: only('probable', 'possible'),
  treeBast: only('probable', 'possible'),
  monocot: only('probable', 'possible'),
  seedFibre: all('probable'),
  animalFibre: only('certain', 'possible'),
  hair: only('probable', 'possible'),
} as const;

/** Best first matters nowhere: each method is looked up by its own name. */
export const METHOD_REACH: readonly MethodReach[] = [
  {
    method: 'byEye',
    fibres: {
      ...PLAIN_TO_SEE,
      plantFibre: only('probable', 'possible'),
      animalFibre: only('probable', 'possible'),
    },
    why: 'the naked eye tells plant from animal at best, and no species',
    source: PRACTICE,
  },
  {
    method: 'microscope',
    fibres: LOW_POWER,
    why: 'no word says which microscope, so that it may have been a lens',
    source: PRACTICE,
  },
  {
    method: 'lowPower',
    fibres: LOW_POWER,
    why: 'a low power shows hair, strips and bundles, and no species',
    source: PRACTICE,
  },
  {
    method: 'transmittedLight',
    fibres: {
      plantFibre: all('certain'),
      herbBast: only('certain', 'probable'),
      animalFibre: all('certain'),
      hair: only('certain', 'probable'),
      metalThread: all('certain'),
    },
    why: 'flax, nettle and hemp share the traits that light shows, and so do hairs of kindred animals; the anatomy of tree bast is seen in a section',
    source: LOOKALIKES,
  },
  {
    method: 'sem',
    fibres: {
      plantFibre: all('certain'),
      herbBast: only('certain', 'probable'),
      treeBast: only('certain', 'probable'),
      animalFibre: all('certain'),
      hair: only('certain', 'probable'),
      metalThread: all('certain'),
    },
    why: 'it shows surfaces and breaks: stem fibres of herbs, basts without a section, and hairs of kindred animals look alike',
    source: PRACTICE,
  },
  {
    method: 'protein',
    fibres: { animalFibre: all('certain'), plantFibre: all('cannot'), metalThread: all('cannot') },
    why: 'it tells the animal; a plant or a metal leaves no protein of its own to tell',
    source: PRACTICE,
  },
  {
    method: 'dna',
    fibres: { animalFibre: all('certain'), plantFibre: all('certain'), metalThread: all('cannot') },
    why: 'it tells the species, not the part of it; a metal has none',
    source: PRACTICE,
  },
  {
    method: 'infrared',
    fibres: {
      plantFibre: only('certain', 'possible'),
      animalFibre: only('certain', 'possible'),
      silk: all('probable'),
      metalThread: all('cannot'),
    },
    why: 'it tells cellulose from protein, silk from hair at best, and no species',
    source: PRACTICE,
  },
];

const ORDER: readonly Reach[] = ['certain', 'probable', 'possible', 'cannot'];

/** How sure a fibre can be at best, and on which method that rests. */
export interface ReachFound {
  readonly reach: Reach;
  readonly by: MethodReach;
}

/**
 * How sure a fibre can be at best by the methods used: of several methods the best counts, of a mixture the part that
 * is known least. Null where no rule is known of the method or of the fibre.
 */
export function reachOf(
  fibre: string,
  method: string,
  fibres: Vocabulary,
  methods: Vocabulary,
): ReachFound | null {
  const ways = partsOf(method, methods).flatMap((id) => METHOD_REACH.find((one) => one.method === id) ?? []);
  let worst: ReachFound | null = null;
  for (const part of partsOf(fibre, fibres)) {
    let best: ReachFound | null = null;
    for (const by of ways) {
      const reach = reachIn(by, part, fibres);
      if (reach !== null && (best === null || ORDER.indexOf(reach) < ORDER.indexOf(best.reach)))
        best = { reach, by };
    }
    if (best === null) return null;
    if (worst === null || ORDER.indexOf(best.reach) > ORDER.indexOf(worst.reach)) worst = best;
  }
  return worst;
}

function reachIn({ fibres: known }: MethodReach, fibre: string, fibres: Vocabulary): Reach | null {
  const own = known[fibre];
  if (own !== undefined) return own.itself;
  const above = ancestors(fibres, fibre).find((id) => known[id] !== undefined);
  return above === undefined ? null : known[above]!.narrower;
}
