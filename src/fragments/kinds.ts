import { composedName, type FacetValue, isSilent } from '../attributes/composed-name.ts';
import type { AttributeDefinition, Register, Term, Vocabulary } from '../attributes/definition.ts';
import { ancestors, isWithin } from '../attributes/tree.ts';
import { InputError } from '../errors.ts';
import { midpoint, termAt } from './accessors.ts';
import { EITHER } from './grades.ts';
import { isMissing } from './missing.ts';
import type { Column, FragmentTable, TermColumn } from './table.ts';

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
 * the facets, so that a find whose openness is not recorded is "twined", broader than "open twining", and not a
 * kind beside it.
 *
 * @param asked names or ids of facets; without it, those that every place has recorded (`recordedFacets`).
 * @throws InputError for a name that is no facet of the structure.
 */
export function composeKinds(table: FragmentTable, register: Register, asked?: readonly string[]): Kinds {
  const structure = table.columns.get('structure');
  const definition = register.attributes.get(KIND);
  if (structure?.kind !== 'term' || definition === undefined) return { table, register, of: [] };
  const facets =
    asked === undefined
      ? recordedFacets(table, register)
      : asked.filter((name) => name !== 'structure').map((name) => facetNamed(name, register));
  const namer = openNames(register);
  const rows = table.rows;
  const codes = new Int32Array(rows).fill(-1);
  const levels: string[] = [];
  const places = new Map<string, number>();
  const certainty = new Uint8Array(rows);
  for (let row = 0; row < rows; row++) {
    const term = termAt(structure, row);
    certainty[row] = structure.certainty[row]!;
    if (term === null) continue;
    const name = namer.nameOf(term, valuesAt(table, row, term, facets, register));
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
    register: { ...register, vocabularies: new Map([...register.vocabularies, [KIND, vocabulary]]) },
    of: ['structure', ...facets.map(({ id }) => id)],
  };
}

/** A facet of the structure by its name ("openness") or its id ("spacingClass"). */
export function facetNamed(name: string, register: Register): AttributeDefinition {
  const facets = [...register.attributes.values()].filter(({ facet }) => facet?.of === 'structure');
  const met = facets.find(({ facet }) => facet?.name === name) ?? facets.find(({ id }) => id === name);
  if (met !== undefined) return met;
  throw new InputError(
    `"${name}" is no facet of the structure, so that no kind can be composed of it`,
    { path: 'kind' },
    `use ${facets.map(({ facet }) => facet?.name).join(', ')}`,
  );
}

/** A facet counts as recorded at a place where at most a tenth of the finds that it applies to lack it. */
const MAY_LACK = 0.1;

/** The facets that every place with a fabric that they apply to has recorded, and that differ between finds. */
export function recordedFacets(table: FragmentTable, register: Register): readonly AttributeDefinition[] {
  const places = placesOf(table);
  return [...register.attributes.values()].filter((attribute) => {
    const column = table.columns.get(attribute.id);
    if (attribute.facet?.of !== 'structure' || column === undefined || column.kind === 'text') return false;
    const values = new Set<string>();
    for (const rows of places) {
      const meant = rows.filter((row) => applies(attribute, structureAt(table, row), register));
      const known = meant.filter((row) => valueAt(column, row) !== null);
      if (known.length < (1 - MAY_LACK) * meant.length) return false;
      for (const row of known) values.add(valueAt(column, row)!);
    }
    return values.size > 1;
  });
}

function placesOf(table: FragmentTable): readonly (readonly number[])[] {
  const site = table.columns.get('site');
  const rows = new Map<string, number[]>();
  for (let row = 0; row < table.rows; row++) {
    const name = (site?.kind === 'term' ? termAt(site, row) : null) ?? `source ${table.origin[row]?.source}`;
    rows.set(name, [...(rows.get(name) ?? []), row]);
  }
  return [...rows.values()];
}

function structureAt(table: FragmentTable, row: number): string | null {
  const column = table.columns.get('structure');
  return column?.kind === 'term' ? termAt(column, row) : null;
}

function applies({ appliesTo }: AttributeDefinition, term: string | null, register: Register): boolean {
  const vocabulary = register.vocabularies.get('structure');
  if (term === null || vocabulary === undefined) return false;
  return appliesTo === undefined || appliesTo.some((listed) => isWithin(vocabulary, term, listed));
}

function valueAt(column: Column, row: number): string | null {
  if (column.kind === 'term') {
    const term = termAt(column, row);
    // "semi-open or open" settles no name.
    return term?.includes(EITHER) === true ? null : term;
  }
  if (column.kind === 'text' || isMissing(column, row)) return null;
  return String(midpoint(column, row));
}

interface Values {
  readonly known: readonly FacetValue[];
  /** The first facet that applies and is not known: the name says no more than what goes before it. */
  readonly lacks: AttributeDefinition | null;
}

function valuesAt(
  table: FragmentTable,
  row: number,
  term: string,
  facets: readonly AttributeDefinition[],
  register: Register,
): Values {
  const known: FacetValue[] = [];
  for (const attribute of facets) {
    if (!applies(attribute, term, register)) continue;
    const column = table.columns.get(attribute.id);
    const value = column === undefined ? null : valueAt(column, row);
    if (value === null) return { known, lacks: attribute };
    known.push({ attribute, value });
  }
  return { known, lacks: null };
}

/** Collects the names that are met, each below the broader ones. */
function openNames(register: Register): {
  readonly nameOf: (term: string, values: Values) => string;
  readonly terms: () => readonly Term[];
} {
  const structures = register.vocabularies.get('structure');
  const byId = new Map(structures?.terms.map((term) => [term.id, term]));
  const met = new Map<string, Term>();
  const add = (name: string, parent: string | undefined, below: Term) => {
    if (met.has(name) || name === parent) return;
    met.set(name, {
      id: name,
      label: name,
      ...(parent === undefined ? {} : { parent }),
      source: below.source,
    });
  };
  const bare = (id: string): string => byId.get(id)?.label ?? id;
  const addStructure = (id: string, of: Term): void => {
    const [parent] = structures === undefined ? [] : ancestors(structures, id);
    if (parent !== undefined) addStructure(parent, of);
    add(bare(id), parent === undefined ? undefined : bare(parent), of);
  };
  const cache = new Map<string, string>();
  const nameOf = (id: string, { known, lacks }: Values): string => {
    const key = JSON.stringify([id, known.map(({ attribute, value }) => [attribute.id, value]), lacks?.id]);
    const before = cache.get(key);
    if (before !== undefined) return before;
    const term: Term = byId.get(id) ?? { id, label: id, source: 'the study' };
    addStructure(id, term);
    let above = bare(id);
    const name = (count: number, next: AttributeDefinition | null): string => {
      const said = composedName(term, known.slice(0, count));
      return next !== null && isSilent(next) ? `${said}, ${next.facet?.name} not said` : said;
    };
    for (let count = 0; count < known.length; count++) {
      const broader = name(count, known[count]!.attribute);
      add(broader, above, term);
      above = broader;
    }
    const whole = name(known.length, lacks);
    add(whole, above, term);
    cache.set(key, whole);
    return whole;
  };
  return { nameOf, terms: () => [...met.values()] };
}
