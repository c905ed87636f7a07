import { defineConfig } from 'vitest/config';
import { PlainReporter } from './plain-reporter.ts';

const root = new URL('..', import.meta.url).pathname;

// biome-ignore lint/style/noDefaultExport: the runner reads its settings from the default export
export default defineConfig({
  root,
  test: {
    reporters: ['default', new PlainReporter()],
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
