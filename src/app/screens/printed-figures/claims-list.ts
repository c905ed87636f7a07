import { CLAIM_COLUMNS, type ClaimRow } from '../../../analyses/claims/claim.ts';
import { foldText } from '../../../attributes/matching.ts';
import { decodeBytes } from '../../../sources/decode.ts';
import { detectDelimiter } from '../../../sources/dialect.ts';
import { restoreText, writeCsv } from '../../../sources/export.ts';
import { parseCsv } from '../../../sources/parse-csv.ts';
import { type Workspace, withAnalysis, withFile } from '../../state/workspace.ts';

/** A claims file as the form edits it: texts only. Whether they can be read is for the worker to say. */
export type Draft = Readonly<Record<keyof ClaimRow, string>>;

const EMPTY = Object.fromEntries(CLAIM_COLUMNS.map((column) => [column, ''])) as Draft;

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

/** The lines with text, in their order; texts of columns that are no claim's are not kept. */
export function readDrafts(bytes: Uint8Array | undefined, name: string): readonly Draft[] {
  if (bytes === undefined) return [];
  const [head = [], ...lines] = gridOf(bytes, name);
  const columns = head.map((cell) => CLAIM_COLUMNS.find((column) => column === foldText(cell)));
  return lines
    .filter((cells) => cells.some((cell) => cell.trim() !== ''))
    .map((cells) => {
      const texts = columns.flatMap((column, i) =>
        column === undefined ? [] : [[column, restoreText((cells[i] ?? '').trim())] as const],
      );
      return { ...EMPTY, ...Object.fromEntries(texts) };
    });
}

export function draftBytes(drafts: readonly Draft[]): Uint8Array {
  const lines = drafts.map((draft) => CLAIM_COLUMNS.map((column) => draft[column]));
  return new TextEncoder().encode(writeCsv([[...CLAIM_COLUMNS], ...lines]));
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
