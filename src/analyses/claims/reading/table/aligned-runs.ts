import { NUMBER } from '../numbers.ts';

/** A stretch of a line, from and up to. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export interface Run extends Span {
  readonly text: string;
}

const ALONE = new RegExp(`^[<>]?${NUMBER}$`, 'u');
/** A sign that belongs to the number after it. */
const SIGN = /^(?:[<>≤≥~=≈±]|\+\/-|\+-)$/u;
const THOUSANDS = /^\d{1,3}$/;

/**
 * What two blanks part in each line. Programs set columns one blank apart where a number fills its column: there
 * a run is parted where the numbers of other lines end, and between two numbers that are not the thousands of one.
 */
export function alignedRuns(lines: readonly string[]): Run[][] {
  const runs = lines.map((line) => runsIn(line, /\S+(?: \S+)*/g));
  // Once parted, more numbers stand alone.
  return partedBy(lines, partedBy(lines, runs));
}

function partedBy(lines: readonly string[], runs: readonly (readonly Run[])[]): Run[][] {
  // Where numbers that stand alone end, and where the words of heads do: lines that hold no number.
  const numbers = new Map<number, Set<number>>();
  runs.forEach((cells, i) => {
    for (const { text, to } of cells)
      if (ALONE.test(text) && !/\s/.test(text)) numbers.set(to, (numbers.get(to) ?? new Set()).add(i));
  });
  const heads = new Set(
    lines
      .filter((line) => !line.split(/\s+/).some((word) => ALONE.test(word)))
      .flatMap((line) => runsIn(line, /\S+/g).map(({ to }) => to)),
  );
  return runs.map((cells, i) =>
    cells.flatMap((run) =>
      parted(run, {
        number: (to) => [...(numbers.get(to) ?? [])].some((line) => line !== i),
        head: (to) => heads.has(to),
      }),
    ),
  );
}

function runsIn(line: string, pattern: RegExp): Run[] {
  return [...line.matchAll(pattern)].map((match) => ({
    text: match[0],
    from: match.index,
    to: match.index + match[0].length,
  }));
}

/** Whether a number of another line, or a word of a head, ends here. */
interface Ends {
  readonly number: (to: number) => boolean;
  readonly head: (to: number) => boolean;
}

function parted(run: Run, ends: Ends): Run[] {
  const words = runsIn(run.text, /\S+/g).map(({ text, from, to }) => ({
    text,
    from: run.from + from,
    to: run.from + to,
  }));
  if (words.length === 1) return [run];
  const cells: Run[] = [];
  let open: Run | null = null;
  words.forEach((word, at) => {
    open = open === null ? word : { text: `${open.text} ${word.text}`, from: open.from, to: word.to };
    const next = words[at + 1];
    if (next === undefined || partsHere(word, next, run, ends)) {
      cells.push(open);
      open = null;
    }
  });
  return cells;
}

function partsHere(word: Run, next: Run, run: Run, ends: Ends): boolean {
  if (SIGN.test(word.text)) return false;
  const aligned = ends.number(word.to) && ends.number(run.to);
  if (!ALONE.test(next.text)) return aligned;
  // "Sum 12": the label fills its column.
  if (!ALONE.test(word.text)) return aligned || ends.number(next.to);
  const thousands = THOUSANDS.test(word.text) && /^\d{3}(?:[.,]\d+)?$/.test(next.text);
  return !thousands || aligned || (ends.head(word.to) && ends.head(next.to));
}
