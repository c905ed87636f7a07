/** Files in and out of the browser; nothing here leaves the machine. */

/** Hands the reader a file to save. */
export function download(name: string, content: string | Uint8Array | Blob, type = 'application/json'): void {
  const blob = content instanceof Blob ? content : new Blob([content as BlobPart], { type });
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

interface SaveWindow {
  readonly showSaveFilePicker?: (options: { suggestedName: string }) => Promise<FileSystemFileHandle>;
}

/** Writes a file where the browser lets the reader choose the place, else hands it over as a download. */
export async function saveBack(name: string, content: string): Promise<void> {
  const { showSaveFilePicker } = window as SaveWindow;
  if (showSaveFilePicker === undefined) return download(name, content);
  try {
    const place = await showSaveFilePicker({ suggestedName: name });
    const file = await place.createWritable();
    await file.write(content);
    await file.close();
  } catch (fault) {
    // The reader closed the dialog; anything else still leaves the download.
    if ((fault as Error).name !== 'AbortError') download(name, content);
  }
}

export async function bytesOf(files: Iterable<File>): Promise<ReadonlyMap<string, Uint8Array>> {
  const read = [...files].map(async (file) => [file.name, new Uint8Array(await file.arrayBuffer())] as const);
  return new Map(await Promise.all(read));
}

/** A file name out of a title: letters, figures and hyphens. */
export function fileStem(title: string): string {
  const stem = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return stem === '' ? 'study' : stem.slice(0, 60);
}
