import type { Vocabulary } from './definition.ts';
import { isWithin } from './tree.ts';

/**
 * What is usual of a measure in one kind of fabric, narrower than what is usual of it anywhere, so that a slip
 * shows: 40 rows of twining per cm, or a tabby of one thread in 2 cm. Common practice, no source; a reading
 * outside is looked at again and never left out. Same units as the attributes.
 */
const USUAL: readonly (readonly [
  structure: string,
  bounds: Readonly<Record<string, readonly [number, number]>>,
])[] = [
  ['woven', { density1: [2, 60], density2: [2, 60], diameter1: [0.05, 4], diameter2: [0.05, 4] }],
  [
    'twined',
    {
      density1: [0.3, 12],
      density2: [0.15, 10],
      rowSpacing: [1, 70],
      rowWidth: [0.8, 20],
      diameter1: [0.3, 15],
      diameter2: [0.2, 10],
    },
  ],
  [
    'coiled',
    {
      density2: [0.4, 4],
      rowSpacing: [2.5, 25],
      coilPitch: [2.5, 25],
      rowWidth: [2, 25],
      stitchDensity: [0.5, 10],
      diameter1: [1.5, 25],
      diameter2: [0.5, 10],
    },
  ],
  ['netting', { meshGauge: [4, 120], meshStretched: [8, 240], meshOpening: [3, 230], diameter1: [0.3, 12] }],
  ['plaited', { density1: [0.2, 8], density2: [0.2, 8], diameter1: [0.5, 40], diameter2: [0.5, 40] }],
];

/** The narrowest usual bounds of an attribute in a structure; undefined where it has none of its own. */
export function usualOf(
  attribute: string,
  structure: string | null,
  vocabulary: Vocabulary | undefined,
): readonly [low: number, high: number] | undefined {
  if (structure === null || vocabulary === undefined) return undefined;
  const met = USUAL.filter(([broad, bounds]) => bounds[attribute] && isWithin(vocabulary, structure, broad));
  return met.at(-1)?.[1][attribute];
}
