import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Command } from 'commander';
import { printCount, printList } from '../../analyses/phrasing.ts';
import { makeFolder, writeReport } from '../../report/write.ts';
import { firstFault, prepareStudy } from '../../study/prepare.ts';
import { serializeResults } from '../../study/results-json.ts';
import { analyse } from '../../study/run-study.ts';
import { describeFailure, STATUS } from '../failure.ts';
import { readStudy } from '../files.ts';
import { printDuplicates } from '../print-duplicates.ts';
import { printResults } from '../print-results.ts';
import type { Verb } from './verb.ts';

interface RunOptions {
  readonly out: string;
  readonly json?: true;
  readonly report: boolean;
  readonly full?: true;
  readonly quiet?: true;
  readonly trace?: true;
}

/** Share of the progress line that reading takes. */
const READING = 0.3;

/** `thrum run STUDY.json --out DIR`: every analysis of a study, written down and summarised. */
export const runVerb: Verb = (terminal, setStatus) =>
  new Command('run')
    .description('compute a study: results.json, one HTML report, tables as CSV and a data package')
    .argument('<study>', 'study file (JSON)')
    .option('--out <folder>', 'folder to write into', 'out')
    .option('--no-report', 'write results.json alone')
    .option('--full', 'print every table and everything that could change an answer, too')
    .option('--quiet', 'print the answers alone')
    .option('--json', 'print the results as JSON instead of a summary')
    .action(async (path: string, options: RunOptions) => {
      const { study, files, sheets } = await readStudy(path);
      const prepared = prepareStudy(study, files, {
        sheets,
        onProgress: (share, what) => terminal.progress(share * READING, what),
      });
      const fault = firstFault(prepared);
      if (fault !== null) throw fault;
      // Before the long computing, not after it.
      await makeFolder(options.out);
      const results = analyse(prepared, files, {
        onProgress: (share, what) => terminal.progress(READING + share * (1 - READING), what),
        onFault: (id, fault) => {
          terminal.err(`${id}: ${describeFailure(fault, options.trace ?? false).text}`);
          setStatus(STATUS.badInput);
        },
      });
      terminal.progress(1, 'writing');
      const written = await writeReport({ prepared, results, folder: options.out, report: options.report });
      terminal.endProgress();
      const older = join(options.out, 'report.html');
      if (!options.report && existsSync(older))
        terminal.err(`${older} is of an earlier run and does not show these results.\n`);
      if (options.json) terminal.out(serializeResults(results));
      else {
        const detail = options.full ? 'full' : options.quiet ? 'quiet' : 'brief';
        printResults(terminal, results, {
          detail,
          ...(options.report ? { report: join(options.out, 'report.html') } : {}),
        });
        if (detail !== 'quiet') printDuplicates(terminal, prepared.duplicates);
      }
      const say = options.json ? terminal.err : terminal.out;
      say(`\n${writtenSentence(written, options.out)}\n`);
    });

/** The files by name, the many tables by their folder. */
function writtenSentence(written: readonly string[], folder: string): string {
  const tables = written.filter((name) => name.startsWith('tables/'));
  const files = written.filter((name) => !tables.includes(name)).map((name) => join(folder, name));
  if (tables.length > 0)
    files.push(`${printCount(tables.length, 'table')} as CSV in ${join(folder, 'tables')}`);
  return `Written: ${printList(files)}`;
}
