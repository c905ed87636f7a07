import { sha256 } from '../study/sha256.ts';

/** What is known of a file once all of it was made. */
export interface Finished {
  readonly bytes: number;
  /** SHA-256 in lower-case hexadecimal. */
  readonly hash: string;
}

/**
 * The text of a file: whole; piece by piece, so that a long table is never held at once; or made when its turn comes,
 * from what is known of the files before it.
 */
export type TextContent =
  | string
  | Iterable<string>
  | ((before: ReadonlyMap<string, Finished>) => string | Iterable<string>);

export type FileContent = TextContent | Uint8Array;

/** The pieces of a file, each made when it is asked for. */
export function piecesOf(
  content: FileContent,
  before: ReadonlyMap<string, Finished>,
): Iterable<string | Uint8Array> {
  if (typeof content === 'function') return piecesOf(content(before), before);
  return typeof content === 'string' || content instanceof Uint8Array ? [content] : content;
}

/** Every file's text whole, for whoever has no disk to write pieces to. */
export function wholeTexts(files: ReadonlyMap<string, TextContent>): Map<string, string> {
  const texts = new Map<string, string>();
  const finished = new Map<string, Finished>();
  for (const [name, content] of files) {
    const text = [...piecesOf(content, finished)].join('');
    const bytes = new TextEncoder().encode(text);
    finished.set(name, { bytes: bytes.length, hash: sha256(bytes) });
    texts.set(name, text);
  }
  return texts;
}
