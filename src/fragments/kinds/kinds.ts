import type { AttributeDefinition, Register, Vocabulary } from '../../attributes/definition.ts';
import { KIND_LANGUAGES, type KindLanguage } from '../../attributes/naming/languages.ts';
import { termAt } from '../accessors.ts';
import { COMPUTED_FROM } from '../computed-from.ts';
import type { FragmentTable, TermColumn } from '../table.ts';
import { facetNamed, facetsByFamily, familyOf } from './facets.ts';
import { openNames, valuesAt } from './names.ts';

/** The id of the column, and of the vocabulary that holds its names. */
export const KIND = 'kind';

export interface Kinds {
  /** The table with the column of composed names; as it was where it records no structure. */
  readonly table: FragmentTable;
  /** The register with the names as a vocabulary: what lacks a facet is broader than what has it. */
  readonly register: Register;
  /** The attributes that the names are composed of, the structure first. */
  readonly of: readonly string[];
}

/**
 * Adds the kind of each find: its structure and chosen facets in one name. The names form a tree in the order of
 * the facets (kind-facets.ts), so that a find whose openness is not recorded is "twined", broader than "open twining", and not a
 * kind beside it.
 *
 * @param asked names or ids of facets; without it, those that every place has recorded, family by family.
 * @param language in which they are shown; they are counted and asked for by their English names.
 * @throws InputError for a name that is no facet of the structure.
 */
export function composeKinds(
  table: FragmentTable,
  register: Register,
  asked?: readonly string[],
  language: KindLanguage = 'en',
): Kinds {
  return compose(table, register, { asked, language }, () => true);
}

/**
 * The kinds without the facets that tell, or follow from, what a question is about: of row spacings the openness, which
 * is read off them. As the study composes them otherwise.
 */
export function kindsBeside(
  table: FragmentTable,
  about: readonly string[],
  register: Register,
  how: Restating = 'any',
): Kinds {
  const { composedOf: asked, composedIn } = register.attributes.get(KIND) ?? {};
  const language = KIND_LANGUAGES.find((one) => one === composedIn) ?? 'en';
  return compose(table, register, { asked, language }, ({ id }) => !restates(id, about, how));
}

/**
 * Which facets say again what a question is about: `any` that follows from one of its attributes, or `all`: only what
 * follows from each of them, as face does from the counts of both systems together.
 */
export type Restating = 'any' | 'all';

/** Whether a facet tells, or follows from, what a question is about. */
export function restates(facet: string, about: readonly string[], how: Restating = 'any'): boolean {
  const rootsOf = (id: string) => [id, ...(COMPUTED_FROM[id] ?? [])];
  const own = rootsOf(facet);
  const shares = (id: string) => rootsOf(id).some((root) => own.includes(root));
  return about.length > 0 && (how === 'any' ? about.some(shares) : about.every(shares));
}

function compose(
  table: FragmentTable,
  register: Register,
  { asked, language }: { readonly asked: readonly string[] | undefined; readonly language: KindLanguage },
  keeps: (facet: AttributeDefinition) => boolean,
): Kinds {
  const structure = table.columns.get('structure');
  const known = register.attributes.get(KIND);
  if (structure?.kind !== 'term' || known?.composed !== true) return { table, register, of: [] };
  const definition: AttributeDefinition = {
    ...known,
    ...(asked === undefined ? {} : { composedOf: asked }),
    ...(language === 'en' ? {} : { composedIn: language }),
  };
  const named = asked?.filter((name) => name !== 'structure').map((name) => facetNamed(name, register));
  const all = facetsByFamily(table, register, named);
  const facets = new Map([...all].map(([family, own]) => [family, own.filter(keeps)]));
  const namer = openNames(register, language);
  const rows = table.rows;
  const codes = new Int32Array(rows).fill(-1);
  const levels: string[] = [];
  const places = new Map<string, number>();
  const certainty = new Uint8Array(rows);
  for (let row = 0; row < rows; row++) {
    const term = termAt(structure, row);
    certainty[row] = structure.certainty[row]!;
    if (term === null) continue;
    const own = facets.get(familyOf(term, register) ?? '') ?? [];
    const name = namer.nameOf(term, valuesAt(table, row, term, own, register));
    let code = places.get(name);
    if (code === undefined) {
      code = levels.push(name) - 1;
      places.set(name, code);
    }
    codes[row] = code;
  }
  const column: TermColumn = {
    kind: 'term',
    attribute: definition,
    codes,
    levels,
    state: structure.state,
    certainty,
    raw: structure.raw,
  };
  const vocabulary: Vocabulary = { id: KIND, label: definition.label, terms: namer.terms() };
  return {
    table: { ...table, columns: new Map([...table.columns, [KIND, column]]) },
    register: {
      ...register,
      attributes: new Map([...register.attributes, [KIND, definition]]),
      vocabularies: new Map([...register.vocabularies, [KIND, vocabulary]]),
    },
    of: [
      'structure',
      ...(named?.filter(keeps) ?? [...new Set([...facets.values()].flat())]).map(({ id }) => id),
    ],
  };
}
