import type { Labelled } from './labels.ts';

/**
 * Sections whose head prints their sum: "A 12" above "a1 5" and "a2 7". Told by labels that are set in, where most
 * heads are the sums of what is set in below them; else by the numbers alone, where they part all lines without a rest.
 *
 * @param indents blanks before each label.
 * @returns the lines with their sections; as they were where there are none.
 */
export function withHeadedSections(
  rows: readonly Labelled[],
  indents: readonly number[],
  texts: readonly (readonly string[])[],
  isPart: (row: Labelled) => boolean,
): Labelled[] {
  const parts = rows.flatMap((row, i) => (isPart(row) && row.section === '' && row.first === '' ? [i] : []));
  const width = texts[0]?.length ?? 0;
  const counted = Array.from({ length: width }, (_, c) => c).filter((c) =>
    parts.every((i) => whole(texts[i][c]) !== null),
  );
  if (parts.length < 4 || counted.length === 0) return [...rows];
  const value = (i: number, c: number) => whole(texts[i][c]) ?? 0;
  const sections = setIn(parts, indents) ?? addingUp(parts, (i) => value(i, counted[0]));
  if (sections === null || sections.length < 2) return [...rows];
  const fits = (c: number) =>
    sections.filter(({ head, inside }) => inside.reduce((sum, i) => sum + value(i, c), 0) === value(head, c))
      .length;
  if (!counted.some((c) => fits(c) >= 2 && fits(c) * 2 > sections.length)) return [...rows];
  const heads = new Map(sections.map(({ head, inside }) => [head, inside]));
  const headOf = new Map(sections.flatMap(({ head, inside }) => inside.map((i) => [i, head] as const)));
  return rows.map((row, i) => {
    if (heads.has(i)) return { ...row, line: 'subtotal' };
    const head = headOf.get(i);
    return head === undefined ? row : { ...row, section: rows[head].own };
  });
}

interface Section {
  readonly head: number;
  readonly inside: readonly number[];
}

/** Lines set in below one that is not; null where labels are not set in, or one stands set in under nothing. */
function setIn(parts: readonly number[], indents: readonly number[]): Section[] | null {
  const least = Math.min(...parts.map((i) => indents[i]));
  if (parts.every((i) => indents[i] === least) || indents[parts[0]] !== least) return null;
  const sections: { head: number; inside: number[] }[] = [];
  for (const i of parts) {
    if (indents[i] === least) sections.push({ head: i, inside: [] });
    else sections[sections.length - 1].inside.push(i);
  }
  return sections.filter(({ inside }) => inside.length > 0);
}

/** Each head followed by lines that add up to it, two at least, through to the last line. */
function addingUp(parts: readonly number[], value: (i: number) => number): Section[] | null {
  const sections: Section[] = [];
  let at = 0;
  while (at < parts.length) {
    const head = parts[at];
    let sum = 0;
    let to = at + 1;
    while (to < parts.length && sum < value(head)) sum += value(parts[to++]);
    // Kinds of which there are none close a section as well as they open the next.
    while (to < parts.length && sum === value(head) && value(parts[to]) === 0) to++;
    if (sum !== value(head) || to - at < 3) return null;
    sections.push({ head, inside: parts.slice(at + 1, to) });
    at = to;
  }
  return sections;
}

function whole(text: string | undefined): number | null {
  const plain = (text ?? '').trim().replaceAll(/[\s.,](?=\d{3}(?!\d))/gu, '');
  if (/^[-–—]?$/.test(plain)) return 0;
  return /^\d+$/.test(plain) ? Number(plain) : null;
}
