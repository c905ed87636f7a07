import { foldText } from '../../../../attributes/matching.ts';
import type { FragmentTable } from '../../../../fragments/table.ts';
import { sizeIn } from '../../reading/table/heads.ts';
import { labelStatistic } from '../../reading/table/label-statistic.ts';
import { termsOf, type View } from '../values.ts';

/** A name without case, accents and marks, but for the signs that alone tell "<6 m" from ">6 m" and "ER+" from "ER−". */
function foldName(text: string): string {
  return foldText(
    text
      .replaceAll(/[<≤]\s?(?=\d)/gu, ' under ')
      .replaceAll(/[>≥]\s?(?=\d)/gu, ' over ')
      .replace(/(?<=\p{L})\s?\+$/u, ' plus')
      .replace(/(?<=\p{L})\s?[-−–]$/u, ' minus'),
  );
}

/** What the data call their measures, kinds and terms; every name folded. */
export interface Names {
  readonly measures: ReadonlyMap<string, string>;
  readonly kinds: ReadonlyMap<string, string>;
  /** Attribute of kinds -> name of a term -> the term. */
  readonly terms: ReadonlyMap<string, ReadonlyMap<string, string>>;
  /** Attribute of kinds -> the terms that occur. */
  readonly occurring: ReadonlyMap<string, ReadonlySet<string>>;
}

const known = new WeakMap<FragmentTable, Names>();

export function namesOf(view: View): Names {
  const before = known.get(view.table);
  if (before !== undefined) return before;
  const { table, register } = view;
  const columns = [...table.columns];
  const named = (kinds: boolean) =>
    new Map(
      columns
        .filter(([id, column]) => (column.kind !== 'numeric') === kinds && id !== 'fragment' && id !== 'item')
        .flatMap(([id, { attribute }]) => [
          [foldName(id), id] as const,
          [foldName(attribute.label), id] as const,
        ]),
    );
  const kinds = named(true);
  const all = Array.from({ length: table.rows }, (_, row) => row);
  const found = [...new Set(kinds.values())].flatMap((id) => {
    const list = termsOf(view, id, all);
    if ('why' in list) return [];
    const occurring = new Set(list.filter((term) => term !== null));
    const vocabulary = register.vocabularies.get(register.attributes.get(id)?.vocabulary ?? '');
    const label = (term: string) => vocabulary?.terms.find((one) => one.id === term)?.label ?? term;
    const byName = new Map(
      [...occurring].flatMap((term) => [
        [foldName(term), term] as const,
        [foldName(label(term)), term] as const,
      ]),
    );
    return [{ id, occurring, byName }];
  });
  const names: Names = {
    measures: named(false),
    kinds,
    terms: new Map(found.map(({ id, byName }) => [id, byName])),
    occurring: new Map(found.map(({ id, occurring }) => [id, occurring])),
  };
  known.set(table, names);
  return names;
}

/** The names that a label may be: as it stands, and without its size, its statistic, its unit, its marks. */
export function formsOf(label: string): readonly string[] {
  const plain = label.replaceAll(/[*†‡§ᵃᵇᶜ:]+$/gu, '').trim();
  const unsized =
    sizeIn(plain) === null ? plain : plain.replace(/[\s,;]*[([]?\s*n\s*=[^)\]]*[)\]]?\s*$/iu, '').trim();
  const of = labelStatistic(unsized)?.of ?? unsized;
  const bare = of.replace(/\s*[([][^)\]]*[)\]]\s*$/u, '').trim();
  const word = of.replace(/,\s*[^,]{1,6}$/u, '').trim();
  return [...new Set([plain, unsized, of, bare, word].map(foldName))].filter((form) => form !== '');
}

export function lookUp<T>(label: string, names: ReadonlyMap<string, T>): T | undefined {
  for (const form of formsOf(label)) {
    const found = names.get(form);
    if (found !== undefined) return found;
  }
  return undefined;
}
