import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command } from 'commander';
import { printCount } from '../../analyses/phrasing.ts';
import { InputError } from '../../errors.ts';
import { writeWholeFiles } from '../../report/writing/whole-files.ts';
import { exists } from '../files.ts';
import { readStudy } from '../study-on-disk.ts';
import { untilStopped } from '../until-stopped.ts';
import type { Verb } from './verb.ts';

/** The invented demo lies in datasets/demo, whether this file runs from dist/cli/verbs or from src/cli/verbs. */
const demoFile = (file: string) => fileURLToPath(new URL(`../../../datasets/demo/${file}`, import.meta.url));

/** `thrum demo FOLDER`: the demo study and its tables, to try things on. */
export const demoVerb: Verb = (terminal) =>
  new Command('demo')
    .description('write the demo study, invented finds of an invented coast, to try things on')
    .argument('[folder]', 'folder to write into', 'thrum-demo')
    .option('--hard-cases', 'instead the seventeen pieces that a plain catalogue trips over, and their study')
    .action(async (folder: string, { hardCases }: { readonly hardCases?: boolean }) => {
      const from = demoFile(hardCases === true ? 'hard-cases-study.json' : 'study.json');
      const study = join(folder, 'study.json');
      if (await exists(study))
        throw new InputError('this file is there already', { file: study }, 'name another folder');
      const { files } = await readStudy(from);
      const written = [...files].map(([name, bytes]) => [join(folder, name), bytes] as const);
      await untilStopped(async (stop) =>
        writeWholeFiles([[study, await readFile(from)], ...written], { stop }),
      );
      terminal.out(
        `Written: the demo study and ${printCount(written.length, 'file', 'files')} that it names, in ${folder}\n`,
      );
      terminal.out(`thrum run ${study} --out ${join(folder, 'out')} computes it.\n`);
    });
