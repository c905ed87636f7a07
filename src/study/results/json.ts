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
  return [...resultsPieces(results)].join('');
}

/** The same text piece by piece, a table or a figure at most at once. @throws Error as `serializeResults` does. */
export function* resultsPieces(results: Results): Generator<string> {
  yield* piecesOf(results, '', [], PARTED);
  yield '\n';
}

/** Results, analyses, one of them, its tables and figures: so many levels are written member by member. */
const PARTED = 4;

/**
 * Refuses a value that results.json could not hold.
 *
 * @throws Error as `serializeResults` does.
 */
export function requireWritable(value: unknown, path: Path = []): void {
  if (writePlain(value, path) !== null) return;
  if (isList(value)) {
    // Typed arrays hold numbers by the thousand: no list of them is made.
    for (let place = 0; place < value.length; place++)
      within(path, place, () => requireWritable(value[place], path));
    return;
  }
  for (const [key, part] of Object.entries(value as Record<string, unknown>))
    if (part !== undefined) within(path, key, () => requireWritable(part, path));
}

/** Where in the results a value stands: names of members and places in lists. */
type Path = (string | number)[];

/** Keeps the path while something below it is looked at; it is spelled out only where a fault is told. */
function within<T>(path: Path, part: string | number, work: () => T): T {
  path.push(part);
  const done = work();
  path.pop();
  return done;
}

const spelled = (path: Path): string =>
  path.reduce<string>((text, part) => text + (typeof part === 'number' ? `[${part}]` : `.${part}`), '$');

function* piecesOf(value: unknown, indent: string, path: Path, levels: number): Generator<string> {
  const members = levels === 0 || writePlain(value, path) !== null ? [] : membersOf(value);
  // What may stand on one line is written whole.
  if (!members.some(([, part]) => typeof part === 'object' && part !== null)) {
    yield write(value, indent, path);
    return;
  }
  const deeper = `${indent}  `;
  for (const [place, [key, part]] of members.entries()) {
    yield `${place === 0 ? '{' : ','}\n${deeper}${JSON.stringify(key)}: `;
    path.push(key);
    yield* piecesOf(part, deeper, path, levels - 1);
    path.pop();
  }
  yield `\n${indent}}`;
}

function membersOf(value: unknown): readonly [string, unknown][] {
  if (typeof value !== 'object' || value === null || isList(value)) return [];
  return Object.entries(value).filter(([, part]) => part !== undefined);
}

function write(value: unknown, indent: string, path: Path): string {
  const plain = writePlain(value, path);
  if (plain !== null) return plain;
  const deeper = `${indent}  `;
  if (isList(value)) {
    const parts = Array.from(value, (part, place) => within(path, place, () => write(part, deeper, path)));
    if (parts.length === 0) return '[]';
    const flat = parts.every((part) => !part.includes('\n') && !part.startsWith('['));
    if (flat) return `[${parts.join(', ')}]`;
    return `[\n${parts.map((part) => deeper + part).join(',\n')}\n${indent}]`;
  }
  const members = membersOf(value);
  if (members.length === 0) return '{}';
  const parts = members.map(
    ([key, part]) => `${JSON.stringify(key)}: ${within(path, key, () => write(part, deeper, path))}`,
  );
  const flat = members.every(([, part]) => typeof part !== 'object' || part === null);
  if (flat && parts.join(', ').length <= 100) return `{ ${parts.join(', ')} }`;
  return `{\n${parts.map((part) => deeper + part).join(',\n')}\n${indent}}`;
}

function isList(value: unknown): value is ArrayLike<unknown> & Iterable<unknown> {
  return Array.isArray(value) || (ArrayBuffer.isView(value) && !(value instanceof DataView));
}

function writePlain(value: unknown, path: Path): string | null {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return JSON.stringify(value);
  if (typeof value === 'number') {
    if (Number.isNaN(value)) throw new Error(`results hold no number at ${spelled(path)}`);
    return Number.isFinite(value) ? JSON.stringify(value) : `"${value}"`;
  }
  const prototype = typeof value === 'object' ? Object.getPrototypeOf(value) : undefined;
  const isRecord =
    prototype === null || (typeof prototype === 'object' && Object.getPrototypeOf(prototype) === null);
  if (isRecord || isList(value)) return null;
  throw new Error(`results hold a value that JSON cannot at ${spelled(path)}`);
}
