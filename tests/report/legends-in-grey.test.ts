import { beforeAll, describe, expect, it } from 'vitest';
import { GROUND } from '../../src/analyses/shared/figure/colours.ts';
import type { Results } from '../../src/study/results/results.ts';
import { lab, linear } from '../analyses/colours.ts';
import { demoRun } from '../demo/demo-run.ts';

/** What is left of a trace's look in a grey print. */
interface Look {
  readonly name: string;
  readonly shape: string;
  readonly grey: number;
}

type Plain = Readonly<Record<string, unknown>>;
const first = (value: unknown): unknown => (Array.isArray(value) ? value[0] : value);

function looksOf(data: readonly Plain[]): readonly Look[] {
  return data
    .filter(
      ({ name, showlegend, type }) => typeof name === 'string' && showlegend !== false && type !== 'contour',
    )
    .flatMap((trace) => {
      const marker = (trace.marker ?? {}) as Plain;
      const line = (trace.line ?? {}) as Plain;
      const colour = first(marker.color) ?? line.color;
      // What has no kind, or is not recorded, shares the neutral look.
      if (typeof colour !== 'string' || !colour.startsWith('#') || colour === GROUND.neutral) return [];
      const pattern = ((marker.pattern ?? {}) as Plain).shape;
      const shape = [trace.type, trace.mode, first(marker.symbol), pattern, line.dash].map(String).join(' ');
      return [{ name: String(trace.name), shape, grey: lab(linear(colour))[0] }];
    });
}

let results: Results;
beforeAll(async () => {
  results = (await demoRun()).results;
}, 300_000);

describe('in a grey print of the demo', () => {
  it('any two entries of a legend differ in shape or in lightness', () => {
    let pairs = 0;
    const alike: string[] = [];
    for (const [id, { figures }] of Object.entries(results.analyses))
      for (const [name, { data }] of Object.entries(figures)) {
        const looks = looksOf(data as readonly Plain[]);
        for (const [at, a] of looks.entries())
          for (const b of looks.slice(0, at)) {
            if (a.name === b.name) continue;
            pairs++;
            if (a.shape === b.shape && Math.abs(a.grey - b.grey) < 8)
              alike.push(`${id} ${name}: ${b.name} and ${a.name}`);
          }
      }
    expect(pairs).toBeGreaterThan(100);
    expect(alike).toEqual([]);
  });
});
