import { InputError } from '../errors.ts';
import { DEFAULT_ATTRIBUTES } from './blocks/index.ts';
import type {
  AttributeDefinition,
  DescriptionWord,
  FacetLimits,
  Register,
  Term,
  Vocabulary,
} from './definition.ts';
import { DEFAULT_VOCABULARIES } from './vocabularies/index.ts';

/** A term that a study adds, with the vocabulary that it joins. */
export type AddedTerm = Term & { readonly vocabulary: string };

export interface Additions {
  readonly attributes?: readonly AttributeDefinition[];
  readonly terms?: readonly AddedTerm[];
  /** What the study is about, where it says so. */
  readonly subject?: string;
  /** Where the study parts what it derives. */
  readonly limits?: FacetLimits;
}

const standard: Register = {
  attributes: new Map(DEFAULT_ATTRIBUTES.map((attribute) => [attribute.id, attribute])),
  vocabularies: new Map(DEFAULT_VOCABULARIES.map((vocabulary) => [vocabulary.id, vocabulary])),
};

/** What Thrum can record out of the box. */
export function defaultRegister(): Register {
  return standard;
}

/**
 * A register with a study's own attributes and terms added; the base is left as it was.
 *
 * - A term may name a vocabulary that only an added attribute uses: the vocabulary is then made.
 * - Added attributes and terms are matched before the default ones, so that a study's own words win.
 *
 * @throws InputError where an id is already taken, a parent or a vocabulary is unknown, an ordinal
 * attribute lacks its levels, or the parents of added terms run in a circle.
 */
export function extendRegister(base: Register, additions: Additions): Register {
  const subject = additions.subject ?? base.subject;
  // The same object, so that what was folded of its wordings is not folded again for every study that adds none.
  const limits = additions.limits ?? base.limits;
  const same = subject === base.subject && limits === base.limits;
  if (!additions.attributes?.length && !additions.terms?.length && same) return base;
  const attributes = new Map(base.attributes);
  const vocabularies = new Map(base.vocabularies);
  for (const attribute of additions.attributes ?? []) {
    const before = attributes.get(attribute.id);
    // A view gives way to a column that a study calls by its name.
    if (before !== undefined && before.composed !== true) {
      throw new InputError(
        `the attribute "${attribute.id}" exists already`,
        { path: 'attributes' },
        `give it another id, or use the attribute "${attribute.id}" as it is`,
      );
    }
    if (attribute.scale === 'ordinal' && (attribute.levels?.length ?? 0) < 2) {
      throw new InputError(
        `the ordinal attribute "${attribute.id}" names fewer than two levels`,
        { path: `attributes.${attribute.id}` },
        'list its grades under "levels", lowest first',
      );
    }
    attributes.set(attribute.id, onTree(attribute, vocabularies.get('structure')));
    const wanted = attribute.vocabulary;
    if (wanted !== undefined && !vocabularies.has(wanted)) {
      vocabularies.set(wanted, { id: wanted, label: attribute.label, terms: [] });
    }
  }
  for (const [id, terms] of byVocabulary(additions.terms ?? [])) {
    const vocabulary = vocabularies.get(id);
    if (vocabulary === undefined) {
      throw new InputError(
        `there is no vocabulary "${id}"`,
        { path: 'terms' },
        `use one of ${[...vocabularies.keys()].join(', ')}, or name "${id}" as the vocabulary of an attribute`,
      );
    }
    vocabularies.set(id, withTerms(vocabulary, terms));
  }
  return {
    attributes,
    vocabularies,
    ...(subject === undefined ? {} : { subject }),
    ...(limits === undefined ? {} : { limits }),
  };
}

function byVocabulary(terms: readonly AddedTerm[]): ReadonlyMap<string, readonly Term[]> {
  const groups = new Map<string, Term[]>();
  for (const { vocabulary, ...term } of terms)
    groups.set(vocabulary, [...(groups.get(vocabulary) ?? []), term]);
  return groups;
}

function withTerms(vocabulary: Vocabulary, added: readonly Term[]): Vocabulary {
  const terms = [...vocabulary.terms];
  const words = [...(vocabulary.words ?? [])];
  const parents = new Map(terms.map((term) => [term.id, term.parent]));
  for (const given of added) {
    const { term, word } = belowDescription(given, vocabulary);
    if (word !== null) words.push(word);
    if (parents.has(term.id) || words.some(({ id }) => id === term.id)) {
      throw new InputError(
        `the term "${term.id}" exists already in the vocabulary "${vocabulary.id}"`,
        { path: 'terms' },
        'give it another id, or use the term as it is',
      );
    }
    parents.set(term.id, term.parent);
    terms.push(term);
  }
  for (const term of added) checkParents(vocabulary.id, term.id, parents);
  return { ...vocabulary, terms, ...(words.length === 0 ? {} : { words }) };
}

/** A study may name what was a term in earlier versions and is a description now ("openTwining"): its structure counts. */
function onTree(attribute: AttributeDefinition, structure: Vocabulary | undefined): AttributeDefinition {
  const { appliesTo } = attribute;
  if (appliesTo === undefined) return attribute;
  const terms = appliesTo.map((id) => structure?.words?.find((word) => word.id === id)?.sets.structure ?? id);
  return { ...attribute, appliesTo: [...new Set(terms)] };
}

/** A term below a description stands below its structure, and its wordings say the facets of the description too. */
function belowDescription(
  term: Term,
  vocabulary: Vocabulary,
): { readonly term: Term; readonly word: DescriptionWord | null } {
  const above = vocabulary.words?.find(({ id }) => id !== undefined && id === term.parent);
  const parent = above?.sets[vocabulary.id];
  if (above === undefined || parent === undefined) return { term, word: null };
  const { [vocabulary.id]: _, ...facets } = above.sets;
  const wordings = [term.label, ...Object.values(term.synonyms ?? {}).flat()];
  return {
    term: { ...term, parent },
    word: { sets: facets, when: [term.id], synonyms: { en: wordings } },
  };
}

function checkParents(
  vocabulary: string,
  id: string,
  parents: ReadonlyMap<string, string | undefined>,
): void {
  const path = { path: `terms.${id}` };
  const passed = new Set([id]);
  for (let at = parents.get(id); at !== undefined; at = parents.get(at)) {
    if (!parents.has(at)) {
      throw new InputError(
        `the parent "${at}" is not a term of the vocabulary "${vocabulary}"`,
        path,
        'name an existing term as the parent, or leave the parent out to add a root',
      );
    }
    if (passed.has(at)) {
      throw new InputError(`the parents of "${id}" run in a circle`, path, 'let one of them be a root');
    }
    passed.add(at);
  }
}
