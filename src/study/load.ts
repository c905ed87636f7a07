import { ANALYSES } from '../analyses/register.ts';
import type { Register } from '../attributes/definition.ts';
import { suggest } from '../attributes/near-matches.ts';
import { defaultRegister, extendRegister } from '../attributes/register.ts';
import { InputError } from '../errors.ts';
import { certaintyOf } from '../fragments/certainty-groups.ts';
import { facetNamed } from '../fragments/kinds/facets.ts';
import { parseJson } from '../sources/formats/parse-json.ts';
import { printPath, schemaFault } from '../sources/profile/schema-fault.ts';
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
  const read = checkStudy(parseJson(text, name), name);
  checkBrief(read, name);
  return read;
}

/** As `loadStudy`, for a study that is an object already. */
export function checkStudy(value: unknown, name: string): Study {
  checkKinds(value, name);
  const parsed = study.safeParse(value);
  if (!parsed.success) throw schemaFault(parsed.error.issues[0], study, value, name);
  checkNames(parsed.data, studyRegister(parsed.data), name);
  return parsed.data;
}

/** Everything this study can record: the default attributes and terms with its own. */
export function studyRegister(of: Pick<Study, 'attributes' | 'terms' | 'subject' | 'limits'>): Register {
  const subject = of.subject === undefined ? {} : { subject: of.subject };
  const limits = of.limits === undefined ? {} : { limits: of.limits };
  return extendRegister(defaultRegister(), {
    attributes: of.attributes,
    terms: of.terms,
    ...subject,
    ...limits,
  });
}

/** Files that a study names, each once, sources first; paths as the study writes them. */
export function studyFiles(of: Study): string[] {
  const sources = of.sources.flatMap((source) => [
    source.file,
    ...(source.profile === undefined ? [] : [source.profile]),
  ]);
  return [...new Set([...sources, ...entriesOf(of).flatMap(filesOf)])];
}

/** Files that an analysis names: rules, claims, tables; paths as the study writes them. */
export function filesOf(entry: AnalysisEntry): readonly string[] {
  return referencesOf(entry)
    .filter((reference) => reference.refersTo === 'file')
    .map((reference) => reference.name);
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
  for (const name of checked.kind ?? []) if (name !== 'structure') facetNamed(name, register);
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
      const where = printPath(['analyses', place, ...reference.path]);
      if (reference.refersTo === 'attribute') check(reference.name, where);
      if (reference.refersTo === 'grouping')
        check(certaintyOf(reference.name) ?? reference.name, where, ['assemblage']);
    }
  });
}

/** What the brief names must be asked; a screen that asks a part of a study asks less than its brief names. */
function checkBrief(of: Study, file: string): void {
  const ids = entriesOf(of).map(({ id }) => id);
  of.brief?.forEach((id, place) => {
    if (ids.includes(id)) return;
    throw new InputError(
      `there is no analysis "${id}"`,
      { file, path: `brief[${place}]` },
      suggest(id, ids, 'name one of the analyses of the study'),
    );
  });
}

function referencesOf(entry: AnalysisEntry) {
  const analysis = ANALYSES.find(({ kind }) => kind === entry.kind);
  return analysis === undefined ? [] : findReferences(analysis.options, entry);
}
