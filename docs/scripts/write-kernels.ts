import { writeFileSync } from 'node:fs';
import { kernelsFile, kernelsPath } from './kernels.ts';

/** Compiles src/numerics/wasm/source; run with `npm run kernels` after any change of it. */
writeFileSync(kernelsPath, await kernelsFile());
