import { InputError } from '../../errors.ts';
import { append } from '../../numerics/foundation/lists.ts';
import type { Encoding } from '../source-reading.ts';
import { decodeWindows1252 } from './windows-1252.ts';

export interface Decoded {
  readonly text: string;
  readonly encoding: Encoding;
  /** Things about the bytes that a person should know, one sentence each. */
  readonly remarks: readonly string[];
}

const MAGIC: readonly (readonly [what: string, bytes: readonly number[]])[] = [
  ['a spreadsheet workbook or other zip archive', [0x50, 0x4b, 0x03, 0x04]],
  ['an old spreadsheet workbook', [0xd0, 0xcf, 0x11, 0xe0]],
  ['a PDF', [0x25, 0x50, 0x44, 0x46]],
  ['a PNG image', [0x89, 0x50, 0x4e, 0x47]],
  ['a JPEG image', [0xff, 0xd8, 0xff]],
  ['a GIF image', [0x47, 0x49, 0x46, 0x38]],
  ['a gzip archive', [0x1f, 0x8b]],
  ['an SQLite database', [0x53, 0x51, 0x4c, 0x69, 0x74, 0x65]],
];

const SAMPLE = 65_536;

/**
 * Which characters do these bytes spell? UTF-8 with or without a mark, UTF-16 with a mark (or with the
 * tell-tale zero bytes of one), else Windows-1252 where the bytes cannot be UTF-8.
 * @param forced the encoding that the profile fixes; a mark in the file is still removed.
 * @throws InputError for an empty or a binary file.
 */
export function decodeBytes(bytes: Uint8Array, name: string, forced?: Encoding): Decoded {
  if (bytes.length === 0) {
    throw new InputError('the file is empty', { file: name }, 'export the table again and check its size');
  }
  for (const [what, magic] of MAGIC) {
    if (magic.every((byte, i) => bytes[i] === byte)) {
      throw new InputError(
        `this is ${what}, not a text table`,
        { file: name },
        'save the table as CSV first',
      );
    }
  }
  const encoding = forced ?? detectEncoding(bytes, name);
  const remarks: string[] = [];
  // A broken character in text said to be UTF-8 shows as U+FFFD and is remarked on, never dropped.
  const text =
    encoding === 'windows-1252' ? decodeWindows1252(bytes) : new TextDecoder(encoding).decode(bytes);
  if (text.includes('\uFFFD')) {
    remarks.push('some characters could not be decoded and show as \uFFFD: check the encoding');
  }
  if (encoding === 'windows-1252') append(remarks, doubtsOfWindows1252(bytes));
  if (/Ã[\u0080-\u00BF€‚ƒ„…†‡ˆ‰Š‹Œ‘’“”•–—˜™š›œž¼¤¶Ÿ]/.test(text)) {
    remarks.push('letters such as "Ã¼" suggest that the text was decoded wrongly before it was saved');
  }
  const clean = text.includes('\0') ? text.replaceAll('\0', '') : text;
  if (clean.length !== text.length) {
    remarks.push(`${text.length - clean.length} NUL characters were taken out of the text`);
  }
  if (clean.trim() === '') {
    throw new InputError('the file holds no text', { file: name }, 'export the table again');
  }
  return { text: clean, encoding, remarks };
}

function detectEncoding(bytes: Uint8Array, name: string): Encoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const sample = bytes.subarray(0, SAMPLE);
  let zerosEven = 0;
  let zerosOdd = 0;
  let controls = 0;
  for (let i = 0; i < sample.length; i++) {
    const byte = sample[i]!;
    if (byte === 0) {
      if (i % 2 === 0) zerosEven++;
      else zerosOdd++;
    } else if (byte < 32 && byte !== 9 && byte !== 10 && byte !== 12 && byte !== 13) controls++;
  }
  const pairs = sample.length / 2;
  // Latin text in UTF-16 has a zero in nearly every pair, always on the same side.
  if (zerosOdd > 0.6 * pairs && zerosEven < 0.02 * pairs) return 'utf-16le';
  if (zerosEven > 0.6 * pairs && zerosOdd < 0.02 * pairs) return 'utf-16be';
  if (controls > 0.02 * sample.length || zerosEven + zerosOdd > 0.1 * sample.length) {
    throw new InputError(
      'this is a binary file, not a text table',
      { file: name },
      'save the table as CSV (UTF-8) first',
    );
  }
  return isUtf8(bytes) ? 'utf-8' : 'windows-1252';
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

/** Five byte values are no character of Windows-1252: where they occur, the text is something else. */
function doubtsOfWindows1252(bytes: Uint8Array): string[] {
  const unassigned = [0x81, 0x8d, 0x8f, 0x90, 0x9d];
  return bytes.some((byte) => unassigned.includes(byte))
    ? ['some bytes are no characters of Windows-1252: check the accented letters, or save the file as UTF-8']
    : [];
}
