import { z } from 'zod';
import { innerOf } from '../sources/profile/schema-parts.ts';

/** A text in a study's options that names something else, and where it stands. */
export interface Reference {
  readonly refersTo: string;
  readonly name: string;
  readonly path: readonly (string | number)[];
}

/**
 * Every text in `value` whose schema is marked `refersTo` in its meta texts: attributes, groupings,
 * files. The schema is walked beside the value; of a union, the first member that fits is followed.
 */
export function findReferences(
  schema: z.ZodType,
  value: unknown,
  path: readonly (string | number)[] = [],
): Reference[] {
  if (value === undefined || value === null) return [];
  const refersTo = schema.meta()?.refersTo;
  if (typeof refersTo === 'string' && typeof value === 'string') return [{ refersTo, name: value, path }];
  if (schema instanceof z.ZodObject) {
    return Object.entries(schema.shape).flatMap(([key, part]) =>
      findReferences(part as z.ZodType, (value as Record<string, unknown>)[key], [...path, key]),
    );
  }
  if (schema instanceof z.ZodArray) {
    return (value as readonly unknown[]).flatMap((part, place) =>
      findReferences(schema.element as z.ZodType, part, [...path, place]),
    );
  }
  if (schema instanceof z.ZodTuple) {
    return schema.def.items.flatMap((part, place) =>
      findReferences(part as z.ZodType, (value as readonly unknown[])[place], [...path, place]),
    );
  }
  if (schema instanceof z.ZodRecord) {
    return Object.entries(value as Record<string, unknown>).flatMap(([key, part]) => [
      ...findReferences(schema.keyType as z.ZodType, key, [...path, key]),
      ...findReferences(schema.valueType as z.ZodType, part, [...path, key]),
    ]);
  }
  if (schema instanceof z.ZodUnion) {
    const member = (schema.options as readonly z.ZodType[]).find((option) => option.safeParse(value).success);
    return member === undefined ? [] : findReferences(member, value, path);
  }
  const inner = innerOf(schema);
  return inner === null ? [] : findReferences(inner, value, path);
}
