import { describe, expect, it } from 'vitest';
import { contrast } from '../../../../src/analyses/contrast/index.ts';
import { summary } from '../../../../src/analyses/summary/index.ts';
import { ask, inputFrom, linesOf } from '../../ask.ts';

/** Four sites of very different size about one value; made up. */
const SITES: Readonly<Record<string, readonly number[]>> = {
  Aldum: [9, 10, 11, 10, 9, 11, 10, 10, 9, 11, 10, 10],
  Berrow: [12, 13, 12, 14, 13, 12, 13, 13, 12, 14],
  Corm: [20],
  Dell: [11, 11, 12, 11, 12, 11],
};
const rows = Object.entries(SITES).flatMap(([site, values]) =>
  values.map((diameter1, i) => ({
    site,
    diameter1,
    fibre: site === 'Aldum' || i % 3 > 0 ? 'wool' : 'limeBast',
  })),
);

describe('means and shares of small groups, drawn towards what the groups have in common', () => {
  it.each([
    [
      'contrast',
      () =>
        ask(contrast, inputFrom(rows), { of: ['diameter1'], by: 'site', relabellings: 99, resamples: 199 }),
    ],
    ['summary', () => ask(summary, inputFrom(rows), { of: ['diameter1', 'fibre'], by: ['site'] })],
  ] as const)('a %s gives both, in table and figure', (_, asked) => {
    const { tables, figures } = asked();
    const lines = linesOf(tables.pooled);
    expect(lines.map(({ group }) => group)).toEqual(['Aldum', 'Berrow', 'Corm', 'Dell']);
    const of = (group: string) => lines.find((line) => line.group === group) as Record<string, number>;
    expect(of('Corm').mean).toBeCloseTo(20, 9);
    // A single thread of 20 is drawn far in, twelve of 10 hardly at all, and none past the common mean.
    expect(of('Corm').mean - of('Corm').pooled).toBeGreaterThan(
      3 * Math.abs(of('Aldum').pooled - of('Aldum').mean),
    );
    expect(of('Corm').pooled).toBeGreaterThan(of('Corm').common);
    expect(of('Aldum').pooled).toBeGreaterThan(of('Aldum').mean);
    const { data, caption } = figures.diameter1Pooled;
    expect(data.find(({ name }) => name === 'raw')?.x).toEqual(lines.map(({ mean }) => mean));
    expect(data.find(({ name }) => name === 'pooled')?.x).toEqual(lines.map(({ pooled }) => pooled));
    expect(caption).toContain('raw (hollow)');
  });

  it('a summary gives shares of kinds both ways: of one record nobody believes all or nothing', () => {
    const { tables, figures } = ask(summary, inputFrom(rows), { of: ['fibre'], by: ['site'] });
    const lines = linesOf(tables.pooledShares);
    const wool = (group: string) => lines.find((line) => line.group === group && line.kind === 'wool');
    expect(wool('Corm')?.share).toBe(0);
    expect(wool('Corm')?.pooled as number).toBeGreaterThan(0.1);
    expect(wool('Aldum')?.pooled as number).toBeLessThan(1);
    expect(figures.fibrePooled.caption).toContain('drawn towards the common shares');
  });

  it('two groups teach nothing about how groups vary: no pooling', () => {
    const { tables, figures } = ask(summary, inputFrom(rows.filter(({ site }) => site < 'C')), {
      of: ['diameter1', 'fibre'],
      by: ['site'],
    });
    expect(tables.pooled).toBeUndefined();
    expect(tables.pooledShares).toBeUndefined();
    expect(Object.keys(figures)).not.toContain('diameter1Pooled');
  });
});
