import { strToU8, Zip, ZipDeflate } from 'fflate';
import { InputError } from '../errors.ts';
import { PACKAGED_PROFILE, PACKAGED_STUDY, PACKAGED_TABLE } from '../report/packaged-names.ts';
import { safeNames } from './archive-names.ts';
import { type StudyDocument, studyText, type Workspace } from './state/workspace.ts';

/** Files carry no time of their own, so that the same study gives the same archive. */
const NO_TIME = new Date(1980, 0, 1);
const STUDY = 'study.json';
/** Beyond these the archive would not open everywhere: the plain form of the format counts in 16 and 32 bits. */
export const LARGEST_ARCHIVE = { parts: 65_535, total: 0xffff_ffff } as const;

/**
 * A study with everything it rests on and everything it gave, as one ZIP: study.json with its tables,
 * profiles and rules side by side, as `thrum run` and the workbench take them, and what it wrote in `out/`.
 * Names that would lead out of the folder in which it is unpacked, or that some system does not allow, are
 * changed, in the study as well.
 *
 * @param restricted records that a source withholds or shows without their place: with any, no table, profile or rule goes
 * into the archive, since they name what is withheld; the study in it asks the normalised table, from which it is gone.
 * @throws InputError where there is more than an archive holds.
 */
export function archive(
  workspace: Workspace,
  written: ReadonlyMap<string, string>,
  restricted = 0,
): Uint8Array {
  const results = [...written].map(([name, text]) => [`out/${name}`, strToU8(text)] as const);
  if (restricted > 0) return zip([...withoutSources(written, restricted), ...results]);
  const names = safeNames([...workspace.files.keys()], [STUDY, ...results.map(([name]) => name)]);
  const study = withNames(workspace.study, names) as StudyDocument;
  return zip([
    [STUDY, strToU8(studyText(study))],
    ...[...workspace.files].map(([name, bytes]) => [names.get(name)!, bytes] as const),
    ...results,
  ]);
}

/** The study of the normalised table as the study, its table and profile beside it, and why nothing else is. */
function withoutSources(
  written: ReadonlyMap<string, string>,
  restricted: number,
): (readonly [string, Uint8Array])[] {
  const beside = [PACKAGED_TABLE, PACKAGED_PROFILE].flatMap((name) => {
    const text = written.get(name);
    return text === undefined ? [] : [[name, strToU8(text)] as const];
  });
  const why = `Of ${restricted} ${restricted === 1 ? 'record' : 'records'} the source withholds the whole or the place. The tables, profiles and rules of the study name what is withheld and are left out; study.json asks the normalised table, from which it is gone.\n`;
  return [[STUDY, strToU8(written.get(PACKAGED_STUDY) ?? '{}')], ...beside, ['left-out.txt', strToU8(why)]];
}

/** Texts of a study that are names of its files, under their new names. */
function withNames(value: unknown, names: ReadonlyMap<string, string>): unknown {
  if (typeof value === 'string') return names.get(value) ?? value;
  if (Array.isArray(value)) return value.map((part) => withNames(part, names));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, withNames(part, names)]));
}

/** Entry by entry: as keys of an object some names, such as "__proto__", would be lost. */
function zip(entries: readonly (readonly [name: string, bytes: Uint8Array])[]): Uint8Array {
  const total = entries.reduce((sum, [, bytes]) => sum + bytes.length, 0);
  if (entries.length > LARGEST_ARCHIVE.parts || total > LARGEST_ARCHIVE.total)
    throw new InputError(
      `the study has ${entries.length} files of ${Math.ceil(total / 2 ** 20)} MB, more than one archive holds`,
      {},
      'save the study, its tables and the results one by one',
    );
  const chunks: Uint8Array[] = [];
  const out = new Zip((fault, chunk) => {
    if (fault !== null) throw fault;
    chunks.push(chunk);
  });
  for (const [name, bytes] of entries) {
    const entry = new ZipDeflate(name);
    entry.mtime = NO_TIME;
    out.add(entry);
    entry.push(bytes, true);
  }
  out.end();
  return joined(chunks);
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
