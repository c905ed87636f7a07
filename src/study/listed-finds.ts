import type { Register } from '../attributes/definition.ts';
import { splitCell } from '../cells/split-cell.ts';
import { InputError } from '../errors.ts';
import type { SourceProfile } from '../sources/profile/profile.ts';
import { readSource } from '../sources/read-source.ts';
import type { SourceReading } from '../sources/source-reading.ts';

/** One row of a table of finds, as texts that a find may be given by. */
export interface ListedFind {
  /** What the row calls it, or its line. */
  readonly name: string;
  readonly row: number;
  readonly given: Readonly<Record<string, string>>;
}

export interface ListedFinds {
  readonly finds: readonly ListedFind[];
  /** Columns that were not used and why, rows that were set aside. */
  readonly notes: readonly string[];
}

/** Columns that say which find it is, the first that a row has. */
const NAMES = ['catalogueNumber', 'fragment', 'item'];

/**
 * Finds of a table, one a row: the header names attributes as any source would, units included, or its profile does,
 * which may also split a column between two.
 *
 * @throws InputError for a table that cannot be read, that has a fault to mend, or without any attribute.
 */
export function listedFinds(
  bytes: Uint8Array,
  name: string,
  register: Register,
  profile?: SourceProfile,
): ListedFinds {
  const reading = readSource(bytes, { name, register, ...(profile === undefined ? {} : { profile }) });
  if (reading.faults.length > 0) {
    const { what, where, mend } = reading.faults[0];
    throw new InputError(what, where, mend);
  }
  const used = reading.columns.flatMap((column) => {
    const attributes = column.attributes.flatMap((id) => register.attributes.get(id) ?? []);
    const fits = column.status === 'matched' && attributes.length === column.attributes.length;
    return fits && attributes.some(({ scale }) => scale !== 'text') ? [{ column, attributes }] : [];
  });
  if (used.length === 0) {
    throw new InputError(
      'no column of the finds is an attribute',
      { file: name },
      'head each column with an attribute of the study, such as "structure" or "density 1"',
    );
  }
  const names = NAMES.flatMap((id) => reading.columns.filter(({ attributes }) => attributes[0] === id));
  const finds = reading.table.origin.map(({ row }): ListedFind => {
    const cells = reading.grid[row - 1] ?? [];
    const called = names.map(({ index }) => (cells[index] ?? '').trim()).find((text) => text !== '');
    const given = used.flatMap(({ column, attributes }) => {
      const text = (cells[column.index] ?? '').trim();
      const parts =
        attributes.length === 1 ? [text] : (splitCell(text, { decimal: column.decimal })?.parts ?? [text]);
      return attributes.flatMap(({ id, unit }, place): [string, string][] => {
        const part = (parts[place] ?? '').trim();
        return part === '' ? [] : [[id, withUnit(part, column.unit, unit)]];
      });
    });
    return { name: called ?? `row ${row}`, row, given: Object.fromEntries(given) };
  });
  return { finds, notes: notesOf(reading) };
}

/** A bare number of a column headed "length (cm)" is in cm. */
function withUnit(text: string, headed: string | undefined, own: string | undefined): string {
  return headed === undefined || headed === own || !/\d$/.test(text) ? text : `${text} ${headed}`;
}

function notesOf({ columns, rowsSetAside }: SourceReading): string[] {
  return [
    ...columns.flatMap(({ header, status, suggestion }) => {
      if (status === 'unknown') return [`column "${header}" is no attribute and was not used`];
      if (status !== 'suggested') return [];
      const into = suggestion?.split?.into.map(({ attribute }) => `"${attribute}"`);
      return into === undefined
        ? [`column "${header}" was not used; head it "${suggestion?.attribute ?? ''}" if that is meant`]
        : [
            `column "${header}" was not used; its cells hold two values: give a profile that splits it into ${into.join(' and ')}, or two columns`,
          ];
    }),
    ...rowsSetAside.map(({ row, reason }) => `row ${row} was set aside: ${reason}`),
  ];
}
