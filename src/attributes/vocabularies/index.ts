import type { Vocabulary } from '../definition.ts';
import { REPAIR_TIME, TREATMENT } from './care.ts';
import { FIBRE } from './fibre.ts';
import { FIBRE_METHOD } from './fibre-method.ts';
import {
  EDGE,
  ENGAGEMENT,
  FOUNDATION,
  KNOT,
  OBSERVED_ON,
  ORIENTATION,
  PRESERVATION,
  PROCESSING,
  RESTRICTION,
  SLANT,
  SLANT_READING,
  SPACING_CLASS,
  STITCH,
  TIGHTNESS,
  TWIST,
  WORK_DIRECTION,
} from './small.ts';
import { FACET_VOCABULARIES } from './structure-facets.ts';
import { BASKETRY_TERMS, LOOPED_AND_NETTED, SINGLE_ELEMENTS } from './structure-other.ts';
import { TWINED } from './structure-twined.ts';
import { ASKED_WORDS } from './structure-words-asked.ts';
import { TWINED_WORDS } from './structure-words-twined.ts';
import { WOVEN_WORDS } from './structure-words-woven.ts';
import { WOVEN } from './structure-woven.ts';

const STRUCTURE: Vocabulary = {
  id: 'structure',
  label: 'Structure',
  terms: [...WOVEN, ...TWINED, ...LOOPED_AND_NETTED, ...BASKETRY_TERMS, ...SINGLE_ELEMENTS],
  words: [...TWINED_WORDS, ...WOVEN_WORDS, ...ASKED_WORDS],
};

/** Filled by fragments/kinds/kinds.ts with the names that a study composes. */
const KIND: Vocabulary = { id: 'kind', label: 'Kind of fabric', terms: [] };

export const DEFAULT_VOCABULARIES: readonly Vocabulary[] = [
  STRUCTURE,
  ...FACET_VOCABULARIES,
  KIND,
  FIBRE,
  FIBRE_METHOD,
  TWIST,
  SLANT,
  SLANT_READING,
  ENGAGEMENT,
  SPACING_CLASS,
  TIGHTNESS,
  PRESERVATION,
  EDGE,
  KNOT,
  STITCH,
  FOUNDATION,
  WORK_DIRECTION,
  PROCESSING,
  OBSERVED_ON,
  ORIENTATION,
  RESTRICTION,
  REPAIR_TIME,
  TREATMENT,
];
