import { z } from 'zod';
import { bare } from './schema-parts.ts';

/** Parts of a file in the reader's words: what kind they are of, what is given, how they look. */

/** What is wrong with one part, and what mends it. */
export interface Said {
  readonly what: string;
  readonly mend: string;
}

/** Where nothing better can be said. */
export const OTHER: Said = {
  what: 'this part has not the form that is expected here',
  mend: 'correct it (docs/file-formats.md lists what it may hold)',
};

const KINDS: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list',
  object: 'an object in braces',
  record: 'an object in braces',
  null: 'null',
};

export function kindName(expected: string): string {
  return KINDS[expected] ?? 'of another kind';
}

/** What is given, for the reader to know it again. */
export function describe(given: unknown): string {
  if (Array.isArray(given)) return 'a list';
  if (typeof given === 'object' && given !== null) return 'an object in braces';
  const text = JSON.stringify(given);
  if (typeof given === 'string') return text.length > 40 ? 'a text' : `the text ${text}`;
  return typeof given === 'number' ? `the number ${given}` : String(given);
}

/** A value as it stands in JSON. */
export function written(value: unknown): string {
  return JSON.stringify(value) ?? String(value);
}

/** How a part of another kind is put right, as near to what is given as can be. */
export function mendKind(expected: string, schema: z.ZodType | null, given: unknown): string {
  const number =
    typeof given === 'string' && given.trim() !== '' ? Number(given.replace(',', '.')) : Number.NaN;
  switch (expected) {
    case 'array':
      return mendList(schema, given);
    case 'tuple':
      return `write ${schema instanceof z.ZodTuple ? schema.def.items.length : 'its'} entries in square brackets, parted by commas`;
    case 'string':
      return typeof given === 'number' || typeof given === 'boolean'
        ? `write "${given}", with quotation marks`
        : 'write one text in quotation marks';
    case 'int':
      return Number.isInteger(number)
        ? `write ${number}, without quotation marks`
        : 'write a whole number, such as 5';
    case 'number':
      return Number.isFinite(number)
        ? `write ${number}, without quotation marks`
        : 'write a number, such as 5 or 0.5, without quotation marks';
    case 'boolean':
      return 'write true or false, without quotation marks';
    case 'object':
    case 'record':
      return `write its parts in braces, such as ${exampleOf(schema)}`;
    default:
      return OTHER.mend;
  }
}

/** One thing where a list of such things is expected is put into brackets, as it is. */
function mendList(schema: z.ZodType | null, given: unknown): string {
  const element = schema instanceof z.ZodArray ? (schema.element as z.ZodType) : null;
  const fits = element?.safeParse(given).success === true;
  const text = written(fits ? [given] : null);
  if (fits && text.length <= 60) return `write ${text}`;
  if (fits) return 'put square brackets round it';
  return `write a list in square brackets, such as [${element === null ? '' : exampleOf(bare(element))}]`;
}

/** What a text may refer to, by example. */
const NAMES: Readonly<Record<string, string>> = {
  attribute: 'rowSpacing',
  grouping: 'site',
  file: 'table.csv',
};

/** How a part looks in JSON, its own texts left open. */
function exampleOf(schema: z.ZodType | null): string {
  const named = NAMES[String(schema?.meta()?.refersTo)];
  if (named !== undefined) return written(named);
  if (schema instanceof z.ZodUnion) return exampleOf(bare(schema.options[0] as z.ZodType));
  if (schema instanceof z.ZodEnum) return written(schema.options[0]);
  if (schema instanceof z.ZodNumber) return '1';
  if (schema instanceof z.ZodObject) {
    const needed = Object.entries(schema.shape as Record<string, z.ZodType>).filter(
      ([, part]) => part._zod.optin !== 'optional',
    );
    const [name] = needed[0] ?? Object.entries(schema.shape)[0] ?? ['name'];
    return `{ "${name}": … }`;
  }
  if (schema instanceof z.ZodRecord) return '{ "name": … }';
  return schema instanceof z.ZodString ? '"…"' : '…';
}
