import { afterAll, beforeAll, vi } from 'vitest';
import { sharedBrowser } from './browser.ts';
import { type Bench, type Demo, openBench } from './workbench.ts';

/** Generous, for machines that do much else at the same time. */
const PATIENCE = 300_000;

/**
 * The workbench for the tests of one file: opened before the first of them, closed with its pages after the last.
 *
 * @param start what is done once it is open
 * @param demo how the demo study asks; `as it stands` where its answers are held against others
 */
export function benchForTests(
  start?: (bench: Bench) => Promise<void>,
  demo: Demo = 'light',
): Omit<Bench, 'close'> {
  vi.setConfig({ testTimeout: PATIENCE, hookTimeout: PATIENCE });
  let opened: Bench | undefined;
  const own = (): Bench => {
    if (opened === undefined) throw new Error('the workbench is open within tests only');
    return opened;
  };
  beforeAll(async () => {
    opened = await openBench(await sharedBrowser(), demo);
    await start?.(opened);
  });
  afterAll(async () => {
    await opened?.close();
  });
  return {
    get browser() {
      return own().browser;
    },
    get served() {
      return own().served;
    },
    open: (width) => own().open(width),
  };
}
