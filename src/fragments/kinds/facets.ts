import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { ancestors, isWithin } from '../../attributes/tree.ts';
import { InputError } from '../../errors.ts';
import { addTo } from '../../numerics/foundation/lists.ts';
import { midpoint, termAt } from '../accessors.ts';
import { EITHER } from '../grades.ts';
import { isMissing } from '../missing.ts';
import type { Column, FragmentTable } from '../table.ts';

/** A facet of the structure by its name ("openness") or its id ("spacingClass"). */
export function facetNamed(name: string, register: Register): AttributeDefinition {
  const facets = facetsOfStructure(register);
  const met = facets.find(({ facet }) => facet?.name === name) ?? facets.find(({ id }) => id === name);
  if (met !== undefined) return met;
  throw new InputError(
    `"${name}" is no facet of the structure, so that no kind can be composed of it`,
    { path: 'kind' },
    `use ${facets.map(({ facet }) => facet?.name).join(', ')}`,
  );
}

function facetsOfStructure(register: Register): readonly AttributeDefinition[] {
  return [...register.attributes.values()].filter(({ facet }) => facet?.of === 'structure');
}

/** A facet counts as recorded at a place where at most a tenth of the finds that it applies to lack it. */
const MAY_LACK = 0.1;

/**
 * The facets that make the kinds of each family of structures (woven, twined …), since what is told of twining is
 * not told of weaving. Those that more finds of the family have go first: a name ends at the first that a find lacks.
 *
 * @param asked facets that a study names; without it, those that every place with finds of the family has recorded
 * and that differ between finds.
 */
export function facetsByFamily(
  table: FragmentTable,
  register: Register,
  asked?: readonly AttributeDefinition[],
): ReadonlyMap<string, readonly AttributeDefinition[]> {
  const families = new Map<string, number[]>();
  for (let row = 0; row < table.rows; row++) {
    const family = familyOf(structureAt(table, row), register);
    if (family !== null) addTo(families, family, row);
  }
  const candidates = asked ?? facetsOfStructure(register);
  return new Map(
    [...families].map(([family, rows]) => [
      family,
      inOrder(candidates, rows, table, register, asked === undefined),
    ]),
  );
}

function inOrder(
  candidates: readonly AttributeDefinition[],
  rows: readonly number[],
  table: FragmentTable,
  register: Register,
  everywhere: boolean,
): readonly AttributeDefinition[] {
  const places = placesOf(table, rows);
  return candidates
    .flatMap((attribute) => {
      const column = table.columns.get(attribute.id);
      if (column === undefined || column.kind === 'text') return [];
      const values = new Set<string>();
      let [meant, known] = [0, 0];
      for (const at of places) {
        const own = at.filter((row) => applies(attribute, structureAt(table, row), register));
        const here = own.flatMap((row) => facetAt(column, row) ?? []);
        if (everywhere && here.length < (1 - MAY_LACK) * own.length) return [];
        for (const value of here) values.add(value);
        meant += own.length;
        known += here.length;
      }
      if (known === 0 || (everywhere && values.size < 2)) return [];
      return [{ attribute, share: known / meant }];
    })
    .sort((a, b) => b.share - a.share)
    .map(({ attribute }) => attribute);
}

function placesOf(table: FragmentTable, rows: readonly number[]): readonly (readonly number[])[] {
  const site = table.columns.get('site');
  const places = new Map<string, number[]>();
  for (const row of rows) {
    const name = (site?.kind === 'term' ? termAt(site, row) : null) ?? `source ${table.origin[row]?.source}`;
    addTo(places, name, row);
  }
  return [...places.values()];
}

/** The broadest structure above a term: "woven" for a tabby. */
export function familyOf(term: string | null, register: Register): string | null {
  const vocabulary = register.vocabularies.get('structure');
  if (term === null || vocabulary === undefined) return null;
  return ancestors(vocabulary, term).at(-1) ?? term;
}

export function structureAt(table: FragmentTable, row: number): string | null {
  const column = table.columns.get('structure');
  return column?.kind === 'term' ? termAt(column, row) : null;
}

export function applies(
  { appliesTo }: AttributeDefinition,
  term: string | null,
  register: Register,
): boolean {
  const vocabulary = register.vocabularies.get('structure');
  if (term === null || vocabulary === undefined) return false;
  return appliesTo === undefined || appliesTo.some((listed) => isWithin(vocabulary, term, listed));
}

export function facetAt(column: Column, row: number): string | null {
  if (column.kind === 'term') {
    const term = termAt(column, row);
    // "semi-open or open" settles no name.
    return term?.includes(EITHER) === true ? null : term;
  }
  if (column.kind === 'text' || isMissing(column, row)) return null;
  return String(midpoint(column, row));
}
