/** Names that files may have in an archive, whichever system unpacks it. */

/**
 * Signs that some file system does not allow in a name; marks that turn the reading; a byte-order mark, which is lost
 * where the name is read, and half a letter, which has no bytes.
 */
const FORBIDDEN = /[<>:"|?*\p{Cc}\p{Cs}\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/gu;
/** Names of devices on Windows, whatever their ending (Microsoft Learn, "Naming Files, Paths, and Namespaces"). */
const DEVICE = /^(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(?:\.|$)/i;
/** Bytes of one part of a path that every common file system takes. */
const LONGEST = 200;

/**
 * A name for each file under which it stays in the folder where the archive is unpacked, and differs from
 * every other also where capitals do not count. A name that is safe already stays as it is.
 *
 * @param names as the study writes them.
 * @param taken names that other entries of the archive have.
 */
export function safeNames(names: readonly string[], taken: readonly string[]): ReadonlyMap<string, string> {
  const used = new Set(taken.map(folded));
  const safe = new Map<string, string>();
  const claim = (name: string, wish: string) => {
    const free = unused(wish, used);
    used.add(folded(free));
    safe.set(name, free);
  };
  // Names that need no change go first, so that none of them gives way to one that does.
  for (const name of names) if (cleaned(name) === name && !used.has(folded(name))) claim(name, name);
  for (const name of names) if (!safe.has(name)) claim(name, cleaned(name));
  return new Map(names.map((name) => [name, safe.get(name)!]));
}

const folded = (name: string): string => name.normalize('NFC').toLowerCase();

function cleaned(name: string): string {
  const parts = name
    .split(/[/\\]/)
    .map(cleanPart)
    .filter((part) => part !== '');
  return parts.length === 0 ? 'file' : parts.join('/');
}

function cleanPart(part: string): string {
  const plain = part.replace(/^[a-zA-Z]:/, '').replace(FORBIDDEN, '_');
  if (/^\.*$/.test(plain)) return '';
  const ended = shortened(plain).replace(/[ .]+$/, '_');
  return DEVICE.test(ended) ? `_${ended}` : ended;
}

/** Keeps the ending, by which the file is known. */
function shortened(name: string): string {
  const bytes = (text: string) => new TextEncoder().encode(text).length;
  if (bytes(name) <= LONGEST) return name;
  const ending = /\.[^.]{1,12}$/.exec(name)?.[0] ?? '';
  const signs = [...name.slice(0, name.length - ending.length)];
  while (bytes(signs.join('') + ending) > LONGEST) signs.splice(-Math.ceil(signs.length / 10));
  return signs.join('') + ending;
}

function unused(wish: string, used: ReadonlySet<string>): string {
  if (!used.has(folded(wish))) return wish;
  const [, stem, ending] = /^(.*?)((?:\.[^./]{1,12})*)$/s.exec(wish)!;
  for (let count = 2; ; count++) {
    const name = `${stem}-${count}${ending}`;
    if (!used.has(folded(name))) return name;
  }
}
