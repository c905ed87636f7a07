import { unzipSync, zipSync } from 'fflate';
import { InputError } from '../../errors.ts';

/** What a spreadsheet file may grow to when it is unpacked; far above what people fill by hand. */
export const ARCHIVE_LIMITS = {
  parts: 10_000,
  /** Bytes, unpacked: more than an engine holds as one text could not be read anyway. */
  total: 400 * 1024 * 1024,
  /** Unpacked to packed, of a file that is large when unpacked. Sheets of repeated text reach about 50. */
  ratio: 200,
  freeOfRatio: 50 * 1024 * 1024,
} as const;

/** What is in a spreadsheet file beside its sheets, and never needed: macros, objects, pictures, links to others. */
const NEEDLESS =
  /(?:^|\/)(?:externalLinks|embeddings|media|drawings|charts|activeX|ctrlProps|customXml|printerSettings|macrosheets)\//i;

/**
 * Unpacks a spreadsheet file within limits and packs what is needed of it again, so that the parser meets
 * neither a file that grows without end nor macros, objects, links to other files or document types.
 *
 * @throws InputError for a damaged archive, one beyond the limits, and XML that declares entities.
 */
export function boundedArchive(bytes: Uint8Array, file: string): Uint8Array {
  const size = { parts: 0, total: 0, packed: 0 };
  const parts = ((): Record<string, Uint8Array> => {
    try {
      return unzipSync(bytes, {
        filter: ({ name, size: packed, originalSize }) => {
          size.parts++;
          size.total += originalSize;
          size.packed += packed;
          refuseTooLarge(size, file);
          return /\.(?:xml|rels)$/i.test(name) && !NEEDLESS.test(name);
        },
      });
    } catch (fault) {
      if (fault instanceof InputError) throw fault;
      throw new InputError(
        'the .xlsx file cannot be opened',
        { file },
        'open it in a spreadsheet and save it again',
      );
    }
  })();
  for (const [name, text] of Object.entries(parts))
    if (declaresType(text))
      throw new InputError(
        `its part ${name} declares a document type, which spreadsheets never do`,
        { file },
        'have whoever made it save it anew in a spreadsheet',
      );
  return zipSync(parts, { level: 0 });
}

function refuseTooLarge(
  { parts, total, packed }: { parts: number; total: number; packed: number },
  file: string,
): void {
  const { parts: most, total: largest, ratio, freeOfRatio } = ARCHIVE_LIMITS;
  const swells = total > freeOfRatio && total > packed * ratio;
  if (parts <= most && total <= largest && !swells) return;
  throw new InputError(
    parts > most
      ? `the .xlsx file holds more than ${most} parts`
      : `the .xlsx file unpacks to more than ${Math.floor(total / 1024 / 1024)} MB`,
    { file },
    'save the table as CSV',
  );
}

const OPENING = 0x3c;
const BANG = 0x21;
const D = [0x44, 0x64];

/** A document type stands before the first element; comments and processing instructions may too. */
function declaresType(xml: Uint8Array): boolean {
  for (let at = xml.indexOf(OPENING); at >= 0; at = xml.indexOf(OPENING, at + 1)) {
    const next = xml[at + 1] ?? 0;
    if (next === BANG && D.includes(xml[at + 2] ?? 0)) return true;
    if (next !== BANG && next !== 0x3f) return false;
  }
  return false;
}
