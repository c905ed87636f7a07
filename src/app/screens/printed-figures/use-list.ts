import { useState } from 'react';
import { useWorkbench } from '../../state/workbench.tsx';
import {
  type StudyAnalysis,
  type Workspace,
  withAnalysis,
  withFile,
  withoutAnalysis,
} from '../../state/workspace.ts';
import { tablesOf } from './bring.tsx';
import {
  type ClaimsSheet,
  type Draft,
  freeId,
  freeName,
  holdsClaims,
  nextDraft,
  readSheet,
  sheetBytes,
  withClaims,
} from './claims-list.ts';
import { blankGrid, gridBytes, type PrintedGrid, readGrid } from './table-grid.ts';

export interface ClaimsDesk {
  readonly lists: readonly StudyAnalysis[];
  readonly open: StudyAnalysis | null;
  readonly drafts: readonly Draft[];
  readonly openList: (id: string) => void;
  readonly newList: () => void;
  readonly removeList: () => void;
  readonly setOptions: (options: Readonly<Record<string, unknown>>, what: string) => void;
  readonly setDraft: (place: number, change: Partial<Draft>) => void;
  /** Adds a figure like the one at this place, and answers where it stands. */
  readonly addDraft: (after: number | null) => number;
  readonly removeDraft: (place: number) => void;
  /** Texts of a printed table of the open list. */
  readonly gridOf: (file: string) => PrintedGrid;
  readonly setGrid: (file: string, update: (grid: PrintedGrid) => PrintedGrid, what: string) => void;
  /** Starts an empty printed table, and answers its name. */
  readonly newTable: () => string;
  readonly takeFiles: (files: ReadonlyMap<string, Uint8Array>) => void;
}

/** The lists of printed figures that the study keeps, each an analysis with its claims file beside it. */
export function useClaimsDesk(): ClaimsDesk {
  const { workspace, change } = useWorkbench();
  const lists = listsOf(workspace);
  const [openId, setOpenId] = useState<string | null>(null);
  const open = lists.find(({ id }) => id === openId) ?? lists[0] ?? null;
  const drafts = open === null ? [] : sheetOf(workspace, open).drafts;
  const edit = (update: (drafts: readonly Draft[]) => readonly Draft[], what: string) =>
    change((now) => {
      const { list, workspace: base } = listIn(now, open?.id ?? null);
      const sheet = sheetOf(base, list);
      return withFile(base, String(list.file), sheetBytes({ ...sheet, drafts: update(sheet.drafts) }));
    }, what);
  return {
    lists,
    open,
    drafts,
    openList: setOpenId,
    newList: () => {
      const id = freeId(workspace);
      change((now) => startList(now, id), 'a new list of figures');
      setOpenId(id);
    },
    removeList: () => {
      if (open !== null) change((now) => withoutAnalysis(now, open.id), 'take the list out');
    },
    setOptions: (options, what) => {
      if (open !== null) change((now) => withAnalysis(now, { ...open, ...options }), what);
    },
    setDraft: (place, part) =>
      edit((all) => all.map((draft, i) => (i === place ? { ...draft, ...part } : draft)), 'a printed figure'),
    addDraft: (after) => {
      edit(
        (all) => [...all, nextDraft(all, after === null ? all.at(-1) : all[after])],
        'another printed figure',
      );
      return drafts.length;
    },
    removeDraft: (place) => edit((all) => all.toSpliced(place, 1), 'remove a printed figure'),
    gridOf: (file) => readGrid(workspace.files.get(file), file),
    setGrid: (file, update, what) =>
      change((now) => withFile(now, file, gridBytes(update(readGrid(now.files.get(file), file)))), what),
    newTable: () => {
      const file = freeName(workspace, 'table.csv');
      change((now) => withTable(now, open?.id ?? null, file, gridBytes(blankGrid(3, 4))), 'a printed table');
      return file;
    },
    takeFiles: (given) => {
      for (const [name, bytes] of given) {
        if (holdsClaims(bytes, name)) {
          change((now) => withClaims(now, name, bytes), `open ${name}`);
          setOpenId(freeId(workspace));
        } else {
          change((now) => withTable(now, open?.id ?? null, freeName(now, name), bytes), `the table ${name}`);
        }
      }
    },
  };
}

function listsOf({ study }: Workspace): readonly StudyAnalysis[] {
  return study.analyses.filter(({ kind }) => kind === 'claims');
}

function sheetOf({ files }: Workspace, list: StudyAnalysis): ClaimsSheet {
  const name = String(list.file ?? '');
  return readSheet(files.get(name), name);
}

/** Adds a printed table to the list of this id, or to a list that is started for it. */
function withTable(now: Workspace, id: string | null, file: string, bytes: Uint8Array): Workspace {
  const { list, workspace } = listIn(now, id);
  return withAnalysis(withFile(workspace, file, bytes), { ...list, tables: [...tablesOf(list), { file }] });
}

/** The list of this id, or the first; where there is none yet, or it has no file, it is started. */
function listIn(now: Workspace, id: string | null): { list: StudyAnalysis; workspace: Workspace } {
  const lists = listsOf(now);
  const found = lists.find((list) => list.id === id) ?? lists[0];
  const own = found?.id ?? freeId(now);
  const workspace = found?.file === undefined ? startList(now, own, found) : now;
  return { list: listsOf(workspace).find((list) => list.id === own) as StudyAnalysis, workspace };
}

function startList(now: Workspace, id: string, list?: StudyAnalysis): Workspace {
  const file = freeName(now, 'claims.csv');
  return withAnalysis(withFile(now, file, sheetBytes({ head: [], drafts: [] })), {
    ...list,
    id,
    kind: 'claims',
    file,
  });
}
