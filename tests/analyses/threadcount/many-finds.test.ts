import { describe, expect, it } from 'vitest';
import type { Figure } from '../../../src/analyses/contract.ts';
import { threadcount } from '../../../src/analyses/threadcount/index.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { ask, inputFrom } from '../ask.ts';

/** Far more finds than a browser draws symbols. */
const N = 9000;
const random = createRandom(4);
const rows = Array.from({ length: N }, (_, i) => ({
  structure: i % 3 === 0 ? 'openTwining' : 'closeTwining',
  density1: 2 + 20 * random.next(),
  density2: 2 + 20 * random.next(),
}));
const few = rows.slice(0, 400);
const asked = (some: typeof rows) =>
  ask(threadcount, inputFrom(some), {
    by: 'structure',
    within: [],
    draws: 0,
    find: { density1: '8', density2: '8' },
  });
const { figures } = asked(rows);

interface Symbols {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly customdata: readonly (string | readonly string[])[];
}
const symbolsOf = ({ data }: Figure) =>
  data.filter(({ customdata }) => Array.isArray(customdata)) as unknown as readonly Symbols[];
const idsOf = (figure: Figure) => symbolsOf(figure).flatMap(({ customdata }) => customdata.flat());

describe('of thousands of finds', () => {
  it.each(['counts', 'panels', 'ratio'])(
    '%s draws few symbols, and every find is behind exactly one',
    (name) => {
      const figure = figures[name];
      expect(symbolsOf(figure).flatMap(({ x }) => x).length).toBeLessThanOrEqual(2000);
      const ids = idsOf(figure);
      expect(ids).toHaveLength(N);
      expect(new Set(ids).size).toBe(N);
      expect(figure.caption).toMatch(
        new RegExp(
          `\\d+ symbols for ${N} finds: those of one symbol within [\\d.]+ mm of each other in print are drawn once`,
        ),
      );
    },
  );

  it('names and headings count finds, not symbols', () => {
    const third = N / 3;
    const names = figures.counts.data.map(({ name }) => name);
    expect(names).toContain(`open twining (${third})`);
    expect(names).toContain(`close twining (${2 * third})`);
    const headings = (figures.panels.layout.annotations as { text: string }[]).map(({ text }) => text);
    expect(headings).toContain(`close twining (${2 * third})`);
  });

  it('all neighbours of the find have a symbol of their own', () => {
    // 20 pixels of a figure 560 wide, whose logarithmic axis runs from the least to the greatest with a third more each.
    const reach = (values: readonly number[]) =>
      Math.log10((Math.max(...values) * 1.35 * 1.35) / Math.min(...values));
    const within = (value: number, pixels: number, values: readonly number[]) =>
      (Math.abs(Math.log10(value / 8)) / reach(values)) * pixels < 19;
    const [xs, ys] = [rows.map(({ density1 }) => density1), rows.map(({ density2 }) => density2)];
    const near = rows.flatMap(({ density1, density2 }, i) =>
      within(density1, 560, xs) && within(density2, 410, ys) ? [`f${i + 1}`] : [],
    );
    expect(near.length).toBeGreaterThan(30);
    const alone = new Set(
      symbolsOf(figures.counts).flatMap(({ customdata }) =>
        customdata.filter((one) => typeof one === 'string'),
      ),
    );
    expect(near.filter((id) => !alone.has(id))).toEqual([]);
  });

  it('a few hundred are drawn one by one, and nothing is said of symbols that stand for several', () => {
    const { counts } = asked(few).figures;
    expect(symbolsOf(counts).flatMap(({ customdata }) => customdata.filter(Array.isArray))).toEqual([]);
    expect(idsOf(counts)).toHaveLength(few.length);
    expect(counts.caption).not.toContain('drawn once');
  });
});
