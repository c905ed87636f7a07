import { InputError } from '../../errors.ts';

/** "PAR1" stands before and behind the data of every such file (Apache Parquet format, "File format"). */
const MARK = [0x50, 0x41, 0x52, 0x31] as const;

/**
 * Reads a Parquet file as a grid of text, the names of its columns first, so that it goes through the same reading as
 * a CSV. Nothing is a blank cell; numbers come as the shortest text that reads back the same in the width they are
 * stored in, dates as ISO 8601, lists with "; " between their members.
 *
 * @throws InputError where the file is none, cannot be opened, is too large, or a cell holds a record of its own.
 */
export async function readParquet(bytes: Uint8Array, file: string): Promise<readonly (readonly string[])[]> {
  const marked = (from: number) => MARK.every((byte, i) => bytes[from + i] === byte);
  if (bytes.length < 12 || !marked(0) || !marked(bytes.length - MARK.length))
    throw new InputError('this is not a Parquet file', { file }, 'save it as Parquet or as CSV');
  const { parquetMetadata, parquetReadObjects } = await import('hyparquet');
  // A view of a larger buffer would be read from that buffer's beginning.
  const buffer = bytes.slice().buffer;
  const opened = async <T>(open: () => T | Promise<T>): Promise<T> => {
    try {
      return await open();
    } catch (fault) {
      throw new InputError(...cannotOpen(fault, file));
    }
  };
  const metadata = await opened(() => parquetMetadata(buffer));
  const rows = Number(metadata.num_rows);
  const columns = topColumns(metadata.schema);
  if (rows * columns.length > LARGEST_GRID)
    throw new InputError(
      `the table has ${rows} rows and ${columns.length} columns`,
      { file },
      'leave out rows or columns that are not needed, or part the file',
    );
  const records = await opened(() => parquetReadObjects({ file: buffer, metadata }));
  return [
    columns.map(({ name }) => name),
    ...records.map((record, row) =>
      columns.map(({ name, short }) => cellText(record[name], short, { file, row: row + 2, column: name })),
    ),
  ];
}

const LARGEST_GRID = 20_000_000;

function cannotOpen(fault: unknown, file: string): [what: string, where: { file: string }, mend: string] {
  const codec = /unsupported compression codec: (\w+)/i.exec(String((fault as Error).message))?.[1];
  if (codec !== undefined)
    return [`its pages are packed by ${codec}`, { file }, 'save it packed by SNAPPY or unpacked, or as CSV'];
  return [
    'the Parquet file cannot be opened',
    { file },
    'write it again where it comes from, or save it as CSV',
  ];
}

interface ParquetColumn {
  readonly name: string;
  /** Its numbers are stored in 32 bits. */
  readonly short: boolean;
}

interface SchemaElement {
  readonly name: string;
  readonly type?: string;
  readonly num_children?: number;
}

/** The columns below the root; what a nested one holds is passed over. */
function topColumns([root, ...elements]: readonly SchemaElement[]): ParquetColumn[] {
  const columns: ParquetColumn[] = [];
  let at = 0;
  const passOver = (): void => {
    const children = elements[at++]?.num_children ?? 0;
    for (let child = 0; child < children; child++) passOver();
  };
  for (let child = 0; child < (root?.num_children ?? 0); child++) {
    const { name = '', type } = elements[at] ?? { name: '' };
    columns.push({ name, short: type === 'FLOAT' });
    passOver();
  }
  return columns;
}

function cellText(
  value: unknown,
  short: boolean,
  where: { file: string; row: number; column: string },
): string {
  if (value === null || value === undefined) return '';
  switch (typeof value) {
    case 'string':
      return value;
    case 'bigint':
      return String(value);
    case 'boolean':
      return value ? 'TRUE' : 'FALSE';
    case 'number':
      return numberText(value, short);
    default:
  }
  if (value instanceof Date) {
    const text = value.toISOString();
    return text.endsWith('T00:00:00.000Z') ? text.slice(0, 10) : text;
  }
  if (Array.isArray(value)) return value.map((one) => cellText(one, short, where)).join('; ');
  throw new InputError(
    'the cell holds neither text nor a number',
    where,
    'write the parts of such cells to columns of their own',
  );
}

/** NaN is no number; a 32-bit 0.1 is 0.1 and not 0.10000000149. */
function numberText(value: number, short: boolean): string {
  if (Number.isNaN(value)) return '';
  // As Table Schema writes them, and the normalised table does.
  if (!Number.isFinite(value)) return value > 0 ? 'INF' : '-INF';
  if (Object.is(value, -0)) return '-0';
  if (!short) return String(value);
  for (let digits = 6; digits <= 9; digits++) {
    const shorter = Number(value.toPrecision(digits));
    if (Math.fround(shorter) === value) return String(shorter);
  }
  return String(value);
}
