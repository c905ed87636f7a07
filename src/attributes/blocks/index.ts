import type { AttributeDefinition } from '../definition.ts';
import { CONTEXT } from './context.ts';
import { FIBRE_BLOCK } from './fibre.ts';
import { FIND } from './find.ts';
import { FIND_CARE } from './find-care.ts';
import { SPACING } from './spacing.ts';
import { STRUCTURE_BLOCK } from './structure.ts';

/** Every attribute that Thrum knows out of the box, in the order in which screens list them. */
export const DEFAULT_ATTRIBUTES: readonly AttributeDefinition[] = [
  ...STRUCTURE_BLOCK,
  ...SPACING,
  ...FIBRE_BLOCK,
  ...FIND,
  ...FIND_CARE,
  ...CONTEXT,
];
