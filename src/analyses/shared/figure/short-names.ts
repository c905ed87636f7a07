/** Names cut to the room that they have, so that no two which differ come to look alike. */

/** A count in brackets at the end says more than the last letters of a name. */
const COUNTED = / \([^()]*\)$/;

/**
 * Each name as long as it fits: cut at its end, the count in brackets kept; where that makes two alike, cut before the
 * place in which they differ; where that does not tell them apart either, numbered in their order.
 *
 * @param fits whether a text has room. What does not fit at its shortest is given all the same.
 */
export function shortNames(names: readonly string[], fits: (text: string) => boolean): readonly string[] {
  const all = [...new Set(names)];
  const ended = new Map(all.map((name) => [name, fits(name) ? name : endCut(name, fits)] as const));
  const apart = new Map(
    all.map((name) => {
      const others = alikeTo(name, ended);
      return [
        name,
        others.length === 0 || fits(name) ? ended.get(name) : differing(name, others, fits),
      ] as const;
    }),
  );
  const settled = new Map(all.flatMap((name) => (fits(name) ? [[name, name] as const] : [])));
  const taken = new Set(settled.values());
  for (const name of all) {
    if (settled.has(name)) continue;
    let short = apart.get(name) as string;
    if (taken.has(short) || alikeTo(name, apart).length > 0)
      for (let number = 1; number === 1 || taken.has(short); number++) short = numbered(name, number, fits);
    taken.add(short);
    settled.set(name, short);
  }
  return names.map((name) => settled.get(name) as string);
}

/** Other names with the same short form. */
function alikeTo(name: string, shorts: ReadonlyMap<string, string | undefined>): readonly string[] {
  return [...shorts].flatMap(([other, short]) =>
    other !== name && short === shorts.get(name) ? [other] : [],
  );
}

/** The longest beginning that fits with what must follow it. */
function begun(name: string, after: string, fits: (text: string) => boolean): string {
  let kept = name.length;
  while (kept > 1 && !fits(`${name.slice(0, kept).trimEnd()}${after}`)) kept--;
  return `${name.slice(0, kept).trimEnd()}${after}`;
}

function endCut(name: string, fits: (text: string) => boolean): string {
  const [count = ''] = COUNTED.exec(name) ?? [];
  return begun(name.slice(0, name.length - count.length), `…${count}`, fits);
}

/** Beginning and, after dots, what stands from the first difference on. */
function differing(name: string, others: readonly string[], fits: (text: string) => boolean): string {
  const from = others.reduce((most, other) => Math.max(most, firstDifference(name, other)), 0);
  const after = `…${name.slice(from)}`;
  const shortest = `${name.slice(0, 1)}${after}`;
  return fits(shortest) ? begun(name.slice(0, from), after, fits) : endCut(name, fits);
}

function firstDifference(one: string, other: string): number {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at++;
  // A name that is the beginning of the other ends where it ends: its last letters tell of it.
  return Math.min(at, one.length - 1);
}

function numbered(name: string, number: number, fits: (text: string) => boolean): string {
  const [count = ''] = COUNTED.exec(name) ?? [];
  return begun(name.slice(0, name.length - count.length), `… ${number}${count}`, fits);
}
