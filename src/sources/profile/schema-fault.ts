import { z } from 'zod';
import { suggest } from '../../attributes/near-matches.ts';
import { InputError } from '../../errors.ts';
import { bare, schemaAt, valueAt } from './schema-parts.ts';
import { describe, kindName, mendKind, OTHER, type Said, written } from './schema-words.ts';

type Issue = z.core.$ZodIssue;

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
