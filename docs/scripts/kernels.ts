import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import asc from 'assemblyscript/asc';

const root = new URL('../../', import.meta.url);

/** What src/numerics/wasm/compiled.ts must hold: the loops of src/numerics/wasm/source as WebAssembly. */
export async function kernelsFile(): Promise<string> {
  let bytes: Uint8Array | undefined;
  const { error, stderr } = await asc.main(
    [
      'src/numerics/wasm/source/index.ts',
      '-O3',
      '--noAssert',
      ...['--runtime', 'stub', '--enable', 'simd'],
      '--importMemory',
      ...['--outFile', 'rows.wasm'],
    ],
    {
      readFile: (name, base) => {
        try {
          return readFileSync(new URL(name, new URL(`${base}/`, root)), 'utf8');
        } catch {
          return null;
        }
      },
      writeFile: (_name, contents) => {
        if (typeof contents !== 'string') bytes = contents;
      },
      listFiles: () => null,
    },
  );
  if (error !== null || bytes === undefined) throw new Error(`${error ?? ''}\n${stderr.toString()}`);
  const text = Buffer.from(bytes).toString('base64');
  const lines = text.match(/.{1,96}/g) ?? [];
  return [
    '/** The loops of `source/` as WebAssembly in base64; written by `npm run kernels`. */',
    'export const COMPILED = [',
    ...lines.map((line) => `  '${line}',`),
    "].join('');",
    '',
  ].join('\n');
}

export const kernelsPath = fileURLToPath(new URL('src/numerics/wasm/compiled.ts', root));
