import type { Results } from './results.ts';

/**
 * Results as canonical JSON text: keys in the order in which they were made (which depends on the study
 * alone), numbers in full double precision, infinite ends as the texts "Infinity" and "-Infinity",
 * lists of plain values on one line. The same results give the same bytes on every machine.
 *
 * @throws Error for a NaN or any value that JSON cannot hold: a statistic that cannot be computed must
 * say why in words, so this is a fault of ours and never written down.
 */
export function serializeResults(results: Results): string {
  return `${write(results, '', '$')}\n`;
}

/**
 * Refuses a value that results.json could not hold.
 *
 * @throws Error as `serializeResults` does.
 */
export function requireWritable(value: unknown, path = '$'): void {
  if (writePlain(value, path) !== null) return;
  if (isList(value)) {
    // Typed arrays hold numbers by the thousand: no list of them is made.
    for (let place = 0; place < value.length; place++) requireWritable(value[place], `${path}[${place}]`);
    return;
  }
  for (const [key, part] of Object.entries(value as Record<string, unknown>))
    if (part !== undefined) requireWritable(part, `${path}.${key}`);
}

function write(value: unknown, indent: string, path: string): string {
  const plain = writePlain(value, path);
  if (plain !== null) return plain;
  const deeper = `${indent}  `;
  if (isList(value)) {
    const parts = Array.from(value, (part, place) => write(part, deeper, `${path}[${place}]`));
    if (parts.length === 0) return '[]';
    const flat = parts.every((part) => !part.includes('\n') && !part.startsWith('['));
    if (flat) return `[${parts.join(', ')}]`;
    return `[\n${parts.map((part) => deeper + part).join(',\n')}\n${indent}]`;
  }
  const members = Object.entries(value as Record<string, unknown>).filter(([, part]) => part !== undefined);
  if (members.length === 0) return '{}';
  const parts = members.map(
    ([key, part]) => `${JSON.stringify(key)}: ${write(part, deeper, `${path}.${key}`)}`,
  );
  const flat = members.every(([, part]) => typeof part !== 'object' || part === null);
  if (flat && parts.join(', ').length <= 100) return `{ ${parts.join(', ')} }`;
  return `{\n${parts.map((part) => deeper + part).join(',\n')}\n${indent}}`;
}

function isList(value: unknown): value is ArrayLike<unknown> & Iterable<unknown> {
  return Array.isArray(value) || (ArrayBuffer.isView(value) && !(value instanceof DataView));
}

function writePlain(value: unknown, path: string): string | null {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return JSON.stringify(value);
  if (typeof value === 'number') {
    if (Number.isNaN(value)) throw new Error(`results hold no number at ${path}`);
    return Number.isFinite(value) ? JSON.stringify(value) : `"${value}"`;
  }
  const prototype = typeof value === 'object' ? Object.getPrototypeOf(value) : undefined;
  const isRecord =
    prototype === null || (typeof prototype === 'object' && Object.getPrototypeOf(prototype) === null);
  if (isRecord || isList(value)) return null;
  throw new Error(`results hold a value that JSON cannot at ${path}`);
}
