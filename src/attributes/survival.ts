import type { Vocabulary } from './definition.ts';
import { ancestors } from './tree.ts';

/**
 * What becomes of a kind of fibre in a kind of preservation: `lasts`: both setting and fibre go together, so that its
 * absence says something; `lost`: it goes, so that its absence says nothing; `not told`: it depends on what the word
 * does not say.
 */
export type Survival = 'lasts' | 'lost' | 'not told';

/** One kind of preservation and what lasts in it; a narrower kind of fibre goes before a broader one. */
export interface Survivals {
  /** Term of the vocabulary of preservation. */
  readonly preservation: string;
  /** Where that is, to follow a verb: "in a bog". */
  readonly where: string;
  /** Terms of the vocabulary of fibre. */
  readonly fibres: Readonly<Record<string, Survival>>;
  readonly why: string;
  readonly source: string;
}

const PRACTICE = 'common practice';

/**
 * Acid and alkaline settings: Encyclopedia of Global Archaeology (Springer 2014), as cited by the trade; the rest and
 * every reading of "favours" as a loss of the other are common practice, no source. Skin, sinew and feather in
 * alkaline water, and grasses and sedges, moss, root, wood and bark in peat, are left open: peat is made of plants.
 */
export const SURVIVAL: readonly Survivals[] = [
  {
    preservation: 'waterlogged',
    where: 'in wet ground',
    fibres: { plantFibre: 'not told', animalFibre: 'not told' },
    why: 'which sort goes depends on the acidity',
    source: PRACTICE,
  },
  {
    preservation: 'bog',
    where: 'in a bog',
    fibres: {
      animalFibre: 'lasts',
      plantFibre: 'lost',
      monocot: 'not told',
      moss: 'not told',
      root: 'not told',
      woodSplint: 'not told',
      barkSheet: 'not told',
    },
    why: 'acid water favours wool and silk; peat is itself of plants, so grasses and sedges, moss, root, wood and bark are left open',
    source: `${PRACTICE}; Encyclopedia of Global Archaeology 2014`,
  },
  {
    preservation: 'alkaline',
    where: 'in alkaline water',
    fibres: {
      plantFibre: 'lasts',
      animalFibre: 'lost',
      sinew: 'not told',
      feather: 'not told',
      hideStrip: 'not told',
    },
    why: 'alkaline water, as in many lake muds, favours plant fibre; sinew, feather and skin are left open',
    source: `${PRACTICE}; Encyclopedia of Global Archaeology 2014`,
  },
  {
    preservation: 'anoxic',
    where: 'without air',
    fibres: { plantFibre: 'not told', animalFibre: 'not told' },
    why: 'both sorts may last',
    source: PRACTICE,
  },
  {
    preservation: 'charred',
    where: 'by charring',
    fibres: { plantFibre: 'not told', animalFibre: 'not told' },
    why: 'dense or folded pieces are selected, of either sort; what is fibre is often hidden',
    source: PRACTICE,
  },
  {
    preservation: 'mineralised',
    where: 'by metal',
    fibres: { plantFibre: 'not told', animalFibre: 'not told' },
    why: 'small patches by the metal, of either sort; the fibre can seldom be read',
    source: PRACTICE,
  },
  {
    preservation: 'impression',
    where: 'in an impression',
    fibres: { plantFibre: 'lost', animalFibre: 'lost' },
    why: 'no fibre remains, so that none is told from another',
    source: PRACTICE,
  },
];

/** The entry of a kind of preservation, or of the nearest broader one; undefined where nothing is known of it. */
export function survivalsIn(preservation: string, vocabulary: Vocabulary): Survivals | undefined {
  return [preservation, ...ancestors(vocabulary, preservation)]
    .map((id) => SURVIVAL.find((one) => one.preservation === id))
    .find((one) => one !== undefined);
}

/** What becomes of a kind of fibre there, by the nearest broader kind that is known. */
export function survivalOf({ fibres }: Survivals, fibre: string, vocabulary: Vocabulary): Survival {
  const known = [fibre, ...ancestors(vocabulary, fibre)].find((id) => fibres[id] !== undefined);
  return known === undefined ? 'not told' : fibres[known];
}
