import type { AttributeDefinition, Register, Term } from '../../attributes/definition.ts';
import { composedName, type FacetValue, isSilent } from '../../attributes/naming/composed-name.ts';
import { type KindLanguage, termIn } from '../../attributes/naming/languages.ts';
import { nameIn, silentIn } from '../../attributes/naming/name-in.ts';
import { ancestors } from '../../attributes/tree.ts';
import type { FragmentTable } from '../table.ts';
import { applies, facetAt } from './facets.ts';

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

/** A name in English, by which it is counted, and as it is shown. */
type Named = readonly [id: string, label: string];

/** Collects the names that are met, each below the broader ones. */
export function openNames(
  register: Register,
  language: KindLanguage,
): {
  readonly nameOf: (term: string, values: Values) => string;
  readonly terms: () => readonly Term[];
} {
  const structures = register.vocabularies.get('structure');
  const byId = new Map(structures?.terms.map((term) => [term.id, term]));
  const met = new Map<string, Term>();
  const add = (
    [name, label]: Named,
    parent: string | undefined,
    of: Term,
    own?: Pick<Term, 'inner' | 'unsettled'>,
  ) => {
    if (met.has(name) || name === parent) return;
    met.set(name, {
      id: name,
      label,
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
    add(
      [bare(id), termIn(byId.get(id) ?? of, language)],
      parent === undefined ? undefined : bare(parent),
      of,
      {
        ...(inner === undefined ? {} : { inner }),
        ...(unsettled === undefined ? {} : { unsettled }),
      },
    );
  };
  const cache = new Map<string, string>();
  const nameOf = (id: string, { known, lacks }: Values): string => {
    const key = JSON.stringify([id, known.map(({ attribute, value }) => [attribute.id, value]), lacks?.id]);
    const before = cache.get(key);
    if (before !== undefined) return before;
    const term: Term = byId.get(id) ?? { id, label: id, source: 'the study' };
    addStructure(id, term);
    let above = bare(id);
    const name = (count: number, next: AttributeDefinition | null): Named => {
      const values = known.slice(0, count);
      const said = [composedName(term, values), nameIn(language, term, values)] as const;
      if (next === null || !isSilent(next)) return said;
      return [silentIn('en', said[0], next), silentIn(language, said[1], next)];
    };
    for (let count = 0; count < known.length; count++) {
      const broader = name(count, known[count]!.attribute);
      add(broader, above, term);
      above = broader[0];
    }
    const whole = name(known.length, lacks);
    add(whole, above, term);
    // A tabby of which it is known that it has no pile, no pairs … is a kind beside "tabby with pile", and not broader.
    const own = met.get(whole[0]);
    const narrower = structures?.terms.some(({ parent }) => parent === id) === true;
    if (own !== undefined && whole[0] === bare(id) && lacks === null && known.length > 0 && !narrower)
      met.set(whole[0], { ...own, inner: 'plain' });
    cache.set(key, whole[0]);
    return whole[0];
  };
  return { nameOf, terms: () => [...met.values()] };
}
