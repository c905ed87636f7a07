import { getHeapStatistics } from 'node:v8';
import { InputError } from '../errors.ts';

/**
 * Bytes of the engine's memory that a cell takes once it is read: its text, its reading and its line of the ledger. The
 * demo made larger takes 210 to 270, a plain table without ranges 160 (measured 2026-12-01, docs/trust.md).
 */
const BYTES_A_CELL = 210;
/** Memory worth a sentence before the work begins. */
const WORTH_SAYING = 5e8;

const [TAB, COMMA, SEMICOLON, LINE] = [9, 44, 59, 10];

/** About how many cells a table of text has: its commonest delimiter and the ends of its lines. */
export function countCells(bytes: Uint8Array): number {
  const counts = new Float64Array(256);
  for (let i = 0; i < bytes.length; i++) counts[bytes[i]]++;
  return Math.max(counts[TAB], counts[COMMA], counts[SEMICOLON]) + counts[LINE];
}

/**
 * Foresees what reading will take, before it begins: the engine's own end, when it has no memory left, would say nothing
 * of what to do.
 *
 * @param most bytes that the engine may take.
 * @returns a sentence where the tables are large; null where they are not.
 * @throws InputError where they are larger than can be read here.
 */
export function foreseeMemory(
  tables: Iterable<Uint8Array>,
  most = getHeapStatistics().heap_size_limit,
): string | null {
  let cells = 0;
  for (const table of tables) cells += countCells(table);
  const needed = cells * BYTES_A_CELL;
  const size = `${(cells / 1e6).toFixed(1)} million cells, which take about ${gigabytes(needed)} of memory`;
  if (needed > most)
    throw new InputError(
      `the tables hold ${size}, and this command may take ${gigabytes(most)}`,
      {},
      `give it more, where the machine has it (NODE_OPTIONS=--max-old-space-size=${megabytes(1.5 * needed)}), or leave out sources and columns that are not asked about`,
    );
  return needed > WORTH_SAYING ? `Large: the tables hold ${size}.` : null;
}

const gigabytes = (bytes: number): string => `${(bytes / 1e9).toFixed(1)} GB`;
const megabytes = (bytes: number): number => Math.ceil(bytes / 1e8) * 100;
