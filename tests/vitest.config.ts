import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { LongestFirst } from './longest-first.ts';
import { PlainReporter } from './plain-reporter.ts';

const root = new URL('..', import.meta.url).pathname;

// biome-ignore lint/style/noDefaultExport: the runner reads its settings from the default export
export default defineConfig({
  root,
  test: {
    reporters: ['default', new PlainReporter()],
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/seeded.ts'],
    // The runner would keep one core free, which on two cores leaves a single worker.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    // One graph of modules for all files of a worker: loading it anew for each file took half of the run.
    isolate: false,
    // Packages as Node itself hands them out: the runner's own view of them is asked anew at every call, and a
    // logarithm or an exponential then cost three times what it costs a user.
    deps: { interopDefault: false },
    sequence: { sequencer: LongestFirst },
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // What a page shows is waited for on a busy machine too.
    expect: { poll: { timeout: 60_000 } },
  },
});
