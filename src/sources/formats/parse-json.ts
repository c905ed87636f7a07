import { InputError } from '../../errors.ts';
import { findJsonFault } from './json-fault.ts';

/** JSON text to a value; a byte-order mark is allowed. InputError with line and column. */
export function parseJson(text: string, file: string): unknown {
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (plain.trim() === '') throw new InputError('the file is empty', { file }, 'write a JSON object into it');
  const fault = findJsonFault(plain);
  if (fault === null) return JSON.parse(plain);
  throw new InputError(
    `not valid JSON: ${fault.what}`,
    { file, path: `line ${fault.line}, column ${fault.column}` },
    fault.mend,
  );
}
