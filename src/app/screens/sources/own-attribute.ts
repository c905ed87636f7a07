import type { AttributeDefinition, Block, Scale } from '../../../attributes/definition.ts';
import { foldText } from '../../../attributes/folding.ts';
import { type AddedTerm, defaultRegister, extendRegister } from '../../../attributes/register.ts';
import { InputError } from '../../../errors.ts';
import type { StudyDocument } from '../../state/workspace.ts';

/** An attribute of one's own while it is being written, as the form holds it. */
export interface OwnDraft {
  /** Of the attribute that is edited; null for a new one. */
  readonly id: string | null;
  readonly label: string;
  readonly scale: Scale;
  readonly block: Block;
  readonly unit: string;
  /** Ratios matter. */
  readonly log: boolean;
  /** Grades, lowest first, one a line. */
  readonly levels: string;
  /** Kinds, one a line; a narrower one stands below its broader one, further in. */
  readonly terms: string;
}

export const NEW_DRAFT: OwnDraft = {
  id: null,
  label: '',
  scale: 'nominal',
  block: 'find',
  unit: '',
  log: false,
  levels: '',
  terms: '',
};

export const takesUnit = (scale: Scale): boolean => scale === 'ratio' || scale === 'interval';

/** An attribute of the study as the form shows it. */
export function draftOf(study: StudyDocument, attribute: AttributeDefinition): OwnDraft {
  return {
    id: attribute.id,
    label: attribute.label,
    scale: attribute.scale,
    block: attribute.block,
    unit: attribute.unit ?? '',
    log: attribute.transform === 'log',
    levels: (attribute.levels ?? []).join('\n'),
    terms: outline(termsOf(study, attribute.vocabulary)),
  };
}

/** The study with the draft in it, or what is wrong with the draft in a sentence. */
export function withOwn(study: StudyDocument, draft: OwnDraft): StudyDocument | { readonly fault: string } {
  const label = draft.label.trim();
  if (label === '') return { fault: 'Give the attribute a name.' };
  const all = study.attributes ?? [];
  const before = all.find(({ id }) => id === draft.id);
  const others = new Set([...defaultRegister().attributes.keys(), ...all.map(({ id }) => id)]);
  const id = before?.id ?? freeId(label, others);
  const terms = draft.scale === 'nominal' ? termsFrom(draft.terms, ownVocabulary(before) ?? id) : [];
  const {
    unit: _u,
    transform: _t,
    levels: _l,
    vocabulary: shared,
    ...kept
  } = before ?? {
    id,
    source: 'defined by the study',
  };
  const own: AttributeDefinition = {
    ...kept,
    id,
    label,
    block: draft.block,
    scale: draft.scale,
    ...(takesUnit(draft.scale) && draft.unit.trim() !== '' ? { unit: draft.unit.trim() } : {}),
    ...(draft.scale === 'ratio' && draft.log ? { transform: 'log' as const } : {}),
    ...(draft.scale === 'ordinal' ? { levels: linesOf(draft.levels).map((line) => line.trim()) } : {}),
    ...vocabularyOf(draft.scale, shared, terms),
  };
  const attributes = before === undefined ? [...all, own] : all.map((one) => (one.id === own.id ? own : one));
  const changed = new Set([ownVocabulary(before), own.vocabulary]);
  const left = addedTerms(study).filter(({ vocabulary }) => !changed.has(vocabulary) || isShared(vocabulary));
  const next: StudyDocument = { ...study, attributes, terms: [...left, ...terms] };
  try {
    extendRegister(defaultRegister(), { attributes, terms: addedTerms(next) });
  } catch (fault) {
    if (fault instanceof InputError) return { fault: `${fault.what}; ${fault.mend}.` };
    throw fault;
  }
  return next;
}

/** The study without an attribute of its own and the kinds that it alone used. */
export function withoutOwn(study: StudyDocument, id: string): StudyDocument {
  const gone = (study.attributes ?? []).find((one) => one.id === id);
  const vocabulary = ownVocabulary(gone);
  return {
    ...study,
    attributes: (study.attributes ?? []).filter((one) => one.id !== id),
    terms: addedTerms(study).filter((term) => vocabulary === undefined || term.vocabulary !== vocabulary),
  };
}

function addedTerms(study: StudyDocument): readonly AddedTerm[] {
  return study.terms ?? [];
}

function isShared(vocabulary: string): boolean {
  return defaultRegister().vocabularies.has(vocabulary);
}

/** The vocabulary that the study made for this attribute; one of the register's is everybody's. */
function ownVocabulary(attribute: AttributeDefinition | undefined): string | undefined {
  const id = attribute?.vocabulary;
  return id === undefined || isShared(id) ? undefined : id;
}

function vocabularyOf(
  scale: Scale,
  before: string | undefined,
  terms: readonly AddedTerm[],
): { readonly vocabulary?: string } {
  if (scale !== 'nominal') return {};
  if (before !== undefined && isShared(before)) return { vocabulary: before };
  const [first] = terms;
  return first === undefined ? {} : { vocabulary: first.vocabulary };
}

function termsOf(study: StudyDocument, vocabulary: string | undefined): readonly AddedTerm[] {
  if (vocabulary === undefined || isShared(vocabulary)) return [];
  return addedTerms(study).filter((term) => term.vocabulary === vocabulary);
}

const STEP = '  ';

function outline(terms: readonly AddedTerm[], parent?: string, depth = 0): string {
  return terms
    .filter((term) => term.parent === parent)
    .map((term) => {
      const below = outline(terms, term.id, depth + 1);
      return `${STEP.repeat(depth)}${term.label}${below === '' ? '' : `\n${below}`}`;
    })
    .join('\n');
}

function linesOf(text: string): readonly string[] {
  return text.split('\n').filter((line) => line.trim() !== '');
}

/** A term a line; the parent is the nearest line above that stands further out. */
function termsFrom(text: string, vocabulary: string): readonly AddedTerm[] {
  const taken = new Set<string>();
  const above: { readonly depth: number; readonly id: string }[] = [];
  return linesOf(text).map((line): AddedTerm => {
    const depth = line.search(/\S/);
    const label = line.trim();
    const id = freeId(label, taken);
    taken.add(id);
    while ((above.at(-1)?.depth ?? -1) >= depth) above.pop();
    const parent = above.at(-1)?.id;
    above.push({ depth, id });
    const source = 'defined by the study';
    return { vocabulary, id, label, source, ...(parent === undefined ? {} : { parent }) };
  });
}

/** A name in letters and figures that begins with a letter and is not taken. */
function freeId(label: string, taken: ReadonlySet<string>): string {
  const words = foldText(label)
    .replaceAll(/[^a-z0-9 ]/g, '')
    .split(' ')
    .filter((word) => word !== '');
  const joined = words.map((word, i) => (i === 0 ? word : word[0]?.toUpperCase() + word.slice(1))).join('');
  const base = /^[a-z]/.test(joined) ? joined : `own${joined}`;
  let id = base;
  for (let i = 2; taken.has(id); i++) id = `${base}${i}`;
  return id;
}
