import { basename, dirname, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command, Option } from 'commander';
import { InputError } from '../../errors.ts';
import { exists, readBytes, readText } from '../files.ts';
import { type ServedStudy, serve } from '../serve.ts';
import { type ReadStudyOptions, readStudy } from '../study-on-disk.ts';
import { ALLOW_OUTSIDE, type Verb } from './verb.ts';

interface OpenOptions {
  readonly port: number;
  readonly allowOutside?: true;
}

/** The built workbench lies in dist/app, whether this file runs from dist/cli/verbs or from src/cli/verbs. */
const APP = fileURLToPath(new URL('../../../dist/app', import.meta.url));

/** `thrum open [STUDY.json | TABLE …]`: the workbench in a browser, served on this machine alone. */
export const openVerb: Verb = (terminal) =>
  new Command('open')
    .description('serve the workbench on this machine and print its address')
    .argument('[files...]', 'a study file (JSON), or tables (CSV, TSV, XLSX, Parquet), to open in it')
    .addOption(
      new Option('--port <number>', 'port to listen on').argParser(readPort).default(0, 'any that is free'),
    )
    .option(...ALLOW_OUTSIDE)
    .action(async (paths: readonly string[], { port, allowOutside }: OpenOptions) => {
      if (!(await exists(join(APP, 'index.html')))) {
        throw new InputError('the workbench is not built', { file: APP }, 'run "npm run build" first');
      }
      const { url } = await serve(APP, await servedFiles(paths, { allowOutside }), port).catch(
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

/** A study with what it names, or tables as the sources of a study that is to be. */
export async function servedFiles(
  paths: readonly string[],
  options: ReadStudyOptions = {},
): Promise<ServedStudy | null> {
  const [first] = paths;
  if (first === undefined) return null;
  if (paths.every(isTable)) return await servedTables(paths);
  if (paths.length === 1) return await servedStudy(first, options);
  throw new InputError(
    'only tables can be opened together',
    { file: paths.find((path) => !isTable(path)) ?? first },
    'name one study file, or tables as CSV, TSV or XLSX',
  );
}

function isTable(path: string): boolean {
  return ['.csv', '.tsv', '.txt', '.xlsx', '.parquet'].includes(extname(path).toLowerCase());
}

/** Each table with the profile that lies beside it. */
async function servedTables(paths: readonly string[]): Promise<ServedStudy> {
  const files = new Map<string, Uint8Array>();
  const sources: { file: string; profile?: string }[] = [];
  for (const path of paths) {
    const file = basename(path);
    if (files.has(file))
      throw new InputError('two tables have this name', { file }, 'give one of them another name');
    files.set(file, await readBytes(path));
    const profile = `${basename(path, extname(path))}.profile.json`;
    const beside = join(dirname(path), profile);
    const known = await exists(beside);
    if (known) files.set(profile, await readBytes(beside));
    sources.push(known ? { file, profile } : { file });
  }
  const study = { title: 'Untitled study', sources, analyses: [] };
  return { study: 'study.json', text: JSON.stringify(study), files };
}

async function servedStudy(path: string, options: ReadStudyOptions): Promise<ServedStudy> {
  const { files } = await readStudy(path, options);
  return { study: path, text: await readText(path), files };
}

function readPort(text: string): number {
  const port = Number(text);
  if (/^\d{1,5}$/.test(text) && port <= 65535) return port;
  throw new InputError(`--port ${text} is no port`, {}, 'give a whole number from 0 to 65535');
}
