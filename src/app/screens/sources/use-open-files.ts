import { useState } from 'react';
import { bytesOf } from '../../files.ts';
import { complete, textsOf } from '../../openings.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import { type StudyDocument, type Workspace, withSources } from '../../state/workspace.ts';
import { holdsClaims, withClaims } from '../printed-figures/claims-list.ts';

const TABLE = /\.(csv|tsv|txt|xlsx)$/i;
const REFUSED = 'not a table or a study; bring tables as CSV, TSV or XLSX, and a study as study.json.';

export interface OpenFiles {
  readonly open: (files: Iterable<File>) => Promise<void>;
  /** What could not be taken in, in a sentence. */
  readonly fault: string | null;
}

/** Takes in what the reader drops: tables, profiles beside them, or a whole study. */
export function useOpenFiles(): OpenFiles {
  const { change, go } = useWorkbench();
  const [fault, setFault] = useState<string | null>(null);
  const open = async (brought: Iterable<File>) => {
    const given = await bytesOf(brought);
    const found = [...given].flatMap(([name, bytes]) => {
      const study = name.endsWith('.json') ? studyIn(bytes) : null;
      return study === null ? [] : [{ name, study }];
    });
    const study = found.at(-1)?.study ?? null;
    // Rules and claims belong to the study that names them; without one they are opened on their own screens.
    const named = new Set(study === null ? [] : textsOf(study.analyses));
    const taken = ([name]: readonly [string, Uint8Array]) =>
      named.has(name) || TABLE.test(name) || name.endsWith('.profile.json');
    const refused = [...given].filter((one) => !taken(one) && !found.some(({ name }) => name === one[0]));
    setFault(refused.length === 0 ? null : `${refused.map(([name]) => name).join(', ')}: ${REFUSED}`);
    const files = new Map([...given].filter(taken));
    if (study !== null) {
      change((now) => joined(now, study, files), `open the study “${study.title}”`);
      return;
    }
    const isClaims = ([name, bytes]: readonly [string, Uint8Array]) =>
      !/\.xlsx$/i.test(name) && holdsClaims(bytes, name);
    const claims = [...files].filter(isClaims);
    const tables = new Map([...files].filter((one) => !isClaims(one)));
    if (tables.size > 0) change((now) => withSources(now, tables), `add ${[...tables.keys()].join(', ')}`);
    for (const [name, bytes] of claims) change((now) => withClaims(now, name, bytes), `open ${name}`);
    if (claims.length > 0) go('printed-figures');
  };
  return { open, fault };
}

function studyIn(bytes: Uint8Array): StudyDocument | null {
  try {
    const value = JSON.parse(new TextDecoder().decode(bytes)) as Partial<StudyDocument>;
    return Array.isArray(value.sources) && typeof value.title === 'string'
      ? complete({ ...value, title: value.title, sources: value.sources })
      : null;
  } catch {
    return null;
  }
}

function joined(now: Workspace, study: StudyDocument, tables: ReadonlyMap<string, Uint8Array>): Workspace {
  return { study, files: new Map([...now.files, ...tables]) };
}
