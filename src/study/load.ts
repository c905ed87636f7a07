import type { z } from 'zod';
import { ANALYSES } from '../analyses/register.ts';
import type { Register } from '../attributes/definition.ts';
import { defaultRegister, extendRegister } from '../attributes/register.ts';
import { InputError } from '../errors.ts';
import { findJsonFault } from './json-fault.ts';
import { suggest } from './near-matches.ts';
import { findReferences } from './references.ts';
import { type AnalysisEntry, type Study, study } from './schema.ts';

/**
 * Reads a study file: JSON, then its shape, then every name in it.
 *
 * @param name how the file is called in messages.
 * @throws InputError for text that is not JSON (with line and column), a part that the schema does not
 * allow, an unknown attribute, kind of analysis or doubled id, with near matches named.
 */
export function loadStudy(text: string, name: string): Study {
  return checkStudy(parseJson(text, name), name);
}

/** As `loadStudy`, for a study that is an object already. */
export function checkStudy(value: unknown, name: string): Study {
  checkKinds(value, name);
  const parsed = study.safeParse(value);
  if (!parsed.success) throw issueToError(parsed.error.issues[0], value, name);
  checkNames(parsed.data, studyRegister(parsed.data), name);
  return parsed.data;
}

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

/** Everything this study can record: the default attributes and terms with its own. */
export function studyRegister(of: Pick<Study, 'attributes' | 'terms'>): Register {
  return extendRegister(defaultRegister(), { attributes: of.attributes, terms: of.terms });
}

/** Files that a study names, each once, sources first; paths as the study writes them. */
export function studyFiles(of: Study): string[] {
  const sources = of.sources.flatMap((source) => [
    source.file,
    ...(source.profile === undefined ? [] : [source.profile]),
  ]);
  const others = entriesOf(of).flatMap((entry) =>
    referencesOf(entry)
      .filter((reference) => reference.refersTo === 'file')
      .map((reference) => reference.name),
  );
  return [...new Set([...sources, ...others])];
}

/** The analyses of a study as plain entries. */
export function entriesOf(of: Study): readonly AnalysisEntry[] {
  return of.analyses as readonly unknown[] as readonly AnalysisEntry[];
}

/** The kind is checked first, so that a slip in it is not reported as a fault of the options. */
function checkKinds(value: unknown, file: string): void {
  const listed = (value as { analyses?: unknown } | null)?.analyses;
  if (!Array.isArray(listed)) return;
  const kinds = ANALYSES.map((analysis) => analysis.kind);
  for (const [place, entry] of listed.entries()) {
    const kind: unknown = (entry as { kind?: unknown } | null)?.kind;
    if (typeof kind === 'string' && kinds.includes(kind)) continue;
    throw new InputError(
      kind === undefined
        ? 'the analysis names no kind'
        : `there is no analysis of kind ${JSON.stringify(kind)}`,
      { file, path: `analyses[${place}].kind` },
      suggest(String(kind), kinds, `use one of ${kinds.join(', ')}`),
    );
  }
}

function checkNames(checked: Study, register: Register, file: string): void {
  const known = new Set(register.attributes.keys());
  const check = (name: string, path: string, more: readonly string[] = []) => {
    if (known.has(name) || more.includes(name)) return;
    throw new InputError(
      `there is no attribute "${name}"`,
      { file, path },
      suggest(name, [...known, ...more], 'name a default attribute, or define it under "attributes"'),
    );
  };
  checked.select.forEach((part, place) => {
    check(part.attribute, `select[${place}].attribute`, ['assemblage']);
  });
  const seen = new Set<string>();
  entriesOf(checked).forEach((entry, place) => {
    const path = `analyses[${place}]`;
    if (seen.has(entry.id)) {
      throw new InputError(
        `two analyses are called "${entry.id}"`,
        { file, path },
        'give one of them another id',
      );
    }
    seen.add(entry.id);
    for (const reference of referencesOf(entry)) {
      const where = `${path}${printPath(reference.path)}`;
      if (reference.refersTo === 'attribute') check(reference.name, where);
      if (reference.refersTo === 'grouping') check(reference.name, where, ['assemblage']);
    }
  });
}

function referencesOf(entry: AnalysisEntry) {
  const analysis = ANALYSES.find(({ kind }) => kind === entry.kind);
  return analysis === undefined ? [] : findReferences(analysis.options, entry);
}

/** ".of[0]" for ["of", 0]. */
function printPath(path: readonly PropertyKey[]): string {
  return path.map((part) => (typeof part === 'number' ? `[${part}]` : `.${String(part)}`)).join('');
}

/** The first thing that a schema found wrong, as one sentence with its place and a remedy. */
function issueToError(issue: z.core.$ZodIssue, value: unknown, file: string): InputError {
  const path = printPath(issue.path).replace(/^\./, '');
  const where = path === '' ? { file } : { file, path };
  if (issue.code === 'unrecognized_keys') {
    const key = issue.keys[0];
    const allowed = allowedKeys(issue.path, value);
    return new InputError(
      `"${key}" is not known here`,
      where,
      suggest(key, allowed, allowed.length > 0 ? `use one of ${allowed.join(', ')}` : 'remove it'),
    );
  }
  if (issue.code === 'invalid_type' && issue.message.endsWith('received undefined')) {
    return new InputError(
      `${issue.expected === 'array' ? 'a list' : `a ${issue.expected}`} is missing`,
      where,
      'add it',
    );
  }
  const options = issue.code === 'invalid_value' ? issue.values.map(String) : [];
  const given = issue.path.reduce<unknown>(
    (at, key) => (at as Record<PropertyKey, unknown> | undefined)?.[key],
    value,
  );
  if (options.length > 0) {
    return new InputError(
      `${JSON.stringify(given) ?? 'nothing'} is not allowed`,
      where,
      suggest(String(given), options, `use ${options.length === 1 ? '' : 'one of '}${options.join(', ')}`),
    );
  }
  if (issue.code === 'too_small') {
    const least = `${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}`;
    return new InputError(`${sized(issue.origin, given)} too small`, where, `give ${least}`);
  }
  if (issue.code === 'too_big') {
    const most = `${issue.inclusive === false ? 'less than' : 'at most'} ${issue.maximum}`;
    return new InputError(`${sized(issue.origin, given)} too large`, where, `give ${most}`);
  }
  const said = issue.message.replace(/^Invalid input: /, '');
  return new InputError(said, where, 'correct this part (docs/file-formats.md lists what it may hold)');
}

/** What a bound was put on: "99 is", "the number of entries is". */
function sized(origin: string, given: unknown): string {
  if (origin === 'array') return 'the number of entries is';
  return origin === 'string' ? 'the number of letters is' : `${String(given)} is`;
}

function allowedKeys(path: readonly PropertyKey[], value: unknown): string[] {
  if (path.length === 0) return Object.keys(study.shape).filter((key) => key !== '$schema');
  if (path[0] !== 'analyses' || path.length !== 2) return [];
  const entry = (value as { analyses: Record<PropertyKey, AnalysisEntry> }).analyses[path[1]];
  const analysis = ANALYSES.find(({ kind }) => kind === entry.kind);
  return analysis === undefined ? [] : ['id', 'kind', 'title', ...Object.keys(analysis.options.shape)];
}
