import type { Random } from '../../src/numerics/foundation/random.ts';

/** Changes made by chance to texts, bytes and values, each of which some program has stumbled over. */

const TEXTS: readonly string[] = [
  '',
  ' ',
  '\u0000',
  '\ufeff',
  '"',
  "'",
  '""',
  ',',
  ';',
  '\t',
  '\r',
  '\n',
  '\r\n',
  '|',
  '\\',
  '../',
  '..\\',
  '/etc/passwd',
  '__proto__',
  'constructor',
  'toString',
  '=1+1',
  '@x',
  '+1',
  '-',
  '--',
  'c. 3-4',
  '<2',
  '>20',
  '3,5',
  '1e308',
  '1e-320',
  '-0',
  'NaN',
  'Infinity',
  '9'.repeat(400),
  '½',
  '14 x 12',
  'n/a',
  'k. A.',
  '?',
  'tabby ?',
  '-0300~',
  '300 BC',
  "45°30'N",
  '<script>alert(1)</script>',
  ']]>',
  '&amp;',
  '\u202eabc',
  '\u200f',
  '\ud800',
  'é',
  'é',
  '日本',
  '𝔸',
  'x'.repeat(5000),
  '$x',
  '{{x}}',
  '%s',
  '$&',
  '(?:a+)+$',
  '\u001b[31m',
  'sep=;',
];
const NUMBERS: readonly number[] = [
  0,
  -0,
  1,
  -1,
  2,
  0.5,
  1e-9,
  1e9,
  1e308,
  -1e308,
  2 ** 31,
  2 ** 53,
  Number.MIN_VALUE,
  0.95,
  1.5,
  100,
  7,
];

export function pick<T>(random: Random, list: readonly T[]): T {
  return list[random.integer(list.length)]!;
}

export function oddText(random: Random): string {
  return pick(random, TEXTS);
}

/** A text with a few pieces put in, taken out, doubled or exchanged. */
export function mutateText(text: string, random: Random): string {
  let changed = text;
  for (let times = 1 + random.integer(4); times > 0; times--) {
    const at = random.integer(changed.length + 1);
    const end = Math.min(changed.length, at + random.integer(12));
    const piece = changed.slice(at, end);
    const instead = pick(random, [oddText(random), '', piece + piece, [...piece].reverse().join('')]);
    changed = changed.slice(0, at) + instead + changed.slice(end);
  }
  return changed;
}

/** The same of bytes. */
export function mutateBytes(bytes: Uint8Array, random: Random): Uint8Array {
  const changed = [...bytes];
  for (let times = 1 + random.integer(8); times > 0; times--) {
    const at = random.integer(changed.length + 1);
    const kind = random.integer(4);
    if (kind === 0) changed[at] = random.integer(256);
    else if (kind === 1) changed.splice(at, random.integer(20));
    else if (kind === 2) changed.splice(at, 0, ...changed.slice(at, at + random.integer(40)));
    else changed.length = at;
  }
  return Uint8Array.from(changed, (byte) => byte ?? 0);
}

/**
 * A value with one place in it changed: another value of the kind that stands there or of another kind, a key left
 * out, added, doubled or misspelt, a list emptied or made long. What is around it stays valid, so that the change gets past
 * the first check.
 */
export function mutateValue(value: unknown, random: Random): unknown {
  if (Array.isArray(value)) {
    const kind = random.integer(8);
    if (kind === 0) return [];
    if (kind === 1 && value.length > 0) return [...value, ...value];
    if (value.length === 0) return [odd(random)];
    const at = random.integer(value.length);
    if (kind === 2) return value.filter((_, i) => i !== at);
    return value.map((one, i) => (i === at ? mutateValue(one, random) : one));
  }
  if (typeof value === 'object' && value !== null) {
    const entries = Object.entries(value);
    const kind = random.integer(8);
    if (entries.length === 0 || kind === 0) return ownEntries([...entries, [oddText(random), odd(random)]]);
    const at = random.integer(entries.length);
    if (kind === 1) return ownEntries(entries.filter((_, i) => i !== at));
    if (kind === 2)
      return ownEntries(entries.map(([key, one], i) => [i === at ? mutateText(key, random) : key, one]));
    return ownEntries(entries.map(([key, one], i) => [key, i === at ? mutateValue(one, random) : one]));
  }
  if (typeof value === 'string' && random.integer(2) === 0) return mutateText(value, random);
  if (typeof value === 'number' && random.integer(2) === 0) return pick(random, NUMBERS);
  return odd(random);
}

function odd(random: Random): unknown {
  return pick<unknown>(random, [
    null,
    true,
    false,
    [],
    {},
    oddText(random),
    pick(random, NUMBERS),
    [oddText(random)],
  ]);
}

function ownEntries(entries: readonly (readonly [string, unknown])[]): unknown {
  return Object.fromEntries(entries);
}
