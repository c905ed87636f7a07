import { describe, expect, it } from 'vitest';
import { overSheets, type Sized } from '../../src/report/brief/sheets.ts';

/** A part that tells its own height, so that what a sheet holds can be added up. */
const part = (title: string, least: number, most: number): Sized => ({
  title,
  least,
  most,
  at: (height) => `${title} ${height}`,
});

const heights = (html: string) => html.split('\n').map((line) => Number(line.split(' ').at(-1)));
const titles = (html: string) => (html === '' ? [] : html.split('\n').map((line) => line.split(' ')[0]));

describe('answers over two sheets', () => {
  it('keep their order and grow until both sheets are full', () => {
    const parts = ['a', 'b', 'c', 'd', 'e'].map((title) => part(title, 100, 400));
    const { html, left } = overSheets(parts, [500, 600]);
    expect(left).toEqual([]);
    expect(html.flatMap(titles)).toEqual(['a', 'b', 'c', 'd', 'e']);
    for (const [at, room] of [500, 600].entries())
      expect(heights(html[at]).reduce((a, b) => a + b, 0)).toBeCloseTo(room, 6);
  });

  it('are parted where the greater number has room, though the first sheet then holds fewer', () => {
    const parts = [part('a', 300, 300), part('b', 150, 200), part('c', 350, 400)];
    const { html, left } = overSheets(parts, [460, 400]);
    expect(left).toEqual([]);
    expect(html.map(titles)).toEqual([['a', 'b'], ['c']]);
    const other = overSheets(parts, [310, 510]);
    expect(other.html.map(titles)).toEqual([['a'], ['b', 'c']]);
  });

  it('leave out what keeps the others away, and name it', () => {
    const parts = [part('a', 100, 200), part('long', 900, 900), part('b', 100, 200), part('c', 200, 200)];
    const { html, left } = overSheets(parts, [300, 300]);
    expect(left.map(({ title }) => title)).toEqual(['long']);
    expect(html.flatMap(titles)).toEqual(['a', 'b', 'c']);
  });

  it('never grow past what they have to say', () => {
    const { html } = overSheets([part('a', 100, 150)], [900, 900]);
    expect(html).toEqual(['a 150', '']);
  });
});
