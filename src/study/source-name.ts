/** How a source is called in ledgers, messages and results: its file, and its sheet where one is named. */
export function sourceName({ file, sheet }: { readonly file: string; readonly sheet?: string }): string {
  return sheet === undefined ? file : `${file}, sheet ${sheet}`;
}
