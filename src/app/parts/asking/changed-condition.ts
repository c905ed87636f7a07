import type { Condition } from '../../../fragments/select-condition.ts';

/** The condition with its limits and terms changed; where nothing is left it asks for any value. */
export function changed(
  one: Condition,
  change: { readonly [Key in keyof Condition]?: Condition[Key] | undefined },
): Condition {
  const merged = Object.entries({ ...one, ...change }).filter(
    ([key, value]) => key !== 'known' && value !== undefined && !(Array.isArray(value) && value.length === 0),
  );
  const kept = Object.fromEntries(merged) as Condition;
  if (Object.keys(kept).length > 1) return kept;
  return { attribute: kept.attribute, known: change.known ?? one.known ?? true };
}
