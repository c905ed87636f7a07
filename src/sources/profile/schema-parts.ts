import { z } from 'zod';

/** What a wrapping schema wraps (optional, with a default, lazy and their like); null for any other. */
export function innerOf(schema: z.ZodType): z.ZodType | null {
  if (schema instanceof z.ZodPipe) return schema.def.in as z.ZodType;
  if (schema instanceof z.ZodLazy) return schema.def.getter() as z.ZodType;
  const wraps =
    schema instanceof z.ZodOptional ||
    schema instanceof z.ZodExactOptional ||
    schema instanceof z.ZodNullable ||
    schema instanceof z.ZodDefault ||
    schema instanceof z.ZodPrefault ||
    schema instanceof z.ZodReadonly;
  return wraps ? (schema.def.innerType as z.ZodType) : null;
}

/** The schema without anything wrapped round it. */
export function bare(schema: z.ZodType): z.ZodType {
  const inner = innerOf(schema);
  return inner === null ? schema : bare(inner);
}

/** The value at a path; undefined where there is none. */
export function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, key) =>
      typeof at === 'object' && at !== null ? (at as Record<PropertyKey, unknown>)[key] : undefined,
    value,
  );
}

/** The schema of what stands at a path of a value; null where it knows none. */
export function schemaAt(schema: z.ZodType, value: unknown, path: readonly PropertyKey[]): z.ZodType | null {
  let at: z.ZodType | null = bare(schema);
  for (const [depth, key] of path.entries()) {
    if (at instanceof z.ZodDiscriminatedUnion) at = optionOf(at, valueAt(value, path.slice(0, depth)));
    at = at === null ? null : partOf(at, key);
    if (at === null) return null;
    at = bare(at);
  }
  return at instanceof z.ZodDiscriminatedUnion ? optionOf(at, valueAt(value, path)) : at;
}

function partOf(schema: z.ZodType, key: PropertyKey): z.ZodType | null {
  if (schema instanceof z.ZodObject) return (schema.shape as Record<PropertyKey, z.ZodType>)[key] ?? null;
  if (schema instanceof z.ZodArray) return schema.element as z.ZodType;
  if (schema instanceof z.ZodRecord) return schema.valueType as z.ZodType;
  if (schema instanceof z.ZodTuple) return (schema.def.items[Number(key)] as z.ZodType | undefined) ?? null;
  if (schema instanceof z.ZodUnion) {
    const parts = (schema.options as readonly z.ZodType[]).map((option) => partOf(bare(option), key));
    return parts.find((part) => part !== null) ?? null;
  }
  return null;
}

/** The member of a choice that the value names, such as the analysis of its kind. */
function optionOf(choice: z.ZodDiscriminatedUnion, value: unknown): z.ZodType | null {
  const { discriminator, options } = choice.def;
  const named = valueAt(value, [discriminator]);
  const fits = (options as readonly z.ZodType[]).find(
    (option) => option instanceof z.ZodObject && option.shape[discriminator].safeParse(named).success,
  );
  return fits ?? null;
}
