import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command, Option } from 'commander';
import { InputError } from '../../errors.ts';
import { exists, readStudy, readText } from '../files.ts';
import { type ServedStudy, serve } from '../serve.ts';
import type { Verb } from './verb.ts';

interface OpenOptions {
  readonly port: number;
}

/** The built workbench lies in dist/app, whether this file runs from dist/cli/verbs or from src/cli/verbs. */
const APP = fileURLToPath(new URL('../../../dist/app', import.meta.url));

/** `thrum open [STUDY.json]`: the workbench in a browser, served on this machine alone. */
export const openVerb: Verb = (terminal) =>
  new Command('open')
    .description('serve the workbench on this machine and print its address')
    .argument('[study]', 'study file (JSON) to open in it')
    .addOption(
      new Option('--port <number>', 'port to listen on').argParser(readPort).default(0, 'any that is free'),
    )
    .action(async (path: string | undefined, { port }: OpenOptions) => {
      if (!(await exists(join(APP, 'index.html')))) {
        throw new InputError('the workbench is not built', { file: APP }, 'run "npm run build" first');
      }
      const { url } = await serve(APP, path === undefined ? null : await servedStudy(path), port).catch(
        (fault: NodeJS.ErrnoException) => {
          throw new InputError(
            `port ${port} cannot be used (${fault.code ?? fault.message})`,
            {},
            'choose another --port, or leave it out',
          );
        },
      );
      terminal.out(`The workbench is at ${url}\n`);
      terminal.err('It answers this machine only. Stop it with Ctrl+C.\n');
    });

async function servedStudy(path: string): Promise<ServedStudy> {
  const { files } = await readStudy(path);
  return { study: path, text: await readText(path), files };
}

function readPort(text: string): number {
  const port = Number(text);
  if (/^\d{1,5}$/.test(text) && port <= 65535) return port;
  throw new InputError(`--port ${text} is no port`, {}, 'give a whole number from 0 to 65535');
}
