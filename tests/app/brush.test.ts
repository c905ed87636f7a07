import { describe, expect, it } from 'vitest';
import type { Figure } from '../../src/analyses/contract.ts';
import { brushed } from '../../src/app/parts/pictures/brush.ts';

const figure: Figure = {
  data: [
    { type: 'bar', customdata: ['A', 'B'], hovertemplate: '%{text}: %{y}' },
    { type: 'bar', customdata: [['C', 'D'], ['E']], hovertemplate: '%{text}' },
    {
      type: 'heatmap',
      xaxis: 'x2',
      meta: [['A'], ['C', 'D']],
      z: [
        [0, 1],
        [1, 0],
      ],
    },
    { type: 'scatter', x: [1], y: [2] },
  ],
  layout: {},
  caption: 'made up for this test',
};
const about = (id: string) => [`<${id}>`, 'close twining'];

describe('brushing', () => {
  it('brings out the marks of what is picked, clusters that hold it included', () => {
    const [single, cluster] = brushed(figure, ['B', 'D'], about).data as Record<string, unknown>[];
    expect(single?.selectedpoints).toEqual([1]);
    expect(cluster?.selectedpoints).toEqual([0]);
    const [none] = brushed(figure, [], about).data as Record<string, unknown>[];
    expect(none).not.toHaveProperty('selectedpoints');
  });

  it('frames the line and the column of each picked record in a heat map', () => {
    const shapes = brushed(figure, ['D'], about).layout.shapes as Record<string, number>[];
    expect(shapes.map(({ x0, x1, y0, y1 }) => [x0, x1, y0, y1])).toEqual([
      [-0.5, 1.5, 0.5, 1.5],
      [0.5, 1.5, -0.5, 1.5],
    ]);
    expect(shapes.every(({ xref }) => (xref as unknown) === 'x2')).toBe(true);
  });

  it('says what a record is where the pointer rests, and shows text of sources as it stands', () => {
    const [single, cluster, heat] = brushed(figure, [], about).data as Record<string, never>[];
    expect(single?.hovertext[0]).toBe('<b>A</b><br>&lt;A&gt;<br>close twining');
    expect(single?.hovertemplate).toBe('%{hovertext}: %{y}');
    expect(cluster?.hovertext[0]).toContain('<b>C</b> and 1 more');
    expect(heat?.customdata[0][1]).toEqual(['A', 'C', 'D']);
    expect(heat?.customdata[1][1]).toEqual(['C', 'D']);
  });

  it('leaves other traces and the figure itself as they were', () => {
    const before = JSON.stringify(figure);
    expect((brushed(figure, ['A'], about).data as unknown[])[3]).toEqual(figure.data[3]);
    expect(JSON.stringify(figure)).toBe(before);
  });
});
