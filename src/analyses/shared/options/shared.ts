import { z } from 'zod';
import { KIND } from '../../../fragments/kinds/kinds.ts';

/**
 * Kinds of option that several analyses share. The meta texts feed the checks that a study is given
 * before it runs: whatever `refersTo: 'attribute'` marks is looked up in the study's register.
 */

/** The id of an attribute, as the study's register knows it. */
export function attributeId(): z.ZodString {
  return z.string().min(1).meta({ refersTo: 'attribute' });
}

/** The id of an attribute by which records are put into groups; "assemblage" is site and phase as one. */
export function groupingId(): z.ZodString {
  return z.string().min(1).meta({ refersTo: 'grouping' });
}

/** The kinds that are counted: the structure with its facets in one name, as the study composes them (`fragments/kinds/kinds.ts`). */
export function kindsId(): z.ZodDefault<z.ZodString> {
  return groupingId().default(KIND);
}

/** A file beside the study file; its bytes reach the analysis through `AnalysisInput.files`. */
export function fileName(): z.ZodString {
  return z.string().min(1).meta({ refersTo: 'file' });
}
