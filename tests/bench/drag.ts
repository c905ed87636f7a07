import { openBrowser } from '../app/browser.ts';
import { openBench } from '../app/workbench.ts';
import { madeCsv } from './tools/made-csv.ts';
import { middle } from './tools/yardstick.ts';

/**
 * How soon does the workbench answer a weight that is dragged, with 2,000 fragments in Chromium? From the key
 * press to the answer of the worker, and to the redrawn map. Asked for: an answer within 50 ms.
 *
 *   npx tsx tests/bench/drag.ts
 */

const browser = await openBrowser();
const bench = await openBench(browser, 'as it stands');
const desk = await bench.open();
const { page } = desk;
await page
  .locator('input[type=file]')
  .setInputFiles({ name: 'made.csv', mimeType: 'text/csv', buffer: madeCsv(2000) });
await page.locator('.raw-grid .raw-cell').first().waitFor();
await desk.go('Kinship');
await page.locator('.say .sentence').waitFor();
await page.locator('.drawing .main-svg').first().waitFor();
await page.waitForFunction(() => document.querySelector('.working') === null);
// The worker answers in turn: what was asked before must be done.
await page.waitForTimeout(20_000);

const triangle = page.locator('.triangle');
const box = (await triangle.boundingBox())!;
const at = (share: number): [number, number] => [
  box.x + box.width * (0.35 + 0.3 * share),
  box.y + box.height * 0.6,
];
// The runner of this script wraps named functions in a helper that the page does not have.
await page.evaluate('globalThis.__name = (named) => named');
await page.evaluate(() => {
  const seen = globalThis as unknown as { asked: number; answers: number[]; drawn: number[] };
  seen.answers = [];
  seen.drawn = [];
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (...parts: unknown[]) {
    const [message] = parts as [{ path?: string[]; id?: string }];
    if (message?.path?.[0] === 'nearest') {
      const from = seen.asked;
      const { id } = message;
      const listen = (event: MessageEvent) => {
        if (event.data?.id !== id) return;
        this.removeEventListener('message', listen);
        seen.answers.push(performance.now() - from);
        requestAnimationFrame(() => setTimeout(() => seen.drawn.push(performance.now() - from), 0));
      };
      this.addEventListener('message', listen);
    }
    return (post as (...all: unknown[]) => void).apply(this, parts);
  };
  document.addEventListener(
    'pointermove',
    () => {
      seen.asked = performance.now();
    },
    { capture: true },
  );
});
await page.mouse.move(...at(0));
await page.mouse.down();
for (let step = 1; step <= 25; step++) {
  await page.mouse.move(...at(step / 25));
  await page.waitForTimeout(700);
}
await page.getByText('As you move').waitFor();
await page.mouse.up();
const { answers, drawn } = await page.evaluate(() => {
  const { answers: a, drawn: d } = globalThis as unknown as { answers: number[]; drawn: number[] };
  return { answers: a, drawn: d };
});
console.log(
  `weights dragged, 2,000 fragments, Chromium: answer after ${middle(answers).toFixed(0)} ms (median of ${answers.length}; ` +
    `slowest ${Math.max(...answers).toFixed(0)}), page drawn after ${middle(drawn).toFixed(0)} ms; asked for at most 50`,
);
if (desk.errors.length > 0) console.log(desk.errors);
await bench.close();
await browser.close();
