import { basename, dirname, join, resolve } from 'node:path';
import { Command, Option } from 'commander';
import { checkClaims } from '../../analyses/claims/compute.ts';
import { type ClaimsOptions, claimsOptions } from '../../analyses/claims/options.ts';
import { claimsTemplate } from '../../analyses/claims/reading/template.ts';
import { InputError } from '../../errors.ts';
import { createRandom } from '../../numerics/foundation/random.ts';
import { claimsCsv, claimsJson } from '../../report/claims-data.ts';
import { claimsLetter } from '../../report/claims-letter.ts';
import { renderClaimsPage } from '../../report/claims-page.ts';
import { writeOut } from '../../report/write.ts';
import { entriesOf } from '../../study/load.ts';
import { firstFault, type Prepared, prepareStudy } from '../../study/prepare.ts';
import { STATUS } from '../failure.ts';
import { readBytes, readStudy, type StudyOnDisk } from '../files.ts';
import { printClaims } from '../print-claims.ts';
import { printJson, type Verb } from './verb.ts';

interface CheckOptions {
  readonly study?: string;
  readonly table: readonly string[];
  readonly template?: true;
  readonly json?: true;
  readonly csv?: string;
  readonly markdown?: string;
  readonly html?: string;
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
    .option('--csv <file>', 'write the verdicts as a table')
    .option('--markdown <file>', 'write a list for a letter to the author')
    .option('--html <file>', 'write a page with the working of each figure')
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
      const onDisk = options.study === undefined ? null : await readStudy(options.study);
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
      const written: string[] = [];
      if (options.csv !== undefined) {
        await writeOut(options.csv, claimsCsv(found));
        written.push(options.csv);
      }
      if (options.markdown !== undefined) {
        await writeOut(options.markdown, claimsLetter(found));
        written.push(options.markdown);
      }
      if (options.html !== undefined) {
        await writeOut(options.html, renderClaimsPage(found, basename(path ?? options.table[0])));
        written.push(options.html);
      }
      if (options.json) printJson(terminal, claimsJson(found));
      else printClaims(terminal, found);
      const say = options.json ? terminal.err : terminal.out;
      if (written.length > 0) say(`Written: ${written.join(', ')}\n`);
      if (found.counts['cannot be'] > 0) setStatus(STATUS.found);
    });

interface Asked {
  /** Name of the analysis: chance comes out as in a run of the study. */
  readonly id: string;
  readonly options: ClaimsOptions;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

function materialOf({ fragments, records, register, study }: Prepared) {
  return { fragments, records, register, unit: study.unit };
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
  const asked = claimsOptions.parse({ ...(path === undefined ? {} : { file: path }), tables });
  return { id: own?.id ?? 'claims', options: asked, files };
}
