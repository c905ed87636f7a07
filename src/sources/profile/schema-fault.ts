import { z } from 'zod';
import { suggest } from '../../attributes/near-matches.ts';
import { InputError } from '../../errors.ts';
import { bare, schemaAt, valueAt } from './schema-parts.ts';

type Issue = z.core.$ZodIssue;

/** What is wrong with one part, and what mends it. */
interface Said {
  readonly what: string;
  readonly mend: string;
}

/**
 * The first thing that a schema found wrong with a value out of a file, in the reader's words: what is
 * wrong, where, what mends it.
 *
 * @param issue as `schema.safeParse(value)` gave it.
 */
export function schemaFault(issue: Issue, schema: z.ZodType, value: unknown, file: string): InputError {
  const meant = meantIssue(issue, value);
  const path = printPath(meant.path);
  const { what, mend } = sayIssue(meant, schemaAt(schema, value, meant.path), valueAt(value, meant.path));
  return new InputError(what, path === '' ? { file } : { file, path }, mend);
}

/** "of[0].unit" for ["of", 0, "unit"]. */
export function printPath(path: readonly PropertyKey[]): string {
  return path
    .map((part) => {
      if (typeof part === 'number') return `[${part}]`;
      const name = String(part);
      return /^[\p{L}$_][\p{L}\p{N}$_-]*$/u.test(name) ? `.${name}` : `[${JSON.stringify(name)}]`;
    })
    .join('')
    .replace(/^\./, '');
}

/** Of a part that may have several forms, the fault of the form that comes nearest to what is there. */
function meantIssue(issue: Issue, value: unknown): Issue {
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return issue;
  const given = valueAt(value, issue.path);
  const near = issue.errors
    .filter((branch) => branch.length > 0 && !branch.some(isOtherKind))
    .sort((a, b) => strangeness(a, given) - strangeness(b, given))[0];
  if (near === undefined) return issue;
  const inner = meantIssue(near[0]!, given);
  return { ...inner, path: [...issue.path, ...inner.path] } as Issue;
}

function isOtherKind({ code, path }: Issue): boolean {
  return path.length === 0 && (code === 'invalid_type' || code === 'invalid_value');
}

/** How many names are unknown or missing in a form. */
function strangeness(branch: readonly Issue[], given: unknown): number {
  return branch.reduce((sum, issue) => {
    if (issue.code === 'unrecognized_keys' && issue.path.length === 0) return sum + issue.keys.length;
    return valueAt(given, issue.path) === undefined ? sum + 1 : sum;
  }, 0);
}

function sayIssue(issue: Issue, schema: z.ZodType | null, given: unknown): Said {
  switch (issue.code) {
    case 'unrecognized_keys':
      return unknownName(issue.keys[0]!, keysOf(schema, given));
    case 'invalid_key': {
      const first = issue.issues[0];
      if (issue.path.at(-1) === '') return { what: 'a name is empty', mend: 'write it, or remove this part' };
      const name = String(issue.path.at(-1));
      if (first?.code === 'invalid_value') return unknownName(name, first.values.map(String));
      return first === undefined ? OTHER : sayIssue(first, null, name);
    }
    case 'invalid_type':
      return sayKind([kindName(issue.expected)], given, () => mendKind(issue.expected, schema, given));
    case 'invalid_value':
      return sayValues(issue.values, given);
    case 'invalid_union':
      return sayUnion(issue, schema, given);
    case 'too_small':
      return saySize(
        issue.origin,
        given,
        issue.minimum,
        issue.inclusive === false ? 'more than' : 'at least',
      );
    case 'too_big':
      return saySize(issue.origin, given, issue.maximum, issue.inclusive === false ? 'less than' : 'at most');
    case 'invalid_format': {
      const own = !issue.message.startsWith('Invalid');
      return {
        what: `${JSON.stringify(given)} ${own ? issue.message : 'has not the form that is expected here'}`,
        mend: 'correct it',
      };
    }
    case 'custom': {
      const mend: unknown = issue.params?.mend;
      return { what: issue.message, mend: typeof mend === 'string' ? mend : OTHER.mend };
    }
    default:
      return OTHER;
  }
}

const OTHER: Said = {
  what: 'this part has not the form that is expected here',
  mend: 'correct it (docs/file-formats.md lists what it may hold)',
};

/** Names that a part may hold; of several forms, those of the one that shares most with what is given. */
function keysOf(schema: z.ZodType | null, given: unknown): string[] {
  if (schema instanceof z.ZodObject) return Object.keys(schema.shape).filter((key) => key !== '$schema');
  if (schema instanceof z.ZodUnion) {
    const forms = (schema.options as readonly z.ZodType[]).map((option) => keysOf(bare(option), given));
    const shared = (keys: readonly string[]) =>
      keys.filter((key) => valueAt(given, [key]) !== undefined).length;
    return forms.sort((a, b) => shared(b) - shared(a))[0] ?? [];
  }
  const key = schema instanceof z.ZodRecord ? bare(schema.keyType as z.ZodType) : null;
  return key instanceof z.ZodEnum ? key.options.map(String) : [];
}

function unknownName(name: string, allowed: readonly string[]): Said {
  return {
    what: `"${name}" is not known here`,
    mend: suggest(name, allowed, allowed.length > 0 ? `use one of ${allowed.join(', ')}` : 'remove it'),
  };
}

function sayValues(values: readonly z.core.util.Primitive[], given: unknown): Said {
  const plain = values.map(String);
  const use = plain.length === 1 ? `write ${written(values[0])}` : `use one of ${plain.join(', ')}`;
  if (given === undefined) return { what: 'this is missing', mend: use };
  const texts = values.every((value) => typeof value === 'string');
  if (texts && typeof given !== 'string')
    return { what: `this must be a text, and is ${describe(given)}`, mend: use };
  return {
    what: `${JSON.stringify(given)} is not allowed`,
    mend: typeof given === 'string' && texts ? suggest(given, plain, use) : use,
  };
}

/** None of the forms is of the kind that is given; each is named. */
function sayUnion(issue: z.core.$ZodIssueInvalidUnion, schema: z.ZodType | null, given: unknown): Said {
  const firsts = issue.errors.flatMap((branch) => branch[0] ?? []);
  const values = firsts.flatMap((one) => (one.code === 'invalid_value' ? one.values : []));
  const expected = new Set(firsts.flatMap((one) => (one.code === 'invalid_type' ? one.expected : [])));
  const [only] = expected;
  if (only === undefined) return values.length > 0 ? sayValues(values, given) : OTHER;
  const forms = [...[...expected].map(kindName), ...values.map(written)];
  if (forms.length === 1) return sayKind(forms, given, () => mendKind(only, schema, given));
  const words = values.filter((value) => typeof value === 'string');
  const either = `write ${forms.join(' or ')}`;
  return sayKind(forms, given, () => (typeof given === 'string' ? suggest(given, words, either) : either));
}

function sayKind(forms: readonly string[], given: unknown, mend: () => string): Said {
  const either = forms.join(' or ');
  if (given === undefined) return { what: `${either} is missing`, mend: 'add it' };
  return { what: `this must be ${either}, and is ${describe(given)}`, mend: mend() };
}

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

function kindName(expected: string): string {
  return KINDS[expected] ?? 'of another kind';
}

/** What is given, for the reader to know it again. */
function describe(given: unknown): string {
  if (Array.isArray(given)) return 'a list';
  if (typeof given === 'object' && given !== null) return 'an object in braces';
  const text = JSON.stringify(given);
  if (typeof given === 'string') return text.length > 40 ? 'a text' : `the text ${text}`;
  return typeof given === 'number' ? `the number ${given}` : String(given);
}

function written(value: unknown): string {
  return JSON.stringify(value) ?? String(value);
}

function mendKind(expected: string, schema: z.ZodType | null, given: unknown): string {
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

/** A bound that is not kept, by a number or by the count of what a list or a text holds. */
function saySize(origin: string, given: unknown, bound: number | bigint, how: string): Said {
  const mend = `give ${how} ${bound}`;
  const few = how === 'at least' || how === 'more than';
  if (given === '') return { what: 'the text is empty', mend: 'write it, or remove this part' };
  if (Array.isArray(given)) {
    if (given.length === 0) return { what: 'the list is empty', mend: `name ${how} ${bound}` };
    return { what: `the list is too ${few ? 'short' : 'long'}, with ${given.length}`, mend };
  }
  if (origin === 'string')
    return { what: `the text is too ${few ? 'short' : 'long'}`, mend: `${mend} letters` };
  return { what: `${String(given)} is too ${few ? 'small' : 'large'}`, mend };
}
