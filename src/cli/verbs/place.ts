import { basename } from 'node:path';
import { Command, Option } from 'commander';
import { printLevel, printNumber } from '../../analyses/phrasing.ts';
import type { Register } from '../../attributes/definition.ts';
import { matchAttribute } from '../../attributes/matching.ts';
import { suggest } from '../../attributes/near-matches.ts';
import { InputError } from '../../errors.ts';
import { parseJson } from '../../sources/formats/parse-json.ts';
import { checkProfile } from '../../sources/profile/profile.ts';
import { recordsOf, setsInShort } from '../../study/finds-table.ts';
import { listedFinds } from '../../study/listed-finds.ts';
import { checkStudy, entriesOf, studyRegister } from '../../study/load.ts';
import { firstFault, type Prepared, prepareStudy } from '../../study/prepare.ts';
import type { AnalysisResult } from '../../study/results/results.ts';
import { analyseOne } from '../../study/run-study.ts';
import type { AnalysisEntry, Study } from '../../study/schema.ts';
import { askingOnly } from '../../study/some-asked.ts';
import { STATUS } from '../failure.ts';
import { readBytes, readText } from '../files.ts';
import { printAnalysis } from '../print-results.ts';
import { readStudy, type StudyOnDisk } from '../study-on-disk.ts';
import type { Terminal } from '../terminal.ts';
import { tame } from '../text-table.ts';
import { ALLOW_OUTSIDE, printJson, type Verb } from './verb.ts';

interface PlaceOptions {
  readonly find: readonly string[];
  readonly finds?: string;
  readonly profile?: string;
  readonly analysis?: string;
  readonly json?: true;
  readonly allowOutside?: true;
  readonly trace?: true;
}

/** `thrum place STUDY.json --find "attribute=value" …` or `--finds FILE.csv`: where finds sit among a study's records. */
export const placeVerb: Verb = (terminal, setStatus) =>
  new Command('place')
    .description('place one find, or a table of finds, among the records of a study')
    .argument('<study>', 'study file (JSON)')
    .addOption(
      new Option(
        '--find <attribute=value>',
        'one reading of the find, as it would stand in a table; repeat for more',
      )
        .argParser((value: string, before: readonly string[]) => [...before, value])
        .default([], 'none'),
    )
    .option('--finds <file>', 'CSV of many finds, one a row, headed by attributes; prints one line a find')
    .option(
      '--profile <file>',
      'source profile of the table of finds, as `thrum read --save-profile` writes it',
    )
    .option('--analysis <id>', 'placement of the study whose settings are used; the first one if left out')
    .option('--json', 'print the result as JSON')
    .option(...ALLOW_OUTSIDE)
    .action(async (path: string, options: PlaceOptions) => {
      const onDisk = await readStudy(path, options);
      if (options.finds !== undefined) {
        await placeMany(terminal, onDisk, options.finds, options);
        return;
      }
      const find = readFind(options.find, studyRegister(onDisk.study));
      const entry = placementEntry(onDisk.study, options.analysis, path);
      const study = checkStudy(askingOnly(onDisk.study, [{ ...entry, find }]), path);
      const result = placeOne(preparedFor(study, onDisk, terminal), entriesOf(study)[0], onDisk, terminal);
      terminal.endProgress();
      if (result.why !== undefined)
        throw new InputError(result.why, { file: path }, 'change the find or the study');
      if (options.json) printJson(terminal, result);
      else printAnalysis(terminal, entry.id, result, { detail: 'full' });
      if (Object.keys(result.tables).length === 0) {
        const what = result.words.answer.replace(/\.$/, '').toLowerCase();
        terminal.err(
          `${new InputError(what, { file: path }, 'give readings that the records have too').message}\n`,
        );
        setStatus(STATUS.badInput);
      }
    });

function preparedFor(study: Study, onDisk: StudyOnDisk, terminal: Terminal): Prepared {
  const prepared = prepareStudy(study, onDisk.files, {
    sheets: onDisk.sheets,
    onProgress: terminal.progress,
  });
  const fault = firstFault(prepared);
  if (fault !== null) throw fault;
  return prepared;
}

function placeOne(
  prepared: Prepared,
  entry: AnalysisEntry,
  { files }: StudyOnDisk,
  terminal: Terminal,
): AnalysisResult {
  return analyseOne(prepared, entry, files, {
    onProgress: terminal.progress,
    onFault: (_id, fault) => {
      throw fault;
    },
  });
}

/** Every find of a table on the same material, read once. */
async function placeMany(
  terminal: Terminal,
  onDisk: StudyOnDisk,
  finds: string,
  options: PlaceOptions,
): Promise<void> {
  if (options.find.length > 0)
    throw new InputError('both --find and --finds are given', {}, 'give one find, or a table of finds');
  const profile =
    options.profile === undefined
      ? undefined
      : checkProfile(parseJson(await readText(options.profile), options.profile), options.profile);
  const listed = listedFinds(await readBytes(finds), basename(finds), studyRegister(onDisk.study), profile);
  const entry = placementEntry(onDisk.study, options.analysis, onDisk.path);
  const all = Object.assign({}, ...listed.finds.map(({ given }) => given)) as Record<string, string>;
  const study = checkStudy(askingOnly(onDisk.study, [{ ...entry, find: all }]), onDisk.path);
  const prepared = preparedFor(study, onDisk, terminal);
  const placed = listed.finds.map((find) => ({
    ...find,
    result: placeOne(prepared, { ...entriesOf(study)[0], find: find.given }, onDisk, terminal),
  }));
  terminal.endProgress();
  for (const note of listed.notes) terminal.err(`${tame(note)}\n`);
  if (options.json) printJson(terminal, { finds: placed, notes: listed.notes });
  else for (const { name, result } of placed) terminal.out(`${tame(`${name}: ${inOneLine(result)}`)}\n`);
}

/** Nearest comparandum, then per attribute the labels that cannot be excluded; why not, where there is none. */
function inOneLine(result: AnalysisResult): string {
  const nearest = recordsOf(result.tables.neighbours)[0];
  if (nearest === undefined) return result.words.answer;
  const from = nearest.assemblage === '' ? '' : ` (${nearest.assemblage})`;
  const sets = setsInShort(result).map(
    ({ attribute, level, said }) => `${attribute} not excluded at ${printLevel(level)}: ${said}`,
  );
  return [`nearest ${nearest.id}${from}, distance ${printNumber(Number(nearest.distance))}`, ...sets].join(
    '; ',
  );
}

/** "rowSpacing=c. 32 mm" and the like, with the attribute given by id or by any exact synonym. */
function readFind(parts: readonly string[], register: Register): Record<string, string> {
  if (parts.length === 0) {
    throw new InputError(
      'no --find is given',
      {},
      'add one such as --find "rowSpacing=c. 32 mm", or a table with --finds',
    );
  }
  const pairs = parts.map((part): [string, string] => {
    const cut = part.indexOf('=');
    if (cut < 1) {
      throw new InputError(`--find "${part}" has no "="`, {}, 'write it as "attribute=value"');
    }
    return [attributeOf(part.slice(0, cut).trim(), register), part.slice(cut + 1).trim()];
  });
  const twice = pairs.find(([id], place) => pairs.findIndex(([other]) => other === id) < place);
  if (twice !== undefined)
    throw new InputError(
      `--find gives "${twice[0]}" twice`,
      {},
      'give each attribute once, a doubt as a range such as "3-4"',
    );
  return Object.fromEntries(pairs);
}

function attributeOf(name: string, register: Register): string {
  if (register.attributes.has(name)) return name;
  const match = matchAttribute(name, register);
  if (match.kind === 'exact') return match.id;
  throw new InputError(
    `there is no attribute "${name}" (--find)`,
    {},
    match.kind === 'suggested'
      ? `write "${match.id}" if that is meant`
      : suggest(name, register.attributes.keys(), 'name an attribute of the study'),
  );
}

function placementEntry(study: Study, wanted: string | undefined, file: string): AnalysisEntry {
  const entries = entriesOf(study).filter((entry) => entry.kind === 'placement');
  const entry = wanted === undefined ? entries[0] : entries.find(({ id }) => id === wanted);
  if (entry !== undefined) return entry;
  if (wanted !== undefined) {
    throw new InputError(
      `the study has no placement called "${wanted}"`,
      { file },
      entries.length > 0 ? `use one of ${entries.map(({ id }) => id).join(', ')}` : 'leave --analysis out',
    );
  }
  return { id: 'placement', kind: 'placement' };
}
