import { basename, dirname, join, resolve } from 'node:path';
import { Command, Option } from 'commander';
import { checkClaims } from '../../analyses/claims/index.ts';
import { type ClaimsOptions, claimsOptions } from '../../analyses/claims/options.ts';
import { claimsTemplate } from '../../analyses/claims/reading/template.ts';
import { InputError } from '../../errors.ts';
import { createRandom } from '../../numerics/foundation/random.ts';
import { claimsCsv, claimsJson } from '../../report/claims-data.ts';
import { claimsLetter } from '../../report/claims-letter.ts';
import { renderClaimsPage } from '../../report/claims-page.ts';
import { writeWholeFiles } from '../../report/writing/whole-files.ts';
import { entriesOf } from '../../study/load.ts';
import { firstFault, type Prepared, prepareStudy } from '../../study/prepare.ts';
import { STATUS } from '../failure.ts';
import { readBytes } from '../files.ts';
import { printClaims } from '../print-claims.ts';
import { readStudy, type StudyOnDisk } from '../study-on-disk.ts';
import { untilStopped } from '../until-stopped.ts';
import { ALLOW_OUTSIDE, printJson, type Verb } from './verb.ts';

interface CheckOptions {
  readonly study?: string;
  readonly table: readonly string[];
  readonly template?: true;
  readonly json?: true;
  readonly allowOutside?: true;
  readonly csv?: string;
  readonly markdown?: string;
  readonly html?: string;
  readonly strict?: true;
  readonly paper?: string;
}

/** `thrum check CLAIMS.csv`: printed figures held against each other and, with a study, against the data. */
export const checkVerb: Verb = (terminal, setStatus) =>
  new Command('check')
    .description('check printed figures: which agree, which cannot be, which cannot be checked')
    .argument('[claims]', 'CSV with one printed figure a row')
    .option('--study <file>', 'study whose data the figures are recomputed from')
    .addOption(
      new Option('--table <file>', 'a whole printed table as CSV; repeat for more')
        .argParser((value: string, before: readonly string[]) => [...before, value])
        .default([], 'none'),
    )
    .option('--template', 'print a claims file to fill in')
    .option('--json', 'print the verdicts as JSON')
    .option(...ALLOW_OUTSIDE)
    .option('--csv <file>', 'write the verdicts as a table')
    .option('--markdown <file>', 'write a list for a letter to the author')
    .option('--html <file>', 'write a page with the working of each figure')
    .option('--paper <text>', 'title and source of the paper, for the letter and the page')
    .option('--strict', 'leave with 1 also when a figure differs')
    .action(async (path: string | undefined, options: CheckOptions) => {
      if (options.template) {
        terminal.out(claimsTemplate());
        return;
      }
      if (path === undefined && options.table.length === 0)
        throw new InputError(
          'no claims file and no printed table is named',
          {},
          '"thrum check --template" prints a claims file to fill in',
        );
      const onDisk = options.study === undefined ? null : await readStudy(options.study, options);
      const asked = await askedOf(path, options, onDisk);
      const prepared =
        onDisk === null
          ? null
          : prepareStudy(onDisk.study, onDisk.files, {
              sheets: onDisk.sheets,
              onProgress: terminal.progress,
            });
      const fault = prepared === null ? null : firstFault(prepared);
      if (fault !== null) throw fault;
      const found = checkClaims(
        asked.files,
        asked.options,
        createRandom(prepared?.study.seed ?? 1).stream(asked.id),
        prepared === null ? null : { ...materialOf(prepared), onProgress: terminal.progress },
      );
      terminal.endProgress();
      const written: [file: string, text: string][] = [];
      if (options.csv !== undefined) written.push([options.csv, claimsCsv(found)]);
      if (options.markdown !== undefined) written.push([options.markdown, claimsLetter(found)]);
      if (options.html !== undefined)
        written.push([options.html, renderClaimsPage(found, basename(path ?? options.table[0]))]);
      const inputs = [...asked.files.keys(), ...(onDisk?.inputs ?? [])];
      await untilStopped((stop) => writeWholeFiles(written, { inputs, stop }));
      if (options.json) printJson(terminal, claimsJson(found));
      else printClaims(terminal, found);
      const say = options.json ? terminal.err : terminal.out;
      if (written.length > 0) say(`Written: ${written.map(([file]) => file).join(', ')}\n`);
      const differing = options.strict ? found.counts.differs : 0;
      if (found.counts['cannot be'] + differing > 0) setStatus(STATUS.found);
    });

interface Asked {
  /** Name of the analysis: chance comes out as in a run of the study. */
  readonly id: string;
  readonly options: ClaimsOptions;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

function materialOf({ fragments, records, register, unit }: Prepared) {
  return { fragments, records, register, unit };
}

/**
 * The claims file and its tables. A study that names this claims file among its analyses says which tables
 * go with it and what they are of.
 */
async function askedOf(
  path: string | undefined,
  options: CheckOptions,
  study: StudyOnDisk | null,
): Promise<Asked> {
  const folder = dirname(options.study ?? '.');
  const own = (study === null || path === undefined ? [] : entriesOf(study.study)).find(
    (entry) => entry.kind === 'claims' && resolve(folder, String(entry.file)) === resolve(path ?? ''),
  );
  const known = ((own?.tables ?? []) as ClaimsOptions['tables']).map((table) => ({
    ...table,
    file: join(folder, table.file),
  }));
  const tables =
    options.table.length === 0
      ? known
      : options.table.map((file) => ({
          ...known.find((table) => resolve(table.file) === resolve(file)),
          file,
        }));
  const files = new Map<string, Uint8Array>();
  for (const name of [...(path === undefined ? [] : [path]), ...tables.map(({ file }) => file)])
    files.set(name, await readBytes(name));
  const paper = options.paper ?? own?.paper;
  const asked = claimsOptions.parse({
    ...(path === undefined ? {} : { file: path }),
    ...(paper === undefined ? {} : { paper }),
    tables,
  });
  return { id: own?.id ?? 'claims', options: asked, files };
}
