import { COMPILED } from './compiled.ts';

/** The byte at which an array begins: the `byteOffset` of its view. */
type At = number;

/**
 * Inner loops, compiled from `source/` by `npm run kernels` and described there: a JavaScript engine checks every
 * array anew at every step of such a loop, which costs more than the step.
 */
export interface Kernels {
  // Rows of a triangle of dissimilarities.
  nearestInRow(row: At, i: number, n: number, nearest: At, distance: At): number;
  pick(row: At, places: At, from: number, to: number, out: At): void;
  append(row: At, second: At, open: At, from: number, to: number, lists: At, ends: At): void;
  // Unions of clusters; their kind is one of `UNIONS`.
  unite: (
    kind: number,
    ...rows: [toX: At, toY: At, sizes: At, from: number, to: number, between: number, nx: number, ny: number]
  ) => void;
  uniteColumns: (
    kind: number,
    ...rows: [
      ...[out: At, row: At, size: number],
      ...[place: At, second: At, between: At, nx: At, ny: At, from: number, to: number],
    ]
  ) => void;
  // k-medoids.
  addGains(matrix: At, n: number, stride: number, nearest: At, gains: At): void;
  addSwaps: (
    ...sums: [matrix: At, n: number, stride: number, place: At, first: At, second: At, shared: At, extra: At]
  ) => void;
  // k-means.
  addCentre: (
    ...records: [...Records, centre: At, number: number, membership: At, nearest: At, second: At]
  ) => void;
  sum(values: At, n: number): number;
  reach(weights: At, n: number, target: number): number;
  assign: (
    ...records: [
      ...Records,
      ...[centres: At, k: number, halfway: At, room: number],
      ...[membership: At, upper: At, lower: At],
    ]
  ) => void;
  addUp: (...records: [...Records, membership: At, sums: At, sizes: At]) => void;
  loosen(n: number, membership: At, upper: At, lower: At, moved: At, most: number): void;
  withinSquares: (...records: [...Records, centres: At, membership: At]) => number;
}
type Records = [records: At, n: number, stride: number];

/** Kernels and the arrays that they work on; what the arrays hold at first is not said. */
export interface KernelMemory<Doubles extends string, Wholes extends string> {
  readonly kernels: Kernels;
  readonly doubles: Readonly<Record<Doubles, Float64Array>>;
  readonly wholes: Readonly<Record<Wholes, Int32Array>>;
}

interface Started {
  readonly kernels: Kernels;
  readonly memory: WebAssembly.Memory;
}

const PAGE = 65_536;
/** Addresses are whole numbers of 32 bits. */
const MOST_PAGES = 65_536;
/**
 * A memory of up to 256 MB is kept, since groupings are made again and again of resampled records, and new memory
 * costs a third of a linkage; a larger one is given back.
 */
const KEPT_PAGES = 4096;

let compiled: WebAssembly.Module | undefined;
let kept: Started | undefined;
let keptInUse = false;

/**
 * Lays arrays of the given lengths into one memory and hands them to `work`; they are not to be kept beyond it.
 * RangeError where they need more than 4 GB.
 */
export function withKernels<Doubles extends string, Wholes extends string, Result>(
  doubles: Readonly<Record<Doubles, number>>,
  wholes: Readonly<Record<Wholes, number>>,
  work: (memory: KernelMemory<Doubles, Wholes>) => Result,
): Result {
  const pages = 1 + Math.ceil((8 * total(doubles) + 4 * total(wholes)) / PAGE);
  if (pages > MOST_PAGES)
    throw new RangeError('so many records need more than 4 GB of memory here; take fewer');
  if (pages > KEPT_PAGES || keptInUse) return work(lay(start(pages), doubles, wholes));
  kept ??= start(pages);
  const missing = pages - kept.memory.buffer.byteLength / PAGE;
  if (missing > 0) kept.memory.grow(missing);
  keptInUse = true;
  try {
    return work(lay(kept, doubles, wholes));
  } finally {
    keptInUse = false;
  }
}

function total(lengths: Readonly<Record<string, number>>): number {
  return Object.values<number>(lengths).reduce((sum, length) => sum + length, 0);
}

function start(pages: number): Started {
  compiled ??= new WebAssembly.Module(Uint8Array.from(atob(COMPILED), (letter) => letter.charCodeAt(0)));
  const memory = new WebAssembly.Memory({ initial: pages });
  const { exports } = new WebAssembly.Instance(compiled, { env: { memory } });
  return { kernels: exports as unknown as Kernels, memory };
}

function lay<Doubles extends string, Wholes extends string>(
  { kernels, memory }: Started,
  doubles: Readonly<Record<Doubles, number>>,
  wholes: Readonly<Record<Wholes, number>>,
): KernelMemory<Doubles, Wholes> {
  // The first half page stays free: a row of a triangle is named by a byte before its first number.
  let next = PAGE / 2;
  const views = <View>(lengths: Readonly<Record<string, number>>, width: number, view: ViewOf<View>) =>
    Object.fromEntries(
      Object.entries<number>(lengths).map(([name, length]) => {
        const at = next;
        next += width * length;
        return [name, new view(memory.buffer, at, length)];
      }),
    );
  return {
    kernels,
    doubles: views(doubles, 8, Float64Array),
    wholes: views(wholes, 4, Int32Array),
  } as KernelMemory<Doubles, Wholes>;
}

type ViewOf<View> = new (buffer: ArrayBuffer, at: number, length: number) => View;
