import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { PlainReporter } from './plain-reporter.ts';

const root = new URL('..', import.meta.url).pathname;

// biome-ignore lint/style/noDefaultExport: the runner reads its settings from the default export
export default defineConfig({
  root,
  test: {
    reporters: ['default', new PlainReporter()],
    include: ['tests/**/*.test.ts'],
    // The runner would keep one core free, which on two cores leaves a single worker.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    // One graph of modules for all files of a worker: loading it anew for each file took half of the run.
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
