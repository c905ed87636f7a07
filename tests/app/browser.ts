import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome'];

/** The browser of the machine, found on the PATH. */
export function browserPath(): string {
  for (const folder of (process.env.PATH ?? '').split(delimiter))
    for (const name of NAMES) {
      const path = join(folder, name);
      try {
        accessSync(path, constants.X_OK);
        return path;
      } catch {
        // Not in this folder.
      }
    }
  throw new Error('no Chromium on the PATH; on Debian: apt-get install chromium');
}

let shared: Promise<Browser> | undefined;

/**
 * One browser for all test files of a worker, which share their modules. Nobody closes it: it ends with the worker.
 * What a file opens in it, a context at the least, that file closes.
 */
export function sharedBrowser(): Promise<Browser> {
  shared ??= openBrowser();
  return shared;
}

/** A browser of one's own, to be closed. */
export async function openBrowser(): Promise<Browser> {
  return await chromium.launch({
    executablePath: browserPath(),
    args: [
      '--no-sandbox',
      '--disable-quic',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
