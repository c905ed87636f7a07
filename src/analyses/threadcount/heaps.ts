import { placeOnLog } from '../shared/figure/log-axis.ts';
import { escapeText } from '../shared/figure/style.ts';
import { drawnReach } from './axes.ts';
import type { RecordPoint, ThreadcountFound } from './found.ts';

/**
 * A browser draws a few thousand symbols at once, not twenty thousand. Where there are more, those of one group that lie
 * over one another are drawn as one; every find counts in names, captions, tables, outlines and tests all the same.
 */

/** Finds that one symbol stands for, that which is drawn first. */
export type Heap = readonly [RecordPoint, ...RecordPoint[]];

export interface Heaped {
  readonly heaps: readonly Heap[];
  /** Side of the squares within which finds of a group are one symbol, CSS pixels at print width; 0 where each has its own. */
  readonly side: number;
}

/** CSS pixels at print width of the inside of a figure or a panel. */
export interface Inside {
  readonly width: number;
  readonly height: number;
}

const LEAST_SIDE = 2;
const WIDER = 1.3;
/** Within so many pixels of the find that is asked about every symbol is drawn. */
const NEIGHBOURS = 20;

/** The finds in at most about `most` symbols, by ever wider squares; the neighbours of the find asked about stay apart. */
export function heaped(
  { points, find, logarithmic }: Pick<ThreadcountFound, 'points' | 'find' | 'logarithmic'>,
  inside: Inside,
  most: number,
): Heaped {
  if (points.length <= most) return { heaps: points.map((point) => [point]), side: 0 };
  const drawn = [...points, ...(find === null ? [] : [find])];
  const place = (value: number) => (logarithmic ? placeOnLog(value) : value);
  const [x, y] = (['x', 'y'] as const).map((side) => {
    const [low, high] = drawnReach(drawn, side, logarithmic).map(place);
    const pixels = (side === 'x' ? inside.width : inside.height) / (high - low || 1);
    return (point: Pick<RecordPoint, 'x' | 'y'>) => (place(point[side].point) - low) * pixels;
  });
  const near = (point: RecordPoint) =>
    find !== null && Math.abs(x(point) - x(find)) <= NEIGHBOURS && Math.abs(y(point) - y(find)) <= NEIGHBOURS;
  const at = points.map((point) => ({ point, x: x(point), y: y(point), near: near(point) }));
  const widest = Math.max(inside.width, inside.height);
  for (let side = LEAST_SIDE; ; side *= WIDER) {
    const heaps = new Map<string, [RecordPoint, ...RecordPoint[]]>();
    for (const [row, own] of at.entries()) {
      const key = own.near
        ? `find ${row}`
        : `${own.point.group} ${Math.floor(own.x / side)} ${Math.floor(own.y / side)}`;
      const heap = heaps.get(key);
      if (heap === undefined) heaps.set(key, [own.point]);
      else heap.push(own.point);
    }
    if (heaps.size <= most || side > widest) return { heaps: [...heaps.values()], side };
  }
}

/** What is picked with a symbol: the id of its find, or those of all that it stands for. */
export function heapIds(heap: Heap): string | readonly string[] {
  return heap.length === 1 ? heap[0].id : heap.map(({ id }) => id);
}

export function heapName([{ id }, ...more]: Heap): string {
  return escapeText(more.length === 0 ? id : `${id} and ${more.length} more here`);
}

/** A sentence for the caption; empty where every find has its own symbol. */
export function heapsSaid({ heaps, side }: Heaped, n: number, find: boolean): string {
  if (side === 0) return '';
  const millimetres = Math.ceil((side / PIXELS_OF_MM) * 10) / 10;
  return ` ${heaps.length} symbols for ${n} finds: those of one symbol within ${millimetres} mm of each other in print are drawn once, and counted each${find ? '; all near the find are drawn' : ''}.`;
}

const PIXELS_OF_MM = 96 / 25.4;
