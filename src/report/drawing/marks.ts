/**
 * A drawing as plain marks on a sheet, in CSS pixels (96 an inch), y downwards: what an SVG and a PDF are both
 * written from. Paths hold the commands M, L, C, Q and Z with absolute coordinates only.
 */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  /** Names beside points for which there is no room. */
  readonly namesLeftOut?: number;
  /** Where each name beside a point came to stand, as plotly calls it; null where it is left out. */
  readonly namePlaces?: readonly {
    readonly trace: Readonly<Record<string, unknown>>;
    readonly point: number;
    readonly textposition: string | null;
  }[];
}

export type Mark = PathMark | CircleMark | TextMark | ImageMark | ClippedMarks;

export interface Pen {
  readonly fill?: string | undefined;
  readonly stroke?: string | undefined;
  readonly width?: number | undefined;
  /** Lengths of dashes and gaps. */
  readonly dash?: readonly number[] | undefined;
  readonly opacity?: number | undefined;
}

export interface PathMark extends Pen {
  readonly path: string;
}

export interface CircleMark extends Pen {
  readonly circle: readonly [x: number, y: number, r: number];
}

export interface TextMark {
  readonly text: string;
  readonly x: number;
  /** Of the base line. */
  readonly y: number;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly fill: string;
  readonly bold?: boolean;
  /** Colour of an edge around the letters, so that they are read over anything. */
  readonly halo?: string | undefined;
  /** Degrees clockwise, around the anchor. */
  readonly turn?: number;
  /** Whether it says what a mark of the data is, and is no label of an axis. */
  readonly ofData?: true;
  /** Of a name beside a point: whose it is, what it must not cover, and the other places that would do as well. */
  readonly beside?: {
    readonly trace: Readonly<Record<string, unknown>>;
    readonly point: number;
    /** The mark of the point, which no other name may cover. */
    readonly mark: Box;
    readonly elsewhere: readonly Elsewhere[];
  };
}

export interface Elsewhere {
  readonly x: number;
  readonly y: number;
  /** As plotly calls it. */
  readonly textposition: string;
}

/** A grid of coloured cells, one dot each. */
export interface ImageMark {
  readonly dots: readonly (readonly (Colour | null)[])[];
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface ClippedMarks {
  readonly clip: Box;
  readonly marks: readonly Mark[];
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type Colour = readonly [red: number, green: number, blue: number];

/** Hundredths of a pixel are finer than any print. */
export function short(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}

export function point(x: number, y: number): string {
  return `${short(x)} ${short(y)}`;
}

export function linePath(points: readonly (readonly [x: number, y: number])[]): string {
  return points.map(([x, y], place) => `${place === 0 ? 'M' : 'L'}${point(x, y)}`).join('');
}

export function boxPath({ x, y, width, height }: Box): string {
  return `M${point(x, y)}L${point(x + width, y)}L${point(x + width, y + height)}L${point(x, y + height)}Z`;
}

/** Four cubic arcs; the error is under 0.03 % of the radius. */
export function circlePath(x: number, y: number, r: number): string {
  const k = r * 0.5523;
  return (
    `M${point(x + r, y)}C${point(x + r, y + k)} ${point(x + k, y + r)} ${point(x, y + r)}` +
    `C${point(x - k, y + r)} ${point(x - r, y + k)} ${point(x - r, y)}` +
    `C${point(x - r, y - k)} ${point(x - k, y - r)} ${point(x, y - r)}` +
    `C${point(x + k, y - r)} ${point(x + r, y - k)} ${point(x + r, y)}Z`
  );
}
