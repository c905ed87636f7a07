/** Which element passes over which where two systems interlace; pure counting, no geometry. */

/** `over[row][column]`: whether the row's element (weft) passes over the column's (warp), seen on the drawn face. */
export type Interlacing = readonly (readonly boolean[])[];

function fill(rows: number, columns: number, over: (row: number, column: number) => boolean): Interlacing {
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => over(row, column)),
  );
}

const modulo = (value: number, by: number): number => ((value % by) + by) % by;

/** Over one, under one; `rowsTogether` and `columnsTogether` (1 or 2) go as one: 2 and 2 is basket. */
export function tabby(size: number, rowsTogether = 1, columnsTogether = 1): Interlacing {
  return fill(
    size,
    size,
    (row, column) => modulo(Math.floor(row / rowsTogether) + Math.floor(column / columnsTogether), 2) === 0,
  );
}

/** How the diagonals of a twill run, as the vocabulary `twillPattern` names it; those that can be drawn. */
export const DRAWN_TWILLS = ['straight', 'pointed', 'herringbone', 'pointLozenge', 'brokenLozenge'] as const;
export type DrawnTwill = (typeof DRAWN_TWILLS)[number];

/** Over `over`, under `under`, each row one step on; turned back in columns, or in both, where patterned. */
export function twill(over: number, under: number, pattern: DrawnTwill = 'straight'): Interlacing {
  const repeat = over + under;
  const turn = pattern === 'straight' ? 0 : 2 * repeat;
  const size =
    pattern === 'straight' ? Math.max(8, 2 * repeat) : 2 * turn + (pattern.startsWith('point') ? -1 : 0);
  const along = pathOf(pattern, turn, Math.floor(repeat / 2));
  const across = pattern.endsWith('Lozenge') ? along : (row: number) => row;
  return fill(size, size, (row, column) => modulo(along(column) - across(row), repeat) < over);
}

/** Where the diagonals turn: point to point, or with an offset so that floats do not meet on the line. */
function pathOf(pattern: DrawnTwill, turn: number, offset: number): (at: number) => number {
  if (pattern === 'straight') return (at) => at;
  if (pattern === 'pointed' || pattern === 'pointLozenge')
    return (at) => (at < turn ? at : 2 * turn - 2 - at);
  return (at) => (at < turn ? at : 2 * turn - 1 - at + offset);
}

/** The face of long warp floats: the weft passes over one in `repeat`, the bindings `step` apart from row to row. */
export function satin(repeat: number, step: number): Interlacing {
  return fill(2 * repeat, 2 * repeat, (row, column) => modulo(column - step * row, repeat) === 0);
}

/** Runs of columns that a row passes over: [first, last], both included. */
export function runsOver(row: readonly boolean[]): readonly (readonly [first: number, last: number])[] {
  const runs: [number, number][] = [];
  row.forEach((over, column) => {
    const last = runs.at(-1);
    if (!over) return;
    if (last !== undefined && last[1] === column - 1) last[1] = column;
    else runs.push([column, column]);
  });
  return runs;
}
