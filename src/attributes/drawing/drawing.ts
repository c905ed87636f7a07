/**
 * A structure as a schema: pieces of elements, painted one after the other. What is painted later passes over what
 * was painted before. Lengths are steps of the drawing, y runs downwards; nothing is to scale.
 */

/** Passive elements stay straight; `active` and `second` turn about or interlace with them; `extra` is pile. */
export type Tone = 'passive' | 'active' | 'second' | 'extra';

export type Point = readonly [x: number, y: number];

/** A stretch of one element: a line (2 points) or one or more cubic curves end to end (4, 7, 10 … points). */
export interface Piece {
  readonly points: readonly Point[];
  readonly tone: Tone;
  readonly width: number;
  /** Rounded ends: a float or a turn that dives under at both ends. */
  readonly round?: true;
}

/** What is drawn, before it is written as a picture. */
export interface Schema {
  readonly pieces: readonly Piece[];
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  /** What passes over what, in one or two sentences. */
  readonly says: string;
}

export interface Drawing extends Schema {
  readonly title: string;
  /** What the record does not tell and the drawing had to choose, and what it leaves out; one sentence each. */
  readonly notes: readonly string[];
}

export function line(from: Point, to: Point, tone: Tone, width: number): Piece {
  return { points: [from, to], tone, width };
}

/** A quarter turn to the right about the origin: (x, y) becomes (-y, x). Turning keeps S an S. */
export function quarterTurn(schema: Schema): Schema {
  const { x, y, width, height } = schema.box;
  return {
    ...schema,
    pieces: schema.pieces.map((piece) => ({
      ...piece,
      points: piece.points.map(([px, py]): Point => [-py, px]),
    })),
    box: { x: -y - height, y: x, width: height, height: width },
  };
}
