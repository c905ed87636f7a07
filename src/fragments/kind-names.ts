import { composedName, type FacetValue, isSilent } from '../attributes/composed-name.ts';
import type { AttributeDefinition, Register, Term } from '../attributes/definition.ts';
import { ancestors } from '../attributes/tree.ts';
import { applies, facetAt } from './kind-facets.ts';
import type { FragmentTable } from './table.ts';

/** What is known of the facets of one find, in the order of its family. */
interface Values {
  readonly known: readonly FacetValue[];
  /** The first facet that applies and is not known: the name says no more than what goes before it. */
  readonly lacks: AttributeDefinition | null;
}

export function valuesAt(
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
    const value = column === undefined ? null : facetAt(column, row);
    if (value === null) return { known, lacks: attribute };
    known.push({ attribute, value });
  }
  return { known, lacks: null };
}

/** Collects the names that are met, each below the broader ones. */
export function openNames(register: Register): {
  readonly nameOf: (term: string, values: Values) => string;
  readonly terms: () => readonly Term[];
} {
  const structures = register.vocabularies.get('structure');
  const byId = new Map(structures?.terms.map((term) => [term.id, term]));
  const met = new Map<string, Term>();
  const add = (
    name: string,
    parent: string | undefined,
    of: Term,
    own?: Pick<Term, 'inner' | 'unsettled'>,
  ) => {
    if (met.has(name) || name === parent) return;
    met.set(name, {
      id: name,
      label: name,
      ...(parent === undefined ? {} : { parent }),
      ...own,
      source: of.source,
    });
  };
  const bare = (id: string): string => byId.get(id)?.label ?? id;
  const addStructure = (id: string, of: Term): void => {
    const [parent] = structures === undefined ? [] : ancestors(structures, id);
    if (parent !== undefined) addStructure(parent, of);
    const { inner, unsettled } = byId.get(id) ?? {};
    add(bare(id), parent === undefined ? undefined : bare(parent), of, {
      ...(inner === undefined ? {} : { inner }),
      ...(unsettled === undefined ? {} : { unsettled }),
    });
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
