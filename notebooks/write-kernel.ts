/**
 * Tells Jupyter how to run TypeScript: writes the kernel "deno" for the Deno that npm installed here.
 *
 *   npx tsx notebooks/write-kernel.ts            for the user, so that Jupyter lists it everywhere
 *   npx tsx notebooks/write-kernel.ts FOLDER     into FOLDER/kernels; start Jupyter with JUPYTER_PATH=FOLDER
 *
 * The one that Deno writes by itself would call whatever "deno" is on the PATH.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

interface DenoPackage {
  /** Puts the program into place where npm ran no install script, and gives its path. */
  runInstall(): string;
}

const data = process.argv[2] ?? userData();
const { runInstall } = createRequire(import.meta.url)('deno/install_api.cjs') as DenoPackage;
const folder = join(resolve(data), 'kernels', 'deno');
mkdirSync(folder, { recursive: true });
const kernel = {
  argv: [runInstall(), 'jupyter', '--kernel', '--conn', '{connection_file}'],
  display_name: 'TypeScript (Deno)',
  language: 'typescript',
};
writeFileSync(join(folder, 'kernel.json'), `${JSON.stringify(kernel, null, 2)}\n`);
process.stdout.write(`${join(folder, 'kernel.json')}\n`);

/** Where Jupyter keeps what belongs to a user. */
function userData(): string {
  if (process.env.JUPYTER_DATA_DIR !== undefined) return process.env.JUPYTER_DATA_DIR;
  if (process.platform === 'darwin') return join(homedir(), 'Library', 'Jupyter');
  if (process.platform === 'win32') return join(process.env.APPDATA ?? homedir(), 'jupyter');
  return join(process.env.XDG_DATA_HOME ?? join(homedir(), '.local', 'share'), 'jupyter');
}
