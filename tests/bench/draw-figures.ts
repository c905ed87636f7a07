import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { chronology } from '../../src/analyses/chronology/index.ts';
import type { Figure } from '../../src/analyses/contract.ts';
import { map } from '../../src/analyses/map/index.ts';
import { threadcount } from '../../src/analyses/threadcount/index.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { drawFigure } from '../../src/report/drawing/draw-figure.ts';
import { ask, inputFrom } from '../analyses/ask.ts';
import { openBrowser } from '../app/browser.ts';
import { middle } from './tools/yardstick.ts';

/**
 * How long do figures of 200 places with 5,000 finds, and of 20,000 finds, take to be drawn, and one step of panning?
 * In Chromium by the plotting library, and without a browser as the report draws them. Asked for: 5,000 under 1 s.
 *
 *   npx tsx tests/bench/draw-figures.ts
 */
const KINDS = ['openTwining', 'closeTwining', 'woven'];

function finds(n: number, places: number) {
  const random = createRandom(9);
  return inputFrom(
    Array.from({ length: n }, (_, i) => ({
      item: `i${i}`,
      site: `place ${i % places}`,
      structure: KINDS[random.integer(3)],
      density1: 3 + 12 * random.next(),
      density2: 3 + 12 * random.next(),
      east: (i % places) % 20,
      north: Math.floor((i % places) / 20),
      date: [100 * random.integer(8), 800 + 100 * random.integer(4)] as const,
    })),
  );
}

const many = finds(5000, 200);
const counts = (n: number) =>
  ask(threadcount, finds(n, 200), { by: 'site', draws: 0, within: [] }).figures.counts;
const through = ask(chronology, many, { draws: 0, relabellings: 99 }).figures;
const figures: readonly (readonly [string, Figure])[] = [
  ['map of 200 places', ask(map, many, { places: ['east', 'north'], deals: 99 }).figures.likeness],
  ['thread counts of 5,000 finds at 200 places', counts(5000)],
  ['kinds through time, 5,000 finds', through.kinds],
  ['spans of 200 places', through.spans],
  ['thread counts of 20,000 finds', counts(20_000)],
];

const plotly = readFileSync(createRequire(import.meta.url).resolve('plotly.js-cartesian-dist-min'), 'utf8');
const browser = await openBrowser();
const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
await page.setContent('<div id="place"></div>');
// The runner of TypeScript names functions by a helper of its own, which the page does not have.
await page.evaluate('globalThis.__name = (one) => one');
await page.addScriptTag({ content: plotly });
for (const [name, figure] of figures) {
  const { drawn, steps } = await page.evaluate(
    async ({ data, layout }) => {
      const { Plotly } = globalThis as unknown as {
        Plotly: Record<string, (...parts: unknown[]) => Promise<unknown>>;
      };
      const frame = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 0)));
      const drawn: number[] = [];
      for (let run = 0; run < 5; run++) {
        const from = performance.now();
        await Plotly.newPlot('place', data, layout);
        await frame();
        drawn.push(performance.now() - from);
      }
      const place = document.getElementById('place') as unknown as {
        layout: { xaxis: { range: [number, number] } };
      };
      const [low, high] = place.layout.xaxis.range;
      const steps: number[] = [];
      for (let step = 1; step <= 20; step++) {
        const from = performance.now();
        const move = ((high - low) * step) / 100;
        await Plotly.relayout('place', { 'xaxis.range': [low + move, high + move] });
        await frame();
        steps.push(performance.now() - from);
      }
      return { drawn, steps };
    },
    figure as unknown as { data: object[]; layout: object },
  );
  const still: number[] = [];
  for (let run = 0; run < 3; run++) {
    const from = performance.now();
    drawFigure(figure);
    still.push(performance.now() - from);
  }
  console.log(
    `${name}: drawn in ${middle(drawn).toFixed(0)} ms (median of ${drawn.length}), a step of panning ${middle(steps).toFixed(0)} ms; for the report ${middle(still).toFixed(0)} ms`,
  );
}
await browser.close();
