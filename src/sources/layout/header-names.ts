import type { Fault } from '../source-reading.ts';
import { isBlank } from './cell-shapes.ts';
import type { LayoutRemark } from './remark.ts';

export interface NamedColumns {
  /** Unique: a blank header becomes "column 3", a second "Length" becomes "Length (2)". */
  readonly headers: readonly string[];
  /** The lower of two header rows by itself, where it is unique; else as `headers`. */
  readonly alternatives: readonly string[];
  /** Headers that the file uses more than once, as they stand there. */
  readonly duplicates: readonly { readonly header: string; readonly columns: readonly number[] }[];
}

/** Gives every column a name of its own, and says where the file did not. */
export function nameColumns(
  texts: readonly string[],
  lower: readonly string[],
  body: readonly (readonly string[])[],
  headerRow: number,
  file: string,
): NamedColumns & { readonly remarks: readonly LayoutRemark[]; readonly faults: readonly Fault[] } {
  const places = new Map<string, number[]>();
  for (const [i, text] of texts.entries()) {
    if (text === '') continue;
    const seen = places.get(text);
    if (seen === undefined) places.set(text, [i]);
    else seen.push(i);
  }
  const taken = new Set<string>(places.keys());
  const remarks: LayoutRemark[] = [];
  const faults: Fault[] = [];
  const headers = texts.map((text, i) => {
    if (text === '') {
      const name = unused(`column ${i + 1}`, taken);
      if (texts.some((other) => other !== '') && body.some((row) => !isBlank(row[i]))) {
        remarks.push(remark(headerRow, name, '', 'header-blank', 'The column has no header.'));
      }
      return name;
    }
    const seen = places.get(text)!;
    return seen[0] === i ? text : unused(`${text} (${seen.indexOf(i) + 1})`, taken);
  });
  const duplicates = [...places]
    .filter(([, columns]) => columns.length > 1)
    .map(([header, columns]) => ({ header, columns }));
  for (const { header, columns } of duplicates) {
    const list = columns.map((i) => i + 1).join(' and ');
    remarks.push(remark(headerRow, header, header, 'header-twice', `Columns ${list} have the same header.`));
    faults.push({
      what: `columns ${list} are both headed "${header}"`,
      where: { file, row: headerRow, column: header },
      mend: `rename one of them, or name "${headers[columns[1]!]}" in the profile`,
    });
  }
  const lowerCounts = new Map<string, number>();
  for (const text of lower) lowerCounts.set(text, (lowerCounts.get(text) ?? 0) + 1);
  const alternatives = headers.map((header, i) => {
    const text = lower[i] ?? '';
    return text !== '' && lowerCounts.get(text) === 1 ? text : header;
  });
  return { headers, alternatives, duplicates, remarks, faults };
}

function unused(name: string, taken: Set<string>): string {
  let candidate = name;
  for (let i = 2; taken.has(candidate); i++) candidate = `${name} (${i})`;
  taken.add(candidate);
  return candidate;
}

function remark(row: number, column: string, raw: string, rule: string, why: string): LayoutRemark {
  return { row, column, raw, readAs: column, level: 'flagged', rule, why };
}
