import { useState } from 'react';
import { isPacked } from '../../../study/workbooks.ts';
import type { StudyFileView } from '../../engine/protocol.ts';
import { bytesOf } from '../../files.ts';
import { textsOf } from '../../openings.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyDocument, Workspace } from '../../state/workspace.ts';
import { withSources } from '../../state/workspace-sources.ts';
import { holdsClaims, withClaims } from '../printed-figures/claims-list.ts';

const TABLE = /\.(csv|tsv|txt|xlsx|parquet)$/i;
const REFUSED =
  'not a table or a study; bring tables as CSV, TSV, XLSX or Parquet, and a study as study.json.';

export interface OpenFiles {
  readonly open: (files: Iterable<File>) => Promise<void>;
  /** What could not be taken in, in a sentence. */
  readonly fault: string | null;
}

/** Takes in what the reader drops: tables, profiles beside them, or a whole study. */
export function useOpenFiles(): OpenFiles {
  const { change, go, engine } = useWorkbench();
  const [fault, setFault] = useState<string | null>(null);
  const open = async (brought: Iterable<File>) => {
    const given = await bytesOf(brought);
    const read = await Promise.all(
      [...given]
        .filter(([name]) => name.endsWith('.json') && !name.endsWith('.profile.json'))
        .map(async ([name, bytes]) => ({
          name,
          ...(await engine.ask(
            (remote) => remote.studyFile(new TextDecoder().decode(bytes), name) as Promise<StudyFileView>,
          )),
        })),
    );
    const found = read.filter(({ study }) => study !== null);
    const study = found.at(-1)?.study ?? null;
    // Rules and claims belong to the study that names them; without one they are opened on their own screens.
    const named = new Set(study === null ? [] : textsOf(study.analyses));
    const taken = ([name]: readonly [string, Uint8Array]) =>
      named.has(name) || TABLE.test(name) || name.endsWith('.profile.json');
    const refused = [...given].filter((one) => !taken(one) && !found.some(({ name }) => name === one[0]));
    const faults = read.flatMap(({ name, fault }) =>
      fault === null || named.has(name) ? [] : [{ name, fault }],
    );
    const strangers = refused
      .map(([name]) => name)
      .filter((name) => faults.every((one) => one.name !== name));
    const said = [
      ...faults.map((one) => one.fault),
      ...(strangers.length === 0 ? [] : [`${strangers.join(', ')}: ${REFUSED}`]),
    ];
    setFault(said.length === 0 ? null : said.join(' '));
    const files = new Map([...given].filter(taken));
    if (study !== null) {
      change((now) => joined(now, study, files), `open the study “${study.title}”`);
      return;
    }
    const isClaims = ([name, bytes]: readonly [string, Uint8Array]) =>
      !isPacked(name) && holdsClaims(bytes, name);
    const claims = [...files].filter(isClaims);
    const tables = new Map([...files].filter((one) => !isClaims(one)));
    if (tables.size > 0) change((now) => withSources(now, tables), `add ${[...tables.keys()].join(', ')}`);
    for (const [name, bytes] of claims) change((now) => withClaims(now, name, bytes), `open ${name}`);
    if (claims.length > 0) go('printed-figures');
  };
  return { open, fault };
}

function joined(now: Workspace, study: StudyDocument, tables: ReadonlyMap<string, Uint8Array>): Workspace {
  return { study, files: new Map([...now.files, ...tables]) };
}
