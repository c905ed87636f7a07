import { useState } from 'react';
import { bytesOf } from '../../files.ts';
import { complete } from '../../openings.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import { type StudyDocument, type Workspace, withSources } from '../../state/workspace.ts';

const TABLE = /\.(csv|tsv|txt)$/i;

export interface OpenFiles {
  readonly open: (files: Iterable<File>) => Promise<void>;
  /** What could not be taken in, in a sentence. */
  readonly fault: string | null;
}

/** Takes in what the reader drops: tables, profiles beside them, or a whole study. */
export function useOpenFiles(): OpenFiles {
  const { change } = useWorkbench();
  const [fault, setFault] = useState<string | null>(null);
  const open = async (files: Iterable<File>) => {
    const given = await bytesOf(files);
    const tables = new Map([...given].filter(([name]) => TABLE.test(name) || name.endsWith('.profile.json')));
    const others = [...given].filter(([name]) => !tables.has(name));
    let study: StudyDocument | null = null;
    const refused: string[] = [];
    for (const [name, bytes] of others) {
      const found = name.endsWith('.json') ? studyIn(bytes) : null;
      if (found === null) refused.push(name);
      else study = found;
    }
    setFault(
      refused.length === 0
        ? null
        : `${refused.join(', ')}: not a table or a study; bring tables as CSV or TSV, and a study as study.json.`,
    );
    if (study !== null) {
      const opened = study;
      change((now) => joined(now, opened, tables), `open the study “${opened.title}”`);
    } else if (tables.size > 0) {
      change((now) => withSources(now, tables), `add ${[...tables.keys()].join(', ')}`);
    }
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
