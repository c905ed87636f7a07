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
