import { Unzip, unzipSync, zipSync } from 'fflate';
import { archive } from '../../src/app/archive.ts';
import { EMPTY_WORKSPACE } from '../../src/app/state/workspace.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import { foreignName } from '../../src/cli/study-paths.ts';
import { InputError } from '../../src/errors.ts';
import type { Random } from '../../src/numerics/foundation/random.ts';
import { readDataPackage } from '../../src/sources/formats/datapackage.ts';
import { readWorkbook } from '../../src/sources/formats/workbook.ts';
import { checkProfile } from '../../src/sources/profile/profile.ts';
import { readSource } from '../../src/sources/read-source.ts';
import { checkStudy, loadStudy } from '../../src/study/load.ts';
import { serializeResults } from '../../src/study/results/json.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { thrum } from '../cli/thrum.ts';
import { lostCells } from '../sources/support.ts';
import { PACKAGE, STUDY, STUDY_FILES, TABLES, workbook } from './material.ts';
import { mutateBytes, mutateText, mutateValue, pick } from './mutate.ts';

/**
 * One try in each mode: something valid is changed by chance and given to Thrum, which may do it or refuse it in
 * one sentence. `given` keeps what was given, for the report of a finding.
 */
export type Mode = (random: Random, given: (what: string | Uint8Array) => void) => void | Promise<void>;

const register = defaultRegister();
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

function readAndCheck(content: Uint8Array): void {
  const reading = readSource(content, { name: 'chance.csv', register });
  if (reading.rowsRead !== reading.rowsKept + reading.rowsSetAside.length)
    throw new Error(
      `${reading.rowsRead} rows read, ${reading.rowsKept} kept, ${reading.rowsSetAside.length} aside`,
    );
  const lost = lostCells(reading);
  if (lost.length > 0) throw new Error(`lost: ${lost[0]}`);
}

function run(study: unknown, files: Readonly<Record<string, string>>): void {
  const faults: unknown[] = [];
  const results = runStudy(
    checkStudy(study, 'study.json'),
    new Map(Object.entries(files).map(([name, text]) => [name, bytes(text)])),
    { onFault: (_, fault) => faults.push(fault) },
  );
  if (faults.length > 0) throw faults[0];
  serializeResults(results);
}

/** The study with one analysis of its own, so that a try takes little time. */
const oneOf = (random: Random) => ({ ...STUDY, analyses: [pick(random, STUDY.analyses)] });

export const MODES: Readonly<Record<string, Mode>> = {
  csv: (random, given) => {
    const text = mutateText(pick(random, TABLES), random);
    given(text);
    readAndCheck(bytes(text));
  },
  bytes: (random, given) => {
    const content = mutateBytes(bytes(pick(random, TABLES)), random);
    given(content);
    readAndCheck(content);
  },
  xlsx: async (random, given) => {
    const parts = unzipSync(workbook());
    const name = pick(random, Object.keys(parts));
    const whole = random.integer(3) === 0;
    const content = whole
      ? mutateBytes(workbook(), random)
      : zipSync({ ...parts, [name]: mutateBytes(parts[name]!, random) });
    given(content);
    await readWorkbook(content, 'chance.xlsx');
  },
  study: (random, given) => {
    const study = mutateValue(oneOf(random), random);
    given(JSON.stringify(study));
    run(study, STUDY_FILES);
  },
  'study text': (random, given) => {
    const text = mutateText(JSON.stringify(STUDY), random);
    given(text);
    loadStudy(text, 'study.json');
  },
  profile: (random, given) => {
    const profile = mutateValue(JSON.parse(STUDY_FILES['finds.profile.json']), random);
    given(JSON.stringify(profile));
    readSource(bytes(STUDY_FILES['finds.csv']), {
      name: 'chance.csv',
      register,
      profile: checkProfile(profile, 'chance.profile.json'),
    });
  },
  rules: (random, given) => {
    const rules = JSON.stringify(mutateValue(JSON.parse(STUDY_FILES['types.json']), random));
    given(rules);
    run({ ...STUDY, analyses: STUDY.analyses.slice(7, 8) }, { ...STUDY_FILES, 'types.json': rules });
  },
  claims: (random, given) => {
    const claims = mutateText(STUDY_FILES['claims.csv'], random);
    given(claims);
    run({ ...STUDY, analyses: STUDY.analyses.slice(8) }, { ...STUDY_FILES, 'claims.csv': claims });
  },
  package: (random, given) => {
    const text =
      random.integer(2) === 0
        ? mutateText(JSON.stringify(PACKAGE), random)
        : JSON.stringify(mutateValue(PACKAGE, random));
    given(text);
    for (const { path, profile } of readDataPackage(text, 'datapackage.json')) {
      if (foreignName(path) !== null) throw new Error(`leads out of the package: ${path}`);
      checkProfile(profile, 'datapackage.json');
    }
  },
  ZIP: (random, given) => {
    const names = Array.from({ length: 4 }, () =>
      mutateText(pick(random, ['../a.csv', 'b/c.csv', 'study.json']), random),
    );
    given(JSON.stringify(names));
    const files = new Map(names.map((name) => [name, bytes('a')]));
    const seen = new Set<string>();
    const reader = new Unzip(({ name }) => {
      if (foreignName(name) !== null || /\p{Cc}/u.test(name))
        throw new Error(`unsafe: ${JSON.stringify(name)}`);
      if (seen.has(name.toLowerCase())) throw new Error(`twice: ${JSON.stringify(name)}`);
      seen.add(name.toLowerCase());
    });
    reader.push(archive({ ...EMPTY_WORKSPACE, files }, new Map()), true);
    if (seen.size !== files.size + 1) throw new Error(`${seen.size} entries of ${files.size + 1}`);
  },
  arguments: async (random, given) => {
    const lines = [
      ['read', 'none.csv', '--json'],
      ['run', 'none.json', '--no-report', '--out', '/dev/null/none'],
      ['place', 'none.json', '--find', 'rowSpacing=3'],
      ['check', 'none.csv', '--json'],
      ['explain', 'none'],
    ];
    const changed = mutateValue(pick(random, lines), random);
    const words = (Array.isArray(changed) ? changed : [changed]).map(String);
    // The workbench would be served and never end; the pipe is nobody's here; nothing is written.
    const line = words.filter((word) => !/^(?:open|demo|-)$/.test(word) && !word.startsWith('--save'));
    given(JSON.stringify(line));
    const { status, err } = await thrum(...line);
    if (![0, 1, 2].includes(status)) throw new Error(`status ${status}`);
    if (status === 2 && err.trim() === '') throw new Error('refused without a word');
    if (/^\s+at .*:\d+:\d+/m.test(err)) throw new Error(`a stack: ${err.slice(0, 300)}`);
  },
};

/** One try: null, or what went wrong. A refusal in one sentence is as it should be. */
export async function tryOnce(
  mode: Mode,
  random: Random,
): Promise<{ readonly fault: Error; readonly input: string | Uint8Array } | null> {
  let input: string | Uint8Array = '';
  try {
    await mode(random, (what) => {
      input = what;
    });
  } catch (fault) {
    if (fault instanceof InputError) return /\n/.test(oneLine(fault)) ? { fault, input } : null;
    return { fault: fault instanceof Error ? fault : new Error(String(fault)), input };
  }
  return null;
}

/** A message may quote a cell with line ends of its own; the sentence around it has none. */
const oneLine = ({ message }: Error): string => message.replace(/"[^"]*"/gs, '""');
