import { Command } from 'commander';
import type { Register } from '../../attributes/definition.ts';
import { matchAttribute } from '../../attributes/matching.ts';
import { InputError } from '../../errors.ts';
import { checkStudy, entriesOf, studyRegister } from '../../study/load.ts';
import { suggest } from '../../study/near-matches.ts';
import { firstFault, prepareStudy } from '../../study/prepare.ts';
import { analyseOne } from '../../study/run-study.ts';
import type { AnalysisEntry, Study } from '../../study/schema.ts';
import { readStudy } from '../files.ts';
import { printAnalysis } from '../print-results.ts';
import { printJson, type Verb } from './verb.ts';

interface PlaceOptions {
  readonly find: readonly string[];
  readonly analysis?: string;
  readonly json?: true;
  readonly trace?: true;
}

/** `thrum place STUDY.json --find "attribute=value" …`: where one find sits among a study's records. */
export const placeVerb: Verb = (terminal) =>
  new Command('place')
    .description('place one find among the records of a study')
    .argument('<study>', 'study file (JSON)')
    .option(
      '--find <attribute=value>',
      'one reading of the find, as it would stand in a table; repeat for more',
      (value: string, before: readonly string[]) => [...before, value],
      [],
    )
    .option('--analysis <id>', 'placement of the study whose settings are used; the first one if left out')
    .option('--json', 'print the result as JSON')
    .action(async (path: string, options: PlaceOptions) => {
      const onDisk = await readStudy(path);
      const find = readFind(options.find, studyRegister(onDisk.study));
      const entry = placementEntry(onDisk.study, options.analysis, path);
      const study = checkStudy({ ...onDisk.study, analyses: [{ ...entry, find }] }, path);
      const prepared = prepareStudy(study, onDisk.files, terminal.progress);
      const fault = firstFault(prepared);
      if (fault !== null) throw fault;
      const result = analyseOne(prepared, entriesOf(study)[0], onDisk.files, {
        onProgress: terminal.progress,
        onFault: (_id, fault) => {
          throw fault;
        },
      });
      terminal.endProgress();
      if (result.why !== undefined)
        throw new InputError(result.why, { file: path }, 'change the find or the study');
      if (options.json) printJson(terminal, result);
      else printAnalysis(terminal, entry.id, result, ALL_TABLES);
    });

const ALL_TABLES = Number.POSITIVE_INFINITY;

/** "rowSpacing=c. 32 mm" and the like, with the attribute given by id or by any exact synonym. */
function readFind(parts: readonly string[], register: Register): Record<string, string> {
  if (parts.length === 0) {
    throw new InputError('no --find is given', {}, 'add one such as --find "rowSpacing=c. 32 mm"');
  }
  const pairs = parts.map((part): [string, string] => {
    const cut = part.indexOf('=');
    if (cut < 1) {
      throw new InputError(`--find "${part}" has no "="`, {}, 'write it as "attribute=value"');
    }
    return [attributeOf(part.slice(0, cut).trim(), register), part.slice(cut + 1).trim()];
  });
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
