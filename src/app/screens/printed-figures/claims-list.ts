import { CLAIM_COLUMNS, type ClaimRow } from '../../../analyses/claims/reading/claim.ts';
import { foldText } from '../../../attributes/matching.ts';
import { greatest } from '../../../numerics/foundation/lists.ts';
import { decodeBytes } from '../../../sources/formats/decode.ts';
import { detectDelimiter } from '../../../sources/formats/dialect.ts';
import { parseCsv } from '../../../sources/formats/parse-csv.ts';
import { restoreText, writeCsv } from '../../../sources/formats/safe-csv.ts';
import { type Workspace, withAnalysis, withFile } from '../../state/workspace.ts';

/** A claim as the form edits it: texts only. Whether they can be read is for the worker to say. */
export type Draft = Readonly<Record<keyof ClaimRow, string>> & {
  /** Its texts in the columns of the file that are no claim's, in their order. */
  readonly others: readonly string[];
};

/** A claims file as the form edits it. */
export interface ClaimsSheet {
  /** The columns of the file as it heads them, also those that are no claim's. */
  readonly head: readonly string[];
  readonly drafts: readonly Draft[];
}

type ClaimColumn = keyof ClaimRow;

const EMPTY: Draft = {
  ...(Object.fromEntries(CLAIM_COLUMNS.map((column) => [column, ''])) as Record<ClaimColumn, string>),
  others: [],
};

function gridOf(bytes: Uint8Array, name: string): readonly (readonly string[])[] {
  try {
    const { text } = decodeBytes(bytes, name);
    return parseCsv(text, name, detectDelimiter(text)).grid;
  } catch {
    // What is wrong with it is said where the worker reads it.
    return [];
  }
}

/** Does the file hold claims, one a row? */
export function holdsClaims(bytes: Uint8Array, name: string): boolean {
  const head = (gridOf(bytes, name)[0] ?? []).map((cell) => foldText(cell));
  return head.includes('quantity') && head.includes('printed');
}

/** The lines with text, in their order. A file that cannot be read, or is not there, has none. */
export function readSheet(bytes: Uint8Array | undefined, name: string): ClaimsSheet {
  const [first = [], ...rest] = bytes === undefined ? [] : gridOf(bytes, name);
  const lines = rest.filter((cells) => cells.some((cell) => cell.trim() !== ''));
  const width = Math.max(first.length, greatest(lines.map((cells) => cells.length)));
  const head = Array.from({ length: width }, (_, i) => restoreText(first[i] ?? ''));
  const columns = claimColumns(head);
  const drafts = lines.map((cells) => {
    const texts = columns.flatMap((column, i) =>
      column === undefined ? [] : [[column, restoreText((cells[i] ?? '').trim())] as const],
    );
    const others = columns.flatMap((column, i) => (column === undefined ? restoreText(cells[i] ?? '') : []));
    return { ...EMPTY, ...Object.fromEntries(texts), others };
  });
  return { head, drafts };
}

/** As CSV: the columns of the file in their order, then those of a claim that it has not had so far. */
export function sheetBytes({ head, drafts }: ClaimsSheet): Uint8Array {
  const columns = claimColumns(head);
  const added = CLAIM_COLUMNS.filter((column) => !columns.includes(column));
  const lines = drafts.map((draft) => {
    let other = 0;
    const kept = columns.map((column) =>
      column === undefined ? (draft.others[other++] ?? '') : draft[column],
    );
    return [...kept, ...added.map((column) => draft[column])];
  });
  return new TextEncoder().encode(writeCsv([[...head, ...added], ...lines]));
}

/** What each column holds of a claim; of two with one name the first does, as where claims are checked. */
function claimColumns(head: readonly string[]): readonly (ClaimColumn | undefined)[] {
  const names = head.map((cell) => foldText(cell));
  return names.map((name, i) =>
    names.indexOf(name) === i ? CLAIM_COLUMNS.find((column) => column === name) : undefined,
  );
}

/** A new figure, of the same sample and place as the one before it, since figures come in rows. */
export function nextDraft(drafts: readonly Draft[], after: Draft | undefined): Draft {
  const { place, set, step, attribute, select, versus } = after ?? EMPTY;
  let count = drafts.length + 1;
  while (drafts.some(({ id }) => id === `c${count}`)) count++;
  return { ...EMPTY, place, set, step, attribute, select, versus, id: `c${count}` };
}

/** A claims file as an analysis of its own. */
export function withClaims(workspace: Workspace, name: string, bytes: Uint8Array): Workspace {
  const file = freeName(workspace, name);
  return withAnalysis(withFile(workspace, file, bytes), { id: freeId(workspace), kind: 'claims', file });
}

export function freeId({ study }: Workspace): string {
  const taken = new Set(study.analyses.map(({ id }) => id));
  if (!taken.has('claims')) return 'claims';
  let count = 2;
  while (taken.has(`claims-${count}`)) count++;
  return `claims-${count}`;
}

export function freeName({ files, study }: Workspace, name: string): string {
  const taken = (one: string) => files.has(one) || study.sources.some(({ file }) => file === one);
  const [, stem = name, ending = ''] = /^(.*?)(\.[^.]+)?$/.exec(name) ?? [];
  let [free, count] = [name, 2];
  while (taken(free)) free = `${stem}-${count++}${ending}`;
  return free;
}
