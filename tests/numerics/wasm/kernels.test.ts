import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { kernelsFile, kernelsPath } from '../../../docs/scripts/kernels.ts';

it('the compiled loops are those of their source (npm run kernels)', async () => {
  expect(readFileSync(kernelsPath, 'utf8')).toBe(await kernelsFile());
});
