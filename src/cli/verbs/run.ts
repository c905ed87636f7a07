import { join } from 'node:path';
import { Command } from 'commander';
import { printCount, printList } from '../../analyses/phrasing.ts';
import { InputError } from '../../errors.ts';
import { tryResultsFolder, writeReport } from '../../report/write.ts';
import type { SetWritten } from '../../report/writing/write-set.ts';
import { firstFault, prepareStudy } from '../../study/prepare.ts';
import { serializeResults } from '../../study/results/json.ts';
import { describeFailure, STATUS } from '../failure.ts';
import { printDuplicates } from '../print-duplicates.ts';
import { printResults } from '../print-results.ts';
import { readStudy } from '../study-on-disk.ts';
import { tame } from '../text-table.ts';
import { analyseSideBySide } from '../threads/analyse-side-by-side.ts';
import { startCrew } from '../threads/crew.ts';
import { untilStopped } from '../until-stopped.ts';
import { ALLOW_OUTSIDE, type Verb } from './verb.ts';

interface RunOptions {
  readonly out: string;
  readonly json?: true;
  readonly report: boolean;
  readonly static?: true;
  readonly parquet?: true;
  readonly figures?: true;
  readonly full?: true;
  readonly quiet?: true;
  readonly allowOutside?: true;
  readonly trace?: true;
  readonly threads?: number;
}

/** With more rows than these each further thread may take a gigabyte or two, which nobody has asked for by default. */
const MANY = 50_000;

/** Share of the progress line that reading takes. */
const READING = 0.3;

/** `thrum run STUDY.json --out DIR`: every analysis of a study, written down and summarised. */
export const runVerb: Verb = (terminal, setStatus) =>
  new Command('run')
    .description(
      'compute a study: results.json, a report, a brief of two pages, tables as CSV and a data package',
    )
    .argument('<study>', 'study file (JSON)')
    .option('--out <folder>', 'folder to write into', 'out')
    .option('--no-report', 'write results.json alone')
    .option('--static', 'a report without the plotting code: smaller, its figures as they are printed')
    .option('--parquet', 'the normalised table as fragments.parquet, too')
    .option('--figures', 'every figure as SVG and PDF for print too, 84 and 174 mm wide')
    .option('--full', 'print every table and everything that could change an answer, too')
    .option('--quiet', 'print the answers alone')
    .option('--json', 'print the results as JSON instead of a summary')
    .option(
      '--threads <number>',
      'compute on so many cores at most; all of them if left out, one where the tables are large',
      coresOf,
    )
    .option(...ALLOW_OUTSIDE)
    .action(async (path: string, options: RunOptions) => {
      const report = !options.report ? 'none' : options.static ? 'static' : 'live';
      const { study, files, sheets, inputs, large } = await readStudy(path, options);
      if (large !== null) terminal.err(`${large}\n`);
      const crew = startCrew(study, options.threads ?? (large === null ? undefined : 1));
      const onWait = () => terminal.err(`Waiting for another run that writes into ${options.out}.\n`);
      const answer = async () => {
        const prepared = prepareStudy(study, files, {
          sheets,
          onProgress: (share, what) => terminal.progress(share * READING, what),
        });
        const fault = firstFault(prepared);
        if (fault !== null) throw fault;
        if (options.threads === undefined && prepared.all.rows > MANY) crew.dismiss();
        // Before the long computing, not after it.
        await untilStopped((stop) => tryResultsFolder(options.out, report, { stop, onWait }));
        const results = await analyseSideBySide(prepared, files, crew, {
          onProgress: (share, what) => terminal.progress(READING + share * (1 - READING), what),
          onFault: (id, fault) => {
            terminal.err(`${id}: ${describeFailure(fault, options.trace ?? false).text}`);
            setStatus(STATUS.badInput);
          },
        });
        return { prepared, results };
      };
      const { prepared, results } = await answer().finally(crew.dismiss);
      terminal.progress(1, 'writing');
      const set = await untilStopped((stop) =>
        writeReport({
          prepared,
          results,
          folder: options.out,
          report,
          parquet: options.parquet === true,
          figures: options.figures === true,
          inputs,
          stop,
          onWait,
        }),
      );
      terminal.endProgress();
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
      say(`\n${writtenSentences(set, options.out).join('\n')}\n`);
    });

function coresOf(text: string): number {
  if (/^[1-9]\d{0,3}$/.test(text)) return Number(text);
  throw new InputError(
    `--threads wants a whole number from 1 to 9999, not "${text}"`,
    {},
    'write --threads 1',
  );
}

/** The files by name, the many tables by their folder; then what went, and what else lies there. */
function writtenSentences({ written, takenAway, stays, finished }: SetWritten, folder: string): string[] {
  const within = (part: string) => written.filter((name) => name.startsWith(`${part}/`));
  const [tables, figures] = [within('tables'), within('figures')];
  const apart = new Set([...tables, ...figures]);
  const files = written.filter((name) => !apart.has(name)).map((name) => join(folder, name));
  if (tables.length > 0)
    files.push(`${printCount(tables.length, 'table')} as CSV in ${join(folder, 'tables')}`);
  if (figures.length > 0)
    files.push(`${printCount(figures.length, 'file')} of figures in ${join(folder, 'figures')}`);
  return [
    ...(finished
      ? ['An earlier run was stopped while it put its files in place; they were put right first.']
      : []),
    `Written: ${printList(files)}`,
    ...(takenAway.length > 0 ? [`Taken away, of the run before: ${shortList(takenAway)}`] : []),
    ...(stays.length > 0 ? [`Not of this run, and left as it is: ${shortList(stays)}`] : []),
  ];
}

const MOST_NAMED = 5;

function shortList(names: readonly string[]): string {
  const more = names.length - MOST_NAMED;
  const named = names.slice(0, MOST_NAMED).map(tame);
  return printList(more > 0 ? [...named, `${more} more`] : named);
}
