import type { NumericColumn, TermColumn } from '../../src/fragments/table.ts';
import { checkStudy, studyFiles } from '../../src/study/load.ts';
import { type Prepared, prepareStudy } from '../../src/study/prepare.ts';
import type { Study } from '../../src/study/schema.ts';
import { askingOnly } from '../../src/study/some-asked.ts';
import { demoBytes, demoText } from './truth.ts';

/** The demo's study with its files, read once for all test files of a worker. */
export interface Demo {
  readonly study: Study;
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly prepared: Prepared;
}

const read = new Map<string, Demo>();

/** @param ids the analyses to keep, none by default; reading is the same whatever is asked afterwards. */
export function prepareDemo(ids: readonly string[] = []): Demo {
  const key = ids.join(' ');
  const kept = read.get(key) ?? readDemo(ids);
  read.set(key, kept);
  return kept;
}

function readDemo(ids: readonly string[]): Demo {
  const whole = JSON.parse(demoText('study.json')) as {
    readonly analyses: readonly { readonly id: string }[];
    readonly brief?: readonly string[];
  };
  const asked = whole.analyses.filter(({ id }) => ids.includes(id));
  const study = checkStudy(askingOnly(whole, asked), 'study.json');
  // All that the demo names: a question asked otherwise may name a file of another.
  const files = new Map(
    studyFiles(checkStudy(whole, 'study.json')).map((file) => [file, demoBytes(file)] as const),
  );
  return { study, files, prepared: prepareStudy(study, files) };
}

export function numericColumn({ prepared }: Demo, id: string): NumericColumn {
  const column = prepared.all.columns.get(id);
  if (column?.kind !== 'numeric') throw new Error(`no numbers under "${id}"`);
  return column;
}

export function termColumn({ prepared }: Demo, id: string): TermColumn {
  const column = prepared.all.columns.get(id);
  if (column?.kind !== 'term') throw new Error(`no kinds under "${id}"`);
  return column;
}
