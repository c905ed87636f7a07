/** Things that are drawn or dealt in all before fewer draws have to do: some seconds of work. */
const MOST_DRAWN = 20_000_000;
/** Draws that are made of however many things. */
const LEAST_DRAWS = 999;

/**
 * How many draws are made of so many things: as many as are asked for, and of very many things fewer, since each then
 * takes long, and the p or the limits of so many hardly move from one draw to the next. Whoever tells of them says the
 * number that was made.
 */
export function drawsWithinReach(asked: number, things: number): number {
  return Math.min(asked, Math.max(LEAST_DRAWS, Math.floor(MOST_DRAWN / Math.max(1, things))));
}
