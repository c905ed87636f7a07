/** Reads the plain JSON of a figure, in which anything may be left out. */
export type Plain = Readonly<Record<string, unknown>>;

/** The object at a path, or an empty one. */
export function part(of: Plain | undefined, ...path: readonly string[]): Plain {
  let at: unknown = of;
  for (const key of path) at = isPlain(at) ? at[key] : undefined;
  return isPlain(at) ? at : {};
}

function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function numberOr(value: unknown, otherwise: number): number {
  return typeof value === 'number' && Number.isFinite(value) ? value : otherwise;
}

export function textOr(value: unknown, otherwise: string): string {
  return typeof value === 'string' ? value : typeof value === 'number' ? String(value) : otherwise;
}

export function list(value: unknown): readonly unknown[] {
  if (Array.isArray(value)) return value;
  return ArrayBuffer.isView(value) && !(value instanceof DataView)
    ? Array.from(value as unknown as ArrayLike<number>)
    : [];
}

/** A setting that is one for all points, or a list with one for each. */
export function each(value: unknown, place: number): unknown {
  return Array.isArray(value) || ArrayBuffer.isView(value) ? list(value)[place] : value;
}
